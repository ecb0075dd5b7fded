package facetwright.script.api;

import facetwright.measure.Length;
import facetwright.message.Message;
import facetwright.words.Decimals;
import facetwright.words.NearName;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;

/** Values that do not fit, and the nearest ones that would. */
final class Fit {
  private Fit() {}

  /**
   * The value, held to its range.
   *
   * @param shown the value as the message quotes it
   * @param written how a script writes the end of the range that is nearest
   */
  static double inRange(
      double n, double from, double to, String shown, DoubleFunction<String> written)
      throws Kind.Unfit {
    return inRange(n, from, to, Message.text(shown), written);
  }

  /** The same of a value that is quoted as a length. */
  static double inRange(
      double n, double from, double to, Message shown, DoubleFunction<String> written)
      throws Kind.Unfit {
    if (n < from || n > to) {
      throw new Kind.Unfit(
          shown.plus(n < from ? " is too small" : " is too large"),
          written.apply(n < from ? from : to));
    }
    return n;
  }

  /** An end of a range of lengths, written as the value was, rounded into the range. */
  static String bound(double mm, boolean least, Given value, Session session) {
    if (value instanceof Given.Text) {
      return inQuotes(Decimals.plain(mm) + " mm");
    }
    return new BigDecimal(new Length(mm).in(session.unit()))
        .round(new MathContext(12))
        .setScale(session.unit().places() + 1, least ? RoundingMode.CEILING : RoundingMode.FLOOR)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** The nearest word in quotes; empty where none is near. */
  static String near(String word, List<String> words) {
    return NearName.nearest(word, words).map(Fit::inQuotes).orElse("");
  }

  /** A value that is none of the words there are. */
  static Kind.Unfit noneOf(Given value, List<String> words) {
    return new Kind.Unfit(
        GivenText.quote(value) + " is none of the words it takes",
        near(Amounts.text(value).toLowerCase(Locale.ROOT), words));
  }

  static String inQuotes(String word) {
    return '"' + word + '"';
  }
}
