package facetwright.workbench.doc;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A document in the part of Markdown that the program's documents are written in: headings by #,
 * paragraphs, lists by -, tables by |, code by fences or four blanks; in a line, code by ` and
 * links.
 */
record DocText(List<Block> blocks) {
  private static final Pattern HEADING = Pattern.compile("(#{1,6}) +(.*)");
  private static final Pattern ITEM = Pattern.compile("( *)(?:[-*]|\\d+\\.) +(.*)");
  private static final Pattern RULE = Pattern.compile("\\|[-:| ]+\\|");
  private static final Pattern INLINE =
      Pattern.compile("`([^`]+)`|\\[([^\\]]+)\\]\\(([^)]+)\\)|\\*([^*\\s][^*]*)\\*");

  DocText {
    blocks = List.copyOf(blocks);
  }

  /** A piece of a document. */
  sealed interface Block {}

  /**
   * @param level 1 for the title
   */
  record Heading(int level, List<Piece> words) implements Block {}

  record Paragraph(List<Piece> words) implements Block {}

  /**
   * A point of a list.
   *
   * @param depth 0 for a list in no other
   */
  record Item(int depth, List<Piece> words) implements Block {}

  record Code(String text) implements Block {}

  /** The first row is its head. */
  record Table(List<List<List<Piece>>> rows) implements Block {}

  /** A piece of a line. */
  sealed interface Piece {
    String text();
  }

  record Words(String text) implements Piece {}

  record Stressed(String text) implements Piece {}

  record Inline(String text) implements Piece {}

  /**
   * @param target a heading's anchor after #, or another document
   */
  record Link(String text, String target) implements Piece {}

  static DocText of(String text) {
    return new Reader(text.lines().toList()).read();
  }

  /** What a link to a heading says after #: its letters, small, with - for blanks. */
  static String anchor(List<Piece> words) {
    return plain(words)
        .toLowerCase(java.util.Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N} _-]", "")
        .replace(' ', '-');
  }

  static String plain(List<Piece> words) {
    return String.join("", words.stream().map(Piece::text).toList());
  }

  static List<Piece> pieces(String line) {
    List<Piece> pieces = new ArrayList<>();
    Matcher m = INLINE.matcher(line);
    int at = 0;
    while (m.find()) {
      if (m.start() > at) {
        pieces.add(new Words(line.substring(at, m.start())));
      }
      if (m.group(1) != null) {
        pieces.add(new Inline(m.group(1)));
      } else if (m.group(2) != null) {
        pieces.add(new Link(m.group(2).replace("`", ""), m.group(3)));
      } else {
        pieces.add(new Stressed(m.group(4)));
      }
      at = m.end();
    }
    if (at < line.length()) {
      pieces.add(new Words(line.substring(at)));
    }
    return List.copyOf(pieces);
  }

  /** Goes through the lines. */
  private static final class Reader {
    private final List<String> lines;
    private final List<Block> blocks = new ArrayList<>();
    private int at;

    Reader(List<String> lines) {
      this.lines = lines;
    }

    DocText read() {
      while (at < lines.size()) {
        String line = lines.get(at);
        Matcher heading = HEADING.matcher(line);
        if (line.isBlank()) {
          at++;
        } else if (line.startsWith("```")) {
          at++;
          code(l -> !l.startsWith("```"), 0);
          at++;
        } else if (line.startsWith("    ")) {
          code(l -> l.startsWith("    ") || l.isBlank(), 4);
        } else if (heading.matches()) {
          blocks.add(new Heading(heading.group(1).length(), pieces(heading.group(2))));
          at++;
        } else if (line.startsWith("|")) {
          table();
        } else {
          words();
        }
      }
      return new DocText(blocks);
    }

    private void code(java.util.function.Predicate<String> goesOn, int indent) {
      StringBuilder code = new StringBuilder();
      while (at < lines.size() && goesOn.test(lines.get(at))) {
        String line = lines.get(at++);
        code.append(line.substring(Math.min(indent, line.length()))).append('\n');
      }
      blocks.add(new Code(code.toString().stripTrailing()));
    }

    private void table() {
      List<List<List<Piece>>> rows = new ArrayList<>();
      while (at < lines.size() && lines.get(at).startsWith("|")) {
        String line = lines.get(at++).strip();
        if (!RULE.matcher(line).matches()) {
          // A bar behind a backslash is one of the text.
          String inner = line.substring(1, line.endsWith("|") ? line.length() - 1 : line.length());
          rows.add(
              Pattern.compile("(?<!\\\\)\\|")
                  .splitAsStream(inner)
                  .map(cell -> pieces(cell.strip().replace("\\|", "|")))
                  .toList());
        }
      }
      blocks.add(new Table(List.copyOf(rows)));
    }

    /** A paragraph, or a point of a list, with the lines that it goes on in. */
    private void words() {
      Matcher item = ITEM.matcher(lines.get(at));
      boolean isItem = item.matches();
      StringBuilder words = new StringBuilder(isItem ? item.group(2) : lines.get(at).strip());
      int depth = isItem ? item.group(1).length() / 2 : 0;
      at++;
      while (at < lines.size() && goesOn(lines.get(at))) {
        words.append(' ').append(lines.get(at++).strip());
      }
      List<Piece> pieces = pieces(words.toString());
      blocks.add(isItem ? new Item(depth, pieces) : new Paragraph(pieces));
    }

    private static boolean goesOn(String line) {
      return !line.isBlank()
          && !line.startsWith("#")
          && !line.startsWith("|")
          && !line.startsWith("```")
          && !ITEM.matcher(line).matches();
    }
  }
}
