package facetwright.workbench;

import facetwright.workbench.Places.Place;
import facetwright.workbench.goal.Wish;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.scene.control.ListView;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javax.imageio.ImageIO;

/** Takes pictures of the window without a screen, for the README and for looking at. */
public final class ScreenPictures {
  private static final int[][] SIZES = {{1280, 800}, {1920, 1080}};

  /**
   * The toolkit without a screen keeps 1000 by 1000 pixels of one, whatever is asked for, and fails
   * when a window reaches beyond. So the window stays small, and what is in it is made as large as
   * the picture.
   */
  private static final String WINDOW = "\"window.wide\":\"720\",\"window.high\":\"480\"";

  /** So much of the width is left of the script. */
  private static final double DIVIDER = 0.66;

  private final Path folder;
  private Visit visit;

  private ScreenPictures(Path folder) {
    this.folder = folder;
  }

  /** Writes all pictures into a folder. */
  public static void main(String[] words) {
    Logger.getLogger("javafx").setLevel(Level.SEVERE);
    try {
      Path folder = Path.of(words[0]);
      Files.createDirectories(folder);
      for (int[] size : SIZES) {
        for (boolean dark : new boolean[] {false, true}) {
          new ScreenPictures(folder).take(size[0], size[1], dark);
        }
      }
    } catch (Exception | AssertionError e) {
      // The toolkit's thread would go on for ever.
      e.printStackTrace();
      System.exit(1);
    }
    System.exit(0);
  }

  private void take(int width, int height, boolean dark) throws Exception {
    Path state = Files.createTempDirectory("facetwright-pictures");
    Files.writeString(state.resolve("state.json"), "{\"tour.seen\":\"yes\"," + WINDOW + "}");
    visit = Visit.start(state, Path.of("").toAbsolutePath(), null);
    Fx.run(() -> visit.stage.getScene().setRoot(new Hall(visit.house, width, height)));
    String end = "-" + width + (dark ? "-dark" : "") + ".png";
    Fx.run(() -> visit.house.room().dark().set(dark));
    Fx.pulse();
    Fx.run(() -> visit.house.room().fold().divide(DIVIDER));
    made();
    editing();
    save("editing" + end);
    half();
    save("half-open" + end);
    fault();
    save("fault" + end);
    Fx.run(() -> visit.house.places().now().set(Place.PAPERS));
    drawn();
    handout();
    save("papers" + end);
    Fx.run(() -> visit.house.places().now().set(Place.SHELF));
    Fx.until("the shelf has its pictures", () -> visit.house.shelf().isAtRest());
    save("shelf" + end);
    if (width == SIZES[0][0] && !dark) {
      large();
      save("large-text" + end);
      Fx.run(() -> visit.house.commands().named("usual-text").run());
      aim();
      save("aim" + end);
      round();
      save("round" + end);
      fit();
      save("fit" + end);
      Fx.run(() -> visit.house.commands().named("about").run());
      save("about" + end);
      Fx.run(() -> visit.house.commands().named("keys").run());
      save("keys" + end);
    }
    visit.close();
  }

  private void made() throws Exception {
    Fx.until(
        "the design is made",
        () -> visit.house.desk().design().get() != null && !visit.house.desk().working().get());
    Fx.until("the folded form is shown", () -> visit.house.room().lens().isAtRest());
    Fx.pulse();
    Fx.pulse();
  }

  /** The caret in the line that makes the walls' gussets. */
  private void editing() throws Exception {
    Fx.run(
        () -> {
          var area = visit.house.room().card().area();
          area.requestFocus();
          area.moveTo(area.getText().indexOf(".gusset()") + 7);
          area.requestFollowCaret();
          visit.house.desk().turn("sides", "10");
        });
    made();
  }

  private void half() throws Exception {
    Fx.run(
        () -> {
          visit.house.room().corner().swapped().set(true);
          visit.house.room().lens().made().set(0.55);
        });
    made();
  }

  private void fault() throws Exception {
    Fx.run(
        () -> {
          visit.house.room().corner().swapped().set(false);
          visit.house.room().lens().made().set(1);
          var area = visit.house.room().card().area();
          int at = area.getText().indexOf(".columns(\"odd\")");
          area.replaceText(at, at + ".columns".length(), ".colums");
          area.moveTo(at + 4);
          area.requestFollowCaret();
        });
    Fx.until("the fault is told", () -> visit.house.desk().fault().get() != null);
    Fx.pulse();
    Fx.pulse();
  }

  private void handout() throws Exception {
    Fx.run(
        () -> {
          ListView<?> list = (ListView<?>) visit.house.papers().lookup(".list-view");
          for (int i = 0; i < list.getItems().size(); i++) {
            if (list.getItems().get(i).toString().contains("name=Handout,")) {
              list.getSelectionModel().select(i);
            }
          }
        });
    drawn();
  }

  /** Papers are listed and drawn beside the window, one thing after the other. */
  private void drawn() throws Exception {
    Fx.until(
        "a page is shown",
        () ->
            !visit.house.papers().work().going().get()
                && Fx.says(visit.house.papers(), "Page 1 of"));
    Fx.pulse();
  }

  private void aim() throws Exception {
    Fx.run(() -> visit.house.goals().open(new Wish("height", "120", "")));
    Fx.until("dials are found", () -> visit.house.goals().told().contains("height"));
    Fx.pulse();
  }

  private void round() throws Exception {
    Fx.run(() -> visit.house.commands().named("round").run());
    Fx.run(
        () -> {
          visit.house.rounding().ruler("1/8 in");
          Fx.button(visit.house.rounding(), "Find dials").fire();
        });
    Fx.until("it is rounded", () -> visit.house.rounding().told().contains("lie on the marks"));
    Fx.pulse();
  }

  private void fit() throws Exception {
    Fx.run(() -> visit.house.commands().named("fit-sheet").run());
    Fx.run(
        () -> {
          visit.house.fitting().sheet("Letter");
          Fx.button(visit.house.fitting(), "Find dials").fire();
        });
    Fx.until("it fits", () -> visit.house.fitting().told().contains("Turned so"));
    Fx.pulse();
  }

  /** The script put right again, in large letters. */
  private void large() throws Exception {
    Fx.run(
        () -> {
          visit.house.places().now().set(Place.TABLE);
          visit.house.desk().undo();
          for (int i = 0; i < 5; i++) {
            visit.house.commands().named("larger").run();
          }
        });
    Fx.until("the script is right", () -> visit.house.desk().fault().get() == null);
    made();
  }

  private void save(String name) throws Exception {
    Fx.pulse();
    WritableImage image = Fx.get(() -> visit.house.snapshot(null, null));
    Files.createDirectories(folder);
    ImageIO.write(FewColours.of(image), "png", folder.resolve(name).toFile());
  }

  /** Gives the window's content a size of its own, whatever the window's is. */
  private static final class Hall extends Region {
    private final Region content;
    private final double width;
    private final double height;

    private Hall(Region content, double width, double height) {
      this.content = content;
      this.width = width;
      this.height = height;
      getChildren().add(content);
    }

    @Override
    protected void layoutChildren() {
      content.resizeRelocate(0, 0, width, height);
    }
  }
}
