package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.design.Dial;
import facetwright.workbench.desk.Work;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.event.ActionEvent;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Undo and redo by keys, wherever the focus is; and the fields say what the net shows. */
class OneUndoTest {
  private static final String BOX =
      """
      design("Plain box", { units: "mm" });
      const tall = dial("tall", 30, { from: 20, to: 400 });
      const side = dial("side", 30, { from: 20, to: 60 });
      prism({ sides: 4, side, height: tall }).unfold({ tab: 6 });
      sheet("A3");
      """;

  @TempDir private Path folder;
  private Visit visit;

  @BeforeEach
  void open() throws Exception {
    visit = Visit.at(folder, "box.js", BOX);
    // Controls take keys once they are laid out.
    Fx.pulse();
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private Node part(String accessible, Class<?> kind) {
    return visit.house.room().drawer().lookupAll("*").stream()
        .filter(n -> kind.isInstance(n) && accessible.equals(n.getAccessibleText()))
        .findFirst()
        .orElseThrow();
  }

  private TextField field(String dial) {
    return (TextField) part("Value of " + dial, TextField.class);
  }

  private Slider slider(String dial) {
    return (Slider) part(dial, Slider.class);
  }

  private void focus(String where) {
    switch (where) {
      case "script" -> visit.house.room().card().area().requestFocus();
      case "table" -> visit.house.room().table().requestFocus();
      case "form" -> visit.house.room().lens().requestFocus();
      case "slider" -> slider("side").requestFocus();
      case "field" -> field("side").requestFocus();
      case "find" -> visit.house.room().card().find(false);
      default -> throw new IllegalArgumentException(where);
    }
  }

  @Test
  void aWordTypedBeforeItsOwnLettersIsTakenBackInOneStep() throws Exception {
    var area = visit.house.room().card().area();
    int at = visit.text().indexOf("tall");
    for (int i = 0; i < 4; i++) {
      int place = at + i;
      Fx.run(() -> area.insertText(place, "tall".substring(place - at, place - at + 1)));
    }
    assertThat(visit.text()).contains("const talltall = ");
    Fx.run(() -> visit.house.commands().named("undo").run());
    assertThat(visit.text()).isEqualTo(BOX);
  }

  private void press(String keys) throws Exception {
    Fx.run(() -> Fx.press(visit.house, keys));
  }

  private void typeInScript(String letters) throws Exception {
    Fx.run(() -> visit.house.room().card().area().appendText(letters));
  }

  private void type(TextField field, String text) {
    field.requestFocus();
    field.selectAll();
    field.replaceSelection(text);
  }

  private Work work() throws Exception {
    return Fx.get(visit.house.desk()::work);
  }

  /** Every field, every slider and the net agree. */
  private void agree(Map<String, String> dials) throws Exception {
    Fx.until(
        "the net has " + dials,
        () ->
            visit.house.desk().design().get().dials().stream()
                .collect(Collectors.toMap(Dial::name, d -> Math.round(d.value()) + ""))
                .equals(dials));
    Map<String, String> fields =
        Map.of(
            "tall",
            Fx.get(() -> field("tall").getText()),
            "side",
            Fx.get(() -> field("side").getText()));
    assertThat(fields).isEqualTo(dials);
    for (String dial : dials.keySet()) {
      assertThat(Fx.get(() -> Math.round(slider(dial).getValue()) + "")).isEqualTo(dials.get(dial));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"script", "table", "form", "slider", "field", "find"})
  void whatWasDoneLastIsTakenBackFirst(String where) throws Exception {
    Fx.run(() -> visit.house.desk().turn("tall", "55"));
    typeInScript("//a");
    Fx.run(() -> visit.house.desk().turn("side", "44"));
    typeInScript("//b");
    Fx.run(() -> focus(where));
    Work all = work();
    agree(Map.of("tall", "55", "side", "44"));
    press("Shortcut+Z");
    assertThat(work()).isEqualTo(new Work(BOX + "//a", Map.of("tall", "55", "side", "44")));
    press("Shortcut+Z");
    assertThat(work()).isEqualTo(new Work(BOX + "//a", Map.of("tall", "55")));
    agree(Map.of("tall", "55", "side", "30"));
    press("Shortcut+Z");
    assertThat(work()).isEqualTo(new Work(BOX, Map.of("tall", "55")));
    press("Shortcut+Z");
    assertThat(work()).isEqualTo(Work.of(BOX));
    agree(Map.of("tall", "30", "side", "30"));
    press("Shortcut+Z");
    assertThat(work()).isEqualTo(Work.of(BOX));
    for (String again :
        new String[] {"Shortcut+Y", "Shortcut+Shift+Z", "Shortcut+Y", "Shortcut+Shift+Z"}) {
      press(again);
    }
    assertThat(work()).isEqualTo(all);
    agree(Map.of("tall", "55", "side", "44"));
  }

  @Test
  void whatIsBeingTypedIntoADialIsTakenBackBeforeAnythingElse() throws Exception {
    Fx.run(() -> visit.house.desk().turn("tall", "55"));
    Fx.run(() -> type(field("side"), "41"));
    assertThat(work().dials()).isEqualTo(Map.of("tall", "55"));
    press("Shortcut+Z");
    agree(Map.of("tall", "55", "side", "30"));
    press("Shortcut+Z");
    agree(Map.of("tall", "30", "side", "30"));
  }

  @Test
  void aValueTakenIsTakenBackInItsOwnField() throws Exception {
    Fx.run(() -> type(field("side"), "41 mm"));
    Fx.run(() -> field("side").fireEvent(new ActionEvent()));
    agree(Map.of("tall", "30", "side", "41"));
    press("Shortcut+Z");
    agree(Map.of("tall", "30", "side", "30"));
    press("Shortcut+Y");
    agree(Map.of("tall", "30", "side", "41"));
  }

  /** A word to look for is of no design: it goes back letter by letter, and then the design. */
  @Test
  void aWordToFindIsTakenBackInItsField() throws Exception {
    Fx.run(() -> visit.house.desk().turn("tall", "55"));
    Fx.run(() -> visit.house.room().card().find(false));
    Fx.run(
        () -> {
          TextField find = (TextField) visit.house.getScene().getFocusOwner();
          find.selectAll();
          find.replaceSelection("side");
        });
    press("Shortcut+Z");
    assertThat(work().dials()).isEqualTo(Map.of("tall", "55"));
    assertThat(Fx.get(() -> ((TextField) visit.house.getScene().getFocusOwner()).getText()))
        .isNotEqualTo("side");
    press("Shortcut+Z");
    assertThat(work().dials()).isEmpty();
  }

  /** A key that is held turns a dial in one step. */
  @ParameterizedTest
  @ValueSource(strings = {"slider", "field"})
  void aHeldKeyIsOneStep(String where) throws Exception {
    Fx.run(() -> focus(where));
    for (int i = 0; i < 5; i++) {
      press(where.equals("slider") ? "Right" : "Up");
    }
    Fx.run(() -> released(where.equals("slider") ? KeyCode.RIGHT : KeyCode.UP));
    press(where.equals("slider") ? "Right" : "Up");
    Fx.run(() -> released(where.equals("slider") ? KeyCode.RIGHT : KeyCode.UP));
    assertThat(work().dials()).isEqualTo(Map.of("side", "33"));
    agree(Map.of("tall", "30", "side", "33"));
    press("Shortcut+Z");
    assertThat(work().dials()).isEqualTo(Map.of("side", "32.5"));
    press("Shortcut+Z");
    agree(Map.of("tall", "30", "side", "30"));
  }

  private void released(KeyCode code) {
    Event.fireEvent(
        visit.house.getScene().getFocusOwner(),
        new KeyEvent(KeyEvent.KEY_RELEASED, "", "", code, false, false, false, false));
  }

  /** A value that a dial can't take gives way to the nearest, says so, and goes as it came. */
  @Test
  void aValueOutOfRangeGivesWayAndIsTakenBackInOneStep() throws Exception {
    Fx.run(() -> type(field("side"), "500"));
    Fx.run(() -> field("side").fireEvent(new ActionEvent()));
    agree(Map.of("tall", "30", "side", "60"));
    assertThat(Fx.get(() -> visit.house.desk().fault().get())).isNull();
    assertThat(
            Fx.get(() -> Fx.says(visit.house.room().drawer(), "side can't be 500: it goes from")))
        .isTrue();
    Fx.run(() -> focus("table"));
    press("Shortcut+Z");
    agree(Map.of("tall", "30", "side", "30"));
  }

  @Test
  void fromTheShelfOneComesToSeeWhatChanges() throws Exception {
    Fx.run(() -> visit.house.desk().turn("tall", "55"));
    Fx.run(() -> visit.house.places().now().set(Places.Place.SHELF));
    press("Shortcut+Z");
    assertThat(work().dials()).isEmpty();
    assertThat(Fx.get(() -> visit.house.places().now().get())).isEqualTo(Places.Place.TABLE);
  }
}
