package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Dials that choose, in the window: chosen, taken back, read aloud. */
class DialsOfWordsTest {
  private static final String SCRIPT =
      """
      design("Plain box", { units: "mm" });
      const top = dial("top", "shut", { of: ["shut", "open", "left half open"] });
      const lit = dial("lit", false);
      const turn = dial("turn", "10 deg", { from: 0, to: 20 });
      let box1 = prism({ sides: 4, side: 30, height: 40 }).twist(turn);
      if (top !== "shut") box1 = box1.open("top");
      if (lit) box1 = box1.hole("base", { across: 6 });
      box1.unfold({ tab: 6 });
      sheet("A3");
      """;

  @TempDir private Path folder;
  private Visit visit;

  @BeforeEach
  void open() throws Exception {
    visit = Visit.at(folder, "box.js", SCRIPT);
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private Map<String, String> dials() {
    return visit.house.desk().design().get().dials().stream()
        .collect(
            Collectors.toMap(
                Dial::name,
                d -> DialText.angled(d, d.value(), visit.house.desk().design().get().unit())));
  }

  private void stands(String name, String value) throws Exception {
    Fx.until(name + " stands at " + value, () -> dials().get(name).equals(value));
  }

  @SuppressWarnings("unchecked") // The only list in the drawer is one of words.
  private ComboBox<String> words() {
    return (ComboBox<String>) visit.house.room().drawer().lookup(".combo-box");
  }

  private CheckBox tick() {
    return (CheckBox) visit.house.room().drawer().lookup(".check-box");
  }

  @Test
  void areChosenAndTakenBackInOneStepEach() throws Exception {
    Fx.run(() -> words().getSelectionModel().select("left half open"));
    stands("top", "left half open");
    Fx.run(() -> tick().setSelected(true));
    stands("lit", "on");
    assertThat(Fx.get(() -> tick().getText())).isEqualTo("on");
    Fx.run(() -> visit.house.desk().undo());
    stands("lit", "off");
    assertThat(Fx.get(() -> tick().isSelected())).isFalse();
    assertThat(Fx.get(() -> words().getValue())).isEqualTo("left half open");
    Fx.run(() -> visit.house.desk().undo());
    stands("top", "shut");
    assertThat(Fx.get(() -> words().getValue())).isEqualTo("shut");
  }

  @Test
  void areReadAloudByTheirName() throws Exception {
    assertThat(Fx.get(() -> words().getAccessibleText())).isEqualTo("top");
    assertThat(Fx.get(() -> tick().getAccessibleText())).isEqualTo("lit");
    assertThat(Fx.get(() -> Fx.says(visit.house.room().drawer(), "°"))).isTrue();
  }

  @Test
  void aWordThatIsNoLongerOneSaysSo() throws Exception {
    Fx.run(() -> visit.house.desk().turn("top", "open"));
    stands("top", "open");
    Fx.run(() -> visit.house.desk().text().set(SCRIPT.replace("\"open\", ", "")));
    stands("top", "shut");
    assertThat(
            Fx.get(
                () ->
                    Fx.says(
                        visit.house.room().drawer(),
                        "top can't be open: it is one of shut, left half open, and stands at"
                            + " shut.")))
        .isTrue();
  }
}
