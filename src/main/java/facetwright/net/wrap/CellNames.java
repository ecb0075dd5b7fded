package facetwright.net.wrap;

import facetwright.net.Ask;
import facetwright.net.NetException;
import facetwright.words.NearName;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * What cells of a wrap are called: by their row, "wall", by row and column, "wall 3", by every
 * second column, "odd" or "odd wall", by column, "column 3", or "all".
 */
final class CellNames {
  private static final Pattern SECOND = Pattern.compile("(even|odd)(?: (.+))?");
  private static final Pattern COLUMN = Pattern.compile("column (\\d{1,3})");
  private static final Pattern NUMBERED = Pattern.compile("(.+) (\\d{1,3})");

  private final WrapDraft wrap;
  private final Site at;

  private CellNames(WrapDraft wrap, Site at) {
    this.wrap = wrap;
    this.at = at;
  }

  /**
   * The cells that these words mean.
   *
   * @param words none for all cells but tabs
   */
  static CellSelection of(WrapDraft wrap, List<String> words, Site at) {
    CellNames names = new CellNames(wrap, at);
    Set<WrapCell> meant = new LinkedHashSet<>();
    if (words.isEmpty()) {
      wrap.all().cells().stream().filter(c -> c.tab == null).forEach(meant::add);
    }
    words.forEach(word -> meant.addAll(names.meant(word).cells()));
    return new CellSelection(wrap, List.copyOf(meant));
  }

  /**
   * The panels that close an end of a wrap, by name: the floor, or those of the outermost row that
   * is there.
   *
   * @param end "top" or "bottom"; any other word stands for itself
   */
  static List<String> closing(WrapDraft wrap, String end) {
    boolean isTop = end.equals("top");
    if (!isTop && !end.equals("bottom")) {
      return List.of(end);
    }
    if (!isTop && wrap.floor != null) {
      return List.of(WrapFloor.NAME);
    }
    for (int i = 0; i < wrap.rows.size(); i++) {
      int r = isTop ? wrap.rows.size() - 1 - i : i;
      List<String> kept =
          IntStream.range(0, wrap.columnCount())
              .filter(c -> !wrap.cells[r][c].removed)
              .mapToObj(c -> wrap.name(r, c))
              .toList();
      if (!kept.isEmpty()) {
        return kept;
      }
    }
    return List.of(end);
  }

  private CellSelection meant(String word) {
    String plain = word.strip().toLowerCase(Locale.ROOT);
    for (WrapCell cell : wrap.all().cells()) {
      if (wrap.name(cell.row, cell.column).equals(word.strip())) {
        return new CellSelection(wrap, List.of(cell));
      }
    }
    if (isRow(word)) {
      return wrap.all().rows(word, at);
    }
    Matcher second = SECOND.matcher(plain);
    if (second.matches()) {
      CellSelection columns = wrap.all().columns(second.group(1), at);
      return second.group(2) == null ? columns : columns.rows(row(word, second.group(2)), at);
    }
    Matcher column = COLUMN.matcher(plain);
    if (column.matches()) {
      return wrap.all().columns(List.of(number(column.group(1))), at);
    }
    Matcher numbered = NUMBERED.matcher(word.strip());
    if (numbered.matches()) {
      return wrap.all()
          .rows(row(word, numbered.group(1)), at)
          .columns(List.of(number(numbered.group(2))), at);
    }
    throw unknown(word);
  }

  private int number(String digits) {
    return Ask.count("a column's number", Integer.parseInt(digits), 1, wrap.columnCount(), at);
  }

  private String row(String word, String row) {
    if (!isRow(row)) {
      throw unknown(word);
    }
    return row;
  }

  private boolean isRow(String word) {
    try {
      wrap.rowTest(word, at);
      return true;
    } catch (NetException e) {
      return false;
    }
  }

  private NetException unknown(String word) {
    List<String> rows = wrap.rows.stream().map(WrapRow::name).distinct().toList();
    List<String> offered = new ArrayList<>(rows);
    rows.forEach(r -> offered.add(r + " 1"));
    rows.forEach(r -> offered.add("odd " + r));
    offered.addAll(List.of("even", "odd", "column 1", "all"));
    return new NetException(
        "no cell of the wrap is called \""
            + word
            + "\"; cells are called "
            + NearName.listed(word, offered),
        at,
        NearName.mends(word, offered));
  }
}
