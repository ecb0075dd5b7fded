package facetwright.workbench.card;

import facetwright.script.Facetwright;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.workbench.Fx;
import facetwright.workbench.Room;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.fxmisc.richtext.CodeArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/** The card in a window without a screen; scripts are evaluated in this process. */
abstract class CardRoom {
  static final String BOX =
      """
      design("Crate", { units: "mm" });
      const side = dial("side", 40, { from: 25, to: 60 });
      const foot = panel("foot", { width: side, height: 50 });
      const back = foot.attach("top", "back", { depth: 90, fold: 70 });
      sheet("A4");
      """;

  final List<String> asked = new ArrayList<>();
  Desk desk;
  ScriptCard card;
  CodeArea area;
  Stage stage;

  @BeforeEach
  void open() throws Exception {
    Fx.start();
    Fx.run(
        () -> {
          desk = new Desk(this::answer, Runnable::run);
          Room room = new Room(desk, Runnable::run, Runnable::run);
          card = room.card();
          area = card.area();
          stage = new Stage();
          stage.setScene(new Scene(room, 980, 760));
          stage.show();
          desk.lay(Path.of("crate.js"), Work.of(BOX), Work.of(BOX));
          area.requestFocus();
        });
    Fx.pulse();
  }

  @AfterEach
  void close() throws Exception {
    Fx.run(stage::close);
  }

  CompletableFuture<Reply> answer(Request request) {
    asked.add(request.source());
    try {
      return CompletableFuture.completedFuture(
          new Reply.Done(
              Facetwright.evaluate(
                  request.fileName(), request.source(), request.settings(), Budget.USUAL)));
    } catch (ScriptException e) {
      return CompletableFuture.completedFuture(
          new Reply.Failed(e.kind(), e.getMessage(), e.site(), e.remedy(), e.mends(), e.said()));
    }
  }

  void type(String letters) throws Exception {
    for (int i = 0; i < letters.length(); i++) {
      char c = letters.charAt(i);
      Fx.run(
          () ->
              Event.fireEvent(
                  area,
                  new KeyEvent(
                      KeyEvent.KEY_TYPED,
                      "" + c,
                      "",
                      KeyCode.UNDEFINED,
                      false,
                      false,
                      false,
                      false)));
    }
  }

  void press(String keys) throws Exception {
    Fx.run(() -> Fx.press(area, keys));
    Fx.pulse();
  }

  void go(String before) throws Exception {
    Fx.run(() -> area.moveTo(area.getText().indexOf(before)));
    Fx.pulse();
  }

  Collection<String> inks(String word) throws Exception {
    return Fx.get(() -> area.getStyleOfChar(area.getText().indexOf(word)));
  }

  String text() throws Exception {
    return Fx.get(area::getText);
  }

  void mouse(javafx.event.EventType<MouseEvent> type, double x, double y, boolean alt) {
    Event.fireEvent(
        area,
        new MouseEvent(
            type,
            x,
            y,
            x,
            y,
            MouseButton.PRIMARY,
            1,
            false,
            false,
            alt,
            false,
            true,
            false,
            false,
            false,
            false,
            false,
            null));
  }

  void point(String word) throws Exception {
    Fx.run(
        () -> {
          int at = area.getText().indexOf(word);
          Bounds place = area.getCharacterBoundsOnScreen(at, at + 1).orElseThrow();
          new Robot().mouseMove(place.getCenterX(), place.getCenterY());
        });
    Fx.pulse();
  }
}
