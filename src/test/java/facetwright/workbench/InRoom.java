package facetwright.workbench;

import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.worker.Settings;
import facetwright.worker.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;

/** A room with real workers, the lantern on its table. */
abstract class InRoom {
  static final Path LANTERN = LibraryDesigns.file("harbour-lantern");
  final ExecutorService aside =
      Executors.newSingleThreadExecutor(Thread.ofPlatform().daemon().factory());
  static Workshop workshop;
  Desk desk;
  Room room;
  Stage stage;
  Robot robot;

  @BeforeAll
  static void hire() throws Exception {
    Fx.start();
    workshop = new Workshop(Settings.USUAL);
  }

  @AfterAll
  static void letGo() {
    workshop.close();
  }

  @BeforeEach
  void open() throws Exception {
    String script = Files.readString(LANTERN);
    Fx.run(
        () -> {
          desk = new Desk(workshop::ask, Platform::runLater);
          room = new Room(desk, aside, Platform::runLater);
          stage = new Stage();
          stage.setScene(new Scene(room, 980, 760));
          stage.setX(0);
          stage.setY(0);
          stage.show();
          robot = new Robot();
          desk.lay(LANTERN, Work.of(script), Work.of(script));
        });
    Fx.until("the lantern lies on the table", () -> desk.design().get() != null);
    Fx.pulse();
  }

  @AfterEach
  void close() throws Exception {
    Fx.run(() -> stage.close());
    aside.shutdown();
  }

  Design design() throws Exception {
    return Fx.get(() -> desk.design().get());
  }

  void click(Node in, Point2D place) throws Exception {
    Fx.run(
        () -> {
          Point2D on = in.localToScreen(place);
          robot.mouseMove(on.getX(), on.getY());
        });
    Fx.pulse();
    Fx.run(() -> robot.mouseClick(MouseButton.PRIMARY));
    Fx.pulse();
  }

  void type(String text) throws Exception {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      KeyCode code =
          c == '\n' ? KeyCode.ENTER : KeyCode.getKeyCode(String.valueOf(Character.toUpperCase(c)));
      Fx.run(() -> robot.keyType(code));
    }
    Fx.pulse();
  }

  static int panel(Net net, PanelRole role) {
    for (int p = 0; p < net.panels().size(); p++) {
      if (net.panels().get(p).role() == role) {
        return p;
      }
    }
    throw new AssertionError(role);
  }
}
