package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundCommandTest {
  private static final String LANTERN = "library/harbour-lantern.js";

  @Test
  void tellsDialsMeasuresAndWhatIsLeft() {
    assertThat(run(0, "round", LANTERN, "--ruler", "1/16in"))
        .contains("1 1/8 in  +0.57 mm")
        .contains("before, 11 of the form and 3 of cuts lay")
        .contains("About: 12 mm lies between two marks; the nearest, 1/2 in, is 0.7 mm too much.")
        .contains("the form keeps its size, and its joins meet")
        .contains("Line 18, column 88: no dial moves the 12 there. With 12.7 (1/2 in)")
        .contains("facetwright make " + LANTERN + " --set side=1-1/8in wall=2-3/8in");
  }

  @Test
  void tellsOtherPrograms() throws Exception {
    JsonNode json =
        new ObjectMapper().readTree(run(0, "round", LANTERN, "--ruler", "1/16in", "--json"));
    assertThat(json.path("dials").path(0).path("typed").asText()).isEqualTo("1-1/8in");
    assertThat(json.path("before").path("form_off").asInt()).isEqualTo(11);
    assertThat(json.path("after").path("form_off").asInt()).isEqualTo(1);
    assertThat(json.path("after").path("as_set").path("closed").asBoolean()).isTrue();
    assertThat(json.path("constants").path(0).path("line").asInt()).isEqualTo(18);
  }

  @Test
  void writesAScriptThatNeedsNoMoreRounding(@TempDir Path folder) throws Exception {
    Path out = folder.resolve("inches.js");
    run(0, "round", LANTERN, "--ruler", "1/16in", "--constants", "--out", out.toString());
    assertThat(Files.readString(out)).contains("dial(\"wall\", \"2 3/8 in\"");
    JsonNode json =
        new ObjectMapper().readTree(run(0, "round", out.toString(), "--ruler", "1/16in", "--json"));
    assertThat(json.path("before").path("form_off").asInt()).isZero();
  }

  @Test
  void refusesWhatItCannotDo(@TempDir Path folder) {
    assertThat(run(2, "round", LANTERN, "--ruler", "blue")).contains("--ruler:");
    assertThat(run(2, "round", LANTERN, "--within", "0")).contains("--within: 1 to 20 marks");
    assertThat(run(2, "round", LANTERN, "--constants")).contains("--out");
    // An aim in the script would turn its dials again.
    assertThat(
            run(
                2,
                "round",
                "library/sand-pot.js",
                "--ruler",
                "1mm",
                "--out",
                folder.resolve("x.js").toString()))
        .contains("does not take the new values");
    assertThat(folder.resolve("x.js")).doesNotExist();
  }
}
