package facetwright.workbench.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;

/** Tooltips stand beside what they tell of. */
class TipTest {
  private static final Rectangle2D SCREEN = new Rectangle2D(0, 0, 1280, 800);

  /** Lines of controls all over a screen: nothing that is told of or typed in is covered. */
  @Test
  void coverNeitherWhatTheyTellOfNorWhatIsTypedIn() {
    Random random = new Random(5);
    for (int i = 0; i < 20_000; i++) {
      Rectangle2D told = control(random);
      Rectangle2D typed = control(random);
      double width = 40 + random.nextInt(360);
      double height = 24 + random.nextInt(80);
      Rectangle2D place = TipPlace.of(told, List.of(told, typed), width, height, SCREEN);
      assertThat(place.intersects(told)).as("%s over %s", place, told).isFalse();
      assertThat(place.intersects(typed)).as("%s over %s", place, typed).isFalse();
      assertThat(SCREEN.contains(place)).as("%s on the screen", place).isTrue();
    }
  }

  private static Rectangle2D control(Random random) {
    double width = 20 + random.nextInt(300);
    double height = 20 + random.nextInt(24);
    return new Rectangle2D(
        random.nextDouble() * (SCREEN.getWidth() - width),
        random.nextDouble() * (SCREEN.getHeight() - height),
        width,
        height);
  }

  @Test
  void standBelowWhereThereIsRoom() {
    Rectangle2D told = new Rectangle2D(100, 100, 80, 28);
    Rectangle2D place = TipPlace.of(told, List.of(told), 200, 30, SCREEN);
    assertThat(place).isEqualTo(new Rectangle2D(100, 134, 200, 30));
  }

  @Test
  void areAllOfThisKind() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/facetwright/workbench"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        assertThat(Files.readString(file)).as("%s", file).doesNotContain("new Tooltip(");
      }
    }
  }
}
