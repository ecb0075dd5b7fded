package facetwright.cli.command;

import facetwright.cli.desk.DesignFile;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.PaperOptions;
import facetwright.cli.desk.Trouble;
import facetwright.cli.json.Json;
import facetwright.cli.json.WorksJson;
import facetwright.papers.materials.Need;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Rules;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.words.Count;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What so many pieces of a design take, and what it costs. */
@Command(
    name = "materials",
    mixinStandardHelpOptions = true,
    description = "Lists what to buy for one piece or many, how long it takes, and what it costs.")
public final class MaterialsCommand implements Callable<Integer> {
  @Mixin private DesignFile design;
  @Mixin private PaperOptions papers;

  @Option(
      names = "--price",
      paramLabel = "name=amount",
      description =
          "what one costs: sheet (of card), tape or ribbon (a metre), or a layer paper (a sheet)")
  private List<String> prices = List.of();

  @Option(
      names = "--currency",
      paramLabel = "EUR",
      description = "the currency of the prices, written after amounts")
  private String currency = "";

  @Mixin private Json json;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() throws Exception {
    Design made = design.evaluate();
    made.said().forEach(line -> spec.commandLine().getErr().println(line));
    Works works = papers.works(made, spec.commandLine().getErr());
    Prices known = prices(works);
    PrintWriter out = spec.commandLine().getOut();
    if (json.isAsked()) {
      out.println(WorksJson.materials(made, works, known));
    } else {
      WorksText words = new WorksText(Order.usual(made.unit()));
      int pieces = works.materials().pieces();
      out.println(made.title() + ", " + Count.of(pieces, "piece"));
      words.materials(works.materials(), known).forEach(line -> out.println("  " + line));
      out.println("  Rules of thumb:");
      Rules.words().forEach(line -> out.println("    " + line));
    }
    out.flush();
    return made.isSound() ? Exit.SOUND : Exit.ERROR_FOUND;
  }

  private Prices prices(Works works) {
    List<String> keys = works.materials().needs().stream().map(Need::key).distinct().toList();
    Map<String, Double> each = new LinkedHashMap<>();
    for (String text : prices) {
      int equals = text.lastIndexOf('=');
      String key = equals < 1 ? "" : text.substring(0, equals).strip();
      if (!keys.contains(key)) {
        throw new Trouble.WrongCall(
            "--price "
                + text
                + ": write it as name=amount, such as --price sheet=1.20. Names here: "
                + String.join(", ", keys)
                + ".");
      }
      try {
        each.put(key, Double.valueOf(text.substring(equals + 1).strip()));
      } catch (NumberFormatException _) {
        throw new Trouble.WrongCall(
            "--price " + text + ": \"" + text.substring(equals + 1) + "\" is not a number.");
      }
    }
    try {
      return new Prices(currency, each);
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall("--price: " + e.getMessage() + ".");
    }
  }
}
