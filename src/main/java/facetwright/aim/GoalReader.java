package facetwright.aim;

import static java.util.stream.Collectors.joining;

import facetwright.geom.RingCount;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Refused;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.sheet.SheetSizes;
import facetwright.words.NearName;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads goals as a person types them: a word and a value. */
public final class GoalReader {
  /** The words that name a goal. */
  public static final List<String> WORDS =
      List.of("height", "width", "depth", "volume", "area", "gap", "fits", "ring");

  private static final Pattern SPREAD =
      Pattern.compile(
          "(?<number>(?:\\d+\\.?\\d*|\\.\\d+)(?:e\\d{1,2})?)\\s*(?<unit>(?:%s)[23²³]|ml)?"
              .formatted(Arrays.stream(Unit.values()).map(Unit::symbol).collect(joining("|"))));

  private static final Pattern RING =
      Pattern.compile("(?<count>\\d+)\\s*standing", Pattern.CASE_INSENSITIVE);

  private GoalReader() {}

  /**
   * Reads a goal written as {@code height=120}. Messages have no full stop.
   *
   * @param unit what plain numbers count
   * @throws IllegalArgumentException when it is none; the message quotes it and says what is wanted
   */
  public static Goal read(String text, Unit unit) {
    int equals = text.indexOf('=');
    if (equals < 1) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not a goal: write it as name=value, such as height=120");
    }
    return read(text.substring(0, equals).strip(), text.substring(equals + 1).strip(), unit);
  }

  /**
   * Reads a goal's word and value.
   *
   * @throws IllegalArgumentException as above
   */
  public static Goal read(String word, String value, Unit unit) {
    String name = word.toLowerCase(Locale.ROOT);
    return switch (name) {
      case "height", "width", "depth" -> length(measure(name), value, unit);
      case "volume", "area" -> spread(measure(name), value, unit);
      case "gap" -> gap(value, unit);
      case "fits" -> new Goal.Fit(SheetSizes.read(value, unit));
      case "ring" -> ring(value);
      default ->
          throw new IllegalArgumentException(
              "there is no goal called \""
                  + word
                  + "\". "
                  + NearName.nearest(name, WORDS).map(n -> "Did you mean " + n + "? ").orElse("")
                  + "Goals are "
                  + String.join(", ", WORDS));
    };
  }

  private static Measure measure(String word) {
    return Measure.valueOf(word.toUpperCase(Locale.ROOT));
  }

  private static Goal length(Measure measure, String value, Unit unit) {
    double mm = Length.parse(value, unit).mm();
    if (!(mm > 0 && mm <= Ask.LONGEST)) {
      throw new Refused(
          Message.of(
              "a %s of %s is out of range: give a length over 0, up to %s",
              measure.word(), value, Value.given(Ask.LONGEST)));
    }
    return new Goal.Reach(measure, mm);
  }

  private static Goal ring(String value) {
    try {
      Matcher m = RING.matcher(value.strip());
      return m.matches()
          ? new Goal.Ring(Integer.parseInt(m.group("count")), true, "")
          : new Goal.Ring(Integer.parseInt(value.strip()));
    } catch (NumberFormatException _) {
      throw new IllegalArgumentException(
          "\""
              + value
              + "\" is not how many copies are to seat in a ring: give a whole number from "
              + RingCount.LEAST
              + " to "
              + RingCount.MOST
              + ", or such as \"8 standing\" where they are not to be tipped");
    }
  }

  private static Goal gap(String value, Unit unit) {
    if (Length.parse(value, unit).mm() != 0) {
      throw new IllegalArgumentException(
          "a gap of " + value + " is no goal: only 0 makes sense, where every join meets");
    }
    return new Goal.Reach(Measure.GAP, 0);
  }

  /**
   * A volume in mm³, such as "250 ml", "15 in3", or a number of the unit cubed.
   *
   * @throws IllegalArgumentException in a maker's words, where it is none
   */
  public static double volume(String value, Unit unit) {
    return ((Goal.Reach) spread(Measure.VOLUME, value, unit)).wanted();
  }

  /** An area or a volume: a number, which may have a unit after it, such as 250 cm3 or 250 ml. */
  private static Goal spread(Measure measure, String value, Unit unit) {
    Matcher m = SPREAD.matcher(value.strip().toLowerCase(Locale.ROOT));
    double amount =
        m.matches()
            ? Double.parseDouble(m.group("number")) * each(m.group("unit"), measure.power(), unit)
            : 0;
    if (!(amount > 0 && amount <= Math.pow(Ask.LONGEST, measure.power()))) {
      throw new IllegalArgumentException(
          "\""
              + value
              + (measure == Measure.VOLUME
                  ? "\" is not a volume: write a number, \"250 cm3\", \"15 in3\" or \"250 ml\""
                  : "\" is not an area: write a number, \"300 cm2\" or \"45 in2\""));
    }
    return new Goal.Reach(measure, amount);
  }

  /** One of the square or cubic unit in mm² or mm³; 0 where the unit is of another sort. */
  private static double each(String written, int power, Unit plain) {
    if (written == null) {
      return Math.pow(plain.mm(), power);
    }
    if (written.equals("ml")) {
      return power == 3 ? Math.pow(Unit.CM.mm(), power) : 0;
    }
    boolean square = written.endsWith("2") || written.endsWith("²");
    if (square != (power == 2)) {
      return 0;
    }
    return Math.pow(
        Unit.named(written.substring(0, written.length() - 1)).orElseThrow().mm(), power);
  }
}
