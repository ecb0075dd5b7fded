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

  /** A length told in hundredths of a millimetre that is so near to a mark stands on it, in mm. */
  private static final double ON_MARK = 0.00501;

  /** What is so little over a last digit is none more, in those digits. */
  private static final double SLACK = 1e-6;

  private Wording() {}

  static String of(List<Double> mm, Rounding rounding, Unit unit) {
    if (unit == Unit.MM || isTiny(mm, rounding, unit)) {
      return text(mm.stream().map(l -> metric(l, rounding)).toList(), Unit.MM);
    }
    boolean onMarks = unit.isInFractions() && mm.stream().allMatch(Wording::isOnMark);
    return text(
        mm.stream().map(l -> onMarks ? mark(l) : decimal(l, rounding, unit)).toList(), unit);
  }

  /** Whether nothing has to stand beside lengths for them to be measured with a ruler. */
  static boolean isPlain(List<Double> mm, Rounding rounding, Unit unit) {
    return unit.isMetric()
        || mm.stream().allMatch(l -> isOnMark(l) || isNone(l, rounding, unit))
        || isTiny(mm, rounding, unit);
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
    return switch (rounding) {
      case UP -> Decimals.places(up(many, PLACES), PLACES);
      case DOWN -> Decimals.places(-up(-many, PLACES), PLACES);
      case FINE_UP -> Decimals.places(up(many, FINE_PLACES), FINE_PLACES);
      case FOUND -> isNone(mm, rounding, unit) ? "less than 0.001" : Decimals.places(many, PLACES);
      case ROUGH, LIMIT, GIVEN -> Decimals.places(many, PLACES);
    };
  }

  /** Whether a length that was found is less than a unit's last decimal, and is told so. */
  private static boolean isNone(double mm, Rounding rounding, Unit unit) {
    return rounding == Rounding.FOUND
        && mm != 0
        && Decimals.places(mm / unit.mm(), PLACES).equals("0");
  }

  /** What would read as 0 and is not told as less than something stays in millimetres. */
  private static boolean isTiny(List<Double> mm, Rounding rounding, Unit unit) {
    return rounding != Rounding.FOUND
        && mm.stream().anyMatch(l -> l != 0 && decimal(l, rounding, unit).equals("0"));
  }

  private static double up(double number, int places) {
    double digits = Math.pow(10, places);
    return Math.ceil(digits * number - SLACK) / digits;
  }

  private static boolean isOnMark(double mm) {
    Ruler.Reading reading = Ruler.SIXTY_FOURTHS.read(new Length(mm));
    return Math.abs(reading.errorMm()) < ON_MARK && (mm == 0 || reading.length().mm() != 0);
  }

  private static String mark(double mm) {
    return Ruler.SIXTY_FOURTHS.read(new Length(mm)).number();
  }
}
