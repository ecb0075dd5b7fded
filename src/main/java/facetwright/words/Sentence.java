package facetwright.words;

import java.util.List;
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

  /** A sentence to follow on other words: its first letter small. */
  public static String small(String sentence) {
    return sentence.isEmpty()
        ? sentence
        : sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  /** A message without capital and full stop, with both; a question has its mark. */
  public static String of(String message) {
    return capital(message) + (message.endsWith("?") ? "" : ".");
  }

  /** "a", "a and b", "a, b and c". */
  public static String listed(List<String> words) {
    return listed(words, "and");
  }

  /** The same with another word before the last, such as "or". */
  public static String listed(List<String> words, String last) {
    return words.size() == 1
        ? words.getFirst()
        : String.join(", ", words.subList(0, words.size() - 1))
            + " "
            + last
            + " "
            + words.getLast();
  }
}
