package facetwright.workbench.shelf;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;

/** Which card an arrow leads to. */
final class CardWay {
  private CardWay() {}

  /** Null where there is none that way, or the key is no arrow. */
  static <T extends Node> T next(List<T> cards, T from, KeyCode key) {
    int at = cards.indexOf(from);
    return switch (key) {
      case LEFT -> at > 0 ? cards.get(at - 1) : null;
      case RIGHT -> at >= 0 && at + 1 < cards.size() ? cards.get(at + 1) : null;
      case UP -> nearest(cards, from, -1);
      case DOWN -> nearest(cards, from, 1);
      default -> null;
    };
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
