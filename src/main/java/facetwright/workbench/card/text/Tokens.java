package facetwright.workbench.card.text;

import facetwright.workbench.card.text.Token.Kind;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;

/**
 * Cuts a script into tokens. Never fails: what is no JavaScript is still cut into something, and a
 * text or comment that does not end goes to the end of its line or of the script.
 */
public final class Tokens {
  /** The reserved words of ECMA-262, section 12.7.2, and the words that stand for fixed values. */
  public static final Set<String> KEYWORDS =
      Set.of(
          "await",
          "break",
          "case",
          "catch",
          "class",
          "const",
          "continue",
          "debugger",
          "default",
          "delete",
          "do",
          "else",
          "enum",
          "export",
          "extends",
          "false",
          "finally",
          "for",
          "function",
          "if",
          "import",
          "in",
          "instanceof",
          "new",
          "null",
          "return",
          "super",
          "switch",
          "this",
          "throw",
          "true",
          "try",
          "typeof",
          "var",
          "void",
          "while",
          "with",
          "yield",
          "let",
          "of",
          "undefined",
          "static");

  private final String text;
  private final List<Token> tokens = new ArrayList<>();

  /** For each open blank of a text, how many braces are open in it. */
  private final Deque<Integer> blanks = new ArrayDeque<>();

  private int at;

  private Tokens(String text) {
    this.text = text;
  }

  /** The tokens in order; white space is in none. */
  public static List<Token> of(String text) {
    Tokens cutter = new Tokens(text);
    cutter.cut();
    return cutter.tokens;
  }

  private void cut() {
    while (at < text.length()) {
      char c = text.charAt(at);
      if (Character.isWhitespace(c)) {
        at++;
      } else if (c == '"' || c == '\'') {
        add(Kind.TEXT, quoted(c));
      } else if (c == '`') {
        add(Kind.TEXT, template(at + 1));
      } else if (c == '/' && at + 1 < text.length() && text.charAt(at + 1) == '/') {
        add(Kind.COMMENT, lineEnd(at));
      } else if (c == '/' && at + 1 < text.length() && text.charAt(at + 1) == '*') {
        int end = text.indexOf("*/", at + 2);
        add(Kind.COMMENT, end < 0 ? text.length() : end + 2);
      } else if (c == '/' && patternMayStart()) {
        pattern();
      } else if (isDigit(c)
          || (c == '.' && at + 1 < text.length() && isDigit(text.charAt(at + 1)))) {
        add(Kind.NUMBER, numberEnd());
      } else if (Character.isJavaIdentifierStart(c)) {
        word();
      } else {
        mark(c);
      }
    }
  }

  private void add(Kind kind, int end) {
    tokens.add(new Token(kind, at, end));
    at = end;
  }

  private void mark(char c) {
    if (!blanks.isEmpty()) {
      if (c == '{') {
        blanks.push(blanks.pop() + 1);
      } else if (c == '}' && blanks.peek() == 0) {
        blanks.pop();
        add(Kind.TEXT, template(at + 1));
        return;
      } else if (c == '}') {
        blanks.push(blanks.pop() - 1);
      }
    }
    add(Kind.MARK, at + 1);
  }

  private void word() {
    int end = at + 1;
    while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
      end++;
    }
    boolean member = !tokens.isEmpty() && isMark(tokens.getLast(), '.');
    boolean keyword = !member && KEYWORDS.contains(text.substring(at, end));
    add(keyword ? Kind.KEYWORD : Kind.NAME, end);
  }

  private int numberEnd() {
    int end = at + 1;
    while (end < text.length()) {
      char c = text.charAt(end);
      boolean sign = (c == '-' || c == '+') && "eE".indexOf(text.charAt(end - 1)) >= 0;
      boolean plain =
          text.charAt(at) != '0' || (end > at + 1 && "xXbBoO".indexOf(text.charAt(at + 1)) < 0);
      if (!(isDigit(c)
          || c == '.'
          || c == '_'
          || (Character.isLetter(c) && !isUnit(end))
          || (sign && plain))) {
        break;
      }
      end++;
    }
    return end;
  }

  /** Whether a unit of length begins, as in {@code 48mm}: a slip that is easily mended. */
  private boolean isUnit(int from) {
    int end = from;
    while (end < text.length()
        && end - from <= Reading.LONGEST_UNIT
        && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return Reading.UNITS.contains(text.substring(from, end));
  }

  private int quoted(char quote) {
    for (int i = at + 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\\') {
        i++;
      } else if (c == quote) {
        return i + 1;
      } else if (c == '\n') {
        return i;
      }
    }
    return text.length();
  }

  private int template(int from) {
    for (int i = from; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\\') {
        i++;
      } else if (c == '`') {
        return i + 1;
      } else if (c == '$' && i + 1 < text.length() && text.charAt(i + 1) == '{') {
        blanks.push(0);
        return i + 2;
      }
    }
    return text.length();
  }

  /** A pattern may start where no value has just ended. */
  private boolean patternMayStart() {
    if (tokens.isEmpty()) {
      return true;
    }
    Token last = tokens.getLast();
    return switch (last.kind()) {
      case MARK -> ")]}".indexOf(text.charAt(last.start())) < 0;
      case KEYWORD -> true;
      case COMMENT, TEXT, NUMBER, NAME -> false;
    };
  }

  private void pattern() {
    int end = lineEnd(at);
    boolean inClass = false;
    for (int i = at + 1; i < end; i++) {
      char c = text.charAt(i);
      if (c == '\\') {
        i++;
      } else if (c == '[' || c == ']') {
        inClass = c == '[';
      } else if (c == '/' && !inClass) {
        int stop = i + 1;
        while (stop < end && Character.isLetter(text.charAt(stop))) {
          stop++;
        }
        add(Kind.TEXT, stop);
        return;
      }
    }
    add(Kind.MARK, at + 1);
  }

  private int lineEnd(int from) {
    int end = text.indexOf('\n', from);
    return end < 0 ? text.length() : end;
  }

  private boolean isMark(Token token, char c) {
    return token.kind() == Kind.MARK && text.charAt(token.start()) == c;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }
}
