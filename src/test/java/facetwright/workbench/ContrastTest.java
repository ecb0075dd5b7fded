package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.workbench.Places.Place;
import facetwright.workbench.look.Shade;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words and lines stand out from what they stand on. */
class ContrastTest {
  /** WCAG 2.2, success criterion 1.4.3 for text, 1.4.11 for lines that mean something. */
  private static final double WORDS = 4.5;

  private static final double LINES = 3;

  @TempDir private Path folder;

  /** The two ends of the scale, and #767676 on white, known as the lightest grey that passes. */
  @Test
  void isMeasuredByTheFormula() {
    assertThat(Contrast.of(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
    assertThat(Contrast.of(Color.WHITE, Color.WHITE)).isCloseTo(1, within(1e-9));
    assertThat(Contrast.of(Color.web("#767676"), Color.WHITE)).isCloseTo(4.54, within(0.005));
  }

  /** Every word that shows in any place, on what it stands on. */
  @Test
  void wordsStandOut() throws Exception {
    Visit visit = Visit.atTheDemo(folder);
    House house = visit.house;
    Fx.run(() -> house.commands().named("aim").run());
    Fx.run(() -> house.commands().named("replace").run());
    Fx.run(() -> house.notices().tell("test", "Something to say", "And some words about it."));
    Fx.run(() -> house.places().now().set(Place.SHELF));
    Fx.until("the shelf is there", () -> house.shelf().isAtRest());
    Fx.run(() -> house.places().now().set(Place.PAPERS));
    Fx.until("a page is shown", () -> Fx.says(house.papers(), "Page 1 of"));
    for (boolean broken : new boolean[] {false, true}) {
      if (broken) {
        Fx.run(() -> house.desk().text().set(house.desk().text().get() + "\nwrup()"));
        Fx.until("the fault is told", () -> house.desk().fault().get() != null);
      }
      for (boolean dark : new boolean[] {false, true}) {
        Fx.run(() -> house.room().dark().set(dark));
        for (Place place : Place.values()) {
          Fx.run(() -> house.places().now().set(place));
          Fx.pulse();
          Set<String> faint = new TreeSet<>();
          int seen = Fx.get(() -> faint(house, Color.TRANSPARENT, faint));
          assertThat(seen).as("words seen").isGreaterThan(20);
          assertThat(faint).as("faint in %s, %s", place, dark ? "dark" : "light").isEmpty();
        }
        Fx.run(() -> house.commands().named("keys").run());
        Fx.pulse();
        Set<String> faint = new TreeSet<>();
        Fx.run(() -> faint(house.pages(), Color.TRANSPARENT, faint));
        assertThat(faint).as("faint on the page of keys").isEmpty();
        Fx.run(() -> house.pages().close());
      }
    }
    visit.close();
  }

  /** Says which words are faint; how many were looked at. */
  private static int faint(Node node, Color ground, Set<String> found) {
    if (!node.isVisible() || node.isDisabled()) {
      return 0;
    }
    if (node instanceof Text text) {
      if (text.getText().isBlank() || !(text.getFill() instanceof Color fill)) {
        return 0;
      }
      double contrast = Contrast.of(over(fill, ground), ground);
      if (contrast < WORDS) {
        found.add("%s: %s on %s, %.2f".formatted(text.getText().strip(), fill, ground, contrast));
      }
      return 1;
    }
    Color under = node instanceof Region region ? ground(region, ground) : ground;
    int count = 0;
    if (node instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        count += faint(child, under, found);
      }
    }
    return count;
  }

  private static Color ground(Region region, Color under) {
    Color ground = under;
    if (region.getBackground() != null) {
      for (BackgroundFill each : region.getBackground().getFills()) {
        if (each.getFill() instanceof Color fill) {
          ground = over(fill, ground);
        }
      }
    }
    return ground;
  }

  private static Color over(Color above, Color under) {
    double a = above.getOpacity();
    return a == 1
        ? above
        : under.interpolate(new Color(above.getRed(), above.getGreen(), above.getBlue(), 1), a);
  }

  /** What is painted on the table and in the lens. */
  @Test
  void paintedLinesStandOut() {
    for (Shade shade : List.of(Shade.LIGHT, Shade.DARK)) {
      assertThat(Contrast.of(shade.words(), shade.ground())).isGreaterThan(WORDS);
      assertThat(Contrast.of(shade.quiet(), shade.ground())).isGreaterThan(WORDS);
      assertThat(Contrast.of(shade.selection(), shade.ground())).isGreaterThan(LINES);
      assertThat(Contrast.of(shade.selection(), shade.paper())).isGreaterThan(LINES);
    }
    List<Color> pins = new ArrayList<>(List.of(Color.web("#A3291F"), Color.web("#7A5C12")));
    pins.forEach(pin -> assertThat(Contrast.of(Color.WHITE, pin)).isGreaterThan(WORDS));
  }
}
