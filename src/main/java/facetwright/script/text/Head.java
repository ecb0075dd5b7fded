package facetwright.script.text;

import java.util.ArrayList;
import java.util.List;

/**
 * The comment between stars that a script begins with, line by line.
 *
 * @param end the offset behind the comment; 0 where the script begins with none
 * @param lines from the script's first line to the comment's last
 */
public record Head(int end, List<Line> lines) {
  private static final int LEAST = 4;

  public Head {
    lines = List.copyOf(lines);
  }

  /**
   * A line of it.
   *
   * @param start the offset of its first character
   * @param end the offset behind its last, its line's end included
   * @param isWhole whether the comment neither begins nor ends in it
   * @param text without the stars before it and the comment's signs, and without white space around
   */
  public record Line(int start, int end, boolean isWhole, String text) {
    /** What stands before its colon, if that is a single word; else empty. */
    public String key() {
      String key = text.substring(0, Math.max(0, text.indexOf(':'))).strip();
      return key.chars().allMatch(Character::isLetter) ? key : "";
    }

    /** What stands behind its colon. */
    public String value() {
      return text.substring(text.indexOf(':') + 1).strip();
    }
  }

  public static Head of(String script) {
    int end =
        Tokens.first(script)
            .filter(t -> t.length() >= LEAST && script.startsWith("/*", t.start()))
            .filter(t -> script.startsWith("*/", t.end() - 2))
            .map(Token::end)
            .orElse(0);
    List<Line> lines = new ArrayList<>();
    for (int at = 0; at < end; ) {
      int stop = Letters.lineEnd(script, at);
      int next = Math.min(end, script.startsWith("\r\n", stop) ? stop + 2 : stop + 1);
      lines.add(line(script, at, next, end));
      at = next;
    }
    return new Head(end, lines);
  }

  private static Line line(String script, int start, int next, int end) {
    String text = script.substring(start, next).strip();
    boolean begins = text.startsWith("/*") && script.substring(0, start).isBlank();
    boolean ends = next == end;
    String inner =
        text.substring(begins ? 1 : 0, text.length() - (ends ? Math.min(2, text.length()) : 0));
    int from = 0;
    while (from < inner.length() && inner.charAt(from) == '*') {
      from++;
    }
    return new Line(start, next, !begins && !ends, inner.substring(from).strip());
  }
}
