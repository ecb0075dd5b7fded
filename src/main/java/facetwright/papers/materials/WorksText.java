package facetwright.papers.materials;

import facetwright.measure.Area;
import facetwright.measure.Length;
import facetwright.papers.copies.CopyPlan;
import facetwright.papers.cutting.Cut;
import facetwright.papers.cutting.CutPlan;
import facetwright.papers.cutting.Cuts;
import facetwright.papers.cutting.SheetPlan;
import facetwright.papers.layers.LayerGroup;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.layers.Strip;
import facetwright.papers.order.Order;
import facetwright.words.Count;
import facetwright.words.Decimals;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Layers, cuts and materials in words.
 *
 * @param order measures are told by its ruler, areas in its unit
 */
public record WorksText(Order order) {
  /** Common practice, no source. */
  public static final String CAUTION =
      "Caution: a trimmer's blade is sharp. Keep fingers behind its guard, close it after each cut,"
          + " and let children trim only with an adult beside them.";

  /** A measure that is set, as {@link Order#measure} tells it. */
  public String measure(double mm) {
    return order.measure(mm);
  }

  private String measures(double width, double height) {
    return measure(width) + " × " + measure(height);
  }

  /** What is cut, a line a group. */
  public List<String> groups(LayerPlan plan) {
    List<String> lines = new ArrayList<>();
    for (LayerGroup g : plan.groups()) {
      String kind =
          switch (g.kind()) {
            case RECTANGLE -> "rectangle ";
            case TRIANGLE -> "triangle in a box of ";
            case OTHER -> "shape in a box of ";
          };
      int windows = g.shape().windows().size();
      lines.add(
          "%s: %s%s, %d for one piece%s%s%s%s."
              .formatted(
                  g.letter(),
                  kind,
                  measures(g.width(), g.height()),
                  g.count(),
                  plan.pieces() == 1
                      ? ""
                      : ", " + g.count() * plan.pieces() + " for " + plan.pieces(),
                  g.isBehind() ? "; behind windows" : "",
                  windows == 0 ? "" : "; openings cut out of each: " + windows,
                  g.mirrorOf().map(m -> "; the mirror image of " + m).orElse("")));
    }
    return lines;
  }

  /** The pieces that go behind windows, with their sizes and counts, a line a paper. */
  public List<String> backings(Works works) {
    List<String> lines = new ArrayList<>();
    for (LayerPlan plan : works.plans()) {
      List<String> sizes =
          plan.groups().stream()
              .filter(LayerGroup::isBehind)
              .map(
                  g ->
                      Count.of((long) g.count() * plan.pieces(), "piece")
                          + " "
                          + measures(g.width(), g.height()))
              .toList();
      if (!sizes.isEmpty()) {
        lines.add(
            "Behind windows, of " + plan.paper().text() + ": " + String.join("; ", sizes) + ".");
      }
    }
    return lines;
  }

  /** How the ticks of a strip are set. */
  String ticks(Strip s) {
    String first = s.startsBelow() ? "lower" : "upper";
    String other = s.startsBelow() ? "upper" : "lower";
    return "ticks on the %s edge at 0 and every %s, on the %s edge at %s and every %s; cut from tick to tick, edge to edge in turn; %s, %s waste at the ends"
        .formatted(
            first,
            measure(s.base()),
            other,
            measure(s.lead()),
            measure(s.base()),
            Count.of(s.triangles(), "triangle"),
            new Area(s.waste()).text(order.unit(), 1));
  }

  /** Sheets, yield and waste. */
  public String summary(LayerPlan plan) {
    CutPlan cuts = plan.plan();
    double share = 1 - plan.waste() / cuts.paperArea();
    return "%s of %s, %s %% used, %s waste; %s, %s.%s"
        .formatted(
            Count.of(cuts.sheetCount(), "sheet"),
            plan.paper().text(),
            Decimals.places(100 * share, 1),
            area(plan.waste()),
            Count.of(cuts.cuts(), "cut"),
            Count.of(cuts.measures().size(), "measure", "different measures"),
            fewest(cuts));
  }

  /** How good the plan is, as far as it is known. */
  private static String fewest(CutPlan cuts) {
    int fewer = cuts.sheetCount() - (int) cuts.bound();
    return fewer == 0
        ? " No plan takes fewer sheets."
        : " It may be that "
            + (fewer == 1 ? "one sheet" : fewer + " sheets")
            + " fewer would do; less than "
            + (int) cuts.bound()
            + " cannot.";
  }

  /** The numbered cuts of one sheet. */
  public List<String> steps(SheetPlan sheet, LayerPlan plan) {
    List<String> lines = new ArrayList<>();
    for (Cut step : Cuts.of(sheet, plan.plan().wanted())) {
      lines.add(step.text(measure(step.at())));
    }
    int[] pieces = sheet.pieces(plan.plan().wanted().size());
    for (LayerPlan.NamedStrip strip : plan.strips()) {
      boolean here = false;
      for (int k = 0; k < pieces.length; k++) {
        here |= pieces[k] > 0 && plan.plan().wanted().get(k).name().equals(strip.name());
      }
      if (!here) {
        continue;
      }
      lines.add("“" + strip.name() + "”: " + ticks(strip.strip()) + ".");
    }
    return lines;
  }

