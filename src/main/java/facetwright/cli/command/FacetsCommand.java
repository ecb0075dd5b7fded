package facetwright.cli.command;

import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Columns;
import facetwright.cli.desk.Drawn;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.PapersFor;
import facetwright.cli.desk.PrinterOptions;
import facetwright.cli.json.FacetsJson;
import facetwright.export.FacetsWriter;
import facetwright.papers.facets.FacetLine;
import facetwright.papers.facets.FacetList;
import facetwright.papers.facets.FacetText;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists the facets of a design and the words they answer to. */
@Command(
    name = "facets",
    mixinStandardHelpOptions = true,
    description = {
      "Lists a design's facets: number, name, the words each answers to in the script, corners,"
          + " size, which way it faces.",
      "With --out they are drawn, too, on the folded form and on the net, with their numbers."
    })
public final class FacetsCommand implements Callable<Integer> {
  @Mixin private Asked asked;

  @Mixin private PrinterOptions printer;

  @Mixin private Drawn drawn;

  @Override
  public Integer call() throws Exception {
    printer.check();
    Design made = asked.evaluate();
    FacetList facets = FacetList.of(made.net(), made.folded(), made.spoken());
    asked.answer(() -> FacetsJson.of(made, facets), () -> lines(made, facets));
    drawn.write(
        asked,
        made,
        () -> new FacetsWriter().withPictures(PapersFor.job(made, printer.order(made.unit()))));
    return Exit.of(made.isSound());
  }

  private static List<String> lines(Design made, FacetList facets) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("", "facet", "in the script", "corners", "size", "faces"));
    for (FacetLine f : facets.all()) {
      String role = FacetText.role(f);
      rows.add(
          List.of(
              Integer.toString(f.number()),
              f.name() + (role.isEmpty() || f.name().contains(role) ? "" : " (" + role + ")"),
              FacetText.own(f),
              Integer.toString(f.corners()),
              FacetText.size(f, made.unit()),
              FacetText.facing(f)));
    }
    List<String> lines = new ArrayList<>(List.of(made.title()));
    lines.addAll(Columns.left(rows));
    List<List<String>> groups = new ArrayList<>();
    facets.groups().forEach((w, n) -> groups.add(List.of(w, FacetText.numbers(n))));
    if (!groups.isEmpty()) {
      lines.add("Words for several" + (FacetText.isOfParts(facets) ? ", in each part:" : ":"));
      lines.addAll(Columns.left(groups));
    }
    return lines;
  }
}
