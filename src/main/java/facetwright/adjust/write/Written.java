package facetwright.adjust.write;

/**
 * A script with what was found written into it.
 *
 * @param text the whole script; empty where it can't be written
 * @param why it can't be, as what the script does: "does not write ..."; empty where it can
 * @param note a sentence on what else is other in it; empty for nothing
 */
public record Written(String text, String why, String note) {
  /** Why, where a value is reckoned or comes from elsewhere. */
  public static final String NOT_PLAIN = "does not write the value of each dial as a plain number";

  /** Why, where the written script comes to another design. */
  public static final String NOT_TAKEN = "does not take the new values where they would be written";

  /** Why, where the sheet's name is not a text in its call. */
  public static final String NO_SHEET = "does not write its sheet as a plain name";

  /** The whole script. */
  static Written as(String text) {
    return new Written(text, "", "");
  }

  /** None, for a reason. */
  public static Written not(String why) {
    return new Written("", why, "");
  }

  /** The same with another text, and what to know of it. */
  public Written noted(String newText, String newNote) {
    return new Written(newText, why, newNote);
  }

  public boolean isThere() {
    return !text.isEmpty();
  }
}
