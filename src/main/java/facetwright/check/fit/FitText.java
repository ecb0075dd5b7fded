package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;

/** What is told of two parts that do not go together: which number to change, and into what. */
final class FitText {
  private final Subject subject;
  private final Slip slip;
  private final double caliper;
  private final String outer;
  private final String inner;
  private final boolean isLid;
  private final boolean isPlaced;

  FitText(Subject subject, Slip slip, double caliper) {
    this(subject, slip, caliper, false, false);
  }

  /**
   * Of parts of which the script says that the one goes to the other.
   *
   * @param isOver whether the outer one goes over the other, which else goes into it
   */
  FitText(Subject subject, Slip slip, double caliper, boolean isOver) {
    this(subject, slip, caliper, true, isOver);
  }

  private FitText(Subject subject, Slip slip, double caliper, boolean isPlaced, boolean isOver) {
    this.isPlaced = isPlaced;
    this.subject = subject;
    this.slip = slip;
    this.caliper = caliper;
    Part.Use use = slip.outer().use();
    boolean isInner = slip.into().use() == Part.Use.INNER;
    isLid =
        isPlaced
            ? isOver
            : use == Part.Use.LID || (use == Part.Use.UNTOLD && !isInner && !slip.isEndOn());
    String plain = isLid ? "lid" : slip.mouth().isTube() ? "sleeve" : "box";
    outer = slip.outer().word().isEmpty() ? plain : slip.outer().word();
    String held = isLid ? "box" : slip.isEndOn() ? "tray" : isPlaced ? "insert" : "box";
    inner = slip.into().word().isEmpty() ? held : slip.into().word();
  }

  private boolean isTold() {
    return isPlaced || slip.outer().use() != Part.Use.UNTOLD || slip.into().use() == Part.Use.INNER;
  }

  /** Parts that only may be meant for each other can be made as they are. */
  Finding.Severity severity() {
    if (!slip.isTight()) {
      return isTold() ? Finding.Severity.WARNING : Finding.Severity.NOTE;
    }
    if (isTold() || (!isLid && slip.misfit() <= Slip.WIDEST)) {
      return Finding.Severity.ERROR;
    }
    return drops() ? Finding.Severity.NOTE : Finding.Severity.WARNING;
  }

  /** Whether a lid is so much too narrow that it goes inside. */
  private boolean drops() {
    return isLid
        && slip.clear().stream().allMatch(c -> c <= -4 * caliper)
        && !slip.outer().isTube();
  }

  /** In the design's first sentence. */
  private Message verdict() {
    return isLid
        ? Message.of("the %s with %s does not go over the %s", outer, name(slip.outer()), inner)
        : Message.of("the %s with %s does not go into the %s", inner, name(slip.into()), outer);
  }

  Finding finding() {
    int panel = slip.outer().panel();
    Finding found =
        new Finding(
            FitRule.NAME,
            severity(),
            message(),
            fix(),
            new Place.AtPanel(panel),
            subject.panel(panel).site());
    return severity() == Finding.Severity.ERROR ? found.telling(verdict()) : found;
  }

  private Message message() {
    Message one = Message.of("the %s with %s", outer, name(slip.outer()));
    Message other = Message.of("the %s with %s", inner, name(slip.into()));
    Message sizes =
        switch (slip.shape()) {
          case RECTANGLE ->
              Message.of(
                  "%s is %s and %s %s%s",
                  one,
                  size(slip.outer(0), slip.outer(1)),
                  other,
                  size(slip.inner().get(0), slip.inner().get(1)),
                  slip.isEndOn() ? " seen from where it goes in" : "");
          case REGULAR ->
              Message.of(
                  "the sides of %s are %s long and those of %s %s",
                  one, Value.length(slip.outer(0)), other, Value.length(slip.inner().getFirst()));
          case OTHER -> Message.of("%s is %s %s", one, how(), other);
        };
    Message start =
        isTold() || !isLid ? sizes : Message.of("If the one is to go over the other: %s", sizes);
    Message what;
    if (slip.isTight()) {
      what =
          Message.of(
              "the %s%s",
              isLid ? outer + " does not go over it" : inner + " does not go in",
              drops() ? "; it drops in" : "");
    } else {
      what =
          Message.of(
              "the %s loose, with %s more room across than the card takes",
              isLid ? outer + " lies" : inner + " is", Value.length(slip.most()));
    }
    return Message.of(
        "%s. The card is %s thick%s, so %s.",
        start.capital(),
        Value.length(caliper),
        slip.isLined() ? ", and as much again where tabs lie between them" : "",
        what);
  }

