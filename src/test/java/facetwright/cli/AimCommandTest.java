package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** {@code dials} and {@code aim} as their user sees them. */
class AimCommandTest {
  private static final String CRATE =
      """
      design("Crate", { units: "in" });
      const side = dial("side", "1 1/2 in", { from: "1 in", to: "3 in" });
      const tall = dial("tall", "2 in", { from: "1 in", to: "3 in" });
      const sides = dial("sides", 4, { from: 4, to: 8, step: 2 });
      prism({ sides, side, height: tall }).unfold();
      sheet("Tabloid");
      """;

  @TempDir Path folder;

  private String crate() throws Exception {
    return Files.writeString(folder.resolve("crate.js"), CRATE).toString();
  }

  @Test
  void aimSaysWhatToType() throws Exception {
    String file = crate();
    Run run = run("aim", file, "height=2.4", "--turn", "tall");
    assertThat(run.exit()).as(run.err()).isZero();
    // 2.4 lies between 2 3/8 = 2.375 and 2 7/16 = 2.4375.
    assertThat(run.out())
        .contains("tall: 2 → 2 3/8 (exactly 2.4)")
        .contains("height: 2.375 in, 0.025 in less than asked.")
        .contains("facetwright make " + file + " --set tall=2-3/8");
    Run made = run("check", file, "--set", "tall=2-3/8", "--json");
    assertThat(
            new ObjectMapper()
                .readTree(made.out())
                .path("folded")
                .path("size_mm")
                .get(2)
                .asDouble())
        .isCloseTo(2.375 * 25.4, Offset.offset(1e-9));
  }

  @Test
  void aimInJsonHasExactAndSetValues() throws Exception {
    Run run = run("aim", crate(), "height=2.4", "--turn", "tall", "--json", "--set", "side=2");
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertThat(json.path("met").asBoolean()).isTrue();
    JsonNode goal = json.path("goals").get(0);
    assertThat(goal.path("wanted").asDouble()).isCloseTo(60.96, Offset.offset(1e-9));
    assertThat(goal.path("exact").asDouble()).isCloseTo(60.96, Offset.offset(1e-4));
    assertThat(goal.path("miss").asDouble()).isCloseTo(-0.635, Offset.offset(1e-6));
    assertThat(json.path("dials").get(0).path("typed").asString()).isEqualTo("2-3/8");
    assertThat(json.path("trials").asInt()).isPositive();
    assertThat(json.path("make").asString()).endsWith("--set side=2 tall=2-3/8");
  }

  @Test
  void fitsSaysHowTheNetLies() throws Exception {
    String file = crate();
    Run run = run("aim", file, "fits=Letter");
    assertThat(run.exit()).as(run.err()).isZero();
    assertThat(run.out())
        .contains("fits Letter: the net is ")
        .contains("has its papers made for Tabloid; facetwright fit --sheet changes that, too.");
    JsonNode json =
        new ObjectMapper().readTree(run("aim", file, "fits=8.5 x 11 in", "--json").out());
    JsonNode goal = json.path("goals").get(0);
    assertThat(goal.path("set").asBoolean()).isTrue();
    assertThat(goal.path("wanted").asString()).isEqualTo("8.5 × 11 in");
    Run small = run("aim", file, "fits=A8");
    assertThat(small.exit()).isEqualTo(1);
    assertThat(small.out()).contains("does not fit A8", "let them turn with --turn: sides");
  }

  @Test
  void aMissedAimExitsWith1() throws Exception {
    Run run = run("aim", crate(), "height=5in", "--turn", "tall");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains("can't be reached", "tall is at its greatest (3)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "height=5 --turn tal|Did you mean \"tall\"?",
        "heigth=5|Did you mean height?",
        "height|such as height=120",
        "fits=Tabliod|Tabloid",
        "height=2 --grid thumb|no ruler",
        "--set side=2|needs a goal",
      })
  void wrongCallsSayWhatToType(String words, String told) throws Exception {
    String file = crate();
    Run run = run(("aim " + file + " " + words).split(" "));
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains(told).startsWith("facetwright: ");
  }

  @Test
  void dialsShowsWhatOneMarkDoes() throws Exception {
    Run run = run("dials", crate());
    assertThat(run.exit()).as(run.err()).isZero();
    assertThat(run.out()).contains("Crate", "1-1/2", "1 to 3", "net width");
    // A sixteenth more of wall is a sixteenth more of height, 0.0625 in, shown to a thousandth.
    assertThat(run.out().lines().filter(l -> l.strip().startsWith("tall")))
        .singleElement()
        .satisfies(l -> assertThat(l).contains("1/16", "+0.063"));
    JsonNode json = new ObjectMapper().readTree(run("dials", crate(), "--json").out());
    JsonNode tall = json.path("dials").get(1);
    assertThat(tall.path("name").asString()).isEqualTo("tall");
    assertThat(tall.path("slopes").path("height_mm").path("value").asDouble())
        .isCloseTo(25.4, Offset.offset(1e-9));
    assertThat(json.path("dials").get(2).path("per").asString()).isEqualTo("step");
  }

  @Test
  void aDesignWithoutDialsSaysSo() throws Exception {
    Path file = folder.resolve("cube.js");
    Files.writeString(
        file, "design('Cube');\nprism({ sides: 4, side: 30, height: 30 }).unfold();\n");
    assertThat(run("dials", file.toString()).out()).contains("has no dials");
    assertThat(run("aim", file.toString(), "height=40").err()).contains("no dials to turn");
  }

  @Test
  void checkNamesTheTurnThatCloses() throws Exception {
    Path file = folder.resolve("tent.js");
    Files.writeString(
        file,
        """
        design("Card tent");
        const floor = dial("floor", 75, { from: 60, to: 90, step: 5 });
        const front = panel("front", { width: 60, height: 80 });
        const back = front.attach("top", "back", { depth: 80, fold: 120 });
        const under = back.attach("top", "floor", { depth: floor, fold: 120 });
        under.join("top", front, "bottom", { depth: 10 });
        sheet("A4");
        """);
    assertThat(run("check", file.toString()).out())
        .contains("Turn floor from 75 to 80: the gap goes from 5 mm to 0 mm.");
    JsonNode mend =
        new ObjectMapper().readTree(run("check", file.toString(), "--json").out()).path("mend");
    assertThat(mend.path("dial").asString()).isEqualTo("floor");
    assertThat(mend.path("to").asDouble()).isEqualTo(80);
    JsonNode closed =
        new ObjectMapper()
            .readTree(run("check", file.toString(), "--json", "--set", "floor=80").out())
            .path("mend");
    assertThat(closed.isNull()).isTrue();
  }
}
