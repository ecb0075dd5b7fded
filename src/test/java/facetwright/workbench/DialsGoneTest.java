package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.design.Dial;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Dials that were turned, and whose line leaves the script and comes back. */
class DialsGoneTest {
  private static final String TALL = "const tall = dial(\"tall\", 30, { from: 20, to: 400 });\n";
  private static final String BOX =
      """
      design("Plain box", { units: "mm" });
      %sconst side = dial("side", 30, { from: 20, to: 60 });
      prism({ sides: 4, side, height: tall }).unfold({ tab: 6 });
      sheet("A3");
      """;
  private static final String WITH = BOX.formatted(TALL);
  private static final String WITHOUT = BOX.formatted("const tall = 40;\n");
  private static final String LEFT_OUT = "Turned, but not in the script now: tall at 55";

  @TempDir private Path folder;
  private Visit visit;

  @BeforeEach
  void open() throws Exception {
    visit = Visit.at(folder, "box.js", WITH);
    Fx.run(() -> visit.house.desk().turn("tall", "55"));
    Fx.run(() -> visit.house.desk().turn("side", "33"));
    made(Map.of("tall", 55.0, "side", 33.0));
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private Map<String, Double> dials() {
    return visit.house.desk().design().get().dials().stream()
        .collect(java.util.stream.Collectors.toMap(Dial::name, Dial::value));
  }

  private void made(Map<String, Double> values) throws Exception {
    Fx.until(
        "the design has dials " + values,
        () ->
            !visit.house.desk().working().get()
                && visit.house.desk().fault().get() == null
                && dials().equals(values));
  }

  private void write(String script) throws Exception {
    Fx.run(() -> visit.house.desk().text().set(script));
  }

  private boolean says(String words) throws Exception {
    return Fx.get(() -> Fx.says(visit.house.room().drawer(), words));
  }

  @Test
  void areLeftOutWithANoteAndHoldAgainOnceTheyAreBack() throws Exception {
    assertThat(says(LEFT_OUT)).isFalse();
    write(WITHOUT);
    made(Map.of("side", 33.0));
    assertThat(says(LEFT_OUT)).isTrue();
    write(WITH);
    made(Map.of("tall", 55.0, "side", 33.0));
    assertThat(says(LEFT_OUT)).isFalse();
  }

  /** A range that no longer holds what a dial was turned to does not block the design. */
  @Test
  void takeTheNearestWhereTheirRangeIsLessAndHoldAgainOnceItIsNot() throws Exception {
    String note = "tall can't be 55: it goes from 20 to 50, and stands at 50.";
    write(WITH.replace("to: 400", "to: 50"));
    made(Map.of("tall", 50.0, "side", 33.0));
    assertThat(says(note)).isTrue();
    assertThat(says(LEFT_OUT)).isFalse();
    write(WITH);
    made(Map.of("tall", 55.0, "side", 33.0));
    assertThat(says(note)).isFalse();
  }

  @Test
  void takeTheNearestOfTheirSteps() throws Exception {
    Fx.run(() -> visit.house.desk().turn("tall", "57"));
    write(WITH.replace("to: 400", "to: 400, step: 10"));
    made(Map.of("tall", 60.0, "side", 33.0));
    assertThat(says("tall can't be 57: it goes from 20 to 400 by 10, and stands at 60.")).isTrue();
  }

  @Test
  void areLeftOutWhereNoDialIsLeft() throws Exception {
    write("design(\"Plain\");\nprism({ sides: 4, side: 30, height: 40 }).unfold({ tab: 6 });\n");
    made(Map.of());
    assertThat(says("This design has no dials")).isTrue();
    assertThat(says("Turned, but not in the script now: side at 33, tall at 55")).isTrue();
  }

  /** Saved without its line, the dial is still turned when the script is opened anew. */
  @Test
  void areRememberedWithTheFile() throws Exception {
    write(WITHOUT);
    Fx.run(visit.house.filing()::save);
    visit.close();
    visit = Visit.start(folder, Path.of("").toAbsolutePath(), folder.resolve("box.js"));
    Fx.until("it is made", () -> visit.house.desk().design().get() != null);
    made(Map.of("side", 33.0));
    assertThat(says(LEFT_OUT)).isTrue();
    write(WITH);
    made(Map.of("tall", 55.0, "side", 33.0));
  }

  @Test
  void doNotBlockAScriptThatAnotherProgramChanged() throws Exception {
    Fx.run(visit.house.filing()::save);
    visit.close();
    Files.writeString(folder.resolve("box.js"), WITHOUT);
    visit = Visit.start(folder, Path.of("").toAbsolutePath(), folder.resolve("box.js"));
    Fx.until("it is made", () -> visit.house.desk().design().get() != null);
    made(Map.of("side", 30.0));
    Fx.run(() -> Fx.button(visit.house, "Turn them so").fire());
    made(Map.of("side", 33.0));
    assertThat(says(LEFT_OUT)).isTrue();
  }
}
