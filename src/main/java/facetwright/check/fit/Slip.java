package facetwright.check.fit;

import facetwright.check.finding.Outlines;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.net.sheet.Stock;
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
 * @param isFacing whether it goes in rim first, as a box into its lid
 */
record Slip(
    Part outer,
    Part into,
    Part.Mouth mouth,
    Part.Section section,
    Shape shape,
    List<Double> clear,
    List<Double> inner,
    boolean isFacing) {
  /** Tighter by less is nothing that a knife can cut, in mm. */
  static final double LEAST = 0.02;

  /** So much more room across is loose, in mm: 2 on either side; common practice, no source. */
  static final double LOOSE = 4;

  /** Parts without a telling name that differ by more than this across are strangers, in mm. */
  static final double WIDEST = 12;

  /** Room that slides well beyond what the card takes, in mm. */
  static final double EASY = Stock.PLAY;

  /** A part is not made smaller than this, nor larger than its inverse, times what it is. */
  private static final double SMALLEST = 0.125;

  /** Halvings of what is between them, for four decimals. */
  private static final int HALVINGS = 20;

  /** How lengths of an outline are told. */
  enum Shape {
    RECTANGLE,
    REGULAR,
    OTHER
  }

  /**
   * A wall has half its thickness on either side of the net's, and a whole one more where something
   * is glued to it.
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
      Slip straight = rectangle(outer, mouth, inner, section, caliper, 0, isFacing);
      Slip turned = rectangle(outer, mouth, inner, section, caliper, 1, isFacing);
      return Optional.of(turned.isBetter(straight) ? turned : straight);
    }
    double room = room(mouth.lining().narrowed(out, caliper), section, caliper, isFacing);
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
            List.of(in.side(0).length()),
            isFacing));
  }

  /**
   * The room on the side where there is least beyond what is glued to the walls; NaN where corners
   * differ.
   */
  private static double room(
      Polygon2 open, Part.Section section, double caliper, boolean isFacing) {
    Polygon2 full = section.lining().widened(section.outline(), caliper);
    return section.isHanded()
        ? Outlines.room(open, isFacing ? full.mirrored() : full)
        : better(Outlines.room(open, full), Outlines.room(open, full.mirrored()));
  }

  /** The room between the lines of the two nets on the side where there is least. */
  double bare() {
    return room(mouth.outline(), section, 0, isFacing);
  }

  /** Whether something glued to a wall lies between the two. */
  boolean isLined() {
    return mouth.lining().isInside() || section.lining().isOutside();
  }

  /**
   * How many times as large the opening has to be across for the room that slides well; with four
   * decimals, rounded up.
   */
  double times(double caliper) {
    double low = SMALLEST;
    double high = 1 / SMALLEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      Polygon2 open = mouth.lining().narrowed(mouth.outline(), middle, caliper);
      double room = room(open, section, caliper, isFacing);
      boolean isEnough = 2 * (room - caliper) >= EASY;
      low = isEnough ? low : middle;
      high = isEnough ? middle : high;
    }
    return Math.ceil(1e4 * high) / 1e4;
  }

  private static double better(double one, double two) {
    return Double.isNaN(one) || two > one ? two : one;
  }

  private static Slip rectangle(
      Part outer,
      Part.Mouth mouth,
      Part into,
      Part.Section section,
      double caliper,
      int turned,
      boolean isFacing) {
    List<Double> clear = new ArrayList<>();
    List<Double> inner = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      boolean isFirst = (side + turned) % 2 == 0;
      double length = section.outline().side(isFirst ? 0 : 1).length();
      int layers =
          mouth.lining().acrossInside(side) + section.lining().acrossOutside(isFirst ? 0 : 1);
      double thick =
          caliper * (layers + (2 + (isFirst ? section.first() : section.second())) / 2.0);
      inner.add(length);
      clear.add(mouth.outline().side(side).length() - length - thick);
    }
    return new Slip(outer, into, mouth, section, Shape.RECTANGLE, clear, inner, isFacing);
  }

  /** The same of a part that others lie beside: it is not loose for the room that they take. */
  Slip beside() {
    List<Double> capped = clear.stream().map(c -> Math.min(c, LOOSE)).toList();
    return new Slip(outer, into, mouth, section, shape, capped, inner, isFacing);
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
