package facetwright.message;

import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.message.Value.Rounding;
import facetwright.words.Decimals;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How lengths stand in a message. */
final class Wording {
  /** Decimals of inches and centimetres. */
  static final int PLACES = 3;

  private static final int FINE_PLACES = 4;

  private static final int MOST_PLACES = 6;

  /** A length told in hundredths of a millimetre that is so near to a mark stands on it, in mm. */
  private static final double ON_MARK = 0.00501;

  /** A limit that a mark passes by no more is kept there, in mm. */
  private static final double HARDLY = 1e-4;

  /** What is so little over a last digit is none more, in those digits. */
  private static final double SLACK = 1e-6;

  /** What places are rounded to, in inches. */
  private static final double[] MARKS = {0.5, 0.125, 1 / 64.0};

  /** The same in other units. */
  private static final double[] DECIMALS = {1, 0.1, 0.01};

  private Wording() {}

  static String of(List<Double> mm, Rounding rounding, Unit unit) {
    if (unit == Unit.MM) {
      return text(mm.stream().map(l -> metric(l, rounding)).toList(), Unit.MM);
    }
    boolean onMarks = unit.isInFractions() && mm.stream().allMatch(l -> isOnMark(l, rounding));
    return text(
        mm.stream().map(l -> onMarks ? mark(l) : decimal(l, rounding, unit)).toList(), unit);
  }

  /** Whether nothing has to stand beside lengths for them to be measured with a ruler. */
  static boolean isPlain(List<Double> mm, Rounding rounding, Unit unit) {
    return unit.isMetric()
        || mm.stream().allMatch(l -> isOnMark(l, rounding) || isNone(l, rounding, unit));
  }

  /** The two numbers of a place, rounded as far as there is room. */
  static String place(double x, double y, double room, Unit unit) {
    double step = step(room, unit);
    double across = step > 0 ? step * Math.rint(x / step) : x;
    double up = step > 0 ? step * Math.rint(y / step) : y;
    boolean onMarks = unit.isInFractions() && isOnMark(across) && isOnMark(up);
    return number(across, onMarks, unit) + ", " + number(up, onMarks, unit);
  }

  /** The coarsest step that leads no farther than there is room, in mm; 0 where none does. */
  private static double step(double room, Unit unit) {
    for (double part : unit.isInFractions() ? MARKS : DECIMALS) {
      if (part * unit.mm() <= room) {
        return part * unit.mm();
      }
    }
    return 0;
  }

  private static String number(double mm, boolean isOnMark, Unit unit) {
    return isOnMark ? mark(mm) : Decimals.places(new Length(mm).in(unit), PLACES);
  }

  /** Two decimals at most, and never 0 for what is not 0. */
  static String found(double value) {
    return value != 0 && Math.abs(value) < 0.005 ? "less than 0.01" : Decimals.places(value, 2);
  }

  private static String text(List<String> numbers, Unit unit) {
    return numbers.stream().collect(Collectors.joining(" × ")) + " " + unit.symbol();
  }

  private static String metric(double mm, Rounding rounding) {
    return switch (rounding) {
      case FOUND -> found(mm);
      case UP -> found(up(mm, 2));
      case DOWN -> found(-up(-mm, 2));
      case FINE_UP -> Decimals.places(up(mm, PLACES), PLACES);
      case ROUGH -> String.format(Locale.ROOT, "%.1f", mm);
      case LIMIT -> Decimals.places(mm, PLACES);
      case GIVEN -> Decimals.plain(mm);
    };
  }

  private static String decimal(double mm, Rounding rounding, Unit unit) {
    double many = new Length(mm).in(unit);
    int places = places(many);
    return switch (rounding) {
      case UP -> Decimals.places(up(many, places), places);
      case DOWN -> Decimals.places(-up(-many, places), places);
      case FINE_UP -> Decimals.places(up(many, FINE_PLACES), FINE_PLACES);
      case FOUND -> isNone(mm, rounding, unit) ? "less than 0.001" : Decimals.places(many, PLACES);
      case ROUGH, LIMIT, GIVEN -> Decimals.places(many, places);
    };
  }

  /** So many decimals that what is not 0 does not read as 0, up to what anybody means. */
  private static int places(double many) {
    int places = PLACES;
    while (places < MOST_PLACES
        && many != 0
        && Decimals.places(-up(-Math.abs(many), places), places).equals("0")) {
      places++;
    }
    return places;
  }

  /** Whether a length that was found is less than a unit's last decimal, and is told so. */
  private static boolean isNone(double mm, Rounding rounding, Unit unit) {
    return rounding == Rounding.FOUND
        && mm != 0
        && Decimals.places(mm / unit.mm(), PLACES).equals("0");
  }

  private static double up(double number, int places) {
    double digits = Math.pow(10, places);
    return Math.ceil(digits * number - SLACK) / digits;
  }

  /** The same for a length that may be told to one side of it alone. */
  private static boolean isOnMark(double mm, Rounding rounding) {
    double past = Ruler.SIXTY_FOURTHS.read(new Length(mm)).length().mm() - mm;
    return isOnMark(mm)
        && switch (rounding) {
          case DOWN -> past <= HARDLY;
          case UP, FINE_UP -> past >= -HARDLY;
          case FOUND, ROUGH, LIMIT, GIVEN -> true;
        };
  }

  private static boolean isOnMark(double mm) {
    Ruler.Reading reading = Ruler.SIXTY_FOURTHS.read(new Length(mm));
    return Math.abs(reading.errorMm()) < ON_MARK && (mm == 0 || reading.length().mm() != 0);
  }

  private static String mark(double mm) {
    return Ruler.SIXTY_FOURTHS.read(new Length(mm)).number();
  }
}
