package facetwright.script.api;

import facetwright.measure.Degrees;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Value;

/** Numbers and lengths as scripts give them. */
final class Amounts {
  private Amounts() {}

  static double mm(Given value, Unit unit) throws Kind.Unfit {
    if (value instanceof Given.Text(String text)) {
      try {
        return Length.parse(text, unit).mm();
      } catch (IllegalArgumentException e) {
        throw new Kind.Unfit(e.getMessage());
      }
    }
    return number(value) * unit.mm();
  }

  /** An angle in degrees: a number, or text such as "50 deg". */
  static double degrees(Given value) throws Kind.Unfit {
    if (value instanceof Given.Text(String text)) {
      return Degrees.parse(text)
          .orElseThrow(
              () ->
                  new Kind.Unfit(
                      GivenText.quote(value) + " is not an angle such as 50 or \"50 deg\""));
    }
    return number(value);
  }

  static String text(Given value) {
    return value instanceof Given.Text(String text) ? text.strip() : "";
  }

  static double number(Given value) throws Kind.Unfit {
    if (!(value instanceof Given.Amount(double n))) {
      throw new Kind.Unfit(GivenText.quote(value) + " is not a number");
    }
    if (!Double.isFinite(n)) {
      throw new Kind.Unfit(
          Double.isNaN(n)
              ? "what was reckoned here comes to no number (NaN); to reckon with a length in"
                  + " quotes, read it first: length(\"1 1/4 in\") * 2"
              : "infinity is not a usable number");
    }
    return n;
  }

  static Message shown(Given value, double mm) {
    return value instanceof Given.Text
        ? Message.text(GivenText.quote(value))
        : Message.of("%s", Value.given(mm));
  }
}
