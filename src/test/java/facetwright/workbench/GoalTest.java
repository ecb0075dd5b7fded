package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.workbench.goal.GoalBar;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javafx.event.ActionEvent;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a design should come to is asked for at the table, and turned to in one step. */
class GoalTest {
  private static final String BOX =
      """
      design("Plain box", { units: "mm" });
      const tall = dial("tall", 30, { from: 20, to: 400 });
      const side = dial("side", 30, { from: 20, to: 60 });
      prism({ sides: 4, side, height: tall }).unfold({ tab: 6 });
      sheet("A4");
      """;

  @TempDir private Path folder;
  private Visit visit;

  @BeforeEach
  void open() throws Exception {
    Files.writeString(folder.resolve("state.json"), "{\"tour.seen\":\"yes\"}");
    Path mine = Files.writeString(folder.resolve("box.js"), BOX);
    visit = Visit.start(folder, Path.of("").toAbsolutePath(), mine);
    Fx.until("the design is made", () -> visit.house.desk().design().get() != null);
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private void wish(String value) throws Exception {
    Fx.run(() -> visit.house.room().card().area().requestFocus());
    Fx.run(() -> Fx.press(visit.house, "Shortcut+T"));
    Fx.run(
        () -> {
          TextField field = (TextField) visit.house.getScene().getFocusOwner();
          field.setText(value);
          field.fireEvent(new ActionEvent());
        });
  }

  private GoalBar bar() {
    return visit.house.goals();
  }

  /** A prism stands as tall as its height: 75 mm asked for is the dial at 75. */
  @Test
  void aHeightIsFoundAndTurnedToInOneStep() throws Exception {
    wish("75");
    Fx.until("it is found", () -> bar().told().contains("tall 75"));
    assertThat(Fx.get(() -> visit.house.desk().settings().get())).isEmpty();
    Fx.run(() -> Fx.button(bar(), "Turn them so").fire());
    Fx.until("it is turned", () -> height() > 74);
    assertThat(Fx.get(this::height)).isCloseTo(75, within(1e-6));
    assertThat(visit.text()).as("the script stays").isEqualTo(BOX);
    Fx.run(() -> visit.house.desk().turnBack());
    assertThat(Fx.get(() -> visit.house.desk().settings().get())).isEqualTo(Map.of());
  }

  private double height() {
    return visit.house.desk().design().get().folded().measures().height();
  }

  @Test
  void whatCannotBeIsSaidAndNothingTurns() throws Exception {
    wish("900");
    Fx.until("it is told", () -> bar().told().startsWith("✕ The aim is missed"));
    wish("twelve");
    assertThat(Fx.get(() -> bar().told())).startsWith("✕ ").contains("twelve");
    assertThat(Fx.get(() -> Fx.button(bar(), "Turn them so").isDisabled())).isTrue();
    Fx.run(() -> Fx.press(visit.house, "Esc"));
    assertThat(Fx.get(() -> bar().isVisible())).isFalse();
    assertThat(Fx.get(() -> visit.house.desk().settings().get())).isEmpty();
  }

  /** A net too large for its sheet: the finding's button finds dials with which it fits. */
  @Test
  void aFindingIsMendedByDials() throws Exception {
    Fx.run(() -> visit.house.desk().turn("tall", "380"));
    Fx.until("it is too tall", () -> !visit.house.desk().design().get().laid().fits());
    Fx.until("a mend is offered", () -> Fx.says(visit.house.room(), "Find dials so that it fits"));
    Fx.run(() -> Fx.button(visit.house.room(), "Find dials so that it fits").fire());
    Fx.until("dials are found", () -> bar().told().contains("fits A4"));
    Fx.run(() -> Fx.button(bar(), "Turn them so").fire());
    Fx.until("it fits", () -> visit.house.desk().design().get().laid().fits());
  }

  /** The sheet that the finding names is written by its button, and by Alt+Enter in its line. */
  @Test
  void aFindingIsMendedInTheScriptAndTakenBack() throws Exception {
    String tall = BOX.replace("\"tall\", 30", "\"tall\", 330");
    Fx.run(() -> visit.house.desk().text().set(tall));
    Fx.until("a sheet is offered", () -> Fx.says(visit.house.room(), "Take A3"));
    Fx.run(() -> Fx.button(visit.house.room(), "Take A3").fire());
    assertThat(visit.text()).isEqualTo(tall.replace("A4", "A3"));
    Fx.until("it fits", () -> visit.house.desk().design().get().laid().fits());
    Fx.run(() -> visit.house.room().card().area().undo());
    assertThat(visit.text()).isEqualTo(tall);
    Fx.until("it does not", () -> !visit.house.desk().design().get().laid().fits());
    Fx.run(
        () -> {
          var area = visit.house.room().card().area();
          area.moveTo(area.getText().indexOf("unfold"));
          area.requestFocus();
          Fx.press(area, "Alt+Enter");
        });
    assertThat(visit.text()).isEqualTo(tall.replace("A4", "A3"));
    Fx.run(() -> visit.house.room().card().area().undo());
    assertThat(visit.text()).isEqualTo(tall);
  }
}
