package facetwright.workbench.shelf;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;

/** Which card an arrow leads to. */
final class CardWay {
  private CardWay() {}

  /**
   * Null where there is none that way.
   *
   * @param across 1 to the right, -1 to the left, 0 up or down
   * @param down 1 down, -1 up
   */
  static <T extends Node> T next(List<T> cards, T from, int across, int down) {
    if (across == 0) {
      return nearest(cards, from, down);
    }
    int at = cards.indexOf(from);
    int to = at + across;
    return at >= 0 && to >= 0 && to < cards.size() ? cards.get(to) : null;
  }

  private static <T extends Node> T nearest(List<T> cards, T from, int sense) {
    double y = place(from).getCenterY();
    double x = place(from).getCenterX();
    double high = place(from).getHeight() / 2;
    Stream<T> that = cards.stream().filter(c -> sense * (place(c).getCenterY() - y) > high);
    return that.min(
            Comparator.<T>comparingDouble(c -> Math.rint(Math.abs(place(c).getCenterY() - y)))
                .thenComparingDouble(c -> Math.abs(place(c).getCenterX() - x)))
        .orElse(null);
  }

  private static Bounds place(Node node) {
    return node.localToScene(node.getBoundsInLocal());
  }
}
