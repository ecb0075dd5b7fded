package facetwright.workbench.focus;

import facetwright.workbench.key.Key;
import java.util.ArrayList;
import java.util.List;
import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyEvent;

/** What Tab reaches. */
public final class Reach {
  private Reach() {}

  /** What Tab reaches in a node, in its order; the node itself may be among it. */
  public static List<Node> within(Node node) {
    List<Node> found = new ArrayList<>();
    if (isOpen(node)) {
      collect(node, found);
    }
    return found;
  }

  private static void collect(Node node, List<Node> found) {
    if (!node.isVisible() || node.isDisabled()) {
      return;
    }
    if (node.isFocusTraversable()) {
      found.add(node);
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, found));
    }
  }

  /** Whether a node can take the focus: it is in a window, shows, and is not disabled. */
  public static boolean isOpen(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (!n.isVisible()) {
        return false;
      }
    }
    return node.getScene() != null && !node.isDisabled();
  }

  /** Whether something is a node or lies in it. */
  @SuppressWarnings("ReferenceEquality") // A node is no other.
  public static boolean isIn(Node inner, Node outer) {
    for (Node n = inner; n != null; n = n.getParent()) {
      if (n == outer) {
        return true;
      }
    }
    return false;
  }

  /** Lets Tab go round in a node that lies over all others, for its event filter. */
  public static EventHandler<KeyEvent> goingRound(Node in) {
    return e -> {
      List<Node> all = within(in);
      if (Key.NEXT.is(e) && !all.isEmpty()) {
        int at = all.indexOf(in.getScene().getFocusOwner());
        int next = Key.NEXT.sense(e) < 0 ? (at < 0 ? 0 : at) - 1 : at + 1;
        all.get(Math.floorMod(next, all.size())).requestFocus();
        e.consume();
      }
    };
  }
}
