package facetwright.check.closing;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.LengthTolerance;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Walls of a pinched wrap that are too short: they do not reach from the waist in to the rim; or
 * they lie so flat that points that go in reach through the row beyond the waist. Points of wide
 * columns that go past the axis, where those of the others are, are told too.
 *
 * <p>It says so however near the joins come and however little the panels reach through each other:
 * at the flat limit neither tells the one side from the other, but the lengths do. It keeps silent
 * on rows whose columns are not alike, and where a form that sways was found to close.
 */
final class ShortWallRule implements CauseRule {
  private static final String NAME = "short-wall";

  /** Shorter by less than this is not shorter. */
  private static final LengthTolerance NOTHING = PinchedRow.NOTHING;

  /** Lengths that differ by less may read the same once they are rounded. */
  private static final LengthTolerance HAIR = new LengthTolerance(5e-2);

  /** Walls of less than this part of the way to the rim can't make an even ring by a hair. */
  private static final double FAR = 0.98;

  /**
   * A row that can't be made as it is.
   *
   * @param row which
   * @param needed the least length of its walls, in mm; not a number where no length helps
   * @param scales whether narrower columns need as much shorter walls
   */
  private record Lack(PinchedRow row, double needed, boolean scales) {
    private boolean isOfLength() {
      return !Double.isNaN(needed);
    }

    /** Whether it can be made with its points out, its walls as they are. */
    private boolean isRightOut() {
      return row.isInward() && !row.isShort();
    }

    /** The widest that its pinched columns may be, in mm. */
    private double widest() {
      return isOfLength()
          ? row.length() * row.column() / needed
          : row.wall() / Math.sin(Math.PI / row.pinched());
    }
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public List<Finding> find(Subject subject) {
    Map<String, List<Lack>> alike = new LinkedHashMap<>();
    for (Lack lack : lacks(subject)) {
      alike
          .computeIfAbsent(why(lack).plus(fix(lack)).text(Unit.MM), _ -> new ArrayList<>())
          .add(lack);
    }
    return alike.values().stream().map(lacks -> finding(subject, lacks)).toList();
  }

  /** Whether it finds any. */
  static boolean isOf(Subject subject) {
    return !lacks(subject).isEmpty();
  }

  private static Message told(Lack lack) {
    return lack.isOfLength()
        ? Message.of(
            "its walls are %s long and have to be %s long at least%s",
            length(lack), Value.atLeast(lack.needed), out(lack))
        : Message.text("the points of its pinched columns reach past each other in the middle");
  }

  /** How long they are; rounded so that it reads less than what they need, however little less. */
  private static Value length(Lack lack) {
    return lack.needed - lack.row.length() < HAIR.mm()
        ? Value.atMost(lack.row.length())
        : Value.length(lack.row.length());
  }

  private static Message out(Lack lack) {
    return lack.isRightOut()
        ? Message.text(", or their points have to go out")
        : lack.row.isInward() && lack.needed > lack.row.reach()
            ? Message.of(", or %s where the points go out", Value.atLeast(lack.row.reach()))
            : Message.EMPTY;
  }

  private static Finding finding(Subject subject, List<Lack> lacks) {
    Lack first = lacks.getFirst();
    int wall = first.row.first();
    return new Finding(
            NAME,
            Finding.Severity.ERROR,
            Message.of(
                "%s and %s other walls like it are %s long%s",
                subject.named(wall),
                lacks.size() * first.row.pinched() - 1,
                length(first),
                why(first)),
            fix(first),
            new Place.AtPanel(wall),
            subject.siteBeside(wall))
        .telling(told(first));
  }

  private static Message why(Lack lack) {
    Message columns =
        Message.of("%s pinched columns of %s", lack.row.pinched(), Value.length(lack.row.column()));
    if (!lack.isOfLength()) {
      return Message.of(
          ": the points of %s go in so far that they reach past each other.", columns);
    }
    return lack.row.isShort()
        ? Message.of(", too short to lean in so far that %s close.", columns)
        : Message.of(
            ", so short and flat that the points of %s go in below the waist, through the row"
                + " beyond.",
            columns);
  }

  private static Message fix(Lack lack) {
    List<Message> ways = new ArrayList<>();
    if (lack.isOfLength()) {
      ways.add(Message.of("make the walls %s long or longer", Value.atLeast(lack.needed)));
    }
    if (lack.scales || !lack.isOfLength()) {
      ways.add(
          Message.of("make the pinched columns %s wide or narrower", Value.atMost(lack.widest())));
    }
    if (lack.isRightOut()) {
      ways.add(Message.text("let the points go out: gusset({ point: \"out\" })"));
    } else if (lack.row.isInward() && lack.needed > lack.row.reach()) {
      ways.add(
          Message.of(
              "let the points go out, gusset({ point: \"out\" }), with walls of %s or longer",
              Value.atLeast(lack.row.reach())));
    }
    return Message.join(", or ", ways).capital().plus(".");
  }

  private static List<Lack> lacks(Subject subject) {
    PinchedRow.Found found = PinchedRow.all(subject.net());
    Map<PinchedRow, PinchedRow> beyond = new LinkedHashMap<>();
    for (PinchedRow.Pair pair : found.pairs()) {
      beyond.put(pair.one(), pair.two());
      beyond.put(pair.two(), pair.one());
    }
    List<Lack> lacks = new ArrayList<>();
    for (PinchedRow row : found.rows()) {
      lack(row, Optional.ofNullable(beyond.get(row)))
          .filter(lack -> !isMadeOtherwise(subject, lack))
          .ifPresent(lacks::add);
    }
    return lacks;
  }

  /**
   * Whether the form was found to close exactly, though the walls are far too short for an even
   * ring: then it sways.
   */
  private static boolean isMadeOtherwise(Subject subject, Lack lack) {
    FoldedForm folded = subject.folded();
    return lack.row.length() < FAR * lack.row.reach()
        && folded.closure() == Closure.CLOSES
        && folded.canBeMade(subject.net());
  }

  private static Optional<Lack> lack(PinchedRow row, Optional<PinchedRow> beyond) {
    if (!row.isInward()) {
      return row.isShort() ? Optional.of(new Lack(row, row.reach(), true)) : Optional.empty();
    }
    // What the row beyond rises from level leaves room for this one to come below it.
    double level = beyond.map(b -> b.isShort() ? 0 : Math.max(0, b.rise())).orElse(Math.PI);
    double needed = Math.max(row.reach(), row.lengthFor(-level));
    boolean isLow = row.length() < needed - NOTHING.mm();
    if (!isLow) {
      return row.room(row.length()) < -NOTHING.mm()
          ? Optional.of(new Lack(row, Double.NaN, false))
          : Optional.empty();
    }
    boolean hasRoom = row.room(needed) >= -NOTHING.mm();
    return Optional.of(
        new Lack(row, hasRoom ? needed : Double.NaN, level == 0 || beyond.isEmpty()));
  }
}
