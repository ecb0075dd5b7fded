package facetwright.form;

import facetwright.message.Message;
import facetwright.message.Value;

/** The ranges within which a form can be asked for. */
public final class Limits {
  public static final double LONGEST = 10_000;
  static final int FEWEST_SIDES = 3;
  static final int MOST_SIDES = 64;

  private Limits() {}

  public static void sides(int sides) {
    FormCheck.require(
        sides >= FEWEST_SIDES && sides <= MOST_SIDES,
        "the number of sides lies in " + FEWEST_SIDES + " to " + MOST_SIDES + ", not " + sides);
  }

  public static void length(String what, double mm) {
    FormCheck.require(
        mm > 0 && mm <= LONGEST,
        () ->
            Message.of(
                "%s is over 0 and up to %s, not %s", what, Value.given(LONGEST), Value.given(mm)));
  }
}
