package facetwright.workbench.look;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.control.Tooltip;
import javafx.stage.Screen;
import javafx.stage.Window;

/**
 * A tooltip that stands beside what it tells of, never over it nor over what one types in: below
 * it, or else above, to its right or its left.
 */
public final class Tip extends Tooltip {
  public Tip(String words) {
    super(words);
  }

  @Override
  public void show(Window owner, double x, double y) {
    super.show(owner, x, y);
    Scene scene = owner.getScene();
    Optional<Node> told = scene == null ? Optional.empty() : told(scene.getRoot());
    told.ifPresent(
        node -> {
          Rectangle2D screen = screen(x, y);
          Rectangle2D at = rectangle(node);
          Node focused = scene.getFocusOwner();
          List<Rectangle2D> free =
              focused == null || isLarge(focused, screen)
                  ? List.of(at)
                  : List.of(at, rectangle(focused));
          Rectangle2D place = TipPlace.of(at, free, getWidth(), getHeight(), screen);
          setAnchorX(place.getMinX());
          setAnchorY(place.getMinY());
        });
  }

  /**
   * The script, the net and the like can't be kept free whole: a tip beside a button may lie there.
   */
  private static boolean isLarge(Node node, Rectangle2D screen) {
    return node.getLayoutBounds().getHeight() > screen.getHeight() / 6;
  }

  private static Rectangle2D screen(double x, double y) {
    return Screen.getScreensForRectangle(x, y, 1, 1).stream()
        .findFirst()
        .orElse(Screen.getPrimary())
        .getVisualBounds();
  }

  private static Rectangle2D rectangle(Node node) {
    Bounds b = node.localToScreen(node.getLayoutBounds());
    return new Rectangle2D(b.getMinX(), b.getMinY(), b.getWidth(), b.getHeight());
  }

  /** The node under the pointer that it tells of. */
  private Optional<Node> told(Node root) {
    Deque<Node> open = new ArrayDeque<>(List.of(root));
    while (!open.isEmpty()) {
      Node node = open.pop();
      if (isOn(node)) {
        return Optional.of(node);
      }
      if (node instanceof Parent parent) {
        parent.getChildrenUnmodifiable().stream().filter(Node::isHover).forEach(open::push);
      }
    }
    return Optional.empty();
  }

  @SuppressWarnings("ReferenceEquality") // A tooltip is no other.
  private boolean isOn(Node node) {
    return (node instanceof Control control && control.getTooltip() == this)
        || node.getProperties().containsValue(this);
  }
}
