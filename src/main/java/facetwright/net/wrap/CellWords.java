package facetwright.net.wrap;

import facetwright.words.Spoken;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** What a wrap's cells are called, and how a script speaks of them: by column and row. */
final class CellWords {
  private static final String PIECE_OF = " of ";

  private final List<WrapRow> rows;
  private final String[][] names;

  /** Where each name stands: row and column. */
  private final Map<String, List<Integer>> places = new HashMap<>();

  CellWords(List<WrapRow> rows, int columns) {
    this.rows = rows;
    names = new String[rows.size()][columns];
    for (int r = 0; r < rows.size(); r++) {
      boolean alone = alike(r).size() == 1;
      for (int c = 0; c < columns; c++) {
        names[r][c] = rows.get(r).name() + " " + (c + 1) + (alone ? "" : " (row " + (r + 1) + ")");
        places.putIfAbsent(names[r][c], List.of(r, c));
      }
    }
  }

  /** The name of a cell. */
  String of(int row, int column) {
    return names[row][column];
  }

  /** The words for a panel of the wrap; those of its cell for a gusset, none for flap and floor. */
  Spoken spoken(String panel) {
    List<Integer> place = places.get(panel.substring(startOfCell(panel)));
    return place == null ? Spoken.NONE : words(place.getFirst(), place.getLast());
  }

  /** A gusset is called "… of" its cell. */
  private int startOfCell(String panel) {
    int of = places.containsKey(panel) ? -1 : panel.indexOf(PIECE_OF);
    return of < 0 ? 0 : of + PIECE_OF.length();
  }

  /** The rows called as one is, from the bottom up. */
  private List<Integer> alike(int row) {
    String name = rows.get(row).name();
    return IntStream.range(0, rows.size())
        .filter(r -> rows.get(r).name().equals(name))
        .boxed()
        .toList();
  }

  private Spoken words(int row, int column) {
    String name = rows.get(row).name();
    List<Integer> alike = alike(row);
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
