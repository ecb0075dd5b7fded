package facetwright.papers.handout;

import facetwright.language.Telling;
import java.util.ArrayList;
import java.util.List;

/**
 * Whose steps stand under a heading.
 *
 * @param of the word by which phrases tell: "all", "part", or "rest" of what is of no part
 * @param name of the part
 * @param make how many of it are made
 */
record Whose(String of, String name, int make) {
  static final Whose ALL = new Whose("all", "", 1);
  static final Whose REST = new Whose("rest", "", 1);

  static Whose part(String name, int make) {
    return new Whose("part", name, make);
  }

  /**
   * A heading.
   *
   * @param key of the phrase, which tells whose it is, too
   * @param more names and values that it has besides
   */
  String heading(Telling tell, String key, Object... more) {
    List<Object> named = new ArrayList<>(List.of("of", of, "name", name, "make", make));
    named.addAll(List.of(more));
    return tell.say(key, named.toArray());
  }
}
