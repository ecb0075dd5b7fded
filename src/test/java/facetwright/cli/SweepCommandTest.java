package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class SweepCommandTest {
  private static final String LANTERN = "library/harbour-lantern.js";

  @Test
  void tellsEachStepAndDrawsIt(@TempDir Path folder) throws Exception {
    assertThat(run(0, "sweep", LANTERN, "--dial", "sides", "--out", folder.toString()))
        .contains("Harbour lantern: sides over its range", "8 (now)  closes  113.3 mm")
        .contains(
            "Written to " + folder + ":",
            "  harbour-lantern-sweep.pdf",
            "  harbour-lantern-sweep.svg");
    try (var pdf = Loader.loadPDF(folder.resolve("harbour-lantern-sweep.pdf").toFile())) {
      assertThat(pdf.getNumberOfPages()).isEqualTo(1);
    }
    assertThat(folder.resolve("harbour-lantern-sweep.svg")).exists();
  }

  @Test
  void tellsOtherPrograms() throws Exception {
    JsonNode json =
        new ObjectMapper()
            .readTree(
                run(
                    0, "sweep", LANTERN, "--dial", "wall", "--from", "50", "--to", "60", "--step",
                    "5", "--set", "sides=6", "--json"));
    assertThat(json.path("steps")).hasSize(3);
    assertThat(json.path("steps").path(1).path("value").asDouble()).isEqualTo(55);
    assertThat(json.path("steps").path(1).path("closed").asBoolean()).isTrue();
    // Six scores down, one at the seam, one across: the same as with any wall.
    assertThat(json.path("steps").path(0).path("different_measures").asInt())
        .isEqualTo(json.path("steps").path(2).path("different_measures").asInt());
    assertThat(json.path("steps").path(2).path("size_mm").path(2).asDouble())
        .isGreaterThan(json.path("steps").path(0).path("size_mm").path(2).asDouble());
  }

  @Test
  void refusesWhatCannotBe() {
    assertThat(run(2, "sweep", LANTERN, "--dial", "side s")).contains("Did you mean \"sides\"?");
    assertThat(run(2, "sweep", LANTERN, "--dial", "sides", "--from", "3"))
        .contains("sides goes from 6 to 12");
    assertThat(run(2, "sweep", LANTERN, "--dial", "wall", "--step", "0")).contains("--step:");
    assertThat(run(2, "sweep", LANTERN, "--dial", "wall", "--from", "blue")).contains("--from:");
    assertThat(run(2, "sweep", LANTERN)).contains("--dial");
  }
}
