package facetwright.workbench.card.text;

import facetwright.script.text.Edit;
import facetwright.script.text.Stretch;

/**
 * A word that could be written.
 *
 * @param word as it is listed
 * @param sort what it is, in a word or two
 * @param written what is put into the script
 * @param caret where the caret stands in what is written
 * @param help what there is to say about it
 */
public record Offer(String word, String sort, String written, int caret, Help help) {
  static Offer plain(String word, String sort, String written, Help help) {
    return new Offer(word, sort, written, written.length(), help);
  }

  /** The edit that writes it in the place of what is typed of it. */
  Edit edit(Stretch typed) {
    int at = typed.start() + caret;
    return new Edit(typed.start(), typed.end(), written, at, at);
  }
}
