package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.design.Design;
import facetwright.workbench.Places.Place;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class HouseTest extends InHouse {
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
    Fx.until(
        "all have pictures", () -> Fx.says(visit.house.shelf(), "44 mm tall, about 70 mm wide"));
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
}
