package facetwright.check.fit;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Mm;
import facetwright.check.finding.Outlines;
import facetwright.check.finding.Place;
import facetwright.check.finding.Subject;
import facetwright.words.Decimals;
import facetwright.words.Sentence;
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

  FitText(Subject subject, Slip slip, double caliper) {
    this.subject = subject;
    this.slip = slip;
    this.caliper = caliper;
    Part.Use use = slip.outer().use();
    boolean isInner = slip.into().use() == Part.Use.INNER;
    isLid = use == Part.Use.LID || (use == Part.Use.UNTOLD && !isInner && !slip.isEndOn());
    String plain = isLid ? "lid" : slip.mouth().isTube() ? "sleeve" : "box";
    outer = slip.outer().word().isEmpty() ? plain : slip.outer().word();
    String held = isLid || !slip.isEndOn() ? "box" : "tray";
    inner = slip.into().word().isEmpty() ? held : slip.into().word();
  }

  private boolean isTold() {
    return slip.outer().use() != Part.Use.UNTOLD || slip.into().use() == Part.Use.INNER;
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
  String verdict() {
    return isLid
        ? "the " + outer + " with " + name(slip.outer()) + " does not go over the " + inner
        : "the " + inner + " with " + name(slip.into()) + " does not go into the " + outer;
  }

  Finding finding() {
    int panel = slip.outer().panel();
    return new Finding(
        FitRule.NAME,
        severity(),
        message(),
        fix(),
        new Place.AtPanel(panel),
        subject.panel(panel).site());
  }

  private String message() {
    String one = "the " + outer + " with " + name(slip.outer());
    String other = "the " + inner + " with " + name(slip.into());
    String sizes =
        switch (slip.shape()) {
          case RECTANGLE ->
              one
                  + " is "
                  + size(slip.outer(0), slip.outer(1))
                  + " and "
                  + other
                  + " "
                  + size(slip.inner().get(0), slip.inner().get(1))
                  + (slip.isEndOn() ? " seen from where it goes in" : "");
          case REGULAR ->
              "the sides of "
                  + one
                  + " are "
                  + Mm.text(slip.outer(0))
                  + " long and those of "
                  + other
                  + " "
                  + Mm.text(slip.inner().getFirst());
          case OTHER -> one + how() + other;
        };
    String start = (isTold() || !isLid ? "" : "If the one is to go over the other: ") + sizes;
    String thick = ". The card is " + Mm.text(caliper) + " thick, so ";
    String what;
    if (slip.isTight()) {
      what = isLid ? "the " + outer + " does not go over it" : "the " + inner + " does not go in";
      what += drops() ? "; it drops in" : "";
    } else {
      what =
          (isLid ? "the " + outer + " lies" : "the " + inner + " is")
              + " loose, with "
              + Mm.text(slip.most())
              + " more room across than the card takes";
    }
    return Sentence.capital(start) + thick + what + ".";
  }

  private String how() {
    double room = slip.least() / 2 + caliper;
    if (Math.abs(room) < Mm.LEAST) {
      return " is exactly as wide as ";
    }
    return " is "
        + Mm.text(Math.abs(room))
        + (room > 0 ? " wider" : " narrower")
        + " on a side than ";
  }

  /** Of an opening or of what goes in, in the order of the opening's sides, the longer first. */
  private String size(double first, double second) {
    boolean isTurned = slip.outer(0) < slip.outer(1);
    return Mm.number(isTurned ? second : first)
        + " × "
        + Mm.number(isTurned ? first : second)
        + " mm";
  }

  private String fix() {
    String use = drops() ? " If it is meant to lie inside, call it an insert." : "";
    if (slip.shape() == Slip.Shape.OTHER) {
      return other() + "." + use;
    }
    String smaller = slip.isTight() ? measures(false) : "";
    return "Make the "
        + outer
        + " "
        + measures(true)
        + (smaller.isEmpty() ? "" : ", or the " + inner + " " + smaller)
        + "."
        + use;
  }

  /** What the one of them has to measure, and how much that changes its numbers. */
  private String measures(boolean isOuter) {
    return slip.shape() == Slip.Shape.RECTANGLE ? rectangle(isOuter) : regular(isOuter);
  }

  /** By how much an opening has to grow across; below 0 to shrink. */
  private double grows(double clear) {
    if (clear < -Slip.LEAST) {
      return -clear;
    }
    return clear > Slip.LOOSE + Slip.LEAST ? Slip.EASY - clear : 0;
  }

  private String rectangle(boolean isOuter) {
    List<String> changes = new ArrayList<>();
    double[] made = new double[2];
    for (int side = 0; side < 2; side++) {
      double is = isOuter ? slip.outer(side) : slip.inner().get(side);
      double grows = grows(slip.clear().get(side));
      double more = made(is, isOuter ? grows : -Math.max(0, grows)) - is;
      made[side] = is + more;
      if (grows != 0) {
        String by = Mm.text(Math.abs(more)) + (more > 0 ? " more" : " less");
        changes.add(
            slip.outer(0) < slip.outer(1) ? 0 : changes.size(), by + " than its " + Mm.text(is));
      }
    }
    if (Math.min(made[0], made[1]) < 1) {
      return "";
    }
    if (changes.size() == 2 && changes.getFirst().equals(changes.getLast())) {
      changes.removeLast();
    }
    return size(made[0], made[1]) + " (" + String.join(" and ", changes) + ")";
  }

  /** A length that grows or shrinks by so much at least, in hundredths of a millimetre. */
  private static double made(double mm, double grows) {
    return grows == 0 ? mm : grows > 0 ? up(mm + grows) : -up(-mm - grows);
  }

  private static double up(double mm) {
    return Math.ceil(100 * mm - 1e-6) / 100;
  }

  private String regular(boolean isOuter) {
    int n = slip.mouth().outline().size();
    double grows = grows(slip.least());
    double is = isOuter ? slip.outer(0) : slip.inner().getFirst();
    double side = made(is, (isOuter ? grows : -grows) * Math.tan(Math.PI / n));
    double radius = 1 / (2 * Math.sin(Math.PI / n));
    return side < 1
        ? ""
        : String.format(
            "%s on a side instead of %s (%s from its middle to a corner instead of %s)",
            Mm.text(side),
            Mm.text(is),
            Mm.text(isOuter ? up(side * radius) : -up(-side * radius)),
            Mm.text(is * radius));
  }

  /** Set off evenly, or made larger as a whole, which sets every side off as much at least. */
  private String other() {
    double by = grows(slip.least()) / 2;
    double in = Outlines.inRadius(slip.mouth().outline());
    double times = Math.ceil(1e4 * (1 + by / in)) / 1e4;
    String set =
        String.format(
            "Set each side of the %s %s farther %s",
            outer, Mm.text(up(Math.abs(by))), by > 0 ? "out" : "in");
    String whole =
        in > 0 && times > 0
            ? ", as by making it " + Decimals.places(times, 4) + " times as large across"
            : "";
    return set + whole + (by > 0 ? "; or set each side of the " + inner + " as far in" : "");
  }

  /** A lid with other corners than all it could go over. */
  static Finding otherShape(Subject subject, Part lid) {
    int corners = lid.mouths().getFirst().outline().size();
    return new Finding(
        FitRule.NAME,
        Finding.Severity.WARNING,
        String.format(
            "The %s with %s has %d corners, and nothing in this design that it could go over has"
                + " the same.",
            lid.word(), subject.name(lid.panel()), corners),
        "Give the " + lid.word() + " the sides and angles of its box, or call it something else.",
        new Place.AtPanel(lid.panel()),
        subject.panel(lid.panel()).site());
  }

  private String name(Part part) {
    return subject.name(part.panel());
  }
}
