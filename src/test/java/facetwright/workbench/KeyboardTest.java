package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.focus.Reach;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The window without a mouse. */
class KeyboardTest {
  /** A focus mark has at least so many pixels: as many as a line of one pixel round a button. */
  private static final int LEAST_MARK = 60;

  @TempDir private Path folder;
  private Visit visit;
  private House house;

  @BeforeEach
  void start() throws Exception {
    visit = Visit.atTheDemo(folder);
    house = visit.house;
  }

  @AfterEach
  void close() throws Exception {
    visit.close();
  }

  private void command(String id) throws Exception {
    Fx.run(() -> house.commands().named(id).run());
    Fx.pulse();
    Fx.pulse();
  }

  private void go(String what) throws Exception {
    switch (what) {
      case "table" -> {}
      case "replace", "line", "aim", "keys", "about", "fold-script" -> command(what);
      case "tour" -> {
        // It begins with the demo, opened anew.
        command(what);
        Fx.until("its dials are there", () -> Fx.says(house.room(), "Compare"));
        Fx.pulse();
      }
      case "compare" -> {
        Fx.run(() -> Fx.button(house.room(), "Compare").fire());
        Fx.pulse();
      }
      case "notice" -> {
        Fx.run(() -> house.room().card().area().appendText("//"));
        command("new");
      }
      case "fault" -> {
        Fx.run(() -> house.desk().text().set(house.desk().text().get().replace("wrap(", "wrup(")));
        Fx.until("it is told", () -> house.desk().fault().get() != null);
        Fx.pulse();
      }
      default -> {
        command(what);
        Fx.until(
            "it is there",
            () ->
                what.equals("shelf")
                    ? house.shelf().isAtRest()
                    : Fx.says(house.papers(), "Page 1 of"));
        Fx.pulse();
      }
    }
  }

  /**
   * Tab comes to everything that can be reached once and in its order, Shift+Tab the other way
   * round; each stop has a name and is in sight when one stands on it. Every control tells what it
   * does.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "table",
        "shelf",
        "papers",
        "replace",
        "aim",
        "compare",
        "fault",
        "notice",
        "tour",
        "fold-script",
        "keys"
      })
  void tabGoesRound(String what) throws Exception {
    go(what);
    Scene scene = house.getScene();
    boolean alone = Fx.get(() -> house.pages().isVisible());
    List<Node> all = Fx.get(() -> Reach.within(alone ? house.pages() : house));
    assertThat(all).isNotEmpty();
    for (Node stop : all) {
      assertThat(Tabbing.name(stop)).as("the name of %s", stop).isNotEmpty();
    }
    for (Control each : Fx.get(() -> Tabbing.controls(alone ? house.pages() : house))) {
      assertThat(each.getTooltip()).as("what %s does", Tabbing.name(each)).isNotNull();
      assertThat(each.getTooltip().getText()).as(Tabbing.name(each)).isNotBlank();
    }
    Tabbing tabbing = new Tabbing(scene);
    assertThat(tabbing.round(all.getFirst(), true)).containsExactlyElementsOf(all);
    List<Node> back = new ArrayList<>(all.reversed());
    back.addFirst(back.removeLast());
    assertThat(tabbing.round(all.getFirst(), false)).containsExactlyElementsOf(back);
    Fx.run(all.getFirst()::requestFocus);
    for (int i = 0; i < all.size(); i++) {
      Node stop = tabbing.step(true);
      Fx.pulse();
      assertThat(Fx.get(() -> Tabbing.isInSight(stop)))
          .as("%s is in sight", Tabbing.name(stop))
          .isTrue();
    }
  }

  /** Where one is can be seen: by a mark that stands out by 3 to 1 from what is there without. */
  @ParameterizedTest
  @ValueSource(strings = {"table", "shelf", "papers", "compare"})
  @SuppressWarnings("ReferenceEquality") // A node is no other.
  void theFocusIsSeen(String what) throws Exception {
    go(what);
    for (boolean dark : new boolean[] {false, true}) {
      Fx.run(() -> house.room().dark().set(dark));
      Fx.pulse();
      boolean alone = Fx.get(() -> house.pages().isVisible());
      List<Node> all = Fx.get(() -> Reach.within(alone ? house.pages() : house));
      Tabbing tabbing = new Tabbing(house.getScene());
      Fx.run(all.getFirst()::requestFocus);
      Node at = all.getFirst();
      for (int i = 0; i < all.size(); i++) {
        Node here = at;
        Fx.pulse();
        Bounds before = Fx.get(() -> here.localToScene(here.getLayoutBounds()));
        WritableImage with = tabbing.picture(before);
        at = tabbing.step(true);
        // What had to be scrolled into sight is there.
        Fx.pulse();
        Bounds after = Fx.get(() -> here.localToScene(here.getLayoutBounds()));
        WritableImage without = tabbing.picture(before);
        if (before.equals(after) && here != at) {
          assertThat(Tabbing.marked(with, without))
              .as("%s, %s", Tabbing.name(here), dark ? "dark" : "light")
              .isGreaterThan(LEAST_MARK);
        }
      }
    }
  }

  /** A control that does what a command does names the command's keys. */
  @Test
  void theirKeysAreNamed() throws Exception {
    Map<String, String> commands =
        Map.ofEntries(
            Map.entry("Inside up", "inside"),
            Map.entry("Measure", "measure"),
            Map.entry("Layers", "layers"),
            Map.entry("Names", "names"),
            Map.entry("Glue", "glue"),
            Map.entry("Fold", "play"),
            Map.entry("Swap", "swap"),
            Map.entry("Find", "find"),
            Map.entry("Shelf", "shelf"),
            Map.entry("Table", "table"),
            Map.entry("Papers", "papers"));
    for (var each : commands.entrySet()) {
      String keys = house.commands().named(each.getValue()).keys();
      assertThat(keys).isNotEmpty();
      assertThat(Fx.get(() -> Fx.button(house, each.getKey()).getTooltip().getText()))
          .contains(keys);
    }
  }
}
