package facetwright.papers.ring;

import facetwright.geom.RingCount;
import facetwright.measure.Area;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.papers.order.Order;
import facetwright.words.Decimals;
import facetwright.words.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A ring in words. */
public final class RingText {
  private static final double HALF_TURN = 180;

  private RingText() {}

  /**
   * Sentences on how it is seated, how large it is, where it is glued and what goes between. The
   * facet that meets the neighbour clockwise, seen from above, is called 1, the other 2.
   *
   * @param caliper of the card, in mm
   * @param order what is set is told by its ruler, what is only read in its unit
   */
  public static List<String> lines(RingPlan plan, double caliper, Order order) {
    Unit unit = order.unit();
    Seating s = plan.seating();
    List<String> lines = new ArrayList<>();
    lines.add(size(plan, unit));
    lines.add(
        (s.isUpright()
                ? "Each piece stands upright, as it does alone. "
                : "Tip each piece by " + degrees(s.tippedDegrees()) + " from how it stands alone. ")
            + "Glue facet 1 of one piece to facet 2 of the next"
            + (s.isFlush() ? "." : ", with what is told below between."));
    lines.add(circle(plan, unit));
    s.spacer().ifPresent(spacer -> lines.addAll(spacer(spacer, plan.count(), caliper, order)));
    lines.add(
        "Glued area: "
            + area(s.contact(), unit)
            + " at each meeting, "
            + area(plan.glued(), unit)
            + " in all"
            + (s.isFlush() ? "." : ", both sides of what goes between."));
    return List.copyOf(lines);
  }

  /** How large a ring is and what it takes, in one line: for choosing between several. */
  public static String brief(RingPlan plan, Unit unit) {
    Seating s = plan.seating();
    String between =
        s.isForgiven()
            ? "nothing between; glue and card make up " + gap(Math.abs(s.opening()), unit)
            : s.spacer()
                .map(
                    w ->
                        (w.isFolded() ? "wedges of " : "card between, ")
                            + (w.isFolded() ? degrees(w.degrees()) : gap(w.outer(), unit)))
                .orElse("flush");
    return text(plan.outer(), unit)
        + " across, "
        + text(plan.height(), unit)
        + " high, tipped "
        + degrees(s.tippedDegrees())
        + "; "
        + between
        + "; "
        + area(s.contact(), unit)
        + " glued at each meeting";
  }

  private static String circle(RingPlan plan, Unit unit) {
    Seating s = plan.seating();
    String takes = "Each piece takes " + degrees(HALF_TURN - s.normalsDegrees()) + " of the circle";
    if (s.isForgiven()) {
      return takes
          + ": "
          + plan.count()
          + " go round with "
          + gap(Math.abs(s.opening()), unit)
          + (s.opening() > 0
              ? " open at the outer end of each meeting, which glue and card make up."
              : " too much at the outer end of each meeting, which card gives.")
          + " Nothing goes between.";
    }
    return s.isFlush()
        ? takes + ": " + plan.count() + " go round without a gap."
        : takes
            + "; "
            + plan.count()
            + " would go round with nothing between at "
            + degrees(HALF_TURN - RingPlan.flushDegrees(plan.count()))
            + " each.";
  }

  private static String size(RingPlan plan, Unit unit) {
    return "The ring of "
        + plan.count()
        + " is "
        + text(plan.outer(), unit)
        + " across outside"
        + (plan.inner() < 0.05
            ? ", closed in the middle, "
            : ", " + text(plan.inner(), unit) + " inside, ")
        + "and "
        + text(plan.height(), unit)
        + " high.";
  }

  private static List<String> spacer(Spacer s, int count, double caliper, Order order) {
    if (!s.isFolded()) {
      int strips = s.strips(caliper);
      return List.of(
          "Neighbours stand open by "
              + gap(s.outer(), order.unit())
              + " at the outer end, too little for a folded wedge: put "
              + (strips == 1 ? "a strip" : strips + " strips, one on the other,")
              + " of the same card between them there, each "
              + mark(s.height(), order)
              + " × "
              + mark(s.stripWidth(), order)
              + ".");
    }
    return List.of(
        "Spacers: "
            + count
            + " wedges of "
            + degrees(s.degrees())
            + ", each "
            + mark(s.length(), order)
            + " long from "
            + (s.isEdged() ? "an edge" : mark(s.inner(), order))
            + " at the inner end to "
            + mark(s.outer(), order)
            + " at the outer end, and "
            + mark(s.height(), order)
            + " high.",
        "Fold a spacer from a strip "
            + mark(s.height(), order)
            + " wide, scored across at "
            + s.scores().stream().map(at -> mark(at, order)).collect(Collectors.joining(", "))
            + " and cut at "
            + mark(s.strip(), order)
            + "; the last part is glued under the first.");
  }

  /** What the spacers of a ring take, where it needs any. */
  public static List<String> spacerCard(RingPlan plan, double caliper, Order order) {
    return plan.seating().spacer().stream()
        .map(
            s ->
                s.isFolded()
                    ? "Spacers: "
                        + plan.count()
                        + " strips of card, each "
                        + mark(s.strip(), order)
                        + " × "
                        + mark(s.height(), order)
                        + "."
                    : "Between neighbours: "
                        + plan.count() * s.strips(caliper)
                        + " strips of the same card, each "
                        + mark(s.height(), order)
                        + " × "
                        + mark(s.stripWidth(), order)
                        + ".")
        .toList();
  }

  /**
   * Which counts this piece seats flush; and where it does not seat so many, but is a regular
   * piece, which numbers of sides would.
   */
  public static List<String> hints(Rings rings, int count) {
    List<String> lines = new ArrayList<>();
    List<Integer> counts = rings.flushCounts();
    if (!counts.contains(count)) {
      rings
          .equalSides()
          .ifPresent(
              own -> {
                List<Integer> sides = SideCounts.flush(count, SideCounts.MOST_SIDES);
                if (!sides.isEmpty()) {
                  lines.add(
                      "It has "
                          + own
                          + " equal upright sides; with "
                          + list(sides, "or")
                          + " of them "
                          + count
                          + " would seat flush.");
                }
              });
    }
    List<Integer> told = counts.stream().filter(n -> n <= SideCounts.MOST_SIDES).toList();
    lines.add(
        told.isEmpty()
            ? counts.isEmpty()
                ? "This piece seats no number up to " + RingCount.MOST + " flush."
                : "This piece seats no fewer than " + counts.getFirst() + " flush."
            : "This piece seats " + list(told, "or") + " flush.");
    return lines;
  }

  private static String list(List<Integer> numbers, String last) {
    return Sentence.listed(numbers.stream().map(String::valueOf).toList(), last);
  }

  /** The nearest mark of the ruler: what goes between is not set more exactly than that. */
  private static String mark(double mm, Order order) {
    return order.ruler().read(new Length(mm)).text();
  }

  private static String gap(double mm, Unit unit) {
    return new Length(mm).text(unit);
  }

  private static String degrees(double degrees) {
    return Decimals.places(degrees, 1) + "°";
  }

  private static String area(double mm2, Unit unit) {
    return new Area(mm2).text(unit, 1);
  }

  private static String text(double mm, Unit unit) {
    return new Length(mm).read(unit);
  }
}
