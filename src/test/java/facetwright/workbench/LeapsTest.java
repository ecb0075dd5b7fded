package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.workbench.Places.Place;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.focus.Reach;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys that lead somewhere, and the way back. */
class LeapsTest {
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

  private void press(String keys) throws Exception {
    Fx.run(() -> Fx.press(house, keys));
    Fx.pulse();
  }

  private Node owner() throws Exception {
    return Fx.get(() -> house.getScene().getFocusOwner());
  }

  /** Whatever came up is put away by Esc, and one is where one was. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "find",
        "line",
        "aim",
        "round",
        "fit-sheet",
        "keys",
        "about",
        "tour",
        "new",
        "shelf",
        "papers",
        "Compare"
      })
  void escComesBack(String what) throws Exception {
    boolean inScript = what.equals("find") || what.equals("line") || what.equals("tour");
    Node before =
        inScript ? house.room().card().area() : Fx.get(() -> Fx.button(house.room(), "Compare"));
    Fx.run(before::requestFocus);
    Place place = house.places().now().get();
    if (what.equals("new")) {
      Fx.run(() -> house.room().card().area().appendText("//"));
    }
    if (what.equals("Compare")) {
      Fx.run(() -> Fx.button(house.room(), what).fire());
    } else {
      Fx.run(() -> house.commands().named(what).run());
    }
    Fx.pulse();
    assertThat(owner()).isNotEqualTo(before);
    press("Esc");
    assertThat(owner()).isEqualTo(before);
    assertThat(house.places().now().get()).isEqualTo(place);
    assertThat(Fx.get(() -> house.notices().now().get())).isNull();
    assertThat(house.pages().isVisible()).isFalse();
    assertThat(house.goals().isVisible()).isFalse();
    assertThat(house.rounding().isVisible()).isFalse();
    assertThat(house.fitting().isVisible()).isFalse();
    assertThat(house.lookup(".sweep").isVisible()).isFalse();
    assertThat(house.lookup(".find-bar").isVisible()).isFalse();
    assertThat(house.tourView().isVisible()).isFalse();
  }

  /** The note of the tour and what it is about are neighbours for F6. */
  @Test
  void oneLeapsFromTheTourToWhatItIsAbout() throws Exception {
    Fx.run(() -> house.commands().named("tour").run());
    Fx.until("it begins", () -> house.tourView().isRunning());
    Node dials = Fx.get(() -> house.tourView().beside().orElseThrow());
    Fx.until("the dials are there", () -> !Reach.within(dials).isEmpty());
    for (int step = 0; step < 4; step++) {
      Fx.pulse();
      Node note = owner();
      assertThat(Tabbing.name(note)).isEqualTo("Next");
      Node about = Fx.get(() -> house.tourView().beside().orElseThrow());
      press("F6");
      assertThat(Reach.isIn(owner(), about)).as("step %s", step + 1).isTrue();
      press("Shift+F6");
      assertThat(owner()).isEqualTo(note);
      Fx.run(((ButtonBase) note)::fire);
    }
  }

  /** "Don't save" is the way on to the new design: one writes in it at once. */
  @Test
  void afterTheQuestionOneWritesInTheNewDesign() throws Exception {
    Fx.run(() -> house.room().card().area().appendText("//"));
    Fx.run(() -> Fx.button(house.room(), "Compare").requestFocus());
    press("Shortcut+N");
    press("Tab");
    press("Space");
    Fx.run(() -> house.notices().choose(house.notices().now().get().choices().get(1)));
    Fx.pulse();
    assertThat(visit.text()).contains("New design");
    assertThat(owner()).isEqualTo(house.room().card().area());
  }

  /** F6 comes to each part in the order in which one reads them, and back with Shift. */
  @Test
  void oneLeapsFromPartToPart() throws Exception {
    Room room = house.room();
    Node script = room.card().area();
    // A panel that fits no sheet: something is found.
    Fx.run(() -> room.card().area().appendText("panel(\"big\", { width: 900, height: 900 });\n"));
    Fx.until("it is found", () -> !house.desk().design().get().findings().isEmpty());
    Fx.pulse();
    Fx.run(() -> room.table().requestFocus());
    press("F6");
    assertThat(owner()).isEqualTo(room.lens());
    press("F6");
    press("F6");
    assertThat(Tabbing.name(owner())).isEqualTo("Compare sides");
    press("F6");
    assertThat(Tabbing.name(owner())).startsWith("Finding 1");
    press("F6");
    assertThat(owner()).isEqualTo(script);
    press("Shift+F6");
    press("Shift+F6");
    press("Shift+F6");
    press("Shift+F6");
    press("Shift+F6");
    assertThat(owner()).isEqualTo(room.table());
    for (int i = 0; i < 9; i++) {
      press("F6");
    }
    assertThat(owner()).as("round and round").isEqualTo(room.table());
  }

