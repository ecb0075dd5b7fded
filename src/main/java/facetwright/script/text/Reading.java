package facetwright.script.text;

import facetwright.script.text.Token.Kind;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A script cut into tokens, its brackets paired. Tokens go by their index, -1 for none. What is
 * {@link Gathered} below the script is one comment.
 */
public final class Reading {
  private static final String OPENING = "([{";
  private static final String CLOSING = ")]}";

  private final String text;
  private final List<Token> tokens;
  private final int[] partners;
  private final int[] lineStarts;

  private Reading(String text) {
    this.text = text;
    this.tokens = Tokens.of(text);
    this.partners = pair();
    this.lineStarts = lines(text);
  }

  public static Reading of(String text) {
    return new Reading(text);
  }

  private static int[] lines(String text) {
    int[] starts = new int[16];
    int n = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\n' || (c == '\r' && Letters.at(text, i + 1) != '\n')) {
        if (n == starts.length) {
          starts = Arrays.copyOf(starts, 2 * n);
        }
        starts[n++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, n);
  }

  private int[] pair() {
    int[] pairs = new int[tokens.size()];
    Arrays.fill(pairs, -1);
    Deque<Integer> open = new ArrayDeque<>();
    // How many of each sort are open, so that one that closes none is known at once.
    int[] many = new int[OPENING.length()];
    for (int i = 0; i < pairs.length; i++) {
      if (tokens.get(i).kind() != Kind.MARK || tokens.get(i).length() > 1) {
        continue;
      }
      char c = text.charAt(tokens.get(i).start());
      if (OPENING.indexOf(c) >= 0) {
        open.push(i);
        many[OPENING.indexOf(c)]++;
      } else if (CLOSING.indexOf(c) >= 0 && many[CLOSING.indexOf(c)] > 0) {
        close(pairs, open, many, i);
      }
    }
    return pairs;
  }

  /** A bracket closes the nearest open one of its sort; those between stay without a partner. */
  private void close(int[] pairs, Deque<Integer> open, int[] many, int i) {
    int sort = CLOSING.indexOf(text.charAt(tokens.get(i).start()));
    int found;
    do {
      int o = open.pop();
      found = OPENING.indexOf(text.charAt(tokens.get(o).start()));
      many[found]--;
      if (found == sort) {
        pairs[o] = i;
        pairs[i] = o;
      }
    } while (found != sort);
  }

  public String text() {
    return text;
  }

  public List<Token> tokens() {
    return tokens;
  }

  public Token token(int i) {
    return tokens.get(i);
  }

  /** A token's own characters; empty for none. */
  public String word(int i) {
    return i < 0 || i >= tokens.size()
        ? ""
        : text.substring(tokens.get(i).start(), tokens.get(i).end());
  }

  /** What stands between a text's quotes, escapes as they are written. */
  public String inside(int i) {
    String word = word(i);
    boolean closed = word.length() > 1 && word.charAt(0) == word.charAt(word.length() - 1);
    return word.substring(Math.min(1, word.length()), word.length() - (closed ? 1 : 0));
  }

  /**
   * What a text says, its escapes read; empty for what is no whole text, such as a piece of one
   * with blanks.
   */
  public Optional<String> said(int i) {
    String word = word(i);
    char quote = word.isEmpty() ? ' ' : word.charAt(0);
    boolean isWhole = is(i, Kind.TEXT) && quote != '}' && word.length() > 1;
    return isWhole && word.charAt(word.length() - 1) == quote
        ? Optional.of(Literal.said(inside(i)))
        : Optional.empty();
  }

  /** Whether a token is this mark. */
  public boolean is(int i, char mark) {
    return is(i, Kind.MARK)
        && tokens.get(i).length() == 1
        && text.charAt(tokens.get(i).start()) == mark;
  }

  /** Whether a token is this mark of more than one character, or this word. */
  public boolean is(int i, String word) {
    return i >= 0
        && i < tokens.size()
        && tokens.get(i).length() == word.length()
        && text.startsWith(word, tokens.get(i).start());
  }

  /** Whether a member follows it: {@code .} or {@code ?.}. */
  public boolean isDot(int i) {
    return is(i, '.') || is(i, "?.");
  }

  /** Whether a token is a name that stands alone, not a member of something. */
  public boolean isOwnName(int i) {
    return is(i, Kind.NAME) && !isDot(back(i));
  }

  public boolean is(int i, Kind kind) {
    return i >= 0 && i < tokens.size() && tokens.get(i).kind() == kind;
  }

