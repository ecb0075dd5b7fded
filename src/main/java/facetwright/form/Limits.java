package facetwright.form;

import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;

/** The ranges within which a form can be asked for. */
public final class Limits {
  /** An outline that a form stands on has so many sides at most, as many as it may be given by. */
  public static final int MOST_ROUND = 200;

  private Limits() {}

  public static void sides(int sides) {
    FormCheck.require(
        sides >= Ask.FEWEST_SIDES && sides <= Ask.MOST_SIDES,
        "the number of sides lies in "
            + Ask.FEWEST_SIDES
            + " to "
            + Ask.MOST_SIDES
            + ", not "
            + sides);
  }

  public static void length(String what, double mm) {
    FormCheck.require(
        mm > 0 && mm <= Ask.LONGEST,
        () ->
            Message.of(
                "%s is over 0 and up to %s, not %s",
                what, Value.given(Ask.LONGEST), Value.given(mm)));
  }
}
