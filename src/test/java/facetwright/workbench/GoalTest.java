package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.workbench.goal.GoalBar;
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
    visit = Visit.at(folder, "box.js", BOX);
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
    Fx.until("it is found", () -> bar().told().contains("tall: 30 → 75"));
    assertThat(Fx.get(() -> visit.house.desk().settings().get())).isEmpty();
    Fx.run(() -> Fx.button(bar(), "Take it").fire());
    Fx.until("it is turned", () -> height() > 74);
    assertThat(Fx.get(this::height)).isCloseTo(75, within(1e-6));
    assertThat(visit.text()).as("the script stays").isEqualTo(BOX);
    Fx.run(() -> visit.house.desk().undo());
    assertThat(Fx.get(() -> visit.house.desk().settings().get())).isEqualTo(Map.of());
  }

  /** The other dial was turned before and stays where it was set; only what moves is set. */
  @Test
  void anAimStartsFromTheDialsAsTheyStand() throws Exception {
    Fx.run(() -> visit.house.desk().turn("side", "45"));
    Fx.until("it is turned", () -> visit.house.desk().design().get().dials().get(1).value() == 45);
    Fx.run(() -> choose("tall"));
    wish("75");
    Fx.until("it is found", () -> bar().told().contains("tall: 30 → 75"));
    Fx.run(() -> Fx.button(bar(), "Take it").fire());
    assertThat(Fx.get(() -> visit.house.desk().settings().get()))
        .isEqualTo(Map.of("side", "45", "tall", "75"));
    Fx.until("it is as tall", () -> Math.abs(height() - 75) < 1e-6);
    Fx.run(() -> visit.house.desk().undo());
    assertThat(Fx.get(() -> visit.house.desk().settings().get())).isEqualTo(Map.of("side", "45"));
  }

  /** Any dial may turn, and the one that was set starts from there: 60 wide needs it at 60. */
  @Test
  void aDialThatMayTurnStartsWhereItStands() throws Exception {
    Fx.run(() -> visit.house.desk().turn("tall", "100"));
    Fx.until("it is turned", () -> Math.abs(height() - 100) < 1e-6);
    wish("101");
    Fx.until("it is found", () -> bar().told().contains("tall: 100 → 101"));
    Fx.run(() -> Fx.button(bar(), "Take it").fire());
    assertThat(Fx.get(() -> visit.house.desk().settings().get())).isEqualTo(Map.of("tall", "101"));
  }

  private void choose(String dial) {
    bar()
        .lookupAll(".choice-box")
        .forEach(
            node -> {
              if (node instanceof javafx.scene.control.ChoiceBox<?> box
                  && box.getItems().contains(dial)) {
                box.getSelectionModel().select(box.getItems().indexOf(dial));
              }
            });
  }

  private double height() {
    return visit.house.desk().design().get().folded().measures().height();
  }

  @Test
  void whatCannotBeIsSaidAndNothingTurns() throws Exception {
    wish("900");
    Fx.until("it is told", () -> bar().told().contains("900 mm can't be reached"));
    wish("twelve");
    assertThat(Fx.get(() -> bar().told())).startsWith("✕ ").contains("twelve");
    assertThat(Fx.get(() -> Fx.says(bar(), "Take it"))).isFalse();
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
    Fx.run(() -> Fx.button(bar(), "Take it").fire());
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
    Fx.run(() -> visit.house.desk().undo());
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
    Fx.run(() -> visit.house.desk().undo());
    assertThat(visit.text()).isEqualTo(tall);
  }
}