  /** How an opening compares with what goes into it. */
  private Message how() {
    double room = slip.bare();
    if (Math.abs(room) < Mm.LEAST) {
      return Message.text("exactly as wide as");
    }
    return Message.of(
        "%s %s on a side than", Value.length(Math.abs(room)), room > 0 ? "wider" : "narrower");
  }

  /** Of an opening or of what goes in, in the order of the opening's sides, the longer first. */
  private Value size(double first, double second) {
    boolean isTurned = slip.outer(0) < slip.outer(1);
    return Value.size(isTurned ? second : first, isTurned ? first : second);
  }

  private Message fix() {
    String use =
        drops()
            ? isPlaced
                ? " If it is meant to lie inside, say into, not over."
                : " If it is meant to lie inside, call it an insert."
            : "";
    if (slip.shape() == Slip.Shape.OTHER) {
      return Message.of("%s.%s", other(), use);
    }
    Message smaller = slip.isTight() ? measures(false) : Message.EMPTY;
    return Message.of(
        "Make the %s %s%s.%s",
        outer,
        measures(true),
        smaller.isEmpty() ? "" : Message.of(", or the %s %s", inner, smaller),
        use);
  }

  /** What the one of them has to measure, and how much that changes its numbers. */
  private Message measures(boolean isOuter) {
    return slip.shape() == Slip.Shape.RECTANGLE ? rectangle(isOuter) : regular(isOuter);
  }

  /** By how much an opening has to grow across; below 0 to shrink. */
  private double grows(double clear) {
    boolean isRight = clear >= -Slip.LEAST && clear <= Slip.LOOSE + Slip.LEAST;
    return isRight ? 0 : Slip.EASY - clear;
  }

  private Message rectangle(boolean isOuter) {
    List<Message> changes = new ArrayList<>();
    double[] made = new double[2];
    for (int side = 0; side < 2; side++) {
      double is = isOuter ? slip.outer(side) : slip.inner().get(side);
      double grows = grows(slip.clear().get(side));
      double more = made(is, isOuter ? grows : -Math.max(0, grows)) - is;
      made[side] = is + more;
      if (grows != 0) {
        changes.add(
            slip.outer(0) < slip.outer(1) ? 0 : changes.size(),
            Message.of(
                "%s %s than its %s",
                Value.length(Math.abs(more)), more > 0 ? "more" : "less", Value.length(is)));
      }
    }
    if (Math.min(made[0], made[1]) < 1) {
      return Message.EMPTY;
    }
    if (changes.size() == 2
        && changes.getFirst().text(Unit.MM).equals(changes.getLast().text(Unit.MM))) {
      changes.removeLast();
    }
    return Message.of("%s (%s)", size(made[0], made[1]), Message.join(" and ", changes));
  }

  /** A length that grows or shrinks by so much at least, in hundredths of a millimetre. */
  private static double made(double mm, double grows) {
    return grows == 0 ? mm : grows > 0 ? up(mm + grows) : -up(-mm - grows);
  }

  private static double up(double mm) {
    return Math.ceil(100 * mm - 1e-6) / 100;
  }

  private Message regular(boolean isOuter) {
    int n = slip.mouth().outline().size();
    double grows = grows(slip.least());
    double is = isOuter ? slip.outer(0) : slip.inner().getFirst();
    double side = made(is, (isOuter ? grows : -grows) * Math.tan(Math.PI / n));
    double radius = 1 / (2 * Math.sin(Math.PI / n));
    return side < 1
        ? Message.EMPTY
        : Message.of(
            "%s on a side instead of %s (%s from its middle to a corner instead of %s)",
            Value.length(side),
            Value.length(is),
            Value.length(isOuter ? up(side * radius) : -up(-side * radius)),
            Value.length(is * radius));
  }

  /** Set off evenly, or made larger as a whole, which sets every side off as much at least. */
  private Message other() {
    double by = grows(slip.least()) / 2;
    Message set =
        Message.of(
            "Set each side of the %s %s farther %s",
            outer, Value.length(up(Math.abs(by))), by > 0 ? "out" : "in");
    double times = slip.times(caliper);
    return set.plus(", or make it " + Decimals.places(times, 4) + " times as large across")
        .plus(by > 0 ? "; or set each side of the " + inner + " as far in" : "");
  }

  private Value.Name name(Part part) {
    return subject.name(part.panel());
  }
}
