package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.workbench.desk.Selection;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.MouseButton;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;

/** A facet picked on the net or on the folded form is told, and its word written. */
class PickingTest extends InRoom {
  private int cell(Net net, String name) {
    for (int p = 0; p < net.panels().size(); p++) {
      if (net.panels().get(p).name().equals(name)) {
        return p;
      }
    }
    throw new AssertionError("no " + name);
  }

  private Point2D middle(int panel) throws Exception {
    Vec2 place = design().net().panels().get(panel).outline().centroid();
    return Fx.get(() -> room.table().onScreen(place));
  }

  @Test
  void aWordIsWrittenWhereOneWasWritingAndTakenBackInOneStep() throws Exception {
    int wall = cell(design().net(), "wall 3 (row 2)");
    String before = Fx.get(() -> desk.text().get());
    int at = before.lastIndexOf("body.") + "body.".length();
    Fx.run(() -> room.card().area().moveTo(at));
    click(room.table(), middle(wall));
    assertThat(Fx.get(() -> desk.selection().get())).isEqualTo(new Selection.OfPanel(wall));
    assertThat(Fx.get(() -> room.table().told().get()))
        .contains("columns(3).rows(\"lower wall\")", "No. ");
    // The caret was led to the line that made it.
    assertThat(Fx.get(() -> room.card().area().getCaretPosition())).isNotEqualTo(at);
    Fx.run(() -> room.writeFacet());
    assertThat(Fx.get(() -> desk.text().get()))
        .isEqualTo(
            before.substring(0, at) + "columns(3).rows(\"lower wall\")" + before.substring(at));
    Fx.run(() -> desk.undo());
    assertThat(Fx.get(() -> desk.text().get())).isEqualTo(before);
  }

  @Test
  void withNothingSelectedOneIsTold() throws Exception {
    String before = Fx.get(() -> desk.text().get());
    Fx.run(() -> desk.selection().set(Selection.nothing()));
    Fx.run(() -> room.writeFacet());
    assertThat(Fx.get(() -> room.table().told().get())).contains("Select a facet first");
    assertThat(Fx.get(() -> desk.text().get())).isEqualTo(before);
  }

  @Test
  void itsMenuOffersEachWord() throws Exception {
    int wall = cell(design().net(), "wall 3 (row 2)");
    Point2D on = middle(wall);
    Fx.run(
        () -> {
          Point2D screen = room.table().localToScreen(on);
          robot.mouseMove(screen.getX(), screen.getY());
        });
    Fx.pulse();
    Fx.run(() -> robot.mouseClick(MouseButton.SECONDARY));
    Fx.until("the menu is there", () -> Window.getWindows().stream().anyMatch(this::isMenu));
    ContextMenu menu =
        Fx.get(
            () ->
                (ContextMenu)
                    Window.getWindows().stream().filter(this::isMenu).findFirst().orElseThrow());
    List<String> items = Fx.get(() -> menu.getItems().stream().map(MenuItem::getText).toList());
    assertThat(items.getFirst()).endsWith("  wall 3 (row 2)");
    assertThat(items)
        .contains("Write columns(3).rows(\"lower wall\")")
        .anyMatch(i -> i != null && i.startsWith("Write columns(\"odd\"), which is "))
        .anyMatch(i -> i != null && i.startsWith("Go to line "));
    Fx.run(menu::hide);
  }

  private boolean isMenu(Window window) {
    return window instanceof ContextMenu menu && menu.isShowing();
  }
}