  /** Name, size and number of a sheet. */
  public String sheet(SheetPlan sheet) {
    return "%d × %s, %s"
        .formatted(
            sheet.copies(),
            sheet.paper().name(),
            sold(sheet.paper().width()) + " × " + sold(sheet.paper().height()));
  }

  /** A side of a sheet as it is bought: nobody sets it. */
  private String sold(double mm) {
    return new Length(mm).read(order.unit());
  }

  /** What one such sheet gives. */
  public String given(SheetPlan sheet, LayerPlan plan) {
    int[] pieces = sheet.pieces(plan.plan().wanted().size());
    List<String> kinds = new ArrayList<>();
    for (int k = 0; k < pieces.length; k++) {
      if (pieces[k] > 0) {
        kinds.add(pieces[k] + " × “" + plan.plan().wanted().get(k).name() + "”");
      }
    }
    return "%s: %s; %s %% of it is used."
        .formatted(
            sheet.copies() == 1 ? "It gives" : "Each gives",
            String.join(", ", kinds),
            Decimals.places(100 * sheet.part(), 1));
  }

  /** The shopping list and what goes with it. */
  public List<String> materials(Materials m, Prices prices) {
    List<String> lines = new ArrayList<>(shopping(m, prices));
    List<String> facts = new ArrayList<>();
    facts.add(weight(m));
    if (m.glueArea() > 0) {
      facts.add("Glue on tabs and laps: " + area(m.glueArea()) + ".");
    }
    if (m.layerArea() > 0) {
      facts.add("Glue under layers: " + area(m.layerArea()) + ".");
    }
    if (m.holes() > 0) {
      facts.add("Holes: " + m.holes() + ".");
    }
    facts.add(
        "Time: about "
            + hours(m.minutes())
            + (m.pieces() == 1 ? "." : ", " + hours(m.minutes() / m.pieces()) + " a piece."));
    lines.add(String.join(" ", facts));
    return lines;
  }

  /** What one piece weighs, a sentence. */
  public String weight(Materials m) {
    return "Weight of one piece: "
        + m.card().about(order.unit())
        + (m.isPapered() ? " of card; papers, film and glue come on top." : ", glue aside.");
  }

  /** What to buy, and what a sheet of card gives. */
  public List<String> shopping(Materials m, Prices prices) {
    List<String> lines = new ArrayList<>();
    for (Purchase p : m.shopping(prices)) {
      lines.add(
          "%s: buy %d %s (needed %s)%s"
              .formatted(
                  Sentence.capital(p.need().what()),
                  p.buy(),
                  p.need().unit().text(p.buy()),
                  Decimals.places(p.need().amount(), 2) + p.need().inYards(order.unit()),
                  p.cost().map(c -> ", " + money(c, prices)).orElse("")));
    }
    m.cost(prices).ifPresent(c -> lines.add("priced together: " + money(c, prices)));
    lines.add(
        !m.fits()
            ? "The net does not fit its sheet: take a larger one before you buy."
            : m.perSheet() > 0
                ? "One sheet of card gives "
                    + CopyPlan.counted(m.perSheet())
                    + (m.perSheet() == 1 ? " piece." : " pieces.")
                : "One piece takes more than one sheet of card.");
    if (!m.parts().isEmpty()) {
      lines.add(
          "Parts to make: "
              + m.parts().stream().map(Materials.Made::text).collect(Collectors.joining("; "))
              + ".");
    }
    if (!m.hinges().isEmpty()) {
      lines.add(
          "Hinges, strips of the same card, from what is left of a sheet: "
              + m.hinges().stream()
                  .map(h -> h.count() + " of " + measures(HingeStrip.WIDE, h.length()))
                  .collect(Collectors.joining("; "))
              + ".");
    }
    return lines;
  }

  /**
   * What has to lie ready, in a sentence.
   *
   * @param isForBoard whether a scoring board serves
   */
  public String tools(Works works, boolean isForBoard) {
    List<String> tools = new ArrayList<>();
    if (isForBoard) {
      tools.add("a scoring board or a ruler");
    }
    tools.add("a bone folder or a spent pen");
    tools.add("a knife, a metal edge and a mat");
    if (works.materials().holes() > 0) {
      tools.add("a punch");
    }
    if (!works.plans().isEmpty()) {
      tools.add("a trimmer for the layers");
    }
    if (works.materials().glueArea() + works.materials().layerArea() > 0) {
      tools.add("glue or double-sided tape");
    }
    return "Tools: " + String.join("; ", tools) + ".";
  }

  private static String hours(double minutes) {
    String hours = Decimals.places(minutes / 60, 1);
    return hours + (hours.equals("1") ? " hour" : " hours");
  }

  private String area(double mm2) {
    return new Area(mm2).rough(order.unit());
  }

  private static String money(double amount, Prices prices) {
    return (String.format(Locale.ROOT, "%.2f", amount) + " " + prices.currency()).strip();
  }

  /** Panels without a layer because the reveal takes all that could be cut. */
  public Optional<String> lost(Works works) {
    return works.layers().lost().isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The reveal leaves too little of the layer to be cut on: "
                + String.join(", ", works.layers().lost())
                + ".");
  }
}
