package facetwright.net.wrap;

import facetwright.words.Spoken;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** How a script speaks of a wrap's cells: by column and row. */
final class CellWords {
  private CellWords() {}

  /** The words for a panel of the wrap; those of its cell for a gusset, none for flap and floor. */
  static Spoken of(WrapDraft wrap, String panel) {
    for (int r = 0; r < wrap.rows.size(); r++) {
      for (int c = 0; c < wrap.columnCount(); c++) {
        String cell = WrapBuild.name(wrap, r, c);
        if (panel.equals(cell) || panel.endsWith(" of " + cell)) {
          return words(wrap, r, c);
        }
      }
    }
    return Spoken.NONE;
  }

  private static Spoken words(WrapDraft wrap, int row, int column) {
    String name = wrap.rows.get(row).name();
    List<Integer> alike =
        IntStream.range(0, wrap.rows.size())
            .filter(r -> wrap.rows.get(r).name().equals(name))
            .boxed()
            .toList();
    String own =
        alike.size() == 1
            ? inQuotes(name)
            : row == alike.getFirst()
                ? inQuotes(WrapDraft.LOWER + name)
                : row == alike.getLast()
                    ? inQuotes(WrapDraft.UPPER + name)
                    : Integer.toString(row + 1);
    List<String> words = new ArrayList<>();
    words.add("columns(" + (column + 1) + ").rows(" + own + ")");
    words.add("rows(" + own + ")");
    if (alike.size() > 1) {
      words.add("rows(" + inQuotes(name) + ")");
    }
    words.add("columns(" + (column + 1) + ")");
    words.add(column % 2 == 0 ? "columns(\"odd\")" : "columns(\"even\")");
    words.add("columns(\"all\")");
    return new Spoken(words);
  }

  private static String inQuotes(String word) {
    return '"' + word.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
