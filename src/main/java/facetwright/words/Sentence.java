package facetwright.words;

import java.util.Locale;

/** Words made a sentence. */
public final class Sentence {
  private Sentence() {}

  /** The same words with a capital first; none stay none. */
  public static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A message without capital and full stop, with both; a question has its mark. */
  public static String of(String message) {
    return capital(message) + (message.endsWith("?") ? "" : ".");
  }
}
