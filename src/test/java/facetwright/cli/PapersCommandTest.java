package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** From a script to papers in one command: a class of makers, and a ring. */
class PapersCommandTest {
  private static final String LANTERN = "library/harbour-lantern.js";
  @TempDir Path folder;

  private String text(String file) throws Exception {
    try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void papersForAClassOfTwentyFour() throws Exception {
    run(0, "make", LANTERN, "--class", "24", "--out", folder.toString());
    assertThat(folder.resolve("handout.html")).exists();
    assertThat(text("handout.pdf"))
        .contains("You need, for 24 pieces", "buy 14 sheets (needed 12)", "Score", "Cut", "Fold")
        .contains("Glue in this order", "over the opening", "100 mm");
    // Eight layers a lantern.
    assertThat(text("layers.pdf")).contains("192 for 24", "A number at a line is the cut");
    assertThat(text("guides.pdf")).contains("Shopping list for 24 pieces");
  }

  /** A metric design, rounded and made for somebody with a ruler in eighths. */
  @Test
  void papersForAnotherRuler() throws Exception {
    String sets = run(0, "round", LANTERN, "--ruler", "1/8in");
    assertThat(sets).contains("--set side=1-1/8in wall=2-3/8in --ruler 1/8in");
    run(
        0,
        "make",
        LANTERN,
        "--set",
        "side=1-1/8in",
        "wall=2-3/8in",
        "--ruler",
        "1/8in",
        "--only",
        "chart,handout",
        "--out",
        folder.toString());
    assertThat(text("chart.pdf")).contains("Ruler: 1/8 in.", "whole height at 1 1/8, 2 1/4, 3 3/8");
    assertThat(text("handout.pdf")).contains("1 1/8, 2 1/4, 3 3/8");
  }

  @Test
  void papersForARingOfEight() throws Exception {
    String words = run(0, "ring", LANTERN, "--count", "8", "--out", folder.toString());
    // Two lanterns a sheet.
    assertThat(words).contains("All 8 take:", "(needed 4)", "Spacers: 8 strips of card");
    assertThat(text("ring.pdf"))
        .contains("A ring of 8.", "What all 8 take", "The spacer at true size", "100 mm");
    assertThat(text("handout.pdf")).contains("You need, for 8 pieces");
  }

  @Test
  void aRingAsJsonTellsWhatAllPiecesTake() throws Exception {
    JsonNode ring = new ObjectMapper().readTree(run(0, "ring", LANTERN, "--count", "8", "--json"));
    assertThat(ring.path("materials").path("count").asInt()).isEqualTo(8);
    assertThat(ring.path("materials").path("shopping").path(0).path("needed").asInt()).isEqualTo(4);
    assertThat(ring.path("ways").path(0).path("spacer").path("degrees").asDouble()).isPositive();
  }
}