  /** The line that asks is a part of its own while it is open, between settings and dials. */
  @ParameterizedTest
  @ValueSource(strings = {"aim", "round", "fit-sheet"})
  void oneLeapsToTheLineThatAsks(String what) throws Exception {
    Room room = house.room();
    Fx.run(() -> house.commands().named(what).run());
    Fx.pulse();
    Node asking = owner();
    press("F6");
    assertThat(Tabbing.name(owner())).isEqualTo("Compare sides");
    press("Shift+F6");
    assertThat(owner()).isEqualTo(asking);
    press("Shift+F6");
    press("Shift+F6");
    assertThat(owner()).isEqualTo(room.lens());
    press("F6");
    press("F6");
    assertThat(owner()).isEqualTo(asking);
  }

  /** One types over what stands in the first field, whichever line is opened. */
  @ParameterizedTest
  @ValueSource(strings = {"round", "fit-sheet"})
  void whatIsTypedTakesThePlaceOfWhatStood(String what) throws Exception {
    Fx.run(() -> house.commands().named(what).run());
    Fx.pulse();
    ComboBox<?> box = (ComboBox<?>) owner();
    String stood = Fx.get(() -> box.getEditor().getText());
    assertThat(stood).isNotEmpty();
    assertThat(Fx.get(() -> box.getEditor().getSelectedText())).isEqualTo(stood);
  }

  /** What is found is in sight and has the focus, at any size of the letters. */
  @ParameterizedTest
  @ValueSource(doubles = {12, 14, 20, 24})
  void whatIsOfferedIsInSight(double size) throws Exception {
    Fx.run(() -> house.textSize().pixels().set(size));
    press("Shortcut+R");
    Fx.run(() -> house.rounding().ruler("1/8 in"));
    press("Enter");
    Fx.until("it is found", () -> house.rounding().told().contains("lie on the marks"));
    Fx.pulse();
    Fx.pulse();
    assertThat(Tabbing.name(owner())).isEqualTo("Take it");
    Node take = owner();
    assertThat(Fx.get(() -> Tabbing.isInSight(take))).isTrue();
    // What is told of it is read on by keys.
    double before = Fx.get(() -> take.localToScene(0, 0).getY());
    press("Page Down");
    assertThat(Fx.get(() -> take.localToScene(0, 0).getY())).isLessThan(before);
    press("Page Up");
    assertThat(Fx.get(() -> Tabbing.isInSight(take))).isTrue();
    Fx.run(((ButtonBase) take)::fire);
    assertThat(Fx.get(() -> house.desk().settings().get())).containsKeys("side", "wall");
  }

  @Test
  void panelsAndScoresAreWalkedAndTheirLineIsGoneTo() throws Exception {
    Room room = house.room();
    Net net = Fx.get(() -> house.desk().design().get().net());
    Fx.run(() -> room.table().requestFocus());
    press("Page Down");
    press("Page Down");
    assertThat(Fx.get(() -> house.desk().selection().get())).isEqualTo(new Selection.OfPanel(1));
    assertThat(Fx.get(() -> room.table().getAccessibleText())).contains(": sides 14 mm, ");
    press("Page Up");
    press("Page Up");
    assertThat(Fx.get(() -> house.desk().selection().get()))
        .isEqualTo(new Selection.OfPanel(net.panels().size() - 1));
    press("Shift+Page Down");
    assertThat(Fx.get(() -> house.desk().selection().get())).isEqualTo(new Selection.OfScore(0));
    press("Enter");
    assertThat(owner()).isEqualTo(room.card().area());
    assertThat(Fx.get(() -> room.card().area().getCurrentParagraph() + 1))
        .isEqualTo(net.scores().getFirst().site().line());
  }

  /** From one corner to the next along a side there are as many millimetres as the side is long. */
  @Test
  void oneMeasuresFromCornerToCornerByKeys() throws Exception {
    Room room = house.room();
    Net net = Fx.get(() -> house.desk().design().get().net());
    press("Shortcut+M");
    assertThat(owner()).isEqualTo(room.table());
    press("Left");
    press("Enter");
    press("Left");
    press("Enter");
    double measured = Fx.get(() -> room.table().measured());
    assertThat(measured).isGreaterThan(1);
    assertThat(
            net.panels().stream()
                .flatMap(p -> p.outline().corners().stream())
                .flatMap(
                    a ->
                        net.panels().stream()
                            .flatMap(p -> p.outline().corners().stream())
                            .map((Vec2 b) -> a.distance(b))))
        .anyMatch(d -> Math.abs(d - measured) < 1e-9);
    assertThat(Fx.get(() -> Fx.says(room, "Measured: "))).isTrue();
    press("Esc");
    assertThat(Fx.get(() -> room.table().measures().get())).isFalse();
  }
}
