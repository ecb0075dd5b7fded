package facetwright.workbench.card.text;

import facetwright.script.text.Edit;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What keys do to a script beyond writing a letter: indents, comments, whole lines. */
public final class Typing {
  /** What one step inward is. */
  public static final String STEP = "  ";

  private Typing() {}

  /** A new line, as far in as this one, and a step more after an open bracket. */
  public static Edit enter(String text, Stretch selected) {
    int start = lineStart(text, selected.start());
    String indent = indent(text, start);
    indent = indent.substring(0, Math.min(indent.length(), selected.start() - start));
    String before = text.substring(start, selected.start()).stripTrailing();
    char last = before.isEmpty() ? ' ' : before.charAt(before.length() - 1);
    int open = "([{".indexOf(last);
    if (open < 0) {
      return Edit.replace(selected.start(), selected.end(), "\n" + indent);
    }
    String inner = "\n" + indent + STEP;
    boolean closes =
        selected.end() < text.length() && text.charAt(selected.end()) == ")]}".charAt(open);
    int caret = selected.start() + inner.length();
    return new Edit(
        selected.start(), selected.end(), inner + (closes ? "\n" + indent : ""), caret, caret);
  }

  /**
   * A closing bracket: a step outward where nothing but space stands before it on its line, and
   * typed over where it already stands and all brackets are paired. Empty where it is just a
   * letter.
   */
  public static Optional<Edit> close(Reading reading, int caret, char bracket) {
    String text = reading.text();
    int start = lineStart(text, caret);
    if (caret < text.length() && text.charAt(caret) == bracket && reading.isPaired()) {
      return Optional.of(new Edit(caret, caret, "", caret + 1, caret + 1));
    }
    boolean alone = caret > start && text.substring(start, caret).isBlank();
    return alone
        ? Optional.of(Edit.replace(Math.max(start, caret - STEP.length()), caret, "" + bracket))
        : Optional.empty();
  }

  /** A step inward: the lines selected, or the caret to its next stop. */
  public static Edit inward(String text, Stretch selected) {
    if (!text.substring(selected.start(), selected.end()).contains("\n")) {
      int column = selected.start() - lineStart(text, selected.start());
      String space = " ".repeat(STEP.length() - column % STEP.length());
      return Edit.replace(selected.start(), selected.end(), space);
    }
    return lines(text, selected, line -> line.isBlank() ? line : STEP + line);
  }

  /** A step outward of the lines selected. */
  public static Edit outward(String text, Stretch selected) {
    return lines(
        text,
        selected,
        line -> {
          int space = line.length() - line.stripLeading().length();
          return line.substring(Math.min(space, STEP.length()));
        });
  }

  /** Makes the lines selected a comment, or script again where all are comments. */
  public static Edit comment(String text, Stretch selected) {
    Stretch lines = wholeLines(text, selected);
    List<String> all = text.substring(lines.start(), lines.end()).lines().toList();
    boolean off =
        all.stream().filter(l -> !l.isBlank()).allMatch(l -> l.stripLeading().startsWith("//"))
            && all.stream().anyMatch(l -> !l.isBlank());
    int in =
        all.stream()
            .filter(l -> !l.isBlank())
            .mapToInt(l -> l.length() - l.stripLeading().length())
            .min()
            .orElse(0);
    return lines(
        text,
        selected,
        line ->
            line.isBlank()
                ? line
                : off
                    ? line.replaceFirst("// ?", "")
                    : line.substring(0, in) + "// " + line.substring(in));
  }

  /** The lines selected once more, below. */
  public static Edit twice(String text, Stretch selected) {
    Stretch lines = wholeLines(text, selected);
    String copy = "\n" + text.substring(lines.start(), lines.end());
    return new Edit(
        lines.end(),
        lines.end(),
        copy,
        selected.start() + copy.length(),
        selected.end() + copy.length());
  }

  /** Moves the lines selected past their neighbour; empty at the script's end. */
  public static Optional<Edit> move(String text, Stretch selected, boolean up) {
    Stretch lines = wholeLines(text, selected);
    String moved = text.substring(lines.start(), lines.end());
    if (up ? lines.start() == 0 : lines.end() == text.length()) {
      return Optional.empty();
    }
    if (up) {
      int from = lineStart(text, lines.start() - 1);
      String other = text.substring(from, lines.start() - 1);
      int shift = from - lines.start();
      return Optional.of(
          new Edit(
              from,
              lines.end(),
              moved + "\n" + other,
              selected.start() + shift,
              selected.end() + shift));
    }
    int to = lineEnd(text, lines.end() + 1);
    String other = text.substring(lines.end() + 1, to);
    int shift = other.length() + 1;
    return Optional.of(
        new Edit(
            lines.start(),
            to,
            other + "\n" + moved,
            selected.start() + shift,
            selected.end() + shift));
  }

  /**
   * Changes each line selected; afterwards the lines are selected, or the caret keeps its place.
   */
  private static Edit lines(String text, Stretch selected, UnaryOperator<String> change) {
    Stretch whole = wholeLines(text, selected);
    List<String> changed = new ArrayList<>();
    for (String line : text.substring(whole.start(), whole.end()).split("\n", -1)) {
      changed.add(change.apply(line));
    }
    String out = String.join("\n", changed);
    if (selected.isEmpty()) {
      int shift = out.length() - (whole.end() - whole.start());
      int caret = Math.max(whole.start(), selected.start() + shift);
      return new Edit(whole.start(), whole.end(), out, caret, caret);
    }
    return new Edit(whole.start(), whole.end(), out, whole.start(), whole.start() + out.length());
  }

  private static Stretch wholeLines(String text, Stretch selected) {
    boolean atStart = selected.end() > selected.start() && text.charAt(selected.end() - 1) == '\n';
    int last = atStart ? selected.end() - 1 : selected.end();
    return new Stretch(lineStart(text, selected.start()), lineEnd(text, last));
  }

  private static int lineStart(String text, int offset) {
    return text.lastIndexOf('\n', offset - 1) + 1;
  }

  private static int lineEnd(String text, int offset) {
    int end = text.indexOf('\n', offset);
    return end < 0 ? text.length() : end;
  }

  private static String indent(String text, int start) {
    int end = start;
    while (end < text.length() && (text.charAt(end) == ' ' || text.charAt(end) == '\t')) {
      end++;
    }
    return text.substring(start, end);
  }

  /**
   * Where Home leads in a line: to its first word, and from there to its very beginning.
   *
   * @param at the place in the line
   */
  public static int home(String line, int at) {
    int word = line.length() - line.stripLeading().length();
    return at == word ? 0 : word;
  }
}
