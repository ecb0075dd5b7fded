package facetwright.script.text;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;

/**
 * The brackets open while a script is cut, and what has just ended there. On that hangs whether a
 * slash divides or begins a regular expression, and whether a brace goes on with a template:
 * ECMA-262, section 12, has a goal symbol for each, chosen by what the grammar lets follow. Kept
 * here are brackets, heads of statements, functions and classes, and ends of lines that end
 * statements (section 12.10). Scripts are strict, so that {@code yield} and {@code await} are no
 * names.
 */
final class Nesting {
  /** Words whose round brackets a statement follows. */
  private static final Set<String> CONTROL = Set.of("if", "while", "for", "with");

  /** Words whose round brackets braces with statements follow. */
  private static final Set<String> BRACED = Set.of("switch", "catch");

  /** Words that a line's end ends the statement behind. */
  private static final Set<String> ALONE = Set.of("return", "break", "continue", "debugger");

  private static final Set<String> VALUES =
      Set.of("this", "super", "null", "true", "false", "undefined");

  private static final Set<String> BEFORE_BLOCK =
      Set.of("else", "do", "try", "catch", "finally", "static");

  /** What a bracket holds. */
  private enum Holds {
    STATEMENTS,
    /** The parts of a class. */
    MEMBERS,
    /** Options, or a pattern of names. */
    FIELDS,
    /** An expression, or arguments. */
    VALUES,
    /** An expression in a blank of a template. */
    BLANK
  }

  /** What has just ended. */
  private enum After {
    /** Something that a value has to follow. */
    SIGN,
    /** Something that a statement follows. */
    STATEMENT,
    /** A value: a slash divides it. */
    VALUE,
    /** A function with an arrow and braces: nothing divides it. */
    ARROW
  }

  /** A head without its braces yet. */
  private enum Head {
    NONE,
    FUNCTION,
    CLASS
  }

  /** An open bracket. */
  private static final class Open {
    private final Holds holds;

    /** The word before a round bracket, if it is one of the language. */
    private final String word;

    /** What has ended once it is closed. */
    private final After after;

    private int questions;
    private Head head = Head.NONE;
    private After afterHead = After.SIGN;

    Open(Holds holds, String word, After after) {
      this.holds = holds;
      this.word = word;
      this.after = after;
    }
  }

  private final Deque<Open> open = new ArrayDeque<>();
  private After after = After.STATEMENT;

  /** The last sign, keyword or {@code async}; empty for any other token. */
  private String last = "";

  /** The word before the round brackets closed last. */
  private String closed = "";

  /** Whether a statement may have begun with {@code async}. */
  private boolean isAsyncFirst;

  Nesting() {
    open.push(new Open(Holds.STATEMENTS, "", After.STATEMENT));
  }

  /** Whether a slash begins a regular expression. */
  boolean awaitsValue() {
    return after != After.VALUE;
  }

  /** Whether a closing brace goes on with a template. */
  boolean isInBlank() {
    for (Open each : open) {
      if (each.holds != Holds.VALUES) {
        return each.holds == Holds.BLANK;
      }
    }
    return false;
  }

  /** Whether the word that comes is a member of what stands before it. */
  boolean isAtMember() {
    return last.equals(".") || last.equals("?.");
  }

  /** A number, a regular expression, or a text to its end. */
  void value() {
    last = "";
    after = After.VALUE;
  }

  /** A blank of a template begins. */
  void beginBlank() {
    open.push(new Open(Holds.BLANK, "", After.SIGN));
    last = "";
    after = After.SIGN;
  }

  /** A blank is over, and what was not closed in it. */
  void endBlank() {
    while (open.peek().holds == Holds.VALUES) {
      open.pop();
    }
    open.pop();
  }

  /**
   * A name.
   *
   * @param isNewLine whether a line ended before it
   */
  void name(String word, boolean isNewLine) {
    boolean isAsync = word.equals("async") && !isAtMember();
    isAsyncFirst = isAsync && mayBegin(isNewLine);
    boolean isLabel = !isNewLine && (last.equals("break") || last.equals("continue"));
    last = isAsync ? word : "";
    after = isLabel ? After.STATEMENT : After.VALUE;
  }

