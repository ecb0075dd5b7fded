package facetwright.words;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/**
 * How a script speaks of a thing it made.
 *
 * @param words what it answers to, as it stands in a script, the word that means it alone first;
 *     none where a script can't speak of it, as of a tab
 * @param isHeld whether a variable of the script may hold the panel, by which it is spoken of then
 */
public record Spoken(List<String> words, boolean isHeld) implements Serializable {
  /** Of a panel that a script can't speak of. */
  public static final Spoken NONE = new Spoken(List.of());

  public Spoken {
    words = List.copyOf(words);
  }

  /** Of a panel that no variable holds. */
  public Spoken(List<String> words) {
    this(words, false);
  }

  /** The word that means it alone. */
  public Optional<String> own() {
    return words.stream().findFirst();
  }
}
