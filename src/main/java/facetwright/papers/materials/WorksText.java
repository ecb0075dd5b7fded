package facetwright.papers.materials;

import facetwright.language.Telling;
import facetwright.papers.copies.CopyPlan;
import facetwright.papers.order.Order;
import facetwright.words.Decimals;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Materials in words.
 *
 * @param order measures are told by its ruler, areas in its unit
 */
public record WorksText(Order order) {
  private Telling tell() {
    return order.telling();
  }

  /** A measure that is set, as {@link Order#measure} tells it. */
  public String measure(double mm) {
    return order.measure(mm);
  }

  private String measures(double width, double height) {
    return measure(width) + " × " + measure(height);
  }

  /** The shopping list and what goes with it. */
  public List<String> materials(Materials m, Prices prices) {
    List<String> lines = new ArrayList<>(shopping(m, prices));
    List<String> facts = new ArrayList<>();
    facts.add(weight(m));
    if (m.glueArea() > 0) {
      facts.add(tell().say("materials.glue-tabs", "area", tell().rough(m.glueArea())));
    }
    if (m.layerArea() > 0) {
      facts.add(tell().say("materials.glue-layers", "area", tell().rough(m.layerArea())));
    }
    if (m.holes() > 0) {
      facts.add(tell().say("materials.holes", "holes", m.holes()));
    }
    facts.add(
        tell()
            .say(
                "materials.time",
                "all",
                hours(m.minutes()),
                "pieces",
                m.pieces(),
                "each",
                hours(m.minutes() / m.pieces())));
    lines.add(String.join(" ", facts));
    return lines;
  }

  /** What one piece weighs, a sentence. */
  public String weight(Materials m) {
    return tell()
        .say(
            "materials.weight",
            "mass",
            tell().about(m.card()),
            "papered",
            String.valueOf(m.isPapered()));
  }

  /** What to buy, and what a sheet of card gives. */
  public List<String> shopping(Materials m, Prices prices) {
    List<String> lines = new ArrayList<>();
    for (Purchase p : m.shopping(prices)) {
      lines.add(buy(p, prices));
    }
    m.cost(prices)
        .ifPresent(c -> lines.add(tell().say("materials.priced", "cost", money(c, prices))));
    lines.add(m.fits() ? perSheet(m.perSheet()) : tell().say("materials.too-large"));
    if (!m.parts().isEmpty()) {
      List<String> parts = m.parts().stream().map(this::part).toList();
      lines.add(tell().say("materials.parts", "parts", tell().apart(parts)));
    }
    if (!m.hinges().isEmpty()) {
      List<String> strips = m.hinges().stream().map(this::strip).toList();
      lines.add(tell().say("materials.hinges", "strips", tell().apart(strips)));
    }
    return lines;
  }

  private String buy(Purchase p, Prices prices) {
    Need need = p.need();
    return tell()
        .say(
            "materials.buy",
            "unit",
            need.unit().word(),
            "what",
            Sentence.capital(need.what().text(tell())),
            "buy",
            p.buy(),
            "needed",
            tell().number(need.amount(), 2),
            "yards",
            need.yards(tell()),
            "priced",
            String.valueOf(p.cost().isPresent()),
            "cost",
            p.cost().map(c -> money(c, prices)).orElse(""));
  }

  private String perSheet(int count) {
    return tell()
        .say("materials.per-sheet", "count", count, "most", String.valueOf(count >= CopyPlan.MOST));
  }

  private String part(Materials.Made part) {
    return tell()
        .say(
            "materials.part",
            "count",
            part.count(),
            "name",
            part.name(),
            "mirrored",
            String.valueOf(part.imageOf().isPresent()),
            "image",
            part.imageOf().orElse(""));
  }

  private String strip(HingeStrip h) {
    return tell()
        .say("materials.strip", "count", h.count(), "size", measures(HingeStrip.WIDE, h.length()));
  }

  /**
   * What has to lie ready, in a sentence.
   *
   * @param isForBoard whether a scoring board serves
   */
  public String tools(Works works, boolean isForBoard) {
    List<String> tools = new ArrayList<>();
    if (isForBoard) {
      tools.add("board");
    }
    tools.add("folder");
    tools.add("knife");
    if (works.materials().holes() > 0) {
      tools.add("punch");
    }
    if (!works.plans().isEmpty()) {
      tools.add("trimmer");
    }
    if (works.materials().glueArea() + works.materials().layerArea() > 0) {
      tools.add("glue");
    }
    List<String> words =
        tools.stream().map(tool -> tell().say("materials.tool", "tool", tool)).toList();
    return tell().say("materials.tools", "tools", tell().apart(words));
  }

  /** To a tenth. */
  private static double hours(double minutes) {
    return Double.parseDouble(Decimals.places(minutes / 60, 1));
  }

  private String money(double amount, Prices prices) {
    String plain = String.format(Locale.ROOT, "%.2f", amount);
    return (tell().figures(plain) + " " + prices.currency()).strip();
  }
}
