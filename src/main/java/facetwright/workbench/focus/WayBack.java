package facetwright.workbench.focus;

import javafx.beans.value.ChangeListener;
import javafx.scene.Node;

/** The way back to where the focus was before something came up. */
public final class WayBack {
  private Node before;

  /** Remembers where the focus is, unless it is in what comes up already. */
  public void remember(Node comingUp) {
    Node now = comingUp.getScene() == null ? null : comingUp.getScene().getFocusOwner();
    if (now != null && !Reach.isIn(now, comingUp)) {
      before = now;
    }
  }

  /** Remembers where the focus goes away from, whenever it goes into a node. */
  public void watch(Node node) {
    ChangeListener<Node> leaving =
        (_, old, now) -> {
          if (old != null && now != null && Reach.isIn(now, node) && !Reach.isIn(old, node)) {
            before = old;
          }
        };
    node.sceneProperty()
        .addListener(
            (_, was, scene) -> {
              if (was != null) {
                was.focusOwnerProperty().removeListener(leaving);
              }
              if (scene != null) {
                scene.focusOwnerProperty().addListener(leaving);
              }
            });
  }

  /**
   * Gives the focus back, if it is still in what goes away or nowhere.
   *
   * @param otherwise where to, if where it was cannot take it any more
   */
  @SuppressWarnings("ReferenceEquality") // A scene is no other.
  public void go(Node goingAway, Runnable otherwise) {
    Node now = goingAway.getScene() == null ? null : goingAway.getScene().getFocusOwner();
    Node to = before;
    before = null;
    if (now != null && !Reach.isIn(now, goingAway) && Reach.isOpen(now)) {
      return;
    }
    if (to != null && to.getScene() == goingAway.getScene() && Reach.isOpen(to)) {
      to.requestFocus();
    } else {
      otherwise.run();
    }
  }
}
