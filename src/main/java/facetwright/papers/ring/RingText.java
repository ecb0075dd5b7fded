package facetwright.papers.ring;

import facetwright.measure.Area;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.papers.order.Order;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A ring in words. */
public final class RingText {
  private static final double HALF_TURN = 180;

  private RingText() {}

  /**
   * Sentences on how it is seated, how large it is, where it is glued and what goes between.
   *
   * @param net of the piece, for the names of its panels
   * @param order what is set is told by its ruler, what is only read in its unit
   */
  public static List<String> lines(RingPlan plan, Net net, Order order) {
    Unit unit = order.unit();
    Seating s = plan.seating();
    List<String> lines = new ArrayList<>();
    lines.add(size(plan, unit));
    lines.add(
        (s.tippedDegrees() < 0.05
                ? "Each piece stands upright, as it does alone. "
                : "Tip each piece by " + degrees(s.tippedDegrees()) + " from how it stands alone. ")
            + "Glue "
            + names(net, s.one())
            + " of one piece to "
            + names(net, s.other())
            + " of the next"
            + (s.isFlush() ? "." : ", with a spacer between."));
    lines.add(
        "Each piece takes "
            + degrees(HALF_TURN - s.normalsDegrees())
            + " of the circle"
            + (s.isFlush()
                ? ": " + plan.count() + " go round without a gap."
                : "; "
                    + plan.count()
                    + " would go round without a spacer at "
                    + degrees(HALF_TURN - RingPlan.flushDegrees(plan.count()))
                    + " each."));
    s.spacer().ifPresent(spacer -> lines.addAll(spacer(spacer, plan.count(), order)));
    lines.add(
        "Glued area: "
            + area(s.contact(), unit)
            + " at each meeting, "
            + area(plan.glued(), unit)
            + " in all"
            + (s.isFlush() ? "." : ", both sides of the spacers."));
    return List.copyOf(lines);
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

  private static List<String> spacer(Spacer s, int count, Order order) {
    return List.of(
        "Spacers: "
            + count
            + " wedges of "
            + degrees(s.degrees())
            + ", each "
            + order.measure(s.length())
            + " long from "
            + (s.isEdged() ? "an edge" : order.measure(s.inner()))
            + " at the inner end to "
            + order.measure(s.outer())
            + " at the outer end, and "
            + order.measure(s.height())
            + " high.",
        "Fold a spacer from a strip "
            + order.measure(s.height())
            + " wide, scored across "
            + scores(s, order)
            + "; the last part is glued under the first.");
  }

  private static String scores(Spacer s, Order order) {
    return "at "
        + s.scores().stream().map(at -> order.measure(at)).collect(Collectors.joining(", "))
        + " and cut at "
        + order.measure(s.strip());
  }

  /** What the spacers of a ring take, where it needs any. */
  public static List<String> spacerCard(RingPlan plan, Order order) {
    return plan.seating().spacer().stream()
        .map(
            s ->
                "Spacers: "
                    + plan.count()
                    + " strips of card, each "
                    + order.measure(s.strip())
                    + " × "
                    + order.measure(s.height())
                    + ".")
        .toList();
  }

  /** Which regular pieces, and which other counts of this piece, would be flush. */
  public static List<String> hints(Rings rings, int count) {
    List<String> lines = new ArrayList<>();
    List<Integer> sides = SideCounts.flush(count, SideCounts.MOST_SIDES);
    lines.add(
        sides.isEmpty()
            ? "No upright piece of up to "
                + SideCounts.MOST_SIDES
                + " equal sides seats "
                + count
                + " flush."
            : "Upright pieces of " + list(sides, "or") + " equal sides seat " + count + " flush.");
    List<Integer> counts = rings.flushCounts();
    lines.add(
        counts.isEmpty()
            ? "This piece seats no number flush."
            : "This piece seats " + list(counts, "or") + " flush.");
    return lines;
  }

  private static String list(List<Integer> numbers, String last) {
    String text = numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    int comma = text.lastIndexOf(", ");
    return comma < 0
        ? text
        : text.substring(0, comma) + " " + last + " " + text.substring(comma + 2);
  }

  private static String names(Net net, List<Integer> panels) {
    return panels.stream()
        .map(p -> "\"" + net.panels().get(p).name() + "\"")
        .collect(Collectors.joining(" with "));
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
