package facetwright.workbench.card.text;

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

  public static Edit insert(int at, String text) {
    return replace(at, at, text);
  }

  /** The whole text after the edit. */
  public String in(String whole) {
    return whole.substring(0, from) + text + whole.substring(to);
  }
}
