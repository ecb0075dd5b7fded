package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.goal.Bar;
import facetwright.workbench.goal.Wish;
import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Questions, notices, notes and faults leave the net where it is, and as large as it is. */
class NetStaysTest {
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
  private Bounds before;

  @BeforeEach
  void open() throws Exception {
    visit = Visit.at(folder, "box.js", BOX);
    before = table();
    assertThat(before.getHeight()).isGreaterThan(100);
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  /** Where the net's own pane stands in the window: its view is laid out by nothing else. */
  private Bounds table() throws Exception {
    for (int i = 0; i < 3; i++) {
      Fx.pulse();
    }
    return Fx.get(
        () -> {
          Node table = visit.house.room().table();
          return table.localToScene(table.getLayoutBounds());
        });
  }

  private void stays(String what) throws Exception {
    assertThat(table()).as(what).isEqualTo(before);
  }

  @Test
  void whateverIsAskedAndAnswered() throws Exception {
    for (Bar bar : List.of(visit.house.goals(), visit.house.rounding(), visit.house.fitting())) {
      String name = bar.getClass().getSimpleName();
      Fx.run(
          () ->
              visit
                  .house
                  .commands()
                  .named(
                      switch (name) {
                        case "GoalBar" -> "aim";
                        case "RoundBar" -> "round";
                        default -> "fit-sheet";
                      })
                  .run());
      assertThat(Fx.get(bar::isVisible)).as(name).isTrue();
      stays(name);
      if (name.equals("GoalBar")) {
        Fx.run(() -> visit.house.goals().open(new Wish("height", "75", "")));
      } else {
        Fx.run(() -> Fx.button(bar, "Find dials").fire());
      }
      Fx.until(name + " answers", () -> Fx.says(bar, "Take it") || bar.told().contains("."));
      stays(name + " with its answer");
      Fx.run(bar::close);
      stays(name + " put away");
    }
  }

  @Test
  void whateverIsNoticed() throws Exception {
    Fx.run(() -> visit.house.notices().tell("a", "Something", "A long word on it. ".repeat(12)));
    assertThat(Fx.get(() -> Fx.says(visit.house, "Something"))).isTrue();
    stays("a notice");
    Fx.run(() -> visit.house.places().now().set(Places.Place.PAPERS));
    Fx.pulse();
    assertThat(Fx.get(() -> Fx.says(visit.house, "Something"))).as("elsewhere, too").isTrue();
    Fx.run(() -> visit.house.places().now().set(Places.Place.TABLE));
    stays("back from the papers");
    Fx.run(visit.house.notices()::putAway);
    stays("the notice put away");
  }

  @Test
  void whateverIsFoundOrWrong() throws Exception {
    Fx.run(() -> visit.house.desk().text().set(BOX + "say(\"a word\");\nnothing;\n"));
    Fx.until("a fault is told", () -> visit.house.desk().fault().get() != null);
    stays("a fault");
    Fx.run(() -> visit.house.desk().text().set(BOX.replace("\"tall\", 30", "\"tall\", 380")));
    Fx.until("it is found", () -> Fx.says(visit.house.room(), "Find dials so that it fits"));
    stays("a finding");
    Fx.run(() -> visit.house.desk().text().set(BOX));
    Fx.until("it is put right", () -> visit.house.desk().design().get().findings().isEmpty());
    stays("no finding");
  }
}
