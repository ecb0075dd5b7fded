package facetwright.net.wrap;

import facetwright.words.Site;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

/** Notes what is said again of all cells of which it was said before. */
final class CellsAgain {
  private CellsAgain() {}

  /** Notes where all cells that are to be cut away are so already. */
  static void noteRemoved(WrapDraft wrap, List<WrapCell> cells, Site at) {
    if (cells.stream().allMatch(c -> c.removed)) {
      wrap.twice.idle("remove", "", cells.getFirst().removedSite, at);
    }
  }

  /**
   * To be called before it is said.
   *
   * @param said what was said of a cell; null for nothing
   */
  static <T> void note(
      WrapDraft wrap,
      String word,
      List<WrapCell> anew,
      Function<WrapCell, T> said,
      Function<T, Site> site,
      Site at) {
    List<T> before = anew.stream().map(said).filter(Objects::nonNull).distinct().toList();
    if (!before.isEmpty()) {
      Set<WrapCell> now = new HashSet<>(anew);
      List<T> left =
          wrap.all().cells().stream()
              .filter(c -> !now.contains(c) && !c.removed)
              .map(said)
              .filter(Objects::nonNull)
              .toList();
      wrap.twice.replaced(word, before, left, site, at);
    }
  }
}
