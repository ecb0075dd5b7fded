package facetwright.words;

/**
 * Text from elsewhere, made fit to be shown: what a terminal, a window or a page would take for a
 * command becomes a mark that is seen. Marks are of plain letters, which every typeface has: {@code
 * ^[} for the control code 1B, as terminals show it, and {@code <U+202E>} for others.
 */
public final class PlainText {
  /** So many characters of a message are shown. */
  public static final int LONGEST = 500;

  private PlainText() {}

  /** As one line: line ends and tabs become blanks, other control codes marks. */
  public static String line(String text) {
    return isPlain(text) ? text : marked(text.replaceAll("\\R|\\t", " "));
  }

  /** The same with line ends and tabs left as they are. */
  public static String lines(String text) {
    return isPlain(text) ? text : marked(text);
  }

  /** The lines of a message, cut where it is too long, with a word on how much is left out. */
  public static String message(String text) {
    int end = text.length() <= LONGEST ? text.length() : LONGEST;
    if (end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    String shown = lines(text.substring(0, end));
    return end == text.length()
        ? shown
        : shown + "… (" + (text.length() - end) + " more characters)";
  }

  private static boolean isPlain(String text) {
    return text.chars().allMatch(c -> c >= ' ' && !isCommand(c));
  }

  private static String marked(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean lineEnd = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
      if (c == '\n' || c == '\t' || lineEnd || !isCommand(c)) {
        out.append(c);
      } else if (c < ' ' || c == 0x7F) {
        out.append('^').append((char) (c ^ 0x40));
      } else {
        out.append("<U+%04X>".formatted((int) c));
      }
    }
    return out.toString();
  }

  /**
   * Control codes (ISO/IEC 6429, sets C0 and C1, and delete), and the signs that turn the order of
   * letters round (Unicode Standard Annex 9, explicit formatting).
   */
  private static boolean isCommand(int c) {
    return c < ' '
        || (c >= 0x7F && c <= 0x9F)
        || (c >= 0x202A && c <= 0x202E)
        || (c >= 0x2066 && c <= 0x2069);
  }
}
