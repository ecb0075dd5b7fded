package facetwright.script.sandbox;

import facetwright.script.text.Reading;
import facetwright.words.Site;

/** Where a script goes deepest into brackets. */
final class Deepest {
  /** No script of a maker goes as deep as that. */
  private static final int DEEP = 100;

  private Deepest() {}

  /** The bracket that opens the deepest place; where none is deep, the longest line. */
  static Site of(String source) {
    Reading reading = Reading.of(source);
    int depth = 0;
    int most = 0;
    int deepest = 0;
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.is(i, '(') || reading.is(i, '[') || reading.is(i, '{')) {
        depth++;
        if (depth > most) {
          most = depth;
          deepest = reading.token(i).start();
        }
      } else if (reading.is(i, ')') || reading.is(i, ']') || reading.is(i, '}')) {
        depth--;
      }
    }
    return most >= DEEP
        ? new Site(reading.line(deepest), reading.column(deepest))
        : new Site(longestLine(reading), 1);
  }

  private static int longestLine(Reading reading) {
    int longest = 1;
    for (int line = 2; line <= reading.lineCount(); line++) {
      longest = length(reading, line) > length(reading, longest) ? line : longest;
    }
    return longest;
  }

  private static int length(Reading reading, int line) {
    return reading.lineEnd(line) - reading.lineStart(line);
  }
}
