package facetwright.measure;

import facetwright.geom.LengthTolerance;
import facetwright.words.Decimals;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The ruler a maker owns: a unit and the finest division it shows.
 *
 * @param unit the unit its numbers count
 * @param parts of one unit, such as 16 for 1/16 in, 1 for 1 mm, 2 for 0.5 mm
 * @param each so many of these parts lie between two marks: 5 of 1 mm for a ruler of 5 mm, else 1
 */
public record Ruler(Unit unit, int parts, int each) implements Serializable {
  public static final Ruler QUARTERS = new Ruler(Unit.INCH, 4);
  public static final Ruler EIGHTHS = new Ruler(Unit.INCH, 8);
  public static final Ruler SIXTEENTHS = new Ruler(Unit.INCH, 16);
  public static final Ruler THIRTY_SECONDS = new Ruler(Unit.INCH, 32);

  /** The finest lines that a steel rule shows; common practice, no source. */
  public static final Ruler SIXTY_FOURTHS = new Ruler(Unit.INCH, 64);

  public static final Ruler TENTH_MM = new Ruler(Unit.MM, 10);
  public static final Ruler HALF_MM = new Ruler(Unit.MM, 2);
  public static final Ruler MM = new Ruler(Unit.MM, 1);
  public static final Ruler FIVE_MM = new Ruler(Unit.MM, 1, 5);

  private static final int FINEST = 1000;

  /**
   * What is so little short of a mark or of the middle between two, in divisions, counts as there.
   */
  private static final double HALVES = 1e-9;

  /** A ruler read from text has no more marks to a unit: 0.2 mm is no part of an inch. */
  private static final int FINEST_READ = 100;

  /** Nor are its marks further apart, in mm: what is set by it would be no measure. */
  private static final double WIDEST_READ = 100;

  /**
   * The ruler that a maker is taken to own where nobody says which: 1/16 in for designs in inches,
   * else 0.5 mm; common practice, no source.
   */
  public static Ruler usual(Unit unit) {
    return unit.isInFractions() ? SIXTEENTHS : HALF_MM;
  }

  /** Rulers to choose from, the usual one first. */
  public static List<Ruler> common(Unit unit) {
    return unit.isInFractions()
        ? List.of(SIXTEENTHS, EIGHTHS, QUARTERS, THIRTY_SECONDS)
        : List.of(HALF_MM, MM, FIVE_MM);
  }

  /** All of them, those of inches first. */
  public static List<Ruler> common() {
    return Stream.of(Unit.INCH, Unit.MM).flatMap(unit -> common(unit).stream()).toList();
  }

  /** What sizes are told by: sixteenths of an inch, tenths of a millimetre. */
  public static Ruler forSizes(Unit unit) {
    return of(unit, SIXTEENTHS, TENTH_MM);
  }

  /** What sizes are told by at a glance: sixteenths of an inch, whole millimetres. */
  public static Ruler atAGlance(Unit unit) {
    return of(unit, SIXTEENTHS, MM);
  }

  /**
   * The one of two rulers that reads a unit.
   *
   * @param metric a ruler of millimetres, which is numbered in the unit where that is another
   */
  static Ruler of(Unit unit, Ruler inches, Ruler metric) {
    return (unit.isMetric() ? metric : inches).numberedIn(unit);
  }

  public Ruler {
    if (parts < 1 || parts > FINEST) {
      throw new IllegalArgumentException(
          "a ruler shows 1 to " + FINEST + " divisions a unit, not " + parts);
    }
    if (each < 1 || each > FINEST) {
      throw new IllegalArgumentException(
          "1 to " + FINEST + " parts lie between two marks of a ruler, not " + each);
    }
  }

  /** A ruler with a mark at each part. */
  public Ruler(Unit unit, int parts) {
    this(unit, parts, 1);
  }

  /**
   * The ruler of a unit whose marks are so far apart.
   *
   * @param division the distance between two marks, in that unit
   * @return empty where neither a whole number of such distances makes a unit, nor a whole number
   *     of units one such distance
   */
  public static Optional<Ruler> withMarks(double division, Unit unit) {
    return division > 0
        ? whole(1 / division)
            .map(parts -> new Ruler(unit, parts))
            .or(() -> whole(division).map(each -> new Ruler(unit, 1, each)))
        : Optional.empty();
  }

  private static Optional<Integer> whole(double number) {
    long whole = Math.round(number);
    return whole >= 1 && whole <= FINEST && Math.abs(number - whole) <= HALVES * number
        ? Optional.of((int) whole)
        : Optional.empty();
  }

  /**
   * What the ruler reads for a length.
   *
   * @param length the nearest place on the ruler
   * @param text how the ruler names it, such as "1 7/8 in" or "48 mm"
   * @param errorMm the reading less the true length, in mm
   */
  public record Reading(Length length, String text, double errorMm) implements Serializable {
    /** Half of a tenth of a millimetre, and what rounding adds. */
    private static final double NEAR = 0.0501;

