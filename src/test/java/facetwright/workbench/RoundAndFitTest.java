package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.adjust.round.Rounding;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.script.LibraryDesigns;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.words.Site;
import facetwright.workbench.command.Command;
import facetwright.workbench.goal.Bar;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A metric design is rounded to a ruler of inches and made to fit a sheet, from the menu to the
 * changed net and back.
 */
class RoundAndFitTest {
  private static final Path LANTERN = LibraryDesigns.file("harbour-lantern");

  @TempDir private Path folder;
  private Visit visit;
  private String script;

  @BeforeEach
  void open() throws Exception {
    script = Files.readString(LANTERN);
    visit = Visit.at(folder, "lantern.js", script);
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private Design design() {
    return visit.house.desk().design().get();
  }

  private Map<String, String> settings() throws Exception {
    return Fx.get(() -> visit.house.desk().settings().get());
  }

  private void menu(String name) throws Exception {
    Fx.run(
        () ->
            visit.house.commands().all().stream()
                .filter(c -> c.menu() == Command.In.EDIT && c.name().equals(name))
                .findFirst()
                .orElseThrow()
                .run());
  }

  private void fire(Bar bar, String button) throws Exception {
    Fx.run(() -> Fx.button(bar, button).fire());
  }

  private Bar round(String ruler) throws Exception {
    menu("Round to a ruler …");
    Fx.run(() -> visit.house.rounding().ruler(ruler));
    fire(visit.house.rounding(), "Find dials");
    return visit.house.rounding();
  }

  private Bar fit(String sheet, String copies) throws Exception {
    menu("Fit to a sheet …");
    Fx.run(
        () -> {
          visit.house.fitting().sheet(sheet);
          visit.house.fitting().copies(copies);
        });
    fire(visit.house.fitting(), "Find dials");
    return visit.house.fitting();
  }

  /** Whoever takes an offer goes on where it was made. */
  @Test
  void theFocusStaysInTheLineAndTheButtonInItsPlace() throws Exception {
    for (Bar bar : List.of(round("1/8 in"), fit("A2", "1"))) {
      String name = bar.getClass().getSimpleName();
      Fx.run(
          () -> visit.house.commands().named(name.equals("FitBar") ? "fit-sheet" : "round").run());
      Fx.run(() -> Fx.button(bar, "Find dials").fire());
      Fx.until(name + " offers", () -> Fx.says(bar, "Take it"));
      Fx.pulse();
      ButtonBase take = Fx.get(() -> Fx.button(bar, "Take it"));
      double at = Fx.get(() -> take.localToScene(0, 0).getX());
      ChoiceBox<?> ways = (ChoiceBox<?>) Fx.get(() -> bar.lookup(".choice-box"));
      for (int i = 0; i < Fx.get(() -> ways.getItems().size()); i++) {
        int way = i;
        Fx.run(() -> ways.getSelectionModel().select(way));
        Fx.pulse();
        assertThat(Fx.get(() -> take.localToScene(0, 0).getX())).as(name).isEqualTo(at);
      }
      Fx.run(
          () -> {
            take.requestFocus();
            take.fire();
          });
      Fx.pulse();
      assertThat(Fx.get(bar::isFocusWithin)).as("%s has the focus", name).isTrue();
    }
  }

  private static void told(Bar bar, String words) throws Exception {
    Fx.until("it says " + words, () -> bar.told().contains(words));
  }

  private double dial(String name) {
    return design().dials().stream()
        .filter(d -> d.name().equals(name))
        .findFirst()
        .orElseThrow()
        .value();
  }

  @Test
  void roundsAsTheCommandLineDoesAndIsTakenBack() throws Exception {
    Bar bar = round("1/8 in");
    told(
        bar,
        "10 of 13 different measures to set lie on the marks of a ruler of 1/8 in; before, none"
            + " did");
    assertThat(settings()).as("nothing turns before it is taken").isEmpty();
    assertThat(Fx.get(bar::told)).contains("As designed its joins meet", "Fits A3", "Made, it is");
    fire(bar, "Take it");
    Rounding same =
        Rounding.of(WhatIf.of("lantern.js", script, Map.of(), Budget.USUAL), Ruler.EIGHTHS, 1);
    Map<String, String> wanted = new LinkedHashMap<>();
    same.turns().stream()
        .filter(Rounding.Turn::isTurned)
        .forEach(t -> wanted.put(t.knob().name(), t.typed(Ruler.EIGHTHS, design().unit())));
    assertThat(settings()).isEqualTo(wanted).isNotEmpty();
    // 1 1/8 in and 2 3/8 in, by hand.
    Fx.until("the net is changed", () -> Math.abs(dial("side") - 28.575) < 1e-9);
    assertThat(Fx.get(() -> dial("wall"))).isEqualTo(60.325);
    assertThat(visit.text()).as("the script stays").isEqualTo(script);
    assertThat(Fx.get(this::rulerOfPapers)).as("papers follow the ruler").contains("1/8 in");
    Fx.run(() -> Fx.press(visit.house, "Shortcut+Z"));
    assertThat(settings()).isEmpty();
    Fx.until("the net is as before", () -> dial("side") == 28);
  }

  /** Where nothing turns, nothing is said of what would come of it. */
  @Test
  void saysShortlyThatNothingTurns() throws Exception {
    String layer = "body.columns(\"odd\").rows(\"wall\").layer(";
    String hole = "body.columns(\"odd\").rows(\"wall\").hole({ across: 3, at: [0, 0.2] });\n";
    Fx.run(() -> visit.house.desk().text().set(script.replace(layer, hole + layer)));
    Bar bar = round("0.5 mm");
    told(bar, "No turn of its dials by one mark at most puts more measures on marks.");
    assertThat(Fx.get(bar::told)).contains("One of the cuts lies between marks.");
    assertThat(Fx.get(bar::told)).doesNotContain("Made, it is", "As designed", "About: ");
    assertThat(Fx.get(() -> bar.lookup(".turned"))).as("a table of dials that stay").isNull();
  }

  private java.util.List<Object> rulerOfPapers() {
    return visit.house.papers().lookupAll(".choice-box").stream()
        .map(n -> (Object) ((javafx.scene.control.ChoiceBox<?>) n).getValue())
        .toList();
  }

  @Test
  void writesItIntoTheScriptInOneStep() throws Exception {
    Fx.run(() -> visit.house.desk().turn("wall", "61"));
    Fx.until("it is turned", () -> dial("wall") == 61);
    Bar bar = round("1/8 in");
    told(bar, "no dial moves the 12 there");
    told(bar, "Where it is written into the script: The script becomes one in inches");
    Fx.run(() -> bar.choose("Write it into the script, its fixed numbers, too"));
    fire(bar, "Take it");
    assertThat(visit.text())
        .contains("dial(\"side\", \"1 1/8 in\"", "dial(\"wall\", \"2 3/8 in\"", "seam: \"1/2 in\"")
        .contains("units: \"in\"");
    assertThat(settings()).isEmpty();
    Fx.until("the net is changed", () -> Math.abs(dial("side") - 1.125) < 1e-9);
    assertThat(Fx.get(() -> visit.house.desk().design().get().unit())).isEqualTo(Unit.INCH);
    // Either undo takes back both.
    Fx.run(() -> visit.house.desk().undo());
    assertThat(visit.text()).isEqualTo(script);
    assertThat(settings()).isEqualTo(Map.of("wall", "61"));
    Fx.run(() -> visit.house.desk().redo());
    assertThat(visit.text()).contains("1 1/8 in");
    assertThat(settings()).isEmpty();
    Fx.run(() -> visit.house.desk().undo());
    assertThat(visit.text()).isEqualTo(script);
    assertThat(settings()).isEqualTo(Map.of("wall", "61"));
  }

  @Test
  void leavingItChangesNothing() throws Exception {
    Bar bar = round("1 mm");
    told(bar, "ruler of 1 mm");
    Fx.until("there is an end", () -> !bar.told().startsWith("Trying"));
    Fx.run(() -> Fx.press(visit.house, "Esc"));
    assertThat(Fx.get(bar::isVisible)).isFalse();
    assertThat(settings()).isEmpty();
    assertThat(visit.text()).isEqualTo(script);
  }

  @Test
  void anUnsavedScriptIsRoundedAndABrokenOneIsNot() throws Exception {
    String edited = script.replace("\"side\", 28", "\"side\", 27.9");
    Fx.run(() -> visit.house.desk().text().set(edited));
    Bar bar = round("1/8 in");
    told(bar, "side: 27.9 mm → 1 1/8 in");
    Fx.run(() -> visit.house.desk().text().set(edited.replace("wrap({", "wrap{")));
    assertThat(Fx.get(bar::told)).as("what was found is gone").isEmpty();
    fire(bar, "Find dials");
    told(bar, "✕ The script has a fault. Line 18:");
    Fx.run(() -> Fx.button(bar, "Go to line 18").fire());
    assertThat(Fx.get(() -> visit.house.desk().pointed().get().line())).isEqualTo(18);
    assertThat(settings()).isEmpty();
  }

  @Test
  void aFixedNumberIsShownInItsLine() throws Exception {
    Bar bar = round("1/8 in");
    told(bar, "Line 18, column 88");
    Fx.run(() -> Fx.button(bar, "Go to line 18").fire());
    assertThat(Fx.get(() -> visit.house.desk().pointed().get())).isEqualTo(new Site(18, 88));
  }

  @Test
  void aDesignWithoutLengthsToTurnSaysWhatToDo() throws Exception {
    Fx.run(
        () ->
            visit
                .house
                .desk()
                .text()
                .set(
                    """
                    design("Fixed box", { units: "mm" });
                    prism({ sides: 4, side: 33.3, height: 40 }).unfold({ tab: 6 });
                    """));
    Bar bar = round("1 mm");
    told(bar, "It has no dials to turn. Make lengths of the script dials");
    Bar other = fit("A3", "1");
    told(other, "It has no dials to turn.");
    assertThat(Fx.get(bar::isVisible)).as("one line shows at a time").isFalse();
  }

  @Test
  void lookingIsStopped() throws Exception {
    visit.holding = true;
    Bar bar = round("1/8 in");
    told(bar, "Trying settings … 7");
    fire(bar, "Stop");
    told(bar, "Stopped; nothing is changed.");
    assertThat(visit.held).isCompleted();
    assertThat(settings()).isEmpty();
    // What comes after all is not shown.
    visit.holding = false;
    fire(bar, "Find dials");
    told(bar, "lie on the marks");
  }

  @Test
  void fitsASheetAndNamesItInTheScriptInOneStep() throws Exception {
    Bar bar = fit("Letter", "1");
    told(bar, "one lies on a sheet of Letter");
    assertThat(settings()).isEmpty();
    fire(bar, "Take it");
    assertThat(visit.text()).isEqualTo(script.replace("A3", "Letter"));
    assertThat(settings()).containsEntry("side", "32").containsEntry("wall", "70");
    Fx.until("it lies on it", () -> design().laid().stock().name().equals("Letter"));
    assertThat(Fx.get(() -> design().laid().fits())).isTrue();
    Fx.run(() -> visit.house.desk().undo());
    assertThat(visit.text()).isEqualTo(script);
    assertThat(settings()).isEmpty();
    Fx.run(() -> visit.house.desk().redo());
    assertThat(visit.text()).contains("sheet(\"Letter\", { weight: 220 })");
    assertThat(settings()).containsEntry("side", "32");
  }

  @Test
  void saysHowManyLieThereAndWhatCannotBe() throws Exception {
    Bar bar = fit("A6", "1");
    told(bar, "Nor does it fit at any setting found");
    assertThat(Fx.get(bar::told)).contains("side is at its least (20)", "Take a larger sheet");
    told(fit("A66", "1"), "✕ No sheet is called \"A66\"");
    told(fit("A3", "none"), "✕ \"none\" is no number of pieces");
    told(fit("A1", "2"), "lie on a sheet of A1");
    assertThat(settings()).isEmpty();
  }
}
