package facetwright.workbench;

import facetwright.workbench.focus.Reach;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import org.fxmisc.richtext.CodeArea;

/** A walk through a scene by Tab, as a person makes it who has no mouse. */
final class Tabbing {
  /** More steps than any place has stops: who has not come round by then is caught. */
  private static final int MOST = 400;

  /** A mark may lie so far outside of what it marks, in pixels. */
  private static final double ABOUT = 4;

  private final Scene scene;

  Tabbing(Scene scene) {
    this.scene = scene;
  }

  /** One step; out of the script, where Tab indents, by its own key. */
  Node step(boolean onward) throws Exception {
    return Fx.get(
        () -> {
          boolean indents = scene.getFocusOwner() instanceof CodeArea;
          Fx.press(
              scene.getRoot(), (indents ? "Shortcut+" : "") + (onward ? "" : "Shift+") + "Tab");
          return scene.getFocusOwner();
        });
  }

  /** All stops of one round that begins at a stop and comes back to it. */
  @SuppressWarnings("ReferenceEquality") // A node is no other.
  List<Node> round(Node start, boolean onward) throws Exception {
    Fx.run(start::requestFocus);
    List<Node> stops = new ArrayList<>();
    Node now = start;
    do {
      stops.add(now);
      now = step(onward);
    } while (now != start && stops.size() < MOST);
    return stops;
  }

  /** What it is called by those who hear the window read; empty for nothing. */
  static String name(Node node) {
    if (node.getAccessibleText() != null && !node.getAccessibleText().isBlank()) {
      return node.getAccessibleText();
    }
    String text =
        node instanceof Labeled labeled && !(node instanceof TextInputControl)
            ? labeled.getText()
            : "";
    return text != null && text.matches("(?s).*\\p{L}.*") ? text : "";
  }

  /** What shows and is there to be used, menus excepted. */
  static List<Control> controls(Node in) {
    List<Control> found = new ArrayList<>();
    if (!in.isVisible() || in instanceof MenuBar) {
      return found;
    }
    if (in instanceof ButtonBase
        || in instanceof TextInputControl
        || in instanceof Slider
        || in instanceof ChoiceBox
        || in instanceof ComboBoxBase
        || in instanceof ListView) {
      found.add((Control) in);
    } else if (in instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> found.addAll(controls(child)));
    }
    return found;
  }

  /** Whether the middle of a node is in sight, and not scrolled away. */
  static boolean isInSight(Node node) {
    Bounds at = node.localToScene(node.getLayoutBounds());
    double x = (at.getMinX() + at.getMaxX()) / 2;
    double y = (at.getMinY() + at.getMaxY()) / 2;
    if (x < 0 || y < 0 || x > node.getScene().getWidth() || y > node.getScene().getHeight()) {
      return false;
    }
    for (Node n = node.getParent(); n != null; n = n.getParent()) {
      if (n instanceof ScrollPane pane) {
        Node view = pane.lookup(".viewport");
        Bounds seen = view.localToScene(view.getLayoutBounds());
        if (!seen.contains(x, y)) {
          return false;
        }
      }
    }
    return Reach.isOpen(node);
  }

  /** A picture of a node and of what is just about it. */
  WritableImage picture(Bounds node) throws Exception {
    SnapshotParameters part = new SnapshotParameters();
    part.setViewport(
        new Rectangle2D(
            node.getMinX() - ABOUT,
            node.getMinY() - ABOUT,
            node.getWidth() + 2 * ABOUT,
            node.getHeight() + 2 * ABOUT));
    return Fx.get(() -> scene.getRoot().snapshot(part, null));
  }

  /**
   * How many pixels differ between two pictures by as much as a focus mark has to: 3 to 1, by WCAG
   * 2.2, success criteria 1.4.11 and 2.4.13.
   */
  static int marked(WritableImage with, WritableImage without) {
    PixelReader one = with.getPixelReader();
    PixelReader other = without.getPixelReader();
    int count = 0;
    for (int x = 0; x < with.getWidth(); x++) {
      for (int y = 0; y < with.getHeight(); y++) {
        if (one.getArgb(x, y) != other.getArgb(x, y)
            && Contrast.of(one.getColor(x, y), other.getColor(x, y)) >= 3) {
          count++;
        }
      }
    }
    return count;
  }
}
