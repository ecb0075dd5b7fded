package facetwright.workbench.notice;

import java.util.List;

/**
 * Something to say or ask.
 *
 * @param about what it is about; a newer notice about the same takes an older one's place
 * @param title in a few words
 * @param words the rest, or empty
 * @param choices what can be done; the last changes nothing; where it is awaited, the first is the
 *     usual one and loses nothing
 * @param isAwaited whether it answers what the user has just asked for and holds it up. Only such a
 *     one takes the keyboard; what comes by itself never does
 */
public record Notice(
    String about, String title, String words, List<Choice> choices, boolean isAwaited) {

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

  /** One that comes by itself and leaves the keyboard where it is. */
  public Notice(String about, String title, String words, List<Choice> choices) {
    this(about, title, words, choices, false);
  }

  /** A question that has to be answered before what the user asked for is done. */
  public static Notice question(String about, String title, String words, Choice... choices) {
    return new Notice(about, title, words, List.of(choices), true);
  }

  /** Something to be read and put away. */
  static Notice telling(String about, String title, String words) {
    return new Notice(about, title, words, List.of(new Choice("Close", () -> {})));
  }
}
