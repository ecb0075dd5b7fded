package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.workbench.desk.Selection;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.Test;

/** The room with real workers: what one does with keys and mouse, and what comes of it. */
class RoomTest extends InRoom {
  /** A key more in the number of a dial, and the net grows; a key too many, and it stays. */
  @Test
  void typingChangesTheNetAndABrokenScriptLeavesIt() throws Exception {
    double before = design().net().box().height();
    int end = Fx.get(() -> desk.text().get().indexOf("\"wall\", 60") + "\"wall\", 6".length());
    Fx.run(
        () -> {
          room.card().area().requestFocus();
          room.card().area().moveTo(end);
          robot.keyType(KeyCode.DELETE);
        });
    type("5");
    Fx.until("the walls are 65 mm", () -> desk.design().get().net().box().height() > before + 9);
    assertThat(design().net().box().height()).isCloseTo(before + 10, within(1e-6));

    Fx.run(
        () -> room.card().area().end(org.fxmisc.richtext.NavigationActions.SelectionPolicy.CLEAR));
    Fx.run(() -> room.card().area().moveTo(room.card().area().getLength()));
    type("\nwrup");
    Fx.until("the fault is told", () -> desk.fault().get() != null && !desk.working().get());
    assertThat(Fx.get(() -> desk.fault().get().site().line()))
        .isEqualTo(Fx.get(() -> (int) desk.text().get().lines().count()));
    assertThat(Fx.get(() -> Fx.says(room, "The last good net stays on the table"))).isTrue();
    assertThat(design().net().box().height()).isCloseTo(before + 10, within(1e-6));
    assertThat(Fx.get(() -> desk.text().get())).endsWith("wrup");
  }

  @Test
  void draggingADialTurnsItAndIsTakenBackInOneStep() throws Exception {
    Slider wall = Fx.get(() -> slider("wall"));
    double height = design().folded().measures().height();
    Fx.run(
        () -> {
          Bounds thumb =
              wall.lookup(".thumb").localToScreen(wall.lookup(".thumb").getLayoutBounds());
          robot.mouseMove(thumb.getCenterX(), thumb.getCenterY());
          robot.mousePress(MouseButton.PRIMARY);
        });
    for (int i = 1; i <= 4; i++) {
      Fx.run(() -> robot.mouseMove(robot.getMouseX() + 8, robot.getMouseY()));
      Fx.pulse();
    }
    Fx.run(() -> robot.mouseRelease(MouseButton.PRIMARY));
    Fx.until(
        "the lantern is taller",
        () -> desk.design().get().folded().measures().height() > height + 2);
    double value = Fx.get(() -> Double.parseDouble(desk.settings().get().get("wall")));
    assertThat(value * 2)
        .as("on the half millimetre")
        .isCloseTo(Math.rint(value * 2), within(1e-9));
    Fx.run(() -> desk.undo());
    Fx.until(
        "it is as before",
        () -> Math.abs(desk.design().get().folded().measures().height() - height) < 1e-9);
    assertThat(Fx.get(() -> desk.settings().get())).isEmpty();
  }

  private Slider slider(String dial) {
    return (Slider)
        room.drawer().lookupAll(".slider").stream()
            .filter(n -> dial.equals(n.getAccessibleText()))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void aDialTakesTypedValuesAndTheNearestToOthers() throws Exception {
    TextField field =
        Fx.get(
            () ->
                (TextField)
                    room.drawer().lookupAll(".text-field").stream()
                        .filter(n -> "Value of side".equals(n.getAccessibleText()))
                        .findFirst()
                        .orElseThrow());
    Fx.run(
        () -> {
          field.setText("1 1/8 in");
          field.getOnAction().handle(new javafx.event.ActionEvent());
        });
    Fx.until("the side is 28.575 mm", () -> Math.abs(dial("side") - 28.575) < 1e-9);
    double most =
        Fx.get(
            () ->
                desk.design().get().dials().stream()
                    .filter(d -> d.name().equals("side"))
                    .findFirst()
                    .orElseThrow()
                    .to());
    Fx.run(
        () -> {
          field.setText("99");
          field.getOnAction().handle(new javafx.event.ActionEvent());
        });
    Fx.until("it takes the most it can", () -> dial("side") == most);
    assertThat(Fx.get(() -> desk.fault().get())).isNull();
    assertThat(Fx.get(() -> Fx.says(room.drawer(), "side can't be 99: it goes from"))).isTrue();
  }

  private double dial(String name) {
    return desk.design().get().dials().stream()
        .filter(d -> d.name().equals(name))
        .findFirst()
        .orElseThrow()
        .value();
  }

  @Test
  void aClickedPanelIsSelectedAndItsLineFound() throws Exception {
    Net net = design().net();
    int tab = panel(net, PanelRole.TAB);
    int facet = panel(net, PanelRole.FACET);
    for (int p : new int[] {tab, facet}) {
      Vec2 place = net.panels().get(p).outline().centroid().plus(new Vec2(3, 0));
      click(room.table(), Fx.get(() -> room.table().onScreen(place)));
      Fx.until("panel " + p + " is selected", () -> desk.selection().get().hasPanel(p));
      int line = net.panels().get(p).site().line();
      Fx.until(
          "the caret is in line " + line,
          () -> room.card().area().getCurrentParagraph() + 1 == line);
    }
    int score = 3;
    Vec2 middle = net.segment(net.scores().get(score).a()).middle();
    click(room.table(), Fx.get(() -> room.table().onScreen(middle)));
    assertThat(Fx.get(() -> desk.selection().get())).isInstanceOf(Selection.OfScore.class);
  }

  /** The two ends of a side snap to its corners, and what lies between is its length. */
  @Test
  void measuresFromCornerToCorner() throws Exception {
    Net net = design().net();
    var side = net.segment(net.scores().getFirst().a());
    Fx.run(() -> room.table().measures().set(true));
    for (Vec2 end : List.of(side.from(), side.to())) {
      Fx.pulse();
      click(room.table(), Fx.get(() -> room.table().onScreen(end)).add(0.5, 0.5));
    }
    assertThat(Fx.get(() -> room.table().measured())).isCloseTo(side.length(), within(1e-9));
  }

  /** A script that nothing can stop costs a worker process, not the window. */
  @Test
  void aKilledWorkerCostsNothingButAMessage() throws Exception {
    String good = Fx.get(() -> desk.text().get());
    Net net = design().net();
    Fx.run(() -> desk.text().set("function f() { try { f(); } catch (e) { f(); } }\nf();\n"));
    Fx.until("it is told", () -> desk.fault().get() != null);
    assertThat(Fx.get(() -> desk.fault().get().message())).isNotBlank();
    assertThat(design().net()).isEqualTo(net);
    double height = design().folded().measures().height();
    Fx.run(() -> desk.text().set(good.replace("\"wall\", 60", "\"wall\", 66")));
    Fx.until(
        "the next script is answered",
        () -> desk.design().get().folded().measures().height() > height + 5);
    assertThat(Fx.get(() -> desk.fault().get())).isNull();
  }
}
