package facetwright.script;

import facetwright.net.Site;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What becomes of a call's result, as far as the script's text tells.
 *
 * @param fate what becomes of it
 * @param name what it is kept as; where it is dropped, the name that the chain of calls begins
 *     with; empty for none
 * @param start where the chain of calls begins
 * @param end where the call ends
 */
record Chain(Fate fate, String name, int start, int end) {
  private static final Chain TAKEN = new Chain(Fate.TAKEN, "", 0, 0);

  /** What becomes of what a call comes to. */
  enum Fate {
    /** The call is a statement of its own. */
    DROPPED,
    /** It is given a name. */
    NAMED,
    /** A function of the script gives it back. */
    GIVEN_BACK,
    /** It is a part of something else, such as a list; or the text does not tell. */
    TAKEN
  }

  /**
   * @param script the script, its comments and texts blanked out
   * @param site where the name of the called function stands
   */
  static Chain of(String script, Site site) {
    int called = offset(script, site);
    int end = called < 0 ? -1 : callEnd(script, called);
    int start = end < 0 ? -1 : chainStart(script, called);
    if (start < 0) {
      return TAKEN;
    }
    int before = back(script, start);
    boolean newLine = script.substring(before + 1, start).indexOf('\n') >= 0;
    char last = before < 0 ? ';' : script.charAt(before);
    String word = wordBefore(script, before + 1);
    if (last == '=') {
      int target = back(script, before);
      String name = wordBefore(script, target + 1);
      int dot = back(script, target + 1 - name.length());
      boolean member = dot >= 0 && script.charAt(dot) == '.';
      return name.isEmpty() || member || !ends(script, end)
          ? TAKEN
          : new Chain(Fate.NAMED, name, target + 1 - name.length(), end);
    }
    boolean arrow = last == '>' && before > 0 && script.charAt(before - 1) == '=';
    if (arrow || word.equals("return")) {
      return new Chain(Fate.GIVEN_BACK, "", start, end);
    }
    boolean begins =
        ";{})".indexOf(last) >= 0
            || word.equals("else")
            || word.equals("do")
            || (newLine && (!word.isEmpty() || "]\"".indexOf(last) >= 0));
    return begins && ends(script, end)
        ? new Chain(Fate.DROPPED, start == called ? "" : head(script, start), start, end)
        : TAKEN;
  }

  /** The script with spaces for its comments and quotes for its texts, place for place. */
  static String blanked(String script) {
    StringBuilder text = new StringBuilder(script);
    Matcher each = Blanks.EACH.matcher(script);
    while (each.find()) {
      char by = each.group().startsWith("/") ? ' ' : '"';
      for (int i = each.start(); i < each.end(); i++) {
        if (script.charAt(i) != '\n') {
          text.setCharAt(i, by);
        }
      }
    }
    return text.toString();
  }

  /** What is blanked out. */
  private static final class Blanks {
    static final Pattern EACH =
        Pattern.compile(
            "//[^\n]*+|/\\*(?s:.*?)(?:\\*/|\\z)"
                + "|\"(?:[^\"\\\\\n]|\\\\.)*+\"?|'(?:[^'\\\\\n]|\\\\.)*+'?"
                + "|`(?:[^`\\\\]|\\\\(?s:.))*+`?");
  }

  /** Whether the script speaks of its name anywhere else, other than to give it another value. */
  boolean isNamedElsewhere(String script) {
    Matcher each =
        Pattern.compile("(?<![\\w$.])" + Pattern.quote(name) + "(?![\\w$])").matcher(script);
    while (each.find()) {
      boolean own = each.start() >= start && each.start() < end;
      int sign = forth(script, each.end());
      boolean given = charAt(script, sign) == '=' && "=>".indexOf(charAt(script, sign + 1)) < 0;
      boolean made = wordBefore(script, back(script, each.start()) + 1).matches("const|let|var");
      if (!own && !given && !made) {
        return true;
      }
    }
    return false;
  }

  private static int offset(String script, Site site) {
    int at = 0;
    for (int line = 1; line < site.line() && at >= 0; line++) {
      at = script.indexOf('\n', at) + 1;
      at = at == 0 ? -1 : at;
    }
    int offset = at + site.column() - 1;
    boolean there = site.isKnown() && at >= 0 && offset >= 0 && offset < script.length();
    return there && isPart(script.charAt(offset)) ? offset : -1;
  }

  /** Where the call ends whose function's name stands there; -1 where it does not. */
  private static int callEnd(String script, int called) {
    int at = called;
    while (at < script.length() && isPart(script.charAt(at))) {
      at++;
    }
    int open = forth(script, at);
    return charAt(script, open) == '(' ? partner(script, open, 1) + 1 : -1;
  }

  /** Where the chain begins that has a member at its end; -1 where that can't be told. */
  private static int chainStart(String script, int member) {
    int start = member;
    while (true) {
      int dot = back(script, start);
      if (dot < 0 || script.charAt(dot) != '.') {
        return start;
      }
      int last = back(script, dot);
      while (last >= 0 && ")]".indexOf(script.charAt(last)) >= 0) {
        int open = partner(script, last, -1);
        last = open < 0 ? -1 : back(script, open);
      }
      String word = wordBefore(script, last + 1);
      if (word.isEmpty()) {
        return -1;
      }
      start = last + 1 - word.length();
    }
  }

  /** The bracket that goes with one, found by counting brackets of every sort; -1 for none. */
  private static int partner(String script, int bracket, int step) {
    int depth = 0;
    for (int i = bracket; i >= 0 && i < script.length(); i += step) {
      char c = script.charAt(i);
      depth += "([{".indexOf(c) >= 0 ? step : ")]}".indexOf(c) >= 0 ? -step : 0;
      if (depth == 0) {
        return i;
      }
    }
    return step > 0 ? script.length() - 1 : -1;
  }

  /** Whether a statement may end there. */
  private static boolean ends(String script, int at) {
    int next = forth(script, at);
    char c = charAt(script, next);
    boolean newLine = script.substring(at, Math.min(next, script.length())).indexOf('\n') >= 0;
    return ";},".indexOf(c) >= 0
        || next >= script.length()
        || (newLine && (isPart(c) || c == '"' || c == '{'));
  }

  private static String head(String script, int start) {
    int end = start;
    while (end < script.length() && isPart(script.charAt(end))) {
      end++;
    }
    return charAt(script, forth(script, end)) == '.' ? script.substring(start, end) : "";
  }

  private static String wordBefore(String script, int end) {
    int from = end;
    while (from > 0 && isPart(script.charAt(from - 1))) {
      from--;
    }
    return script.substring(from, Math.max(from, end));
  }

  /** The last character before a place that is no blank; -1 for none. */
  private static int back(String script, int from) {
    int i = from - 1;
    while (i >= 0 && Character.isWhitespace(script.charAt(i))) {
      i--;
    }
    return i;
  }

  private static int forth(String script, int from) {
    int i = from;
    while (i < script.length() && Character.isWhitespace(script.charAt(i))) {
      i++;
    }
    return i;
  }

  private static char charAt(String script, int at) {
    return at >= 0 && at < script.length() ? script.charAt(at) : ' ';
  }

  private static boolean isPart(char c) {
    return Character.isJavaIdentifierPart(c) && c != '\u0000';
  }
}
