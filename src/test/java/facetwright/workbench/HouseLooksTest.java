package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.Places.Place;
import facetwright.workbench.command.Command;
import facetwright.workbench.command.CommandBar;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.look.Shade;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import org.junit.jupiter.api.Test;

/** What the window shows and says: tour, menus, the dark, large letters, the sentence. */
class HouseLooksTest extends InHouse {
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
