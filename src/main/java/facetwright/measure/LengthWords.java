package facetwright.measure;

import facetwright.words.Decimals;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths within sentences: rules and calls tell them in millimetres, and the maker reads them in
 * the design's own unit.
 */
public final class LengthWords {
  /** What stands in quotes is a name, or the script's own text, and stays as it is. */
  private static final Pattern TOLD =
      Pattern.compile(
          "\"[^\"]*\"|(?<![\\w.])(?<one>-?\\d+(?:\\.\\d+)?)(?: × (?<two>\\d+(?:\\.\\d+)?))? mm"
              + "(?<square>²?)(?![\\w²³])");

  /** Sentences round lengths to hundredths of a millimetre at least. */
  private static final double ROUNDED = 0.00501;

  private static final int PLACES = 3;

  private LengthWords() {}

  /**
   * The same words with their lengths and areas in another unit. Inches that lie on a ruler's mark
   * are told by it, "3/8 in"; others as decimals, with what they were: "0.2 in (5.08 mm)". Lengths
   * too small for that stay.
   *
   * @param words a sentence or more, with lengths such as "9.53 mm"
   */
  public static String in(Unit unit, String words) {
    if (unit == Unit.MM) {
      return words;
    }
    return TOLD.matcher(words)
        .replaceAll(
            found ->
                Matcher.quoteReplacement(
                    found.group("one") == null
                        ? found.group()
                        : told(found.group(), words.substring(0, found.start()), unit)));
  }

  private static String told(String metric, String before, Unit unit) {
    Matcher parts = TOLD.matcher(metric);
    if (!parts.matches()) {
      return metric;
    }
    boolean isArea = !parts.group("square").isEmpty();
    double size = isArea ? unit.mm() * unit.mm() : unit.mm();
    boolean isOnMarks = unit == Unit.INCH && !isArea;
    StringBuilder numbers = new StringBuilder();
    for (String part : new String[] {parts.group("one"), parts.group("two")}) {
      if (part != null) {
        double mm = Double.parseDouble(part);
        if (isTooSmall(mm / size)) {
          return metric;
        }
        boolean isMark = isOnMarks && liesOnMark(mm);
        isOnMarks &= isMark;
        numbers.append(numbers.isEmpty() ? "" : " × ");
        numbers.append(isMark ? mark(mm) : decimal(mm / size));
      }
    }
    boolean isBracketed = before.lastIndexOf('(') > before.lastIndexOf(')');
    return numbers
        + " "
        + unit.symbol()
        + parts.group("square")
        + (unit != Unit.INCH || isOnMarks || isBracketed ? "" : " (" + metric + ")");
  }

  private static boolean liesOnMark(double mm) {
    Ruler.Reading reading = Ruler.SIXTY_FOURTHS.read(new Length(mm));
    return Math.abs(reading.errorMm()) < ROUNDED && (mm == 0 || reading.length().mm() != 0);
  }

  private static String mark(double mm) {
    String text = Ruler.SIXTY_FOURTHS.read(new Length(mm)).text();
    return text.substring(0, text.lastIndexOf(' '));
  }

  private static String decimal(double number) {
    return Decimals.places(number, PLACES);
  }

  /** What would read 0 is nobody's to measure, and stays in millimetres. */
  private static boolean isTooSmall(double number) {
    return number != 0 && decimal(number).equals("0");
  }
}
