package facetwright.turn.write;

import java.util.Comparator;
import java.util.List;

/**
 * A place of a script to be written anew.
 *
 * @param start index of its first character
 * @param length how many characters are replaced
 */
public record ScriptEdit(int start, int length, String text) {

  /** The text with all edits, none of which overlap. */
  public static String apply(String source, List<ScriptEdit> edits) {
    StringBuilder text = new StringBuilder(source);
    edits.stream()
        .sorted(Comparator.comparingInt(ScriptEdit::start).reversed())
        .forEach(e -> text.replace(e.start, e.start + e.length, e.text));
    return text.toString();
  }
}