    /**
     * As {@link #text}, with "about" before it where the length is further from that than a
     * twentieth of a millimetre: a mark looks exact, a tenth of a millimetre is never further.
     */
    public String about() {
      return (isAbout() ? "about " : "") + text;
    }

    /** Whether the length is further from {@link #text} than a twentieth of a millimetre. */
    public boolean isAbout() {
      return Math.abs(errorMm) > NEAR;
    }

    /** As it is typed on the command line: "1-7/8in", "48mm". */
    public String typed() {
      return number().replace(' ', '-') + text.substring(text.lastIndexOf(' ') + 1);
    }

    /** Without its unit: "1 7/8". */
    public String number() {
      return text.substring(0, text.lastIndexOf(' '));
    }

    /** Whether the length lies on the ruler's grid. */
    public boolean exact(LengthTolerance tolerance) {
      return Math.abs(errorMm) <= tolerance.mm();
    }
  }

  /**
   * Reads the distance between two marks of a ruler: "1/16 in", "0.5 mm", "1mm", "5 mm". It reads
   * the unit that it is written in, or where its marks do not make one, that which they make: "12.7
   * mm" is 1/2 in.
   *
   * @param plain what a number without a unit counts
   * @throws IllegalArgumentException when it is no length, or one that neither makes a unit a whole
   *     number of times nor is a whole number of units, or one over 100 mm
   */
  public static Ruler parse(String text, Unit plain) {
    Length division;
    try {
      division = Length.parse(text, plain);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(wanted(text), e);
    }
    Unit written = LengthText.unit(text, plain);
    for (Unit unit : tried(written)) {
      Optional<Ruler> ruler =
          withMarks(division.in(unit), unit)
              .filter(r -> r.parts <= FINEST_READ && r.divisionMm() <= WIDEST_READ);
      if (ruler.isPresent()) {
        boolean isCoarser = unit.isMetric() == written.isMetric() && unit.mm() > written.mm();
        return isCoarser ? ruler.get().numberedIn(written) : ruler.get();
      }
    }
    throw new IllegalArgumentException(wanted(text));
  }

  /** The unit that it is written in, then those of fractions, which fewer lengths make up. */
  private static List<Unit> tried(Unit written) {
    return Stream.concat(
            Stream.of(written),
            Arrays.stream(Unit.values()).sorted(Comparator.comparing(Unit::isMetric)))
        .toList();
  }

  private static String wanted(String text) {
    return "\""
        + LengthText.brief(text)
        + "\" is no ruler: give the distance between two of its marks, such as \"1/16 in\" or"
        + " \"0.5 mm\"";
  }

  /** A ruler with the same marks that is numbered in a unit of the same system. */
  private Ruler numberedIn(Unit other) {
    if (other == unit) {
      return this;
    }
    long finer = Math.round(Math.max(1, other.mm() / unit.mm()));
    long coarser = Math.round(Math.max(1, unit.mm() / other.mm()));
    int same = (int) gcd(coarser * each, finer * parts);
    return new Ruler(other, (int) (finer * parts / same), (int) (coarser * each / same));
  }

  /** What it is called: the distance between two of its marks, such as "1/16 in" or "5 mm". */
  public String name() {
    return unit.isInFractions() ? text(each) : Decimals.places(divisionMm(), 4) + " mm";
  }

  /** The division in mm. */
  public double divisionMm() {
    return unit.mm() * each / parts;
  }

  /**
   * The nearest place on this ruler, halves away from zero, and what is a half but for rounding.
   */
  public Reading read(Length length) {
    double exact = length.in(unit) * parts / each;
    if (Math.abs(exact) > 1e12) {
      throw new IllegalArgumentException("no ruler reads " + length.mm() + " mm");
    }
    long count = Math.round(Math.abs(exact) + HALVES);
    long signed = exact < 0 ? -count : count;
    Length nearest = Length.of((double) (signed * each) / parts, unit);
    return new Reading(nearest, text(signed * each), nearest.mm() - length.mm());
  }

  /** The reading so many parts from 0. */
  private String text(long count) {
    String sign = count < 0 ? "-" : "";
    long n = Math.abs(count);
    if (!unit.isInFractions()) {
      BigDecimal amount =
          BigDecimal.valueOf(n).divide(BigDecimal.valueOf(parts), 4, RoundingMode.HALF_UP);
      return sign + amount.stripTrailingZeros().toPlainString() + " " + unit.symbol();
    }
    long whole = n / parts;
    long rest = n % parts;
    if (rest == 0) {
      return sign + whole + " " + unit.symbol();
    }
    long divisor = gcd(rest, parts);
    String fraction = rest / divisor + "/" + parts / divisor;
    return sign + (whole == 0 ? fraction : whole + " " + fraction) + " " + unit.symbol();
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }
}
