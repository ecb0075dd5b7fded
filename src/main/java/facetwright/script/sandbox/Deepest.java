package facetwright.script.sandbox;

import facetwright.net.Site;

/** Where a script goes deepest into brackets. */
final class Deepest {
  /** No script of a maker goes as deep as that. */
  private static final int DEEP = 100;

  private Deepest() {}

  /** The bracket that opens the deepest place; where none is deep, the longest line. */
  static Site of(String source) {
    int depth = 0;
    int most = 0;
    int longest = 0;
    int line = 1;
    int start = 0;
    Site deepest = Site.NONE;
    Site longestLine = Site.NONE;
    for (int i = 0; i <= source.length(); i++) {
      char c = i < source.length() ? source.charAt(i) : '\n';
      if (c == '\n') {
        if (i - start > longest) {
          longest = i - start;
          longestLine = new Site(line, 1);
        }
        line++;
        start = i + 1;
      } else if ("([{".indexOf(c) >= 0) {
        depth++;
        if (depth > most) {
          most = depth;
          deepest = new Site(line, i - start + 1);
        }
      } else if (")]}".indexOf(c) >= 0) {
        depth--;
      }
    }
    return most >= DEEP ? deepest : longestLine;
  }
}