  /**
   * A keyword.
   *
   * @param isNewLine whether a line ended before it
   */
  void keyword(String word, boolean isNewLine) {
    boolean isOf = word.equals("of");
    if (word.equals("function") || word.equals("class")) {
      boolean begins = mayBegin(isNewLine) || (last.equals("async") && isAsyncFirst);
      open.peek().head = word.equals("class") ? Head.CLASS : Head.FUNCTION;
      open.peek().afterHead = begins ? After.STATEMENT : After.VALUE;
    }
    if (isOf && !(open.peek().word.equals("for") && after == After.VALUE)) {
      value();
      return;
    }
    last = word.equals("await") && last.equals("for") ? last : word;
    after =
        VALUES.contains(word)
            ? After.VALUE
            : BEFORE_BLOCK.contains(word) ? After.STATEMENT : After.SIGN;
  }

  /**
   * A sign.
   *
   * @param isNewLine whether a line ended before it
   */
  void mark(String mark, boolean isNewLine) {
    switch (mark) {
      case "(" -> open(Holds.VALUES, CONTROL.contains(last) ? After.STATEMENT : After.VALUE);
      case "[" -> open(Holds.VALUES, After.VALUE);
      case "{" -> brace(isNewLine);
      case ")", "]" -> {
        after = After.VALUE;
        if (open.peek().holds == Holds.VALUES) {
          close();
        }
      }
      case "}" -> {
        while (open.peek().holds == Holds.VALUES) {
          open.pop();
        }
        after = After.STATEMENT;
        if (open.size() > 1) {
          close();
        }
      }
      case "++", "--" -> after = isNewLine ? After.SIGN : after;
      case ":" -> colon();
      case ";" -> {
        open.peek().questions = 0;
        open.peek().head = Head.NONE;
        after = open.peek().holds == Holds.STATEMENTS ? After.STATEMENT : After.SIGN;
      }
      case "," -> {
        open.peek().questions = 0;
        after = After.SIGN;
      }
      case "?" -> {
        open.peek().questions++;
        after = After.SIGN;
      }
      default -> after = After.SIGN;
    }
    last = mark;
  }

  private void open(Holds holds, After then) {
    open.push(new Open(holds, last, then));
    after = holds == Holds.STATEMENTS || holds == Holds.MEMBERS ? After.STATEMENT : After.SIGN;
  }

  private void close() {
    Open was = open.pop();
    closed = was.word;
    after = was.after;
  }

  private void brace(boolean isNewLine) {
    Open here = open.peek();
    boolean isBody = last.equals(")") && (CONTROL.contains(closed) || BRACED.contains(closed));
    boolean isMethod =
        last.equals(")") && (here.holds == Holds.MEMBERS || here.holds == Holds.FIELDS);
    Head head = here.head;
    if (head == Head.FUNCTION || (head == Head.CLASS && !awaitsValue()) || last.equals("class")) {
      here.head = Head.NONE;
      open(head == Head.CLASS ? Holds.MEMBERS : Holds.STATEMENTS, here.afterHead);
    } else if (last.equals("=>")) {
      open(Holds.STATEMENTS, After.ARROW);
    } else if (isBody || isMethod || mayBegin(isNewLine)) {
      open(Holds.STATEMENTS, After.STATEMENT);
    } else {
      open(Holds.FIELDS, After.VALUE);
    }
  }

  /** Of a choice, of a label, or of an option. */
  private void colon() {
    Open here = open.peek();
    boolean isChoice = here.questions > 0;
    here.questions -= isChoice ? 1 : 0;
    here.head = Head.NONE;
    after = !isChoice && here.holds == Holds.STATEMENTS ? After.STATEMENT : After.SIGN;
  }

  /** Whether a statement may begin here. */
  private boolean mayBegin(boolean isNewLine) {
    boolean isEnded = after == After.VALUE || after == After.ARROW || ALONE.contains(last);
    boolean begins = after == After.STATEMENT || (isNewLine && isEnded);
    return begins && (open.peek().holds == Holds.STATEMENTS || last.equals("static"));
  }
}
