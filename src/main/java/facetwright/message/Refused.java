package facetwright.message;

import facetwright.measure.Unit;

/** Something given that makes no sense, refused in words with values, for whoever reads it. */
public final class Refused extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final Message told;

  public Refused(Message told) {
    super(told.text(Unit.MM));
    this.told = told;
  }

  /** What a refusal says: its words with their values, or the words it has. */
  public static Message words(IllegalArgumentException why) {
    return why instanceof Refused refused ? refused.told : Message.text(why.getMessage());
  }

  /** The same as it is read in a unit. */
  public static String text(IllegalArgumentException why, Unit unit) {
    return words(why).text(unit);
  }
}
