package facetwright.workbench;

import facetwright.workbench.focus.Reach;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * The places one goes to and comes back from; one shows at a time. Each keeps what had the focus in
 * it.
 */
final class Places extends StackPane {
  /** The places, in their order. */
  public enum Place {
    SHELF,
    TABLE,
    PAPERS
  }

  private final Map<Place, Node> nodes = new EnumMap<>(Place.class);
  private final Map<Place, Node> focused = new EnumMap<>(Place.class);
  private final ObjectProperty<Place> now = new SimpleObjectProperty<>(Place.TABLE);
  private final Function<Place, Node> first;

  /**
   * @param first what has the focus in a place to begin with
   */
  Places(Node shelf, Node table, Node papers, Function<Place, Node> first) {
    this.first = first;
    nodes.put(Place.SHELF, shelf);
    nodes.put(Place.TABLE, table);
    nodes.put(Place.PAPERS, papers);
    // What nobody has been to yet is not dressed and laid out: the window opens sooner.
    getChildren().setAll(nodes.get(now.get()));
    nodes.forEach((place, node) -> node.setVisible(place == now.get()));
    sceneProperty().addListener((_, _, scene) -> watch(scene));
    now.addListener((_, _, place) -> go(place));
  }

  private void watch(Scene scene) {
    if (scene != null) {
      scene.focusOwnerProperty().addListener((_, _, owner) -> keep(owner));
    }
  }

  private void keep(Node owner) {
    nodes.forEach(
        (place, whole) -> {
          if (owner != null && Reach.isIn(owner, whole)) {
            focused.put(place, owner);
          }
        });
  }

  private void go(Place place) {
    if (!getChildren().contains(nodes.get(place))) {
      getChildren().add(nodes.get(place));
    }
    Node before = focused.get(place);
    // It shows before the other goes, so that the focus is handed over and not lost.
    nodes.get(place).setVisible(true);
    boolean back = before != null && Reach.isOpen(before) && Reach.isIn(before, nodes.get(place));
    (back ? before : first.apply(place)).requestFocus();
    nodes.forEach((p, node) -> node.setVisible(p == place));
  }

  /**
   * Shows notices above all places, but at the table under its net, which keeps its place and size.
   */
  void showNotices(VBox above, VBox atTheTable, List<? extends Node> notices) {
    Runnable place =
        () -> {
          above.getChildren().removeAll(notices);
          atTheTable.getChildren().clear();
          (now.get() == Place.TABLE ? atTheTable : above).getChildren().addAll(notices);
        };
    place.run();
    now.addListener((_, _, _) -> place.run());
  }

  /** Where one is. */
  ObjectProperty<Place> now() {
    return now;
  }

  /** Gives the focus to what has it in this place to begin with. */
  void rest() {
    first.apply(now.get()).requestFocus();
  }
}
