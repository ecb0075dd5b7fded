package facetwright.workbench.desk;

/**
 * A stretch of a script that another takes the place of.
 *
 * @param at where it begins
 * @param taken what stood there
 * @param put what stands there now
 */
public record Change(int at, String taken, String put) {

  /** The least one that makes one text of another. */
  public static Change between(String from, String to) {
    int least = Math.min(from.length(), to.length());
    int same = 0;
    while (same < least && from.charAt(same) == to.charAt(same)) {
      same++;
    }
    int end = 0;
    while (end < least - same
        && from.charAt(from.length() - 1 - end) == to.charAt(to.length() - 1 - end)) {
      end++;
    }
    return new Change(
        same, from.substring(same, from.length() - end), to.substring(same, to.length() - end));
  }

  /** Whether it changes nothing. */
  boolean isNone() {
    return taken.isEmpty() && put.isEmpty();
  }

  /** Where the stretch that it takes away ends. */
  public int end() {
    return at + taken.length();
  }

  /** The one that takes it back. */
  Change back() {
    return new Change(at, /* taken= */ put, /* put= */ taken);
  }

  /** A text with it made. */
  String in(String text) {
    return text.substring(0, at) + put + text.substring(end());
  }

  /** Whether it makes one text of another. */
  boolean makes(String from, String to) {
    return from.startsWith(taken, at) && in(from).equals(to);
  }

  /** Whether it is a letter more where the last one was typed, in the same word. */
  private boolean isTypedAfter(Change last) {
    return taken.isEmpty()
        && last.taken.isEmpty()
        && at == last.at + last.put.length()
        && isLetter(put)
        && isLetter(last.put)
        && (isBlank(put) || !isBlank(last.put));
  }

  /** Whether it is a letter less beside the one that was taken last. */
  private boolean isTakenAfter(Change last) {
    return put.isEmpty()
        && last.put.isEmpty()
        && (end() == last.at || at == last.at)
        && isLetter(taken)
        && isLetter(last.taken);
  }

  /** Whether a hand that typed the last change goes on with this one. */
  boolean goesOn(Change last) {
    return isTypedAfter(last) || isTakenAfter(last);
  }

  private static boolean isLetter(String text) {
    return !text.isEmpty() && text.codePointCount(0, text.length()) == 1 && !text.equals("\n");
  }

  private static boolean isBlank(String letter) {
    return Character.isWhitespace(letter.codePointAt(0));
  }
}
