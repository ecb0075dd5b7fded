package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.design.Design;
import facetwright.workbench.Places.Place;
import facetwright.workbench.command.Command;
import facetwright.workbench.command.CommandBar;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.look.Shade;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HouseTest {
  private static final String BOX =
      """
      /*
       * tags: box
       * setting: Low = tall 20
       */
      design("Plain box", { units: "mm" });
      const tall = dial("tall", 30, { from: 20, to: 40 });
      prism({ sides: 4, side: 30, height: tall }).unfold({ tab: 6 });
      """;

  @TempDir private Path folder;
  private Path state;
  private Path home;
  private Visit visit;
  private final StyleWarnings warnings = new StyleWarnings();

  @BeforeEach
  void aHome() throws Exception {
    warnings.listen();
    state = folder.resolve("state");
    home = folder.resolve("home");
    Path library = Files.createDirectories(home.resolve("library"));
    for (String name : new String[] {House.DEMO, "fog-drum.js"}) {
      Files.copy(Path.of("library", name), library.resolve(name));
    }
    Files.createDirectories(state);
    Files.writeString(
        state.resolve("state.json"),
        "{\"tour.seen\":\"yes\",\"folder.own\":\""
            + folder.resolve("own").toString().replace("\\", "\\\\")
            + "\"}");
  }

  @AfterEach
  void leave() throws Exception {
    if (visit != null) {
      visit.close();
    }
    warnings.leave();
    assertThat(warnings.said()).as("said of the style sheets").isEmpty();
  }

  private void start(Path file) throws Exception {
    visit = Visit.start(state, home, file);
    Fx.until("the first design is made", () -> visit.house.desk().design().get() != null);
  }

  private void press(String keys) throws Exception {
    Fx.run(() -> Fx.press(visit.house, keys));
  }

  private void click(String button) throws Exception {
    Fx.pulse();
    Fx.run(() -> Fx.button(visit.house, button).fire());
  }

  private Path box() throws Exception {
    return Files.writeString(folder.resolve("box.js"), BOX);
  }

  @Test
  void savesByKeyAndBeginsThereTheNextTime() throws Exception {
    start(null);
    Path mine = folder.resolve("mine.js");
    visit.answers.add(mine);
    Fx.run(() -> visit.house.room().card().area().appendText("// mine\n"));
    assertThat(Fx.get(() -> WindowState.title(visit.house.desk()).get()))
        .isEqualTo("Untitled design (not saved) – Facetwright");
    press("Shortcut+S");
    assertThat(Files.readString(mine)).startsWith("/*").endsWith("// mine\n");
    Fx.run(() -> visit.house.room().dark().set(true));
    Fx.run(() -> visit.house.room().fold().divide(0.5));
    visit.close();
    start(null);
    assertThat(Fx.get(() -> WindowState.title(visit.house.desk()).get()))
        .isEqualTo("mine.js – Facetwright");
    assertThat(visit.text()).endsWith("// mine\n");
    assertThat(Fx.get(() -> visit.house.room().dark().get())).isTrue();
    assertThat(Fx.get(() -> visit.house.room().fold().divider())).isBetween(0.45, 0.55);
  }

  /** One writes on at once, and no pin of the design before is left in the margin. */
  @Test
  void aNewDesignIsWrittenInAtOnce() throws Exception {
    start(Files.writeString(folder.resolve("wide.js"), BOX.replace("side: 30", "side: 300")));
    Fx.until("its findings are marked", () -> visit.house.lookup(".margin-pin") != null);
    Fx.run(() -> visit.house.toPapers().requestFocus());
    press("Shortcut+N");
    Fx.until(
        "the new one is made",
        () -> {
          Design made = visit.house.desk().design().get();
          return made != null && made.title().equals("New design");
        });
    Fx.pulse();
    assertThat(Fx.get(() -> visit.house.getScene().getFocusOwner()))
        .isEqualTo(visit.house.room().card().area());
    assertThat(Fx.get(() -> visit.house.room().card().lookupAll(".margin-pin"))).isEmpty();
  }

  @Test
  void closingWithUnsavedChangesAsks() throws Exception {
    start(box());
    Fx.run(() -> visit.house.room().card().area().appendText("// more\n"));
    press("Shortcut+Q");
    assertThat(visit.quit).isFalse();
    assertThat(Fx.get(() -> Fx.says(visit.house, "Save the changes to box.js?"))).isTrue();
    Fx.pulse();
    press("Esc");
    assertThat(visit.quit).isFalse();
    press("Shortcut+Q");
    click("Save");
    assertThat(visit.quit).isTrue();
    assertThat(folder.resolve("box.js")).content().endsWith("// more\n");
  }

  @Test
  void whatWasKeptIsOfferedAfterACrash() throws Exception {
    start(box());
    Fx.run(() -> visit.house.room().card().area().appendText("// unsaved\n"));
    visit.pass();
    // A killed program leaves its files and no lock: a copy of the folder is just that.
    Path left = folder.resolve("left").resolve("unsaved");
    Files.createDirectories(left);
    try (var files = Files.list(state.resolve("unsaved"))) {
      for (Path file : files.toList()) {
        Files.copy(file, left.resolve(file.getFileName()));
      }
    }
    visit.close();
    state = folder.resolve("left");
    Files.writeString(state.resolve("state.json"), "{\"tour.seen\":\"yes\"}");
    start(null);
    assertThat(Fx.get(() -> Fx.says(visit.house, "Your changes to box.js were kept"))).isTrue();
    click("Open");
    assertThat(visit.text()).isEqualTo(BOX + "// unsaved\n");
    assertThat(Fx.get(() -> visit.house.desk().file().get())).isEqualTo(folder.resolve("box.js"));
    assertThat(Fx.get(() -> visit.house.desk().changed().get())).isTrue();
  }

  @Test
  void filesMayBeDraggedIn() throws Exception {
    start(null);
    File file = box().toFile();
    File other = Files.writeString(folder.resolve("sea.png"), "x").toFile();
    Fx.run(() -> visit.house.dropped(List.of(other)));
    assertThat(Fx.get(() -> Fx.says(visit.house, "sea.png is not a design's script"))).isTrue();
    click("Close");
    Fx.run(() -> visit.house.dropped(List.of(file)));
    assertThat(visit.text()).isEqualTo(BOX);
  }

  @Test
  void theShelfIsSearchedAndStartedFromByKeys() throws Exception {
    Files.createDirectories(folder.resolve("own"));
    Files.writeString(folder.resolve("own").resolve("my-box.js"), BOX);
    start(null);
    press("Shortcut+1");
    Fx.until("the library stands there", () -> Fx.says(visit.house.shelf(), "Fog drum"));
    assertThat(Fx.get(() -> Fx.says(visit.house.shelf(), "Plain box"))).isTrue();
    Fx.until("all have pictures", () -> Fx.says(visit.house.shelf(), "44 mm tall, 70 mm wide"));
    press("Shortcut+F");
    Fx.run(() -> visit.house.shelf().search().setText("drum ANTI"));
    assertThat(Fx.get(() -> Fx.says(visit.house.shelf(), "Plain box"))).isFalse();
    assertThat(Fx.get(() -> Fx.says(visit.house.shelf(), "Harbour lantern"))).isFalse();
    Fx.pulse();
    press("Enter");
    press("Enter");
    Path drum = home.resolve("library").resolve("fog-drum.js");
    assertThat(visit.text()).isEqualTo(Files.readString(drum));
    assertThat(Fx.get(() -> visit.house.desk().file().get())).isNull();
    assertThat(Fx.get(() -> visit.house.places().now().get())).isEqualTo(Place.TABLE);
  }

  @Test
  void ownDesignsAreOpenedThemselves() throws Exception {
    Path own = Files.createDirectories(folder.resolve("own")).resolve("my-box.js");
    Files.writeString(own, BOX);
    start(null);
    press("Shortcut+1");
    Fx.until("it stands there", () -> Fx.says(visit.house.shelf(), "Plain box"));
    Fx.pulse();
    press("Down");
    press("Right");
    press("Right");
    press("Left");
    press("Left");
    press("Enter");
    assertThat(Fx.get(() -> visit.house.desk().file().get())).isEqualTo(own);
  }

  @Test
  void flagsSetAllDialsAndAreKeptInTheScript() throws Exception {
    start(box());
    click("Low");
    Fx.until(
        "the dial is turned",
        () -> visit.house.desk().design().get().dials().getFirst().value() == 20);
    press("Shortcut+Z");
    assertThat(Fx.get(() -> visit.house.desk().settings().get())).isEmpty();
    Fx.until(
        "it is turned back",
        () -> visit.house.desk().design().get().dials().getFirst().value() == 30);
    click("Keep these dials as …");
    Fx.run(
        () -> {
          var field = (javafx.scene.control.TextField) visit.house.getScene().getFocusOwner();
          field.setText("As = it was");
          field.fireEvent(new javafx.event.ActionEvent());
        });
    assertThat(visit.text()).contains("\n * setting: As it was = tall 30\n */");
    assertThat(Fx.get(() -> visit.house.desk().changed().get())).isTrue();
    Fx.run(() -> visit.house.desk().undo());
    assertThat(visit.text()).isEqualTo(BOX);
  }

  @Test
  void theTourIsWalkedByDoing() throws Exception {
    Files.delete(state.resolve("state.json"));
    start(null);
    click("Take the tour");
    House house = visit.house;
    Fx.until("it begins", () -> house.tourView().isRunning());
    Fx.until("the demo is made", () -> house.desk().design().get() != null);
    assertThat(Fx.get(() -> Fx.says(house.tourView(), "1 of 5"))).isTrue();
    assertThat(Fx.get(() -> Fx.says(house.tourView(), "✓ Done"))).isFalse();
    Fx.pulse();
    assertThat(house.lookup(".tour-frame").isVisible()).isTrue();
    Fx.run(() -> house.places().now().set(Place.SHELF));
    Fx.pulse();
    assertThat(house.lookup(".tour-frame").isVisible()).as("what it frames is away").isFalse();
    Fx.run(() -> house.places().now().set(Place.TABLE));
    Fx.pulse();
    assertThat(house.lookup(".tour-frame").isVisible()).isTrue();
    Fx.run(() -> house.desk().turn("sides", "10"));
    assertThat(Fx.get(() -> Fx.says(house.tourView(), "✓ Done"))).isTrue();
    click("Next");
    Fx.run(() -> house.room().lens().made().set(0.4));
    assertThat(Fx.get(() -> Fx.says(house.tourView(), "✓ Done"))).isTrue();
    click("Next");
    Fx.until("the turned net is there", () -> !house.desk().working().get());
    Fx.run(() -> house.desk().selection().set(new Selection.OfPanel(0)));
    assertThat(Fx.get(() -> Fx.says(house.tourView(), "✓ Done"))).isTrue();
    click("Next");
    Fx.until("the slip is found", () -> house.desk().fault().get() != null);
    Fx.run(() -> house.desk().text().set(house.desk().text().get().replace("280", "28")));
    Fx.until("it is mended", () -> house.desk().fault().get() == null);
    assertThat(Fx.get(() -> Fx.says(house.tourView(), "✓ Done"))).isTrue();
    click("Back");
    click("Next");
    click("Next");
    assertThat(visit.text()).as("what was not mended is").contains("dial(\"side\", 28,");
    Fx.run(() -> house.toPapers().fire());
    assertThat(Fx.get(() -> Fx.says(house.tourView(), "✓ Done"))).isTrue();
    click("Finish");
    assertThat(Fx.get(() -> house.tourView().isRunning())).isFalse();
    press("Shift+F1");
    click("Don't save");
    Fx.pulse();
    Fx.run(() -> Fx.button(house.tourView(), "Next").requestFocus());
    press("Esc");
    assertThat(Fx.get(() -> house.tourView().isRunning())).isFalse();
    assertThat(state.resolve("state.json")).content().contains("\"tour.seen\" : \"yes\"");
  }

  @Test
  void theTourAsksOnceBeforeItTakesTheTable() throws Exception {
    start(box());
    Fx.run(() -> visit.house.room().card().area().appendText("// more\n"));
    press("Shift+F1");
    assertThat(Fx.get(() -> visit.house.tourView().isRunning())).isFalse();
    click("Don't save");
    assertThat(Fx.get(() -> visit.house.tourView().isRunning())).isTrue();
    assertThat(Fx.get(() -> visit.house.notices().now().get())).isNull();
    assertThat(visit.text()).contains("Harbour lantern");
    assertThat(folder.resolve("box.js")).content().isEqualTo(BOX);
  }

  @Test
  void everyCommandStandsInTheMenusAndOnThePageOfKeys() throws Exception {
    start(null);
    List<String> ids = new ArrayList<>();
    CommandBar bar = (CommandBar) visit.house.lookup(".command-bar");
    for (Menu menu : bar.getMenus()) {
      for (MenuItem item : menu.getItems()) {
        if (!(item instanceof SeparatorMenuItem) && !item.getId().equals("recent")) {
          ids.add(item.getId());
        }
      }
    }
    List<Command> all = visit.house.commands().all();
    assertThat(ids).containsExactlyElementsOf(all.stream().map(Command::id).toList());
    press("F1");
    Fx.until("the page shows", () -> Fx.says(visit.house.pages(), "Ctrl+N"));
    for (Command command : all) {
      if (command.key() != null) {
        assertThat(Fx.get(() -> Fx.says(visit.house.pages(), command.keys())))
            .as(command.keys())
            .isTrue();
      }
    }
    press("Esc");
    assertThat(visit.house.pages().isVisible()).isFalse();
    Fx.run(() -> visit.house.commands().named("writing").run());
    Fx.until("it is read here", () -> Fx.says(visit.house.pages(), "Writing a design"));
  }

  @Test
  void theDarkReachesThePages() throws Exception {
    start(box());
    Fx.run(() -> visit.house.room().dark().set(true));
    assertThat(Fx.get(() -> visit.house.papers().page().shade().get())).isEqualTo(Shade.DARK);
    press("Shortcut+D");
    assertThat(Fx.get(() -> visit.house.papers().page().shade().get())).isEqualTo(Shade.LIGHT);
  }

  /** The window says what the command line says. */
  @Test
  void theSentenceIsTheVerdictWithSizeAndSheet() throws Exception {
    start(box());
    assertThat(
            Fx.get(
                () ->
                    Fx.says(
                        visit.house.room(),
                        "Closes: every join meets to within 0.001 mm. Made, it is 30 mm tall, 30 mm"
                            + " wide, 30 mm deep. Fits A4.")))
        .isTrue();
    Fx.run(() -> visit.house.desk().text().set(BOX.replace("prism", "prysm")));
    Fx.until("it is told", () -> visit.house.desk().fault().get() != null);
    assertThat(
            Fx.get(
                () ->
                    Fx.says(
                        visit.house.room(),
                        "Did you mean prism? The last good net stays on the table.")))
        .isTrue();
  }

  /** At the largest letters no button or label of the strip above the table is cut off. */
  @Test
  void largestWordsStillFit() throws Exception {
    start(box());
    for (int i = 0; i < 8; i++) {
      press("Shortcut+Shift+Equals");
    }
    Fx.pulse();
    Fx.pulse();
    for (String words : new String[] {"Inside up", "Measure", "Fold", "Swap", "Compare"}) {
      var button = Fx.get(() -> Fx.button(visit.house.room(), words));
      assertThat(Fx.get(() -> button.getHeight()))
          .as(words)
          .isGreaterThanOrEqualTo(Fx.get(() -> button.prefHeight(-1)) - 0.5);
      assertThat(Fx.get(() -> button.getWidth()))
          .as(words)
          .isGreaterThanOrEqualTo(Fx.get(() -> button.prefWidth(-1)) - 0.5);
    }
    Fx.run(() -> visit.house.commands().named("usual-text").run());
    Fx.run(() -> visit.house.commands().named("about").run());
    Fx.pulse();
    Fx.pulse();
    var page = (javafx.scene.layout.Region) visit.house.lookup(".page");
    var text = (javafx.scene.layout.Region) visit.house.lookup(".about");
    assertThat(Fx.get(() -> page.getHeight())).isLessThan(Fx.get(() -> text.getHeight()) + 120);
  }

  @Test
  void wordsGrowAndTheScriptFoldsAway() throws Exception {
    start(null);
    var sentence = visit.house.lookup(".verdict .sentence");
    double before = Fx.get(() -> ((javafx.scene.control.Label) sentence).getFont().getSize());
    press("Shortcut+Shift+Equals");
    Fx.pulse();
    assertThat(Fx.get(() -> ((javafx.scene.control.Label) sentence).getFont().getSize()))
        .isGreaterThan(before * 1.08);
    assertThat(Fx.get(() -> visit.house.room().table().shade().get().type())).isGreaterThan(1.08);
    assertThat(Fx.get(() -> visit.house.papers().page().shade().get().type())).isGreaterThan(1.08);
    press("Shortcut+E");
    Fx.pulse();
    assertThat(Fx.get(() -> visit.house.room().card().getScene())).isNull();
    press("Shortcut+E");
    Fx.pulse();
    assertThat(Fx.get(() -> visit.house.room().card().getWidth())).isGreaterThan(200);
  }
}
