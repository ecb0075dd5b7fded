package facetwright.net.fitting;

import java.util.Arrays;
import java.util.List;

/** Lights that are known by a name of their own; a script may name others. */
public enum LightKind {
  TEA("tea", "battery tea light"),
  STRING("string", "string of battery lights");

  private final String word;
  private final String called;

  LightKind(String word, String called) {
    this.word = word;
    this.called = called;
  }

  /** What a script calls it. */
  public String called() {
    return called;
  }

  /** What scripts call all of them. */
  public static List<String> names() {
    return Arrays.stream(values()).map(LightKind::called).toList();
  }

  /** The word by which phrases tell which it is, of what a script calls so; "other" of others. */
  public static String word(String called) {
    return Arrays.stream(values())
        .filter(k -> k.called.equals(called))
        .findFirst()
        .map(k -> k.word)
        .orElse("other");
  }
}
