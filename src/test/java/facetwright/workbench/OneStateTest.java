package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window shows is all of one state of one design, or says that it is not. */
class OneStateTest {
  private static final String BOX =
      """
      design("Plain box", { units: "mm" });
      const side = dial("side", 30, { from: 20, to: 60 });
      prism({ sides: 4, side, height: 40 }).unfold({ tab: 6 });
      sheet("A3");
      """;
  private static final String SLIP = BOX.replace("prism(", "prysm(").replace("Plain", "Other");

  @TempDir private Path folder;
  private Visit visit;

  @BeforeEach
  void open() throws Exception {
    visit = Visit.at(folder, "box.js", BOX);
    Fx.until("the box is made", () -> visit.house.desk().design().get() != null);
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private boolean says(String words) throws Exception {
    return Fx.get(() -> Fx.says(visit.house, words));
  }

  private void faulty() throws Exception {
    Path other = Files.writeString(folder.resolve("other.js"), SLIP);
    Fx.run(() -> visit.house.open(other));
    assertThat(visit.house.desk().design().get()).as("no net of another design").isNull();
    Fx.until("the fault is told", () -> visit.house.desk().fault().get() != null);
  }

  @Test
  void theNetOfAnotherDesignGoesWithAllThatIsOfIt() throws Exception {
    assertThat(says("Closes")).isTrue();
    assertThat(Fx.get(() -> Fx.says(visit.house.room().drawer(), "side"))).isTrue();
    faulty();
    assertThat(says("There is no net yet.")).isTrue();
    assertThat(says("There is no net of this design yet.")).isTrue();
    assertThat(says("The last good net stays")).isFalse();
    assertThat(says("Closes")).isFalse();
    assertThat(Fx.get(() -> visit.house.room().drawer().getChildren().isEmpty())).isTrue();
    Fx.run(() -> visit.house.desk().text().set(SLIP.replace("prysm", "prism")));
    Fx.until("it is made", () -> visit.house.desk().design().get() != null);
    assertThat(says("Closes")).isTrue();
    assertThat(Fx.get(() -> Fx.says(visit.house.room().drawer(), "side"))).isTrue();
  }

  /** Papers that are not of the design as it stands say so, and do not leave the window. */
  @Test
  void papersSayWhichStateTheyAreOf() throws Exception {
    Fx.run(() -> visit.house.places().now().set(Places.Place.PAPERS));
    Fx.until("the first page shows", () -> Fx.says(visit.house.papers(), "Page 1 of 1"));
    assertThat(says("last good state")).isFalse();
    Fx.run(() -> visit.house.desk().text().set(SLIP));
    Fx.until("the fault is told", () -> visit.house.desk().fault().get() != null);
    assertThat(says("These are the papers of the last good state")).isTrue();
    visit.answers.add(folder.resolve("all"));
    Fx.run(() -> Fx.button(visit.house.papers(), "Save all …").fire());
    assertThat(visit.house.papers().told())
        .startsWith("✕ Nothing was saved. These are the papers of the last good state")
        .contains("Line 3: ");
    Fx.run(() -> Fx.button(visit.house.papers(), "Print …").fire());
    assertThat(visit.house.papers().told()).startsWith("✕ Nothing was printed. These are");
    assertThat(folder.resolve("all")).doesNotExist();
    Fx.run(visit.house.desk()::undo);
    Fx.until("it is good again", () -> visit.house.desk().fault().get() == null);
    assertThat(says("last good state")).isFalse();
    Fx.run(() -> Fx.button(visit.house.papers(), "Save all …").fire());
    Fx.until("they are saved", () -> visit.house.papers().told().startsWith("Saved to"));
  }

  @Test
  void whereThereIsNoDesignYetThePapersSayWhy() throws Exception {
    faulty();
    Fx.run(() -> visit.house.places().now().set(Places.Place.PAPERS));
    assertThat(says("There are no papers: there is no net of this design yet. Line 3: ")).isTrue();
    Fx.run(() -> Fx.button(visit.house.papers(), "Save all …").fire());
    assertThat(visit.house.papers().told()).startsWith("✕ Nothing was saved. There are no papers");
  }

  /** Of one script the last good net stays, and says so. */
  @Test
  void theLastGoodNetOfTheSameScriptStays() throws Exception {
    Fx.run(() -> visit.house.desk().text().set(SLIP));
    Fx.until("the fault is told", () -> visit.house.desk().fault().get() != null);
    assertThat(says("The last good net stays on the table.")).isTrue();
    assertThat(visit.house.desk().design().get().title()).isEqualTo("Plain box");
  }
}
