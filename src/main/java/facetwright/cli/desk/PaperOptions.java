package facetwright.cli.desk;

import facetwright.measure.Unit;
import facetwright.message.Refused;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.papers.cutting.Paper;
import facetwright.papers.layers.LayerPaper;
import facetwright.papers.layers.Layers;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How many pieces, and which layer papers lie at hand: options shared by commands. */
public final class PaperOptions {
  @Option(
      names = {"--count", "--class"},
      paramLabel = "N",
      description = "how many pieces (usual: 1)")
  private int count = 1;

  @Option(
      names = "--paper",
      paramLabel = "name=WxH",
      description =
          "a decorative paper and its sheet, such as \"wave paper=12x12 in\" or \"wave paper=A4\";"
              + " again for another size")
  private List<String> papers = List.of();

  @Option(
      names = "--directed",
      paramLabel = "name",
      description = "this paper's pattern has an upright, which runs up its sheet")
  private List<String> directed = List.of();

  @Option(
      names = "--two-sided",
      paramLabel = "name",
      description = "both sides of this paper may be seen")
  private List<String> twoSided = List.of();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  /** Everything reckoned for one design. */
  public Works works(Design design, PrintWriter err) {
    Trouble.unless(counted(), "%s pieces can be planned", 1, Order.MOST, count);
    try {
      List<LayerPaper> known = papers(design);
      return new Progress(err)
          .during(
              "Planning the papers",
              () -> Works.of(design.laid(), design.gluing(), design.unit(), known, count));
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall(Refused.text(e, design.unit()));
    }
  }

  /** The option's name as the caller writes it. */
  private String counted() {
    boolean ofClass =
        spec.commandLine().getParseResult().originalArgs().stream()
            .anyMatch(word -> word.startsWith("--class"));
    return ofClass ? "--class" : "--count";
  }

  private List<LayerPaper> papers(Design design) {
    Unit unit = design.unit();
    List<String> used = Layers.papersOf(design.net());
    Map<String, List<Paper>> sizes = new LinkedHashMap<>();
    for (String text : papers) {
      int equals = text.lastIndexOf('=');
      if (equals < 1) {
        throw new Trouble.WrongCall(
            "--paper " + text + " has no size. Write it as --paper \"wave paper=A4\".");
      }
      String name = known("--paper", text.substring(0, equals).strip(), used);
      sizes
          .computeIfAbsent(name, _ -> new ArrayList<>())
          .add(size(text.substring(equals + 1).strip(), unit));
    }
    directed.forEach(name -> known("--directed", name, used));
    twoSided.forEach(name -> known("--two-sided", name, used));
    List<LayerPaper> all = new ArrayList<>();
    for (String name : used) {
      boolean told = sizes.containsKey(name) || directed.contains(name) || twoSided.contains(name);
      if (told) {
        all.add(
            new LayerPaper(
                name,
                sizes.getOrDefault(name, List.of(Works.usual(unit))),
                !twoSided.contains(name),
                directed.contains(name)));
      }
    }
    return all;
  }

  private static String known(String option, String name, List<String> used) {
    if (!used.contains(name)) {
      throw new Trouble.WrongCall(
          option
              + ": no layer of this design is cut from \""
              + name
              + "\""
              + (used.isEmpty() ? "." : ". Its papers: " + String.join(", ", used) + "."));
    }
    return name;
  }

  private static Paper size(String text, Unit unit) {
    try {
      SheetSize size = SheetSizes.read(text, unit);
      return new Paper(size.name(), size.width(), size.height());
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall("--paper: " + Refused.text(e, unit) + ".");
    }
  }
}
