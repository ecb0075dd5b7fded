package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.workbench.Places.Place;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Small letters and large ones, in a window of 1280 by 800. */
class TextScalingTest {
  private static final double[] SIZES = {12, 16, 20, 24};

  @TempDir private Path folder;

  /** No button is cut off or pushed out, and the net keeps a quarter of the window's height. */
  @Test
  void allIsThereAtEverySize() throws Exception {
    Files.writeString(
        folder.resolve("state.json"),
        "{\"tour.seen\":\"yes\",\"window.wide\":\"1280\",\"window.high\":\"800\"}");
    Visit visit = Visit.start(folder, Path.of("").toAbsolutePath(), null);
    House house = visit.house;
    Fx.until("the design is made", () -> house.desk().design().get() != null);
    String script = house.desk().text().get();
    Fx.run(() -> house.desk().text().set(script.replace("hole: 3", "hole: 19")));
    Fx.until("its findings are told", () -> Fx.says(house.room(), "A hole in"));
    Fx.run(() -> house.places().now().set(Place.PAPERS));
    Fx.until("a page is shown", () -> Fx.says(house.papers(), "Page 1 of"));
    Fx.run(() -> house.places().now().set(Place.SHELF));
    Fx.until("the shelf is there", () -> house.shelf().isAtRest());
    Fx.run(() -> house.desk().text().set(house.desk().text().get() + "\nwrup()"));
    Fx.until("a fault is told", () -> house.desk().fault().get() != null);
    Fx.run(() -> house.commands().named("aim").run());
    Fx.run(() -> house.commands().named("replace").run());
    Fx.run(() -> house.notices().tell("test", "Something to say", "And some words about it."));
    for (double size : SIZES) {
      Fx.run(() -> house.textSize().pixels().set(size));
      for (Place place : Place.values()) {
        Fx.run(() -> house.places().now().set(place));
        Fx.pulse();
        Fx.pulse();
        List<String> cut = Fx.get(() -> cutOff(house));
        assertThat(cut).as("cut off at %s px, %s", size, place).isEmpty();
      }
      Fx.run(() -> house.places().now().set(Place.TABLE));
      Fx.pulse();
      Fx.pulse();
      assertThat(Fx.get(() -> shortened(house.room().drawer())))
          .as("words of the dials at %s px", size)
          .isEmpty();
      assertThat(Fx.get(() -> top(Fx.button(house.goals(), "Close"))))
          .as("the buttons of a question at %s px", size)
          .isEqualTo(Fx.get(() -> top(Fx.button(house.goals(), "Find dials"))), within(2.0));
      Fx.run(() -> house.room().fold().divide(0.95));
      Fx.pulse();
      Fx.pulse();
      assertThat(Fx.get(() -> cutOff(house))).as("a narrow script at %s px", size).isEmpty();
      Fx.run(() -> house.room().fold().divide(0.66));
      Fx.pulse();
      assertThat(Fx.get(() -> house.room().table().getHeight()))
          .as("the net at %s px", size)
          .isGreaterThanOrEqualTo(800 / 4.0);
    }
    visit.close();
  }

  private static double top(Node node) {
    return node.localToScene(node.getLayoutBounds()).getMinY();
  }

  /** Words that end in dots for want of room, and fields that reach beyond what they scroll in. */
  private static List<String> shortened(Parent in) {
    List<String> found = new ArrayList<>();
    for (Node child : in.getChildrenUnmodifiable()) {
      if (child instanceof Label label && label.getWidth() < label.prefWidth(-1) - 0.5) {
        found.add(label.getText());
      } else if (child instanceof TextField field && isBeyond(field)) {
        found.add(field.getText());
      } else if (child instanceof Parent parent && !(child instanceof Control)) {
        found.addAll(shortened(parent));
      }
    }
    return found;
  }

  private static boolean isBeyond(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (n instanceof ScrollPane pane) {
        Node view = pane.lookup(".viewport");
        double end = view.localToScene(view.getLayoutBounds()).getMaxX();
        return node.localToScene(node.getLayoutBounds()).getMaxX() > end + 0.5;
      }
    }
    return false;
  }

  private static List<String> cutOff(Node in) {
    List<String> found = new ArrayList<>();
    if (!in.isVisible()) {
      return found;
    }
    if (in instanceof ButtonBase || in instanceof ChoiceBox) {
      Control control = (Control) in;
      Bounds at = in.localToScene(in.getLayoutBounds());
      boolean small =
          control.getWidth() < control.prefWidth(-1) - 0.5
              || control.getHeight() < control.prefHeight(-1) - 0.5;
      boolean aside = at.getMinX() < -0.5 || at.getMaxX() > in.getScene().getWidth() + 0.5;
      boolean below = at.getMinY() < -0.5 || at.getMaxY() > in.getScene().getHeight() + 0.5;
      boolean out = aside || (below && !isScrolled(in));
      if (small || out) {
        found.add(Tabbing.name(in) + " " + at);
      }
    } else if (in instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> found.addAll(cutOff(child)));
    }
    return found;
  }

  private static boolean isScrolled(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (n instanceof ScrollPane) {
        return true;
      }
    }
    return false;
  }
}
