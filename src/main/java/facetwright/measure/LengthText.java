package facetwright.measure;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a maker writes a length. */
final class LengthText {
  private static final Pattern FORM =
      Pattern.compile(
          "(?<sign>-)?(?:(?<whole>\\d{1,9})(?:\\s+|\\s*-\\s*))?(?<top>\\d{1,9})\\s*/\\s*(?<bottom>\\d{1,9})"
              + "\\s*(?<unit1>[a-z\"″]*)\\.?"
              + "|(?<number>-?(?:\\d+\\.?\\d*|\\.\\d+)(?:e-?\\d{1,3})?)\\s*(?<unit2>[a-z\"″]*)\\.?");

  /** Fractions of one letter, such as ¼, and those a slash of their own makes: 1⁄4. */
  private static final Pattern LETTER = Pattern.compile("[\\u00BC-\\u00BE\\u2150-\\u215E]");

  private LengthText() {}

  static Length parse(String text, Unit plain) {
    Matcher m = read(text);
    if (m.group("number") != null) {
      return Length.of(Double.parseDouble(m.group("number")), unit(m, plain, text));
    }
    double bottom = Double.parseDouble(m.group("bottom"));
    if (bottom == 0) {
      throw new IllegalArgumentException("\"" + text + "\" divides by 0");
    }
    double whole = m.group("whole") == null ? 0 : Double.parseDouble(m.group("whole"));
    double amount = whole + Double.parseDouble(m.group("top")) / bottom;
    return Length.of(m.group("sign") == null ? amount : -amount, unit(m, plain, text));
  }

  /** The unit that a length is written in. */
  static Unit unit(String text, Unit plain) {
    return unit(read(text), plain, text);
  }

  private static Matcher read(String text) {
    if (text.length() > 60) {
      throw wrong(text);
    }
    Matcher m = FORM.matcher(plain(text));
    if (!m.matches()) {
      throw wrong(text);
    }
    return m;
  }

  /** In the letters that are read: "1¼”" as "1 1/4\"". */
  private static String plain(String text) {
    return LETTER
        .matcher(Unbroken.plain(text))
        .replaceAll(f -> " " + Normalizer.normalize(f.group(), Normalizer.Form.NFKD))
        .replace('\u2044', '/')
        .replace("''", "\"")
        .replace('\u201D', '"')
        .replace("- ", "-")
        .strip()
        .toLowerCase(Locale.ROOT);
  }

  private static Unit unit(Matcher m, Unit plain, String text) {
    String name = m.group(m.group("number") != null ? "unit2" : "unit1");
    return name.isEmpty() ? plain : Unit.named(name).orElseThrow(() -> wrong(text));
  }

  /** What was written, as a message quotes it. */
  static String brief(String text) {
    return text.length() > 60 ? text.substring(0, 57) + "..." : text;
  }

  private static IllegalArgumentException wrong(String text) {
    return new IllegalArgumentException(
        "\""
            + brief(text)
            + "\" is not a length: write a number, \"48 mm\", \"4.8 cm\", \"1 7/8 in\" or"
            + " \"1-7/8\""
            + (text.indexOf(',') < 0 ? "" : "; decimals have a point"));
  }
}
