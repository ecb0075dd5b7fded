package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class FitCommandTest {
  private static final String LANTERN = "library/harbour-lantern.js";

  @Test
  void tellsTheLargestAndHowManyLieThere(@TempDir Path folder) throws Exception {
    assertThat(run(0, "fit", LANTERN, "--sheet", "Letter", "--out", folder.toString()))
        .contains("As it stands, one lies on a sheet of Letter.", "Turned so, one still does.")
        .contains("side: 28 → 32")
        .contains("The script has its papers made for A3; --script FILE writes it for Letter.")
        .contains("facetwright make " + LANTERN + " --set side=32 wall=70");
    try (var pdf = Loader.loadPDF(folder.resolve("harbour-lantern-layout.pdf").toFile())) {
      // The second page is the sheet: 8 1/2 × 11 in, upright or lying, 72 pt an inch.
      assertThat(pdf.getPage(1).getMediaBox().getWidth() + pdf.getPage(1).getMediaBox().getHeight())
          .isCloseTo((8.5f + 11f) * 72, org.assertj.core.api.Assertions.within(0.5f));
    }
  }

  @Test
  void tellsOtherPrograms() throws Exception {
    JsonNode json =
        new ObjectMapper()
            .readTree(
                run(0, "fit", "library/gull-bauble.js", "--sheet", "A4", "--count", "4", "--json"));
    assertThat(json.path("met").asBoolean()).isTrue();
    assertThat(json.path("per_sheet_now").asInt()).isEqualTo(6);
    assertThat(json.path("per_sheet").asInt()).isGreaterThanOrEqualTo(4);
    assertThat(json.path("copies")).hasSize(json.path("per_sheet").asInt());
    assertThat(json.path("size_mm").path(2).asDouble())
        .isGreaterThan(json.path("size_now_mm").path(2).asDouble());
  }

  @Test
  void saysWhatCannotBe() {
    assertThat(run(1, "fit", LANTERN, "--sheet", "A6"))
        .contains("As it stands, it does not fit A6.", "Nor does it fit at any setting found")
        .contains("turned so, it comes nearest.", "side is at its least (20)")
        .doesNotContain("% of the size");
    assertThat(run(1, "fit", LANTERN, "--sheet", "A5", "--count", "4"))
        .contains("4 do not fit at any setting found; turned so, one does.");
    // Its dials count inches, which a maker reads as fractions.
    assertThat(run(1, "fit", "library/supper-tray.js", "--sheet", "A6"))
        .contains("wall is at its least (3/4).");
    assertThat(run(2, "fit", LANTERN, "--sheet", "A66")).contains("--sheet:", "did you mean");
    assertThat(run(2, "fit", LANTERN, "--sheet", "A4", "--count", "0")).contains("1 to 100");
    assertThat(run(2, "fit", LANTERN, "--sheet", "A4", "--turn", "wal"))
        .contains("Did you mean \"wall\"?");
    assertThat(run(2, "fit", LANTERN)).contains("--sheet");
  }
}
