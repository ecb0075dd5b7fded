package facetwright.workbench;

import java.util.EnumMap;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/** The places one goes to and comes back from; one shows at a time. */
public final class Places extends StackPane {
  /** The places, in their order. */
  public enum Place {
    SHELF,
    TABLE,
    PAPERS
  }

  private final Map<Place, Node> nodes = new EnumMap<>(Place.class);
  private final Map<Place, Node> focused = new EnumMap<>(Place.class);
  private final ObjectProperty<Place> now = new SimpleObjectProperty<>(Place.TABLE);

  Places(Node shelf, Node table, Node papers) {
    nodes.put(Place.SHELF, shelf);
    nodes.put(Place.TABLE, table);
    nodes.put(Place.PAPERS, papers);
    // What nobody has been to yet is not dressed and laid out: the window opens sooner.
    getChildren().setAll(nodes.get(now.get()));
    nodes.forEach((place, node) -> node.setVisible(place == now.get()));
    now.addListener(
        (_, old, place) -> {
          if (getScene() != null) {
            focused.put(old, getScene().getFocusOwner());
          }
          if (!getChildren().contains(nodes.get(place))) {
            getChildren().add(nodes.get(place));
          }
          nodes.forEach((p, node) -> node.setVisible(p == place));
          Node before = focused.get(place);
          if (before != null && before.getScene() == getScene()) {
            before.requestFocus();
          } else {
            nodes.get(place).requestFocus();
          }
        });
  }

  /** Where one is. */
  public ObjectProperty<Place> now() {
    return now;
  }
}
