package facetwright.script.text;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.SequencedSet;

/**
 * A script and the files that it uses in one text: the script, then each file below a line that
 * names it. So they travel together, and every line of the script keeps its number. Whatever reads
 * a script reads it up to the first such line.
 *
 * @param main the script's own text
 * @param pieces the files below it, in order
 */
public record Gathered(String main, List<Piece> pieces) {
  private static final String RULE = "// ======== ";
  private static final String END = " ========";

  /** So many files a script may use. */
  public static final int MOST = 20;

  public Gathered {
    pieces = List.copyOf(pieces);
  }

  /** Takes a text apart. */
  public static Gathered of(String text) {
    int end = end(text);
    List<Piece> pieces = new ArrayList<>();
    for (int at = end; at < text.length(); ) {
      int stop = lineEnd(text, at);
      int start = text.startsWith("\r\n", stop) ? stop + 2 : Math.min(text.length(), stop + 1);
      int next = next(text, start);
      Mark mark = mark(text, at).orElseThrow();
      String inner = mark.state() == Piece.State.LACKING ? mark.why() : text.substring(start, next);
      pieces.add(new Piece(mark.name(), mark.state(), inner, lines(text, start)));
      at = next;
    }
    return new Gathered(text.substring(0, end), pieces);
  }

  /** Where the script's own text ends and what is gathered begins. */
  static int end(String text) {
    return next(text, 0);
  }

  /** The text without what was only read for it: as it lies on disk, or stands in the window. */
  public static String own(String text) {
    Gathered all = of(text);
    List<Piece> kept = all.pieces.stream().filter(p -> p.state() == Piece.State.GATHERED).toList();
    return kept.size() == all.pieces.size() ? text : new Gathered(all.main, kept).text();
  }

  /** The same to be handed on: what was read for the script becomes a part of its text. */
  public Gathered gathered() {
    return new Gathered(
        main,
        pieces.stream()
            .map(
                p ->
                    p.state() == Piece.State.READ
                        ? new Piece(p.name(), Piece.State.GATHERED, p.text())
                        : p)
            .toList());
  }

  /** All in one text. */
  public String text() {
    if (pieces.isEmpty()) {
      return main;
    }
    StringBuilder text = new StringBuilder(main);
    String ends = main.contains("\r\n") ? "\r\n" : "\n";
    for (Piece piece : pieces) {
      boolean isLacking = piece.state() == Piece.State.LACKING;
      if (!text.isEmpty() && !isEnd(text.charAt(text.length() - 1))) {
        text.append(ends);
      }
      text.append(RULE).append(piece.state().said()).append(": ").append(piece.name());
      text.append(isLacking ? ": " + piece.text() : "").append(END).append(ends);
      text.append(isLacking ? "" : piece.text());
    }
    return text.toString();
  }

  /** The file of a name. */
  public Optional<Piece> piece(String name) {
    return pieces.stream().filter(p -> p.name().equals(name)).findFirst();
  }

  /** The same with more files at the end. */
  public Gathered with(List<Piece> more) {
    List<Piece> all = new ArrayList<>(pieces);
    all.addAll(more);
    return new Gathered(main, all);
  }

  /** The names of the files that a script says it uses, as far as they are written in quotes. */
  public static SequencedSet<String> used(String script) {
    Reading reading = Reading.of(script);
    SequencedSet<String> names = new LinkedHashSet<>();
    for (Call call : Call.of(reading, "use")) {
      List<Span> given = call.arguments(reading);
      if (!given.isEmpty() && given.getFirst().first() == given.getFirst().last()) {
        reading.said(given.getFirst().first()).ifPresent(names::add);
      }
    }
    return names;
  }

  /**
   * The names that a file offers who uses it: its functions, constants and classes that stand in no
   * braces.
   */
  public static List<Name> offered(String file) {
    Reading reading = Reading.of(file);
    SequencedSet<String> seen = new LinkedHashSet<>();
    return Names.of(reading).all().stream()
        .filter(n -> n.maker() >= 0 && n.until() == file.length() && stands(reading, n.maker()))
        .filter(n -> seen.add(n.word()))
        .toList();
  }

  /** Whether a statement begins with what makes a name. */
  private static boolean stands(Reading reading, int maker) {
    int before = reading.back(maker);
    before = reading.is(before, "async") ? reading.back(before) : before;
    return before < 0
        || reading.is(before, ';')
        || reading.is(before, '}')
        || reading.line(reading.token(before).end()) < reading.line(reading.token(maker).start());
  }

  private record Mark(Piece.State state, String name, String why) {}

  /** Where the next line stands that names a file, from a line's beginning on; else the end. */
  private static int next(String text, int from) {
    for (int at = text.indexOf(RULE, from); at >= 0; at = text.indexOf(RULE, at + 1)) {
      boolean begins = at == from || isEnd(text.charAt(at - 1));
      if (begins && mark(text, at).isPresent()) {
        return at;
      }
    }
    return text.length();
  }

  private static Optional<Mark> mark(String text, int at) {
    String line = text.substring(at, lineEnd(text, at));
    for (Piece.State state : Piece.State.values()) {
      String start = RULE + state.said() + ": ";
      if (line.startsWith(start) && line.endsWith(END) && line.length() > start.length()) {
        String inner =
            line.substring(start.length(), Math.max(start.length(), line.length() - END.length()));
        boolean isLacking = state == Piece.State.LACKING;
        int colon = isLacking ? inner.indexOf(": ") : inner.length();
        String name = colon < 0 ? "" : inner.substring(0, colon);
        if (FileNames.fault(name).isEmpty()) {
          return Optional.of(new Mark(state, name, isLacking ? inner.substring(colon + 2) : ""));
        }
      }
    }
    return Optional.empty();
  }

  /** As lines are counted everywhere. */
  private static boolean isEnd(char c) {
    return c == '\n' || c == '\r';
  }

  private static int lineEnd(String text, int from) {
    int i = from;
    while (i < text.length() && !isEnd(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private static int lines(String text, int end) {
    int lines = 1;
    for (int i = 0; i < end; i++) {
      char c = text.charAt(i);
      lines += c == '\n' || (c == '\r' && Letters.at(text, i + 1) != '\n') ? 1 : 0;
    }
    return lines;
  }
}
