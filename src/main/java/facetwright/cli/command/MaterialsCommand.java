package facetwright.cli.command;

import facetwright.cli.desk.Asked;
import facetwright.cli.desk.Exit;
import facetwright.cli.desk.PaperOptions;
import facetwright.cli.desk.Trouble;
import facetwright.cli.json.WorksJson;
import facetwright.papers.materials.Need;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Rules;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.words.Count;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What so many pieces of a design take, and what it costs. */
@Command(
    name = "materials",
    mixinStandardHelpOptions = true,
    description = "Lists what to buy for one piece or many, how long it takes, and what it costs.")
public final class MaterialsCommand implements Callable<Integer> {
  @Mixin private Asked asked;
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

  @Override
  public Integer call() throws Exception {
    Design made = asked.evaluate();
    Works works = papers.works(made, asked.err());
    Prices known = prices(works);
    asked.answer(() -> WorksJson.materials(made, works, known), () -> lines(made, works, known));
    return Exit.of(made.isSound());
  }

  private static List<String> lines(Design made, Works works, Prices known) {
    List<String> lines = new ArrayList<>();
    Order order = Order.usual(made.unit());
    WorksText words = new WorksText(order);
    lines.add(made.title() + ", " + Count.of(works.materials().pieces(), "piece"));
    words.materials(works.materials(), known).forEach(line -> lines.add("  " + line));
    lines.add("  Rules of thumb:");
    Rules.words(works.materials(), order.telling()).forEach(line -> lines.add("    " + line));
    return lines;
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
