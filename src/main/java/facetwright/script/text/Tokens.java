package facetwright.script.text;

import facetwright.script.text.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Cuts a script into tokens, as ECMA-262, section 12, has them. Never fails: what is no JavaScript
 * is still cut into something; a text or regular expression that does not end goes to the end of
 * its line, a template or comment to the end of the script. Takes time in proportion to the length.
 */
final class Tokens {
  /** The reserved words of section 12.7.2, and words that are written like them. */
  private static final Set<String> KEYWORDS =
      Set.of(
          ("await break case catch class const continue debugger default delete do else enum export"
                  + " extends false finally for function if import in instanceof new null return"
                  + " super switch this throw true try typeof var void while with yield let of"
                  + " undefined static")
              .split(" "));

  private static final int LONGEST_KEYWORD = 10;

  /**
   * The signs of more than one character, section 12.8, longer ones before what they begin with.
   */
  private static final List<String> SIGNS =
      List.of(
          ">>>=", "...", "===", "!==", "**=", "<<=", ">>=", ">>>", "&&=", "||=", "??=", "=>", "==",
          "!=", "<=", ">=", "&&", "||", "??", "?.", "++", "--", "+=", "-=", "*=", "%=", "&=", "|=",
          "^=", "<<", ">>", "**", "/=");

  private final String text;
  private final List<Token> tokens = new ArrayList<>();
  private final Nesting nesting = new Nesting();
  private int at;

  /** Whether a line has ended since the last token that is no comment. */
  private boolean isNewLine = true;

  private Tokens(String text) {
    this.text = text;
  }

  /** The tokens in order; white space is in none. */
  static List<Token> of(String text) {
    int end = Gathered.end(text);
    Tokens cutter = new Tokens(text.substring(0, end));
    while (cutter.at < end) {
      cutter.cut();
    }
    if (end < text.length()) {
      cutter.add(Kind.COMMENT, text.length());
    }
    return cutter.tokens;
  }

  /** The first token. */
  static Optional<Token> first(String text) {
    Tokens cutter = new Tokens(text);
    while (cutter.at < text.length() && cutter.tokens.isEmpty()) {
      cutter.cut();
    }
    return cutter.tokens.stream().findFirst();
  }

  private void cut() {
    char c = text.charAt(at);
    if (Letters.isSpace(c)) {
      isNewLine |= Letters.isLineEnd(c);
      at++;
    } else if (isLineComment(c)) {
      add(Kind.COMMENT, Letters.lineEnd(text, at));
    } else if (c == '/' && Letters.at(text, at + 1) == '*') {
      int end = text.indexOf("*/", at + 2);
      int stop = end < 0 ? text.length() : end + 2;
      for (int i = at; i < stop && !isNewLine; i++) {
        isNewLine = Letters.isLineEnd(text.charAt(i));
      }
      add(Kind.COMMENT, stop);
    } else {
      token(c);
      isNewLine = false;
    }
  }

  /** Sections 12.4, 12.5 and B.1.1. */
  private boolean isLineComment(char c) {
    return switch (c) {
      case '/' -> Letters.at(text, at + 1) == '/';
      case '<' -> text.startsWith("<!--", at);
      case '-' -> isNewLine && text.startsWith("-->", at);
      case '#' -> at == 0 && text.startsWith("#!");
      default -> false;
    };
  }

  private void token(char c) {
    if (c == '"' || c == '\'') {
      nesting.value();
      add(Kind.TEXT, Literal.quoted(text, at));
    } else if (c == '`') {
      template();
    } else if (c == '}' && nesting.isInBlank()) {
      nesting.endBlank();
      template();
    } else if (c == '/' && nesting.awaitsValue()) {
      nesting.value();
      add(Kind.PATTERN, Literal.pattern(text, at));
    } else if (Letters.isDigit(c) || (c == '.' && Letters.isDigit(Letters.at(text, at + 1)))) {
      nesting.value();
      add(Kind.NUMBER, Literal.number(text, at));
    } else {
      int end = Literal.name(text, at);
      if (end > at) {
        word(end);
      } else {
        mark(c);
      }
    }
  }

  private void add(Kind kind, int end) {
    tokens.add(new Token(kind, at, end));
    at = end;
  }

  private void template() {
    int end = Literal.template(text, at + 1);
    if (end - at > 2 && text.startsWith("${", end - 2)) {
      nesting.beginBlank();
    } else {
      nesting.value();
    }
    add(Kind.TEXT, end);
  }

  private void word(int end) {
    String word = end - at > LONGEST_KEYWORD ? "" : text.substring(at, end);
    if (KEYWORDS.contains(word) && !nesting.isAtMember()) {
      nesting.keyword(word, isNewLine);
      add(Kind.KEYWORD, end);
    } else {
      nesting.name(word, isNewLine);
      add(Kind.NAME, end);
    }
  }

  private void mark(char c) {
    String mark = sign(c);
    nesting.mark(mark, isNewLine);
    add(Kind.MARK, at + mark.length());
  }

  private String sign(char c) {
    if ("(){}[];,:".indexOf(c) < 0) {
      for (String sign : SIGNS) {
        // A digit behind ?. makes it a choice of a number below one.
        boolean isChoice = sign.equals("?.") && Letters.isDigit(Letters.at(text, at + 2));
        if (sign.charAt(0) == c && text.startsWith(sign, at) && !isChoice) {
          return sign;
        }
      }
    }
    return text.substring(at, at + Character.charCount(text.codePointAt(at)));
  }
}
