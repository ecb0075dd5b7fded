package facetwright.script.sandbox;

import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import facetwright.words.InFile;
import facetwright.words.Site;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.graalvm.polyglot.SourceSection;

/**
 * What the engine calls a script and the files that it uses, and which place of theirs a place is
 * that it tells. Names are numbers, so that a file's name can't confuse the reading back.
 */
record Where(Gathered text) {
  /** The script itself. */
  static final String SCRIPT = "design.js";

  /** A file as it stands, and as it runs: a line lower, for a function is put around it. */
  private static final String AS_IT_STANDS = "file-";

  private static final String AS_IT_RUNS = "run-";

  /** The name of any of them, and the number of a file. */
  static final String ANY = "(?:design|(?:file|run)-\\d+)\\.js";

  static final Where NOWHERE = new Where(Gathered.of(""));

  private static final Pattern FRAME =
      Pattern.compile("\\b(" + ANY + "):(\\d+):(\\d+)\\)?(?:\\R|$)");
  private static final Pattern FILE = Pattern.compile("(file|run)-(\\d{1,6})\\.js");

  static String standing(int piece) {
    return AS_IT_STANDS + piece + ".js";
  }

  static String running(int piece) {
    return AS_IT_RUNS + piece + ".js";
  }

  static boolean isScript(String source) {
    return source.equals(SCRIPT);
  }

  /** Whether a source is a file that a script uses. */
  static boolean isFile(String source) {
    return FILE.matcher(source).matches();
  }

  /** Whether a stretch is one of a script, or of a file that one uses. */
  static boolean isOurs(SourceSection section) {
    return isScript(section)
        || (section != null && section.isAvailable() && isFile(section.getSource().getName()));
  }

  static boolean isScript(SourceSection section) {
    return section != null && section.isAvailable() && isScript(section.getSource().getName());
  }

  /**
   * The place of a call, by the engine's own list of calls.
   *
   * @param main where the script itself is, should the list not go back to it
   */
  Site of(String stack, Site main) {
    Matcher frame = FRAME.matcher(stack);
    InFile in = InFile.NONE;
    while (frame.find()) {
      int line = Integer.parseInt(frame.group(2));
      int column = Integer.parseInt(frame.group(3));
      if (frame.group(1).equals(SCRIPT)) {
        return new Site(line, column, in);
      }
      in = in.isKnown() ? in : in(frame.group(1), line, column);
    }
    return in.isKnown() ? new Site(main.line(), main.column(), in) : Site.NONE;
  }

  /**
   * The place where a stretch begins.
   *
   * @param main where the script itself is, should it be one of a file
   */
  Site of(SourceSection section, Site main) {
    if (!isOurs(section)) {
      return Site.NONE;
    }
    Site start = new Site(section.getStartLine(), section.getStartColumn());
    return isScript(section) ? start : in(section, start, main);
  }

  /** The place of a call in a stretch: where the name of what is called stands. */
  Site ofCall(SourceSection section, Site main) {
    Site start = new Site(section.getStartLine(), section.getStartColumn());
    Site called = Callee.in(section.getCharacters(), start);
    return isScript(section) ? called : in(section, called, main);
  }

  private Site in(SourceSection section, Site place, Site main) {
    InFile in = in(section.getSource().getName(), place.line(), place.column());
    return new Site(main.line(), main.column(), in);
  }

  private InFile in(String source, int line, int column) {
    Matcher file = FILE.matcher(source);
    int number = file.matches() ? Integer.parseInt(file.group(2)) : -1;
    if (number < 0 || number >= text.pieces().size()) {
      return InFile.NONE;
    }
    Piece piece = text.pieces().get(number);
    boolean isGathered = piece.state() == Piece.State.GATHERED;
    int own = Math.max(1, file.group(1).equals("run") ? line - 1 : line);
    return new InFile(piece.name(), isGathered ? own + piece.line() - 1 : own, column, isGathered);
  }
}
