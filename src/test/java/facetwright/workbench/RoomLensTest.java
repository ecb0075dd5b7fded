package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.workbench.desk.Selection;
import javafx.geometry.Point2D;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Test;

/** The lens and the inside, in the room. */
class RoomLensTest extends InRoom {
  /** What was under the mirror line's left lies at its right; a click still finds it. */
  @Test
  void turnedOverItIsMirroredAndStillFound() throws Exception {
    Net net = design().net();
    int facet = panel(net, PanelRole.FACET);
    Vec2 place = net.panels().get(facet).outline().centroid();
    Point2D before = Fx.get(() -> room.table().onScreen(place));
    Fx.run(() -> room.strip().inside().set(true));
    Point2D after = Fx.get(() -> room.table().onScreen(place));
    assertThat(after.getX()).isNotCloseTo(before.getX(), within(5.0));
    click(room.table(), after);
    assertThat(Fx.get(() -> desk.selection().get().hasPanel(facet))).isTrue();
  }

  @Test
  void theLensOpensTurnsAndSelects() throws Exception {
    long paints = Fx.get(() -> room.lens().paints());
    Fx.run(() -> room.lens().made().set(0.4));
    Fx.until("it is painted half open", () -> room.lens().paints() > paints);
    Fx.run(() -> room.lens().made().set(1));
    Fx.pulse();
    Fx.until("it is at rest", () -> room.lens().isAtRest());
    WritableImage before = Fx.get(() -> room.lens().snapshot(null, null));
    Fx.run(
        () -> {
          room.lens().requestFocus();
          robot.keyType(KeyCode.LEFT);
        });
    Fx.pulse();
    WritableImage after = Fx.get(() -> room.lens().snapshot(null, null));
    assertThat(differs(before, after)).isTrue();
    click(
        room.lens(),
        Fx.get(() -> new Point2D(room.lens().getWidth() / 2, room.lens().getHeight() / 2)));
    assertThat(Fx.get(() -> desk.selection().get())).isInstanceOf(Selection.OfPanel.class);
  }

  /** Made at its right end and flat at its left; keys go the same way. */
  @Test
  void theLargeLensIsFoldedAlongItsLowerEdge() throws Exception {
    Fx.run(() -> room.corner().swapped().set(true));
    Fx.pulse();
    double low = Fx.get(() -> room.lens().getHeight()) - 31;
    click(room.lens(), new Point2D(61, low));
    assertThat(Fx.get(() -> room.lens().made().get())).isLessThan(0.02);
    Fx.run(() -> robot.keyType(KeyCode.PAGE_UP));
    Fx.pulse();
    assertThat(Fx.get(() -> room.lens().made().get())).isBetween(0.05, 0.07);
    Fx.run(() -> robot.mousePress(MouseButton.PRIMARY));
    for (int i = 0; i < 8; i++) {
      Fx.run(() -> robot.mouseMove(robot.getMouseX() + 60, robot.getMouseY()));
      Fx.pulse();
    }
    Fx.run(() -> robot.mouseRelease(MouseButton.PRIMARY));
    assertThat(Fx.get(() -> room.lens().made().get())).isEqualTo(1);
    assertThat(Fx.get(() -> desk.selection().get())).isEqualTo(Selection.nothing());
    Fx.until("it is at rest", () -> room.lens().isAtRest());
  }

  /** The small net in the corner covers nothing of the large form. */
  @Test
  void theLargeFormStandsBesideTheSmallNet() throws Exception {
    Fx.run(() -> room.corner().swapped().set(true));
    for (double wide : new double[] {1400, 1280, 1024, 800}) {
      Fx.run(() -> room.getScene().getWindow().setWidth(wide));
      Fx.pulse();
      WritableImage seen = Fx.get(() -> room.lens().snapshot(null, null));
      int from = (int) Math.ceil(seen.getWidth() - Fx.get(() -> room.lens().kept().get()));
      int ground = seen.getPixelReader().getArgb(1, 1);
      for (int x = from; x < seen.getWidth() - 4; x++) {
        for (int y = 4; y < seen.getHeight() - 4; y++) {
          assertThat(seen.getPixelReader().getArgb(x, y)).as("at %d, %d", x, y).isEqualTo(ground);
        }
      }
    }
  }

  private static boolean differs(WritableImage one, WritableImage other) {
    for (int x = 0; x < one.getWidth(); x += 3) {
      for (int y = 0; y < one.getHeight(); y += 3) {
        if (one.getPixelReader().getArgb(x, y) != other.getPixelReader().getArgb(x, y)) {
          return true;
        }
      }
    }
    return false;
  }
}
