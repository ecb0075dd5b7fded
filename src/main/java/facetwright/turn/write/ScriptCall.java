package facetwright.turn.write;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A call as a script writes it. Comments and texts are passed over; what a template text calls is
 * not found.
 *
 * @param start index of the name's first character
 * @param arguments index after the opening bracket
 * @param end index after the closing bracket
 */
record ScriptCall(int start, int arguments, int end) {
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<skip>//[^\\n]*|/\\*.*?\\*/|`[^`]*`|\"[^\"\\n]*\"|'[^'\\n]*')"
              + "|(?<call>(?<![.\\w$])[A-Za-z_$][\\w$]*\\s*\\()"
              + "|(?<open>\\()|(?<close>\\))",
          Pattern.DOTALL);

  /** Every call of a name, in the order of the script. */
  static List<ScriptCall> of(String source, String name) {
    List<ScriptCall> found = new ArrayList<>();
    Deque<int[]> open = new ArrayDeque<>();
    Matcher m = TOKEN.matcher(source);
    while (m.find()) {
      if (m.group("call") != null) {
        String called = m.group("call").replaceAll("\\s*\\($", "");
        open.push(new int[] {called.equals(name) ? m.start() : -1, m.end()});
      } else if (m.group("open") != null) {
        open.push(new int[] {-1, m.end()});
      } else if (m.group("close") != null && !open.isEmpty()) {
        int[] began = open.pop();
        if (began[0] >= 0) {
          found.add(new ScriptCall(began[0], began[1], m.end()));
        }
      }
    }
    found.sort(java.util.Comparator.comparingInt(ScriptCall::start));
    return found;
  }

  /** In which line of the script it begins, from 1. */
  int line(String source) {
    return 1 + (int) source.substring(0, start).chars().filter(c -> c == '\n').count();
  }
}
