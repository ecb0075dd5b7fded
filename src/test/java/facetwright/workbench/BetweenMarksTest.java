package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unbroken;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.workbench.Places.Place;
import facetwright.workbench.goal.Bar;
import facetwright.workbench.goal.Wish;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No size of this design lies on a mark of a ruler; so wherever the window tells one as a ruler's
 * fraction, or in whole inches, it says "about".
 */
class BetweenMarksTest {
  private static final String BETWEEN =
      """
      design("Between", { units: "in" });
      const tab = dial("tab", 0.285, { from: 0.201, to: 0.333 });
      const tall = dial("tall", 1.234, { from: 0.987, to: 2.345 });
      prism({ sides: 5, side: 1.357, height: tall }).unfold({ tab });
      sheet("Letter");
      """;

  /** What a ruler of inches names: "4 3/4 in", "3/4 in", "4 in"; no decimals. */
  private static final Pattern MARK =
      Pattern.compile("(about )?(?<![\\d.,/-] ?)(?<!\\d)((?:\\d+ )?\\d+/\\d+|\\d+) in\\b");

  /** Distances that are chosen, not measured: what rulers are called. */
  private static final Set<String> CALLED =
      Ruler.common().stream().map(Ruler::name).collect(Collectors.toSet());

  /** A distance of nothing, and the height that an aim sets by its ruler. */
  private static final Set<String> EXACT = Set.of("0", "2");

  @TempDir private Path folder;
  private Visit visit;
  private final Set<String> abouts = new TreeSet<>();

  @BeforeEach
  void open() throws Exception {
    visit = Visit.at(folder, "between.js", BETWEEN);
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private static void words(Node in, List<String> all) {
    if (!in.isVisible() || in.getStyleClass().contains("script-text")) {
      return;
    }
    switch (in) {
      case Labeled label -> all.add(label.getText());
      case TextInputControl field -> all.add(field.getText());
      case Text text -> all.add(text.getText());
      default -> {}
    }
    if (in instanceof Control control && control.getTooltip() != null) {
      all.add(control.getTooltip().getText());
    }
    all.add(in.getAccessibleText());
    if (in instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> words(child, all));
    }
  }

  /** All that can be read in the window now, or heard. */
  private void look(String where) throws Exception {
    Fx.pulse();
    List<String> all = new ArrayList<>();
    Fx.run(() -> words(visit.house, all));
    for (String words : all) {
      // What may be typed is told by examples.
      String said = words == null ? "" : Unbroken.plain(words).replaceAll("such as .*", "");
      Matcher mark = MARK.matcher(said);
      while (mark.find()) {
        if (mark.group(1) != null) {
          abouts.add(where);
        } else if (!EXACT.contains(mark.group(2))) {
          assertThat(CALLED).as("%s says: %s", where, words).contains(mark.group(2) + " in");
        }
      }
    }
  }

  private Design design() {
    return visit.house.desk().design().get();
  }

  @Test
  void noSizeLiesOnAMark() {
    for (var panel : design().net().panels()) {
      for (int i = 0; i < panel.outline().size(); i++) {
        assertThat(new Length(panel.outline().side(i).length()).read(Unit.INCH))
            .startsWith("about ");
      }
    }
  }

  @Test
  void eachPlaceOfTheWindowSaysAbout() throws Exception {
    look("verdict");
    Node table = Fx.get(() -> visit.house.lookup(".table"));
    for (String key : List.of("Page Down", "Shift+Page Down")) {
      for (int i = 0; i < design().net().panels().size(); i++) {
        Fx.run(table::requestFocus);
        Fx.run(() -> Fx.press(visit.house, key));
        look("pointed at");
      }
    }
    Fx.run(() -> Fx.button(visit.house.room(), "Measure").fire());
    Fx.run(table::requestFocus);
    for (String key : List.of("Enter", "Enter", "Right", "Right", "Enter")) {
      Fx.run(() -> Fx.press(visit.house, key));
      look("measured");
    }
    Fx.run(() -> visit.house.goals().open(new Wish("height", "2.0041", "tall")));
    answered("aim", visit.house.goals());
    Fx.run(() -> visit.house.goals().open(new Wish("fits", "Letter", "")));
    answered("aim", visit.house.goals());
    ask("fit-sheet", visit.house.fitting());
    Fx.run(() -> Fx.button(visit.house.room(), "Compare").fire());
    Fx.until("pictures come", () -> Fx.says(visit.house.lookup(".sweep"), " tall, "));
    look("compare");
    Fx.run(() -> visit.house.places().now().set(Place.SHELF));
    Fx.until("pictures come", () -> Fx.says(visit.house.shelf(), " tall, "));
    look("shelf");
    Fx.run(() -> visit.house.places().now().set(Place.PAPERS));
    Fx.until("papers come", () -> Fx.says(visit.house.papers(), "Handout"));
    look("papers");
    assertThat(abouts).contains("compare", "measured", "pointed at", "verdict");
  }

  private void ask(String command, Bar bar) throws Exception {
    Fx.run(() -> visit.house.commands().named(command).run());
    look(command);
    Fx.run(() -> Fx.button(bar, "Find dials").fire());
    answered(command, bar);
  }

  private void answered(String command, Bar bar) throws Exception {
    Fx.until(command + " is answered", () -> !bar.told().isEmpty() && !bar.told().contains("…"));
    look(command);
  }
}