  /** The bracket that a bracket is paired with; -1 for none. */
  public int partner(int i) {
    return i < 0 || i >= partners.length ? -1 : partners[i];
  }

  /** Whether every bracket has its partner. */
  public boolean isPaired() {
    for (int i = 0; i < partners.length; i++) {
      if (partners[i] < 0 && isBracket(i)) {
        return false;
      }
    }
    return true;
  }

  private boolean isBracket(int i) {
    return is(i, Kind.MARK) && "()[]{}".indexOf(text.charAt(tokens.get(i).start())) >= 0;
  }

  /** The token before one, comments left out; -1 for none. */
  public int back(int i) {
    int k = i - 1;
    while (is(k, Kind.COMMENT)) {
      k--;
    }
    return k;
  }

  /** The token after one, comments left out; as many as there are tokens for none. */
  public int forth(int i) {
    int k = i + 1;
    while (is(k, Kind.COMMENT)) {
      k++;
    }
    return k;
  }

  /**
   * Whether a statement may end behind a token: before a semicolon or a closing brace, at the end
   * of the script, or at the end of a line that can't go on in the next (ECMA-262, section 12.10).
   */
  public boolean endsBehind(int i) {
    int next = forth(i);
    if (next >= tokens.size() || is(next, ';') || is(next, '}')) {
      return true;
    }
    boolean isOpen = is(i, Kind.MARK) && !is(i, ')') && !is(i, ']') && !is(i, '}');
    boolean goesOn = is(next, "in") || is(next, "of") || is(next, "instanceof");
    boolean begins = is(next, Kind.MARK) ? is(next, '{') : !goesOn && !is(next, Kind.PATTERN);
    return !isOpen && begins && line(tokens.get(next).start()) > line(tokens.get(i).end());
  }

  /** The last token that begins before an offset; -1 for none. */
  public int before(int offset) {
    int low = 0;
    int high = tokens.size();
    while (low < high) {
      int mid = (low + high) >>> 1;
      if (tokens.get(mid).start() < offset) {
        low = mid + 1;
      } else {
        high = mid;
      }
    }
    return low - 1;
  }

  /** The token that holds the character at an offset; -1 for none. */
  public int at(int offset) {
    int i = before(offset + 1);
    return i >= 0 && tokens.get(i).holds(offset) ? i : -1;
  }

  /** The token at an offset, or else the one that ends there; -1 for none. */
  public int touching(int offset) {
    int i = at(offset);
    int left = before(offset);
    boolean touches = left >= 0 && tokens.get(left).end() == offset;
    boolean weak = i < 0 || is(i, Kind.MARK);
    return touches && weak && !(i >= 0 && is(left, Kind.MARK)) ? left : i;
  }

  public int lineCount() {
    return lineStarts.length;
  }

  /** The line of an offset, from 1. */
  public int line(int offset) {
    int i = Arrays.binarySearch(lineStarts, offset);
    return i >= 0 ? i + 1 : -i - 1;
  }

  /** Where a line begins, counted from 1; a line past the end is the last. */
  public int lineStart(int line) {
    return lineStarts[Math.clamp(line - 1, 0, lineStarts.length - 1)];
  }

  /** Where a line ends, before its line break. */
  public int lineEnd(int line) {
    if (line >= lineStarts.length) {
      return text.length();
    }
    int last = lineStarts[Math.max(1, line)] - 1;
    return last > 0 && text.startsWith("\r\n", last - 1) ? last - 1 : last;
  }

  /** In which column of its line an offset lies, from 1. */
  public int column(int offset) {
    return offset - lineStart(line(offset)) + 1;
  }

  /**
   * The offset of a place; empty where the script is shorter.
   *
   * @param line from 1; 0 for none
   * @param column from 1; 0 where it is not known
   */
  public OptionalInt offset(int line, int column) {
    if (line < 1 || line > lineStarts.length) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(Math.min(lineStart(line) + Math.max(0, column - 1), lineEnd(line)));
  }

  /** The stretch of the token at a place, or of the one before it where it stands at none. */
  public Optional<Stretch> stretch(int line, int column) {
    OptionalInt offset = offset(line, column);
    if (offset.isEmpty()) {
      return Optional.empty();
    }
    int at = at(offset.getAsInt());
    int i = at >= 0 ? at : before(offset.getAsInt());
    return i < 0 ? Optional.empty() : Optional.of(tokens.get(i).stretch());
  }
}
