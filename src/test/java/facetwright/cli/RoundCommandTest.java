package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class RoundCommandTest {
  private static final String LANTERN = "library/harbour-lantern.js";

  @Test
  void tellsDialsMeasuresAndWhatIsLeft() {
    assertThat(run(0, "round", LANTERN, "--ruler", "1/16in"))
        .contains("1 1/8 in  +0.57 mm")
        .contains(
            "10 of 13 different measures to set lie on the marks of a ruler of 1/16 in; before,"
                + " none did. One of the form and 2 of the cuts lie between marks.")
        .contains("Off the marks: 7.14 mm (5/16 in is 0.79 mm too much), ")
        .doesNotContain("About: ")
        .contains("the form keeps its size, and its joins meet")
        .contains("Line 18, column 88: no dial moves the 12 there. With \"1/2 in\"")
        .contains(
            "facetwright make " + LANTERN + " --set side=1-1/8in wall=2-3/8in --ruler 1/16in");
  }

  @Test
  void tellsOtherPrograms() throws Exception {
    JsonNode json =
        new ObjectMapper().readTree(run(0, "round", LANTERN, "--ruler", "1/16in", "--json"));
    assertThat(json.path("dials").path(0).path("typed").asString()).isEqualTo("1-1/8in");
    assertThat(json.path("before").path("form_off").asInt()).isEqualTo(11);
    assertThat(json.path("after").path("form_off").asInt()).isEqualTo(1);
    assertThat(json.path("after").path("as_set").path("closed").asBoolean()).isTrue();
    assertThat(json.path("constants").path(0).path("line").asInt()).isEqualTo(18);
  }

  @Test
  void writesAScriptThatNeedsNoMoreRounding(@TempDir Path folder) throws Exception {
    Path out = folder.resolve("inches.js");
    assertThat(
            run(0, "round", LANTERN, "--ruler", "1/16in", "--constants", "--out", out.toString()))
        .contains("The script becomes one in inches, its sizes told in inches;");
    assertThat(Files.readString(out))
        .contains("units: \"in\"")
        .contains("dial(\"wall\", \"2 3/8 in\"")
        .contains("seam: \"1/2 in\"")
        .contains("reveal: \"1.5 mm\"");
    JsonNode json =
        new ObjectMapper().readTree(run(0, "round", out.toString(), "--ruler", "1/16in", "--json"));
    assertThat(json.path("before").path("form_off").asInt()).isZero();
  }

  @Test
  void saysWhyAScriptStaysInItsUnit(@TempDir Path folder) throws Exception {
    String source = Files.readString(Path.of(LANTERN)).replace("seam: 12", "seam: 10 + 2");
    Path reckoned = Files.writeString(folder.resolve("reckoned.js"), source);
    Path out = folder.resolve("inches.js");
    assertThat(run(0, "round", reckoned.toString(), "--ruler", "1/16in", "--out", out.toString()))
        .contains(
            "The script stays in millimetres: counted in inches it would not make the same design");
    assertThat(Files.readString(out)).contains("units: \"mm\"").contains("\"2 3/8 in\"");
    assertThat(
            run(
                0,
                "round",
                LANTERN,
                "--ruler",
                "5mm",
                "--within",
                "4",
                "--out",
                out.toString(),
                "--replace"))
        .contains("for a ruler of 5 mm", " mm  ")
        .doesNotContain(" cm")
        .doesNotContain("The script becomes", "The script stays");
  }

  /**
   * What the note says of a script that stays in its unit holds of each number that is changed: in
   * quotes where a function takes it as a length, plain where it may be reckoned with.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          seam: 12                 | seam: "1/2 in"                 |
          seam: 12.0 /* 12 */      | seam: "1/2 in" /* 12 */        |
          seam: "12 mm"            | seam: "1/2 in"                 |
          seam: 12 * 1             | seam: 12.7 * 1                 | 12.7 in line 18
          ...{ seam: 12 }          | ...{ seam: 12.7 }              | 12.7 in line 18
          """)
  void saysOfEachNumberHowItIsWritten(
      String seam, String written, String plain, @TempDir Path folder) throws Exception {
    String source =
        Files.readString(Path.of(LANTERN))
            .replace("reveal: 1.5", "reveal: 1 + 0.5")
            .replace("seam: 12", seam);
    Path script = Files.writeString(folder.resolve("reckoned.js"), source);
    Path out = folder.resolve("inches.js");
    String said =
        run(0, "round", script.toString(), "--ruler", "1/16in", "--constants", "--out", out + "");
    assertThat(said).contains("The script stays in millimetres").contains("in quotes.");
    assertThat(Files.readString(out)).contains("units: \"mm\"").contains(written);
    if (plain == null) {
      assertThat(said).doesNotContain("plain number of millimetres");
    } else {
      assertThat(said)
          .contains(
              "in quotes. But "
                  + plain
                  + " stays a plain number of millimetres, for the script may reckon with it.");
    }
  }

  @Test
  void refusesWhatItCannotDo(@TempDir Path folder) throws Exception {
    assertThat(run(2, "round", LANTERN, "--ruler", "blue")).contains("--ruler:");
    assertThat(run(2, "round", LANTERN, "--within", "0")).contains("--within: 1 to 20 marks");
    assertThat(run(2, "round", LANTERN, "--constants")).contains("--script");
    String source = Files.readString(Path.of(LANTERN)).replace("\"side\", 28", "\"side\", 27 + 1");
    Path reckoned = Files.writeString(folder.resolve("reckoned.js"), source);
    String out = folder.resolve("x.js").toString();
    assertThat(run(2, "round", reckoned.toString(), "--ruler", "1/8in", "--script", out))
        .contains("does not write the value of each dial as a plain number");
    assertThat(folder.resolve("x.js")).doesNotExist();
  }

  /** Its own aim would turn the dials again. */
  @Test
  void writesAnAimAsAComment(@TempDir Path folder) throws Exception {
    Path out = folder.resolve("x.js");
    run(0, "round", "library/sand-pot.js", "--ruler", "1mm", "--out", out.toString());
    assertThat(Files.readString(out))
        .contains("/* aim({ volume: \"125 ml\", turn: \"tall\" }); */");
    JsonNode json =
        new ObjectMapper().readTree(run(0, "round", out.toString(), "--ruler", "1mm", "--json"));
    for (JsonNode dial : json.path("dials")) {
      assertThat(dial.path("value").asDouble()).isEqualTo(dial.path("was").asDouble());
    }
  }
}
