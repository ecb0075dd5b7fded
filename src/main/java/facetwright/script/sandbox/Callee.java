package facetwright.script.sandbox;

import facetwright.net.Site;

/** Where in a call the name of what is called stands: {@code rows} in {@code a.b(1).rows(2)}. */
final class Callee {
  private Callee() {}

  /**
   * The place of the called name.
   *
   * @param text the whole expression
   * @param start where it begins
   * @return {@code start} where the expression calls no member
   */
  static Site in(CharSequence text, Site start) {
    int at = nameOfLastCall(text);
    int line = start.line();
    int column = start.column();
    for (int i = 0; i < at; i++) {
      boolean broken = text.charAt(i) == '\n';
      line += broken ? 1 : 0;
      column = broken ? 1 : column + 1;
    }
    return new Site(line, column);
  }

  /** Where the member stands that is called last; 0 where the text ends in no such call. */
  private static int nameOfLastCall(CharSequence text) {
    int depth = 0;
    int open = -1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"', '\'', '`' -> i = textEnd(text, i);
        case '/' -> i = commentEnd(text, i);
        case '(', '[', '{' -> {
          if (depth++ == 0) {
            open = c == '(' ? i : -1;
          }
        }
        case ')', ']', '}' -> depth--;
        default -> {}
      }
    }
    boolean call = open > 0 && text.charAt(text.length() - 1) == ')';
    int end = call ? open : 0;
    while (end > 0 && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    int from = end;
    while (from > 0 && Character.isJavaIdentifierPart(text.charAt(from - 1))) {
      from--;
    }
    int before = from;
    while (before > 0 && Character.isWhitespace(text.charAt(before - 1))) {
      before--;
    }
    boolean member = before > 0 && text.charAt(before - 1) == '.';
    return from < end && member ? from : 0;
  }

  private static int textEnd(CharSequence text, int from) {
    for (int i = from + 1; i < text.length(); i++) {
      if (text.charAt(i) == '\\') {
        i++;
      } else if (text.charAt(i) == text.charAt(from)) {
        return i;
      }
    }
    return text.length();
  }

  private static int commentEnd(CharSequence text, int from) {
    String rest = text.subSequence(from, text.length()).toString();
    int end =
        rest.startsWith("//") ? rest.indexOf('\n') : rest.startsWith("/*") ? rest.indexOf("*/") : 0;
    return end < 0 ? text.length() : from + end;
  }
}
