package facetwright.script.text;

import java.util.Comparator;
import java.util.List;

/**
 * Other text in the place of a stretch.
 *
 * @param from where the stretch begins
 * @param to where it ends
 * @param text what comes in its place
 * @param anchor where the selection begins afterwards
 * @param caret where it ends, and the caret stands
 */
public record Edit(int from, int to, String text, int anchor, int caret) {

  /** One after which the caret stands behind the new text. */
  public static Edit replace(int from, int to, String text) {
    int end = from + text.length();
    return new Edit(from, to, text, end, end);
  }

  /** One in the place of a stretch. */
  public static Edit replace(Stretch at, String text) {
    return replace(at.start(), at.end(), text);
  }

  public static Edit insert(int at, String text) {
    return replace(at, at, text);
  }

  /** A line more at the end of a script, above what is gathered below it. */
  public static Edit append(String whole, String line) {
    int end = Gathered.end(whole);
    boolean isOpen = end > 0 && whole.charAt(end - 1) != '\n';
    return insert(end, (isOpen ? "\n" : "") + line + "\n");
  }

  /** Words as a script writes them. */
  public static String inQuotes(String words) {
    return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  /** The whole text after the edit. */
  public String in(String whole) {
    return whole.substring(0, from) + text + whole.substring(to);
  }

  /** The whole text after several edits, none of which overlap; they go by the text before all. */
  public static String all(String whole, List<Edit> edits) {
    StringBuilder text = new StringBuilder();
    int at = 0;
    for (Edit edit : edits.stream().sorted(Comparator.comparingInt(Edit::from)).toList()) {
      text.append(whole, at, edit.from).append(edit.text);
      at = edit.to;
    }
    return text.append(whole, at, whole.length()).toString();
  }
}
