package facetwright.turn.write;

import facetwright.geom.Length;
import facetwright.geom.Unit;
import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Language;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lengths that a script writes as plain numbers: each alone where a function takes a length, or
 * as the value of a name that stands alone there. Not found: numbers that the script reckons with.
 */
final class LengthsWritten {
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<skip>\\s+|//[^\\n]*|/\\*.*?\\*/)"
              + "|(?<text>`[^`]*`|\"[^\"\\n]*\"|'[^'\\n]*')"
              + "|(?<name>[A-Za-z_$][\\w$]*)"
              + "|(?<number>(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:e-?\\d+)?)"
              + "|(?<mark>.)",
          Pattern.DOTALL);

  /** Kinds of values that are written as numbers, as they say what they want. */
  private static final Pattern NUMERIC = Pattern.compile("length|number|angle");

  /**
   * One of them.
   *
   * @param start index of its first character, a sign included
   * @param end index after its last
   * @param text as it is written, without blanks behind a sign
   * @param isArgument whether a function takes it, so that it may become a text
   */
  record Literal(int start, int end, String text, boolean isArgument) {
    double amount(Unit unit) {
      return Length.parse(plain(), unit).in(unit);
    }

    /** Without quotes. */
    String plain() {
      return text.replaceAll("[\"']", "").strip();
    }

    boolean isZero() {
      return plain().matches("-?[0.]+");
    }
  }

  private record Token(String text, int start, boolean isName, boolean isNumber) {
    boolean is(String marks) {
      return !isName && !isNumber && text.length() == 1 && marks.contains(text);
    }
  }

  /** A bracket that is open. */
  private static final class Open {
    private final String mark;
    private final String called;
    private final int token;
    private int part;
    private String option = "";

    Open(String mark, String called, int token) {
      this.mark = mark;
      this.called = called;
      this.token = token;
    }
  }

  private final Set<String> dials;
  private final List<Token> tokens = new ArrayList<>();
  private final List<Literal> found = new ArrayList<>();
  private final Set<String> names = new HashSet<>();

  private LengthsWritten(Set<String> dials) {
    this.dials = dials;
  }

  /**
   * @param dials the dials that are lengths, by name
   */
  static List<Literal> of(String source, Set<String> dials) {
    LengthsWritten all = new LengthsWritten(dials);
    Matcher m = TOKEN.matcher(source);
    while (m.find()) {
      if (m.group("skip") == null) {
        all.tokens.add(
            new Token(m.group(), m.start(), m.group("name") != null, m.group("number") != null));
      }
    }
    all.readCalls();
    all.readNames();
    return all.found;
  }

  private void readCalls() {
    Deque<Open> open = new ArrayDeque<>();
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      if (token.is("([{")) {
        boolean isCall = token.is("(") && i > 0 && tokens.get(i - 1).isName;
        open.push(new Open(token.text, isCall ? tokens.get(i - 1).text : "", i));
      } else if (token.is(")]}")) {
        open.poll();
      } else if (token.is(",") && !open.isEmpty()) {
        open.peek().part++;
        open.peek().option = "";
      } else if (token.isName && isAfter(i, "{,") && is(i + 1, ":") && !open.isEmpty()) {
        open.peek().option = token.text;
      } else if (isAlone(i) && takesLength(open, token)) {
        if (token.isName) {
          names.add(token.text);
        } else {
          add(i, true);
        }
      }
    }
  }

  /** Numbers that names stand for which are used as lengths: {@code const lip = 12}, of a list. */
  private void readNames() {
    for (int i = 0; i + 2 < tokens.size(); i++) {
      if (tokens.get(i).isName && names.contains(tokens.get(i).text)) {
        if (is(i + 1, "=") && tokens.get(i + 2).isNumber && isEnd(i + 3)) {
          add(i + 2, false);
        } else if (tokens.get(i + 1).text.equals("of") && is(i + 2, "[")) {
          for (int k = i + 3; k < tokens.size() && !is(k, "]"); k++) {
            if (isAlone(k) && tokens.get(k).isNumber) {
              add(k, false);
            }
          }
        }
      }
    }
  }

  private boolean isEnd(int i) {
    return i >= tokens.size() || is(i, ";,") || tokens.get(i).isName;
  }

  private void add(int i, boolean isArgument) {
    Token token = tokens.get(i);
    int start = is(i - 1, "-") ? tokens.get(i - 1).start : token.start;
    String text = (is(i - 1, "-") ? "-" : "") + token.text;
    if (found.stream().noneMatch(l -> l.start() == start)) {
      found.add(new Literal(start, token.start + token.text.length(), text, isArgument));
    }
  }

  /** Whether it is all that stands between two commas or brackets, with a sign at the most. */
  private boolean isAlone(int i) {
    Token token = tokens.get(i);
    boolean isPlain = token.isName || token.isNumber || isPlainText(token);
    int before = is(i - 1, "-") && token.isNumber ? i - 1 : i;
    return isPlain && isAfter(before, "([{,:") && is(i + 1, ",)]}");
  }

  private static boolean isPlainText(Token token) {
    return token.text.matches("([\"'])\\s*[\\d./\\s-]*\\d[\\d./\\s-]*\\1");
  }

  private boolean isAfter(int i, String marks) {
    return is(i - 1, marks);
  }

  private boolean is(int i, String marks) {
    return i >= 0 && i < tokens.size() && tokens.get(i).is(marks);
  }

  /** Whether the function that it is given to takes a length there. */
  private boolean takesLength(Deque<Open> open, Token token) {
    String option = "";
    boolean inBraces = false;
    for (Open each : open) {
      if (each.mark.equals("{")) {
        if (inBraces) {
          return false;
        }
        inBraces = true;
        // A name alone in braces is its own option.
        option = each.option.isEmpty() && token.isName ? token.text : each.option;
      } else if (each.mark.equals("(")) {
        return takesLength(each, inBraces ? Optional.of(option) : Optional.empty(), token);
      }
    }
    return false;
  }

  private boolean takesLength(Open call, Optional<String> option, Token token) {
    if (call.called.equals("dial")) {
      String name = tokens.get(call.token + 1).text;
      boolean isValue = option.isPresent() || call.part == 1;
      return isValue && name.length() > 2 && dials.contains(name.substring(1, name.length() - 1));
    }
    // Of functions of one name on several things, those that take words there take no numbers.
    boolean isWords = !token.isName && !token.isNumber;
    List<String> wanted =
        Language.things().stream()
            .flatMap(t -> t.functions().stream())
            .filter(f -> f.name().equals(call.called))
            .flatMap(f -> at(f, call.part, option).stream())
            .map(a -> a.kind().wanted())
            .filter(w -> isWords || NUMERIC.matcher(w).find())
            .toList();
    return !wanted.isEmpty() && wanted.stream().allMatch(w -> w.contains("length"));
  }

  private static List<Arg<?>> at(Fn<?> fn, int part, Optional<String> option) {
    return option
        .map(o -> fn.options().stream().filter(a -> a.name().equals(o)).toList())
        .orElseGet(() -> part < fn.places().size() ? List.of(fn.places().get(part)) : List.of());
  }
}
