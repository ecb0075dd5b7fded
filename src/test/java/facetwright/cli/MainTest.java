package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import facetwright.export.file.PaperFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The commands as their user sees them: words out, exit code, files whole or not at all. */
class MainTest {
  private static final String BOX =
      """
      design("Crate");
      const side = dial("side", 40, { from: 20, to: 60 });
      prism({ sides: 4, side, height: 30 }).unfold();
      sheet("A4");
      """;

  @TempDir Path folder;

  @Test
  void openWithoutAWindowSaysWhatElseCanBeDone() {
    Run run = run("open", "crate.js");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("no window").contains("facetwright make crate.js");
  }

  private String script(String text) throws Exception {
    return Files.writeString(folder.resolve("crate.js"), text).toString();
  }

  @Test
  void checkMeasuresABox() throws Exception {
    Run run = run("check", script(BOX), "--json", "--set", "side=50");
    assertThat(run.exit()).as(run.err() + run.out()).isZero();
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertThat(json.path("title").asString()).isEqualTo("Crate");
    assertThat(json.path("dials").path("side").asDouble()).isEqualTo(50);
    assertThat(json.path("net").path("overlaps").asInt(-1)).isZero();
    assertThat(json.path("net").path("pieces").asInt()).isEqualTo(1);
    assertThat(json.path("sheet").path("name").asString()).isEqualTo("A4");
    assertThat(json.path("sheet").path("fits").asBoolean()).isTrue();
    JsonNode folded = json.path("folded");
    assertThat(folded.path("closed").asBoolean()).isTrue();
    assertThat(folded.path("collisions").asInt(-1)).isZero();
    assertThat(folded.path("gap_mm").asDouble(1)).isLessThan(1e-6);
    // A box of 50 by 50 by 30 mm: width times depth times height.
    assertThat(folded.path("volume_mm3").asDouble())
        .isCloseTo(75_000, org.assertj.core.data.Offset.offset(1e-6));
    assertThat(folded.path("size_mm").get(2).asDouble())
        .isCloseTo(30, org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void checkTellsTheVerdictAndTheVertices() throws Exception {
    JsonNode box = new ObjectMapper().readTree(run("check", script(BOX), "--json").out());
    assertThat(box.path("folded").path("verdict").asString())
        .isEqualTo("Closes: every join meets to within 0.001 mm.");
    assertThat(box.path("folded").path("strained_panels")).isEmpty();
    // A box has eight corners, each between three right angles.
    assertThat(box.path("vertices")).hasSize(8);
    for (JsonNode vertex : box.path("vertices")) {
      assertThat(vertex.path("angle_sum_deg").asDouble())
          .isCloseTo(270, org.assertj.core.data.Offset.offset(1e-9));
      assertThat(vertex.path("closed").asBoolean()).isTrue();
      assertThat(vertex.path("panels")).hasSize(3);
      assertThat(vertex.has("fold_flat")).isFalse();
    }
  }

  /** Four scores in a point, their angles 90° each: flat only with three of one sense. */
  @Test
  void checkTellsWhatFoldingFlatAsksFor() throws Exception {
    String map =
        """
        design("Map");
        blank({ width: 100, height: 80 })
          .score({ from: "left", at: 50, fold: 180, sense: "%s" })
          .score({ from: "bottom", at: 40, fold: 180, sense: "valley" });
        """;
    Run wrong = run("check", script(map.formatted("mountain")), "--json");
    assertThat(wrong.exit()).isEqualTo(1);
    JsonNode json = new ObjectMapper().readTree(wrong.out());
    JsonNode flat = json.findValue("fold_flat");
    assertThat(flat.path("alternating_deg").asDouble(1)).isZero();
    assertThat(flat.path("surplus").asInt(9)).isZero();
    assertThat(flat.path("possible").asBoolean(true)).isFalse();
    assertThat(json.path("findings").findValuesAsString("rule")).contains("fold-flat");
  }

  @Test
  void checkTellsTheBend() throws Exception {
    String tray =
        """
        design("Tray");
        const base = panel("base", { width: 60, height: 60 });
        const w = ["bottom", "right", "top", "left"].map((e, i) =>
          base.attach(e, "wall " + (i + 1), { depth: i == 2 ? 25.03 : 25, fold: 90 }));
        for (let i = 0; i < 4; i++) w[i].join("left", w[(i + 1) % 4], "right", { depth: 8 });
        """;
    JsonNode folded =
        new ObjectMapper().readTree(run("check", script(tray), "--json").out()).path("folded");
    assertThat(folded.path("closed").asBoolean()).isTrue();
    assertThat(folded.path("strain").asDouble()).isBetween(1e-5, 0.002);
    assertThat(folded.path("verdict").asString()).startsWith("Closes if the card bends by 0.0");
    // Flat panels leave open what bending brings together: up to the 0.03 mm by which sides differ.
    assertThat(folded.path("gap_mm").asDouble()).isBetween(0.001, 0.06);
    double most = 0;
    for (JsonNode panel : folded.path("strained_panels")) {
      most = Math.max(most, panel.path("strain").asDouble());
    }
    assertThat(most).isEqualTo(folded.path("strain").asDouble());
  }

  @Test
  void makeWritesEverything() throws Exception {
    Path out = folder.resolve("papers");
    Run run = run("make", script(BOX), "--out", out.toString());
    assertThat(run.exit()).as(run.err() + run.out()).isZero();
    for (String name :
        List.of(
            "crate-template.pdf",
            "crate-guides.pdf",
            "crate-chart.pdf",
            "crate-template.svg",
            "crate-template.dxf",
            "crate-net.fold",
            "crate-folded.obj",
            "crate-folded.stl",
            "crate-net.png",
            "crate-folded.png")) {
      assertThat(out.resolve(name)).isNotEmptyFile();
    }
    assertThat(run.out())
        .contains(
            "Closes: every join meets to within 0.001 mm.", "30 mm tall", "crate-template.pdf");
  }

  @Test
  void makeTellsOtherProgramsWhatItWrote() throws Exception {
    Path out = folder.resolve("papers");
    Run run = run("make", script(BOX), "--out", out.toString(), "--json");
    assertThat(run.exit()).as(run.err()).isZero();
    JsonNode json = new ObjectMapper().readTree(run.out());
    assertThat(json.path("sound").asBoolean()).isTrue();
    Set<String> told = new HashSet<>();
    for (JsonNode file : json.path("files")) {
      told.add(file.path("name").asString());
      Path written = Path.of(json.path("folder").asString(), file.path("name").asString());
      assertThat(Files.size(written)).isEqualTo(file.path("bytes").asLong());
    }
    try (var files = Files.list(out)) {
      told.add(PaperFolder.RECORD);
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(told);
    }
  }

  @Test
  void makeOnlyWhatIsAsked() throws Exception {
    Path out = folder.resolve("papers");
    assertThat(run("make", script(BOX), "--out", out.toString(), "--only", "svg").exit()).isZero();
    try (var files = Files.list(out)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrder("crate-template.svg", PaperFolder.RECORD);
    }
  }

  /** A design replaces its own papers, turned otherwise or changed, and nothing else unasked. */
  @Test
  void makeReplacesNothingUnaskedButItsOwn() throws Exception {
    String out = folder.resolve("papers").toString();
    String box = script(BOX);
    String[] svg = {"--out", out, "--only", "svg"};
    assertThat(run(words("make", box, svg)).exit()).isZero();
    assertThat(run(words("make", box, svg)).exit()).isZero();
    Path template = folder.resolve("papers").resolve("crate-template.svg");
    String first = Files.readString(template);
    Files.writeString(Path.of(box), BOX.replace("A4", "A3"));
    assertThat(run(words("make", box, svg)).exit()).as("changed").isZero();
    assertThat(Files.readString(template)).isNotEqualTo(first);
    Path twin = Files.writeString(folder.resolve("twin.js"), BOX);
    Run refused = run(words("make", twin.toString(), svg));
    assertThat(refused.exit()).isEqualTo(2);
    assertThat(refused.err())
        .contains("holds crate-template.svg already, not as this design wrote it.")
        .contains("Choose another folder with --out, or say --replace.");
    Files.writeString(template, "drawn over by hand");
    assertThat(run(words("make", box, svg)).exit()).isEqualTo(2);
    assertThat(template).hasContent("drawn over by hand");
    Run replaced = run(words("make", box, "--out", out, "--only", "svg", "--replace"));
    assertThat(replaced.exit()).isZero();
    assertThat(Files.readString(template)).contains("<svg");
    Path kept = folder.resolve("papers").resolve("replaced-files");
    assertThat(replaced.out())
        .contains("What stood there is kept in " + kept.toAbsolutePath().normalize() + " until");
    assertThat(kept.resolve("crate-template.svg")).hasContent("drawn over by hand");
  }

  private static String[] words(String command, String file, String... rest) {
    return Stream.concat(Stream.of(command, file), Stream.of(rest)).toArray(String[]::new);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "prism({ sides: 6, side: 20 height: 30 })|2|a name stands where a comma should",
        "prisn({ sides: 6, side: 20, height: 30 })|2|prism",
        "prism({ sides: 'six', side: 20, height: 30 })|2|whole number from 3 to 64",
        "prism({ sides: 6, side: NaN, height: 30 })|2|NaN",
        "prism({ sides: 6, side: 0, height: 30 })|2|too small",
        "prism({ sides: 6, side: -4, height: 30 })|2|too small",
        "prism({ sides: 1e9, side: 20, height: 30 })|2|too large",
        "for (;;) {}|2|stopped",
        "const all = []; for (;;) all.push(new Array(1e5).fill(0))|2|stopped",
        "const again = () => again(); again()|2|each other",
        "prism({ sides: 6, side: 20, height: 30, colour: 3 })|2|colour",
        "prism({ sides: 6, side: 20, height: 30 }).unfld()|2|unfold",
      })
  void badScriptsAreExplainedAndWriteNothing(String line, int exit, String told) throws Exception {
    Path out = folder.resolve("papers");
    String file = script("design('Bad');\n" + line + "\n");
    Run run = run("make", file, "--out", out.toString());
    assertThat(run.exit()).isEqualTo(exit);
    assertThat(run.err())
        .contains(told)
        .contains("crate.js:2:")
        .doesNotContain("\tat ", "java.", "org.");
    assertThat(run.err().lines().count())
        .as("says what to do:\n" + run.err())
        .isGreaterThanOrEqualTo(2);
    assertThat(out).doesNotExist();
  }

  /** A program that reads the answer finds the fault where it finds others. */
  @ParameterizedTest
  @ValueSource(strings = {"check", "dials", "layers", "chart", "materials"})
  void badScriptsAreToldAsJsonToo(String command) throws Exception {
    Path script = Files.writeString(folder.resolve("bad.js"), "design(\"Bad\");\nprsm({});\n");
    Run run = run(command, script.toString(), "--json");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("bad.js:2:1");
    JsonNode found = new ObjectMapper().readTree(run.out()).get("findings").get(0);
    assertThat(found.get("rule").asString()).isEqualTo("script");
    assertThat(found.get("severity").asString()).isEqualTo("error");
    assertThat(found.get("message").asString()).contains("prsm");
    assertThat(found.get("line").asInt()).isEqualTo(2);
    assertThat(found.get("fix").asString()).contains("prism");
  }

  @Test
  void wrongCallsExitWith2() throws Exception {
    assertThat(run("check", folder.resolve("none.js").toString()))
        .satisfies(r -> assertThat(r.exit()).isEqualTo(2))
        .satisfies(r -> assertThat(r.err()).contains("there is no file"));
    assertThat(run("check", script(BOX), "--set", "side").exit()).isEqualTo(2);
    assertThat(run("check", script(BOX), "--set", "sid=50").err()).contains("side");
    assertThat(run("check", script(BOX), "--set", "side=500").err()).contains("20 to 60");
    assertThat(run("make", script(BOX), "--only", "gif").err()).contains("pdf");
    assertThat(run("fold").exit()).isEqualTo(2);
    assertThat(run("--help").out()).contains("make", "check", "shelf");
  }

  @Test
  void aPieceTooLargeForItsSheetIsAnError() throws Exception {
    Run run =
        run(
            "check",
            script(
                "design('Big');\n"
                    + "sheet('A5');\n"
                    + "prism({ sides: 4, side: 90, height: 90 }).unfold();\n"));
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains("does not fit the A5 sheet", "error");
  }

  @Test
  void shelfListsTheLibrary() {
    Run run = run("shelf");
    assertThat(run.exit()).isZero();
    assertThat(run.out().lines()).anyMatch(l -> l.contains("harbour-lantern.js"));
  }
}
