package facetwright.workbench;

import facetwright.workbench.desk.Desk;
import facetwright.worker.Settings;
import facetwright.worker.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/** The window's program. */
public final class Workbench extends Application {
  private static final String DEMO = "harbour-lantern.js";

  private Workshop workshop;

  /** Opens the window, on the file after the word {@code open} or on the demo design. */
  public static void open(String... words) {
    Application.launch(Workbench.class, words);
  }

  @Override
  public void start(Stage stage) throws IOException {
    workshop = new Workshop(Settings.USUAL);
    Desk desk = new Desk(workshop::ask, Platform::runLater);
    ExecutorService aside =
        Executors.newSingleThreadExecutor(
            Thread.ofPlatform().daemon().name("facetwright-aside").factory());
    Room room = new Room(desk, aside, Platform::runLater);
    room.dark().set(Boolean.getBoolean("facetwright.dark"));
    Scene scene = new Scene(room, 1280, 800);
    stage.setScene(scene);
    stage.setTitle("Facetwright");
    List<String> words = getParameters().getRaw();
    Path file = words.size() > 1 ? Path.of(words.get(1)) : home().resolve("library").resolve(DEMO);
    desk.lay(file, Files.readString(file));
    stage.show();
  }

  static Path home() {
    return Path.of(System.getProperty("facetwright.home", "."));
  }

  @Override
  public void stop() {
    workshop.close();
  }
}
