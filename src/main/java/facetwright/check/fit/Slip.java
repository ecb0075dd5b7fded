package facetwright.check.fit;

import facetwright.check.finding.Outlines;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How one part goes into an opening of another.
 *
 * @param shape how its lengths are told
 * @param clear room across beyond what the card takes, in mm; of rectangles along the first side of
 *     the opening and along its second, else where there is least
 * @param inner sides of what goes in, of rectangles the one along the first side of the opening and
 *     the other
 */
record Slip(
    Part outer,
    Part into,
    Part.Mouth mouth,
    Part.Section section,
    Shape shape,
    List<Double> clear,
    List<Double> inner) {
  /** Tighter by less is nothing that a knife can cut, in mm. */
  static final double LEAST = 0.02;

  /** So much more room across is loose, in mm: 2 on either side; common practice, no source. */
  static final double LOOSE = 4;

  /** Parts without a telling name that differ by more than this across are strangers, in mm. */
  static final double WIDEST = 12;

  /** Room that slides well beyond what the card takes, in mm; common practice, no source. */
  static final double EASY = 0.5;

  /** How lengths of an outline are told. */
  enum Shape {
    RECTANGLE,
    REGULAR,
    OTHER
  }

  /**
   * A wall has half its thickness on either side of the net's.
   *
   * @param isFacing whether the part goes in rim first, as a box into its lid
   */
  static Optional<Slip> of(
      Part outer,
      Part.Mouth mouth,
      Part inner,
      Part.Section section,
      double caliper,
      boolean isFacing) {
    Polygon2 out = mouth.outline();
    Polygon2 in = section.outline();
    if (Outlines.isRectangle(out) && Outlines.isRectangle(in)) {
      Slip straight = rectangle(outer, mouth, inner, section, caliper, 0);
      Slip turned = rectangle(outer, mouth, inner, section, caliper, 1);
      return Optional.of(turned.isBetter(straight) ? turned : straight);
    }
    double room =
        section.isHanded()
            ? Outlines.room(out, isFacing ? Outlines.mirrored(in) : in)
            : better(Outlines.room(out, in), Outlines.room(out, Outlines.mirrored(in)));
    if (Double.isNaN(room)) {
      return Optional.empty();
    }
    Shape shape = Outlines.isRegular(out) && Outlines.isRegular(in) ? Shape.REGULAR : Shape.OTHER;
    return Optional.of(
        new Slip(
            outer,
            inner,
            mouth,
            section,
            shape,
            List.of(2 * (room - caliper)),
            List.of(in.side(0).length())));
  }

  private static double better(double one, double two) {
    return Double.isNaN(one) || two > one ? two : one;
  }

  private static Slip rectangle(
      Part outer, Part.Mouth mouth, Part into, Part.Section section, double caliper, int turned) {
    List<Double> clear = new ArrayList<>();
    List<Double> inner = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      boolean isFirst = (side + turned) % 2 == 0;
      double length = section.outline().side(isFirst ? 0 : 1).length();
      double thick = caliper * (2 + (isFirst ? section.first() : section.second())) / 2;
      inner.add(length);
      clear.add(mouth.outline().side(side).length() - length - thick);
    }
    return new Slip(outer, into, mouth, section, Shape.RECTANGLE, clear, inner);
  }

  /** The same of a part that others lie beside: it is not loose for the room that they take. */
  Slip beside() {
    List<Double> capped = clear.stream().map(c -> Math.min(c, LOOSE)).toList();
    return new Slip(outer, into, mouth, section, shape, capped, inner);
  }

  /** Whether it goes in by another side than its rim. */
  boolean isEndOn() {
    return !section.isFaceOn();
  }

  /** A length of the opening: along its first side, or its second. */
  double outer(int side) {
    return mouth.outline().side(side).length();
  }

  double least() {
    return clear.stream().mapToDouble(c -> c).min().orElseThrow();
  }

  double most() {
    return clear.stream().mapToDouble(c -> c).max().orElseThrow();
  }

  boolean isTight() {
    return least() < -LEAST;
  }

  boolean isRight() {
    return !isTight() && most() <= LOOSE + LEAST;
  }

  /**
   * Whether nearly one size, and as much more each way, speaks for one being made for the other.
   */
  boolean isNear() {
    return clear.stream().allMatch(c -> Math.abs(c) <= WIDEST) && most() - least() <= LOOSE;
  }

  /** Whether one side of a rectangle is as if they were made for each other. */
  boolean isHalfRight() {
    return clear.size() == 2 && clear.stream().anyMatch(c -> c >= -LEAST && c <= LOOSE + LEAST);
  }

  /** How far it is from going in well, in mm. */
  double misfit() {
    return isRight() ? 0 : Math.max(-least(), most());
  }

  /** The one with less amiss, and of two right ones that with less room. */
  boolean isBetter(Slip other) {
    double by = misfit() - other.misfit();
    return Math.abs(by) > LengthTolerance.ROUNDING.mm()
        ? by < 0
        : most() < other.most() - LengthTolerance.ROUNDING.mm();
  }
}
