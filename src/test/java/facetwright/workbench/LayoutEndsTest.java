package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.Places.Place;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * While nothing changes, nothing in the window asks to be laid out: what asks for it while it is
 * laid out has the whole window laid out at each frame, for ever.
 */
class LayoutEndsTest extends InHouse {
  /** So many frames anything may take to come to its place. */
  private static final int MOST_FRAMES = 12;

  private static final String MANY =
      """
      design("Many", { units: "in" });
      const tall = dial("tall", 1.2, { from: 1, to: 4 });
      const side = dial("side", 1.3, { from: 1, to: 2 });
      const tab = dial("tab", 0.3, { from: 0.2, to: 0.5 });
      const lid = dial("lid", true);
      const look = dial("look", "plain", { of: ["plain", "fancy"] });
      const sides = dial("sides", 5, { from: 4, to: 8, step: 1 });
      prism({ sides, side, height: tall }).unfold({ tab });
      sheet("A7");
      """;

  private static void unrest(Node in, List<String> found) {
    if (in instanceof Parent parent && parent.isVisible()) {
      if (parent.isNeedsLayout()) {
        found.add(parent.toString());
      }
      parent.getChildrenUnmodifiable().forEach(child -> unrest(child, found));
    }
  }

  private void rests(String what) throws Exception {
    List<String> found = new ArrayList<>(List.of(what));
    for (int i = 0; i < MOST_FRAMES && !found.isEmpty(); i++) {
      Fx.pulse();
      found.clear();
      Fx.run(() -> unrest(visit.house, found));
    }
    assertThat(found).as("asks to be laid out: %s", what).isEmpty();
  }

  /** What is drawn aside comes in. */
  private void drawn() throws Exception {
    Fx.until(
        "all pictures are there",
        () ->
            visit.house.lookupAll(".sweep-card .quiet").stream()
                .noneMatch(size -> ((Labeled) size).getText().equals("…")));
  }

  @ParameterizedTest
  @CsvSource({"1280, 800", "1024, 700", "720, 480"})
  void allComesToRest(double wide, double high) throws Exception {
    start(Files.writeString(folder.resolve("many.js"), MANY));
    Fx.run(
        () -> {
          visit.stage.setWidth(wide);
          visit.stage.setHeight(high);
        });
    rests("table");
    for (String command : List.of("aim", "round", "fit-sheet", "find")) {
      Fx.run(() -> visit.house.commands().named(command).run());
      rests(command);
    }
    Fx.run(() -> visit.house.notices().tell("said", "Something is said", "In some words."));
    rests("a notice");
    Fx.run(() -> Fx.button(visit.house.room(), "Compare").fire());
    rests("compare");
    drawn();
    Fx.run(() -> visit.house.desk().turn("side", "1 1/2"));
    for (Place place : List.of(Place.SHELF, Place.PAPERS, Place.TABLE)) {
      Fx.run(() -> visit.house.places().now().set(place));
      rests(place.toString());
      drawn();
    }
    Fx.run(() -> visit.house.commands().named("keys").run());
    rests("a page");
  }
}
