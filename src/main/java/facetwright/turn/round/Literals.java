package facetwright.turn.round;

import facetwright.geom.Length;
import facetwright.geom.Unit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the numbers and the lengths in quotes that a script writes outside its dials. */
final class Literals {
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<skip>//[^\\n]*|/\\*.*?\\*/|`[^`]*`)"
              + "|(?<text>\"[^\"\\n]*\"|'[^'\\n]*')"
              + "|(?<call>[A-Za-z_$][\\w$]*)(?=\\s*\\()"
              + "|(?<name>[A-Za-z_$][\\w$]*)"
              + "|(?<number>\\d+(?:\\.\\d+)?|\\.\\d+)"
              + "|(?<open>[(])|(?<close>[)])",
          Pattern.DOTALL);

  /** What stands in these calls is a dial's, or no measure of the net. */
  private static final Set<String> ASIDE = Set.of("dial", "design", "sheet", "aim");

  private Literals() {}

  /**
   * A number or a length in quotes.
   *
   * @param start index of its first character
   * @param text as it is written, quotes and all
   * @param mm what it comes to, taken for a length
   */
  record Literal(int start, String text, double mm) {
    boolean isQuoted() {
      return !Character.isDigit(text.charAt(0)) && text.charAt(0) != '.';
    }

    int end() {
      return start + text.length();
    }
  }

  static List<Literal> of(String source, Unit unit) {
    List<Literal> found = new ArrayList<>();
    Deque<String> calls = new ArrayDeque<>();
    String called = "";
    Matcher m = TOKEN.matcher(source);
    while (m.find()) {
      if (m.group("call") != null) {
        called = m.group("call");
      } else if (m.group("open") != null) {
        calls.push(called);
        called = "";
      } else if (m.group("close") != null) {
        calls.poll();
      } else if (calls.stream().noneMatch(ASIDE::contains)) {
        if (m.group("number") != null) {
          double amount = Double.parseDouble(m.group("number"));
          found.add(new Literal(m.start(), m.group("number"), amount * unit.mm()));
        } else if (m.group("text") != null) {
          String text = m.group("text");
          length(text.substring(1, text.length() - 1), unit)
              .ifPresent(mm -> found.add(new Literal(m.start(), text, mm)));
        }
      }
    }
    return found.stream().filter(l -> l.mm > 0).toList();
  }

  private static java.util.OptionalDouble length(String text, Unit unit) {
    try {
      boolean hasUnit = !text.matches("[\\d\\s./-]*");
      return hasUnit
          ? java.util.OptionalDouble.of(Length.parse(text, unit).mm())
          : java.util.OptionalDouble.empty();
    } catch (IllegalArgumentException _) {
      return java.util.OptionalDouble.empty();
    }
  }
}
