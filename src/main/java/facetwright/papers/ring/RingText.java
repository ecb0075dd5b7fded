package facetwright.papers.ring;

import facetwright.geom.RingCount;
import facetwright.language.Telling;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A ring in words. */
public final class RingText {
  private static final double HALF_TURN = 180;

  /** A hole in the middle that is smaller, in mm, is none. */
  private static final double UNSEEN = 0.05;

  private RingText() {}

  /**
   * Sentences on how it is seated, how large it is, where it is glued and what goes between. The
   * facet that meets the neighbour clockwise, seen from above, is called 1, the other 2.
   *
   * @param caliper of the card, in mm
   */
  public static List<String> lines(RingPlan plan, double caliper, Telling tell) {
    Seating s = plan.seating();
    List<String> lines = new ArrayList<>();
    lines.add(size(plan, tell));
    lines.add(
        tell.say(
            "ring.glue",
            "upright",
            String.valueOf(s.isUpright()),
            "tipped",
            tell.degrees(s.tippedDegrees()),
            "flush",
            String.valueOf(s.isFlush())));
    lines.add(circle(plan, tell));
    s.spacer().ifPresent(spacer -> lines.addAll(spacer(spacer, plan.count(), caliper, tell)));
    lines.add(
        tell.say(
            "ring.glued",
            "each",
            tell.area(s.contact(), 1),
            "all",
            tell.area(plan.glued(), 1),
            "flush",
            String.valueOf(s.isFlush())));
    return List.copyOf(lines);
  }

  /** How large a ring is and what it takes, in one line: for choosing between several. */
  public static String brief(RingPlan plan, Telling tell) {
    Seating s = plan.seating();
    String between =
        s.isForgiven()
            ? tell.say("ring.forgiven", "gap", tell.length(Math.abs(s.opening())))
            : s.spacer()
                .map(
                    w ->
                        w.isFolded()
                            ? tell.say("ring.wedges", "degrees", tell.degrees(w.degrees()))
                            : tell.say("ring.strips", "gap", tell.length(w.outer())))
                .orElseGet(() -> tell.say("ring.flush"));
    return tell.say(
        "ring.brief",
        "across",
        tell.read(plan.outer()),
        "height",
        tell.read(plan.height()),
        "tipped",
        tell.degrees(s.tippedDegrees()),
        "between",
        between,
        "area",
        tell.area(s.contact(), 1));
  }

  private static String circle(RingPlan plan, Telling tell) {
    Seating s = plan.seating();
    return tell.say(
        "ring.circle",
        "degrees",
        tell.degrees(HALF_TURN - s.normalsDegrees()),
        "count",
        plan.count(),
        "gap",
        tell.length(Math.abs(s.opening())),
        "flush",
        tell.degrees(HALF_TURN - RingPlan.flushDegrees(plan.count())),
        "way",
        s.isForgiven() ? s.opening() > 0 ? "open" : "tight" : s.isFlush() ? "flush" : "off");
  }

  private static String size(RingPlan plan, Telling tell) {
    return tell.say(
        "ring.size",
        "count",
        plan.count(),
        "outer",
        tell.read(plan.outer()),
        "closed",
        String.valueOf(plan.inner() < UNSEEN),
        "inner",
        tell.read(plan.inner()),
        "height",
        tell.read(plan.height()));
  }

  private static List<String> spacer(Spacer s, int count, double caliper, Telling tell) {
    if (!s.isFolded()) {
      return List.of(
          tell.say(
              "ring.between",
              "gap",
              tell.length(s.outer()),
              "strips",
              s.strips(caliper),
              "height",
              tell.mark(s.height()),
              "width",
              tell.mark(s.stripWidth())));
    }
    return List.of(
        tell.say(
            "ring.spacers",
            "count",
            count,
            "degrees",
            tell.degrees(s.degrees()),
            "length",
            tell.mark(s.length()),
            "edged",
            String.valueOf(s.isEdged()),
            "inner",
            tell.mark(s.inner()),
            "outer",
            tell.mark(s.outer()),
            "height",
            tell.mark(s.height())),
        tell.say(
            "ring.fold-spacer",
            "height",
            tell.mark(s.height()),
            "scores",
            s.scores().stream().map(tell::mark).collect(Collectors.joining(", ")),
            "cut",
            tell.mark(s.strip())));
  }

  /** What the spacers of a ring take, where it needs any. */
  public static List<String> spacerCard(RingPlan plan, double caliper, Telling tell) {
    return plan.seating().spacer().stream()
        .map(
            s ->
                s.isFolded()
                    ? tell.say(
                        "ring.spacer-card",
                        "count",
                        plan.count(),
                        "strip",
                        tell.mark(s.strip()),
                        "height",
                        tell.mark(s.height()))
                    : tell.say(
                        "ring.between-card",
                        "count",
                        plan.count() * s.strips(caliper),
                        "height",
                        tell.mark(s.height()),
                        "width",
                        tell.mark(s.stripWidth())))
        .toList();
  }

  /**
   * Which counts this piece seats flush; and where it does not seat so many, but is a regular
   * piece, which numbers of sides would.
   */
  public static List<String> hints(Rings rings, int count, Telling tell) {
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
                      tell.say(
                          "ring.other-sides",
                          "own",
                          own,
                          "sides",
                          list(sides, tell),
                          "count",
                          count));
                }
              });
    }
    List<Integer> told = counts.stream().filter(n -> n <= SideCounts.MOST_SIDES).toList();
    lines.add(
        told.isEmpty()
            ? counts.isEmpty()
                ? tell.say("ring.seats-none", "most", RingCount.MOST)
                : tell.say("ring.seats-from", "least", counts.getFirst())
            : tell.say("ring.seats", "counts", list(told, tell)));
    return lines;
  }

  private static String list(List<Integer> numbers, Telling tell) {
    return tell.either(numbers.stream().map(String::valueOf).toList());
  }
}
