package facetwright.workbench.notice;

import java.util.List;

/**
 * Something to say or ask.
 *
 * @param about what it is about; a newer notice about the same takes an older one's place
 * @param title in a few words
 * @param words the rest, or empty
 * @param choices what can be done; the first is the usual one, the last changes nothing
 */
public record Notice(String about, String title, String words, List<Choice> choices) {

  /**
   * One thing that can be done.
   *
   * @param name a verb
   * @param action does it
   */
  public record Choice(String name, Runnable action) {}

  /**
   * @throws IllegalArgumentException when there is nothing to choose
   */
  public Notice {
    choices = List.copyOf(choices);
    if (choices.isEmpty()) {
      throw new IllegalArgumentException("a notice needs a choice");
    }
  }

  /** Something to be read and put away. */
  public static Notice telling(String about, String title, String words) {
    return new Notice(about, title, words, List.of(new Choice("Close", () -> {})));
  }
}
