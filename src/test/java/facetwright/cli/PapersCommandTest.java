package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
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

  @ParameterizedTest
  @ValueSource(strings = {"99", "10001", "wide"})
  void picturesAreOfAWidthThatGoes(String pixels) throws Exception {
    String told = run(2, "make", LANTERN, "--pixels", pixels, "--out", folder.toString());
    assertThat(told).contains("--pixels");
    if (!pixels.equals("wide")) {
      assertThat(told).contains("a picture is 100 to 10000 pixels wide, not " + pixels + ".");
    }
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void picturesAreAsWideAsAsked() throws Exception {
    Path out = folder.resolve("pictures");
    run(0, "make", LANTERN, "--only", "net-png,folded-png", "--pixels", "350", "--out", out + "");
    for (String name : List.of("harbour-lantern-net.png", "harbour-lantern-folded.png")) {
      // The width stands in the file from its 17th byte on (W3C, PNG, 11.2.1).
      byte[] file = Files.readAllBytes(out.resolve(name));
      assertThat(ByteBuffer.wrap(file).getInt(16)).isEqualTo(350);
    }
  }

  @Test
  void papersForAClassOfTwentyFour() throws Exception {
    run(0, "make", LANTERN, "--class", "24", "--out", folder.toString());
    assertThat(folder.resolve("harbour-lantern-handout.html")).exists();
    assertThat(text("harbour-lantern-handout.pdf"))
        .contains("You need, for 24 pieces", "buy 14 sheets (needed 12)", "Score", "Cut", "Fold")
        .contains("Glue in this order", "over the opening", "100 mm");
    // Eight layers a lantern.
    assertThat(text("harbour-lantern-layers.pdf"))
        .contains("192 for 24", "A number at a line is the cut");
    assertThat(text("harbour-lantern-guides.pdf")).contains("Shopping list for 24 pieces");
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
    assertThat(text("harbour-lantern-chart.pdf"))
        .contains("Ruler: 1/8 in.", "whole height at 1 1/8, 2 1/4, 3 3/8");
    assertThat(text("harbour-lantern-handout.pdf")).contains("1 1/8, 2 1/4, 3 3/8");
  }

  private void isOn(float width, float height) throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".pdf")).toList()) {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
          PDRectangle page = document.getPage(0).getMediaBox();
          List<Float> sides = List.of(page.getWidth(), page.getHeight());
          assertThat(Collections.min(sides)).as(file.toString()).isCloseTo(width, within(0.1f));
          assertThat(Collections.max(sides)).as(file.toString()).isCloseTo(height, within(0.1f));
        }
      }
    }
  }

  /** Words and decimal marks are those of the language, on every paper; files keep their names. */
  @ParameterizedTest
  @CsvSource({"de, rillen", "fr, rainez", "es, hienda"})
  void papersAreWrittenInTheLearnersLanguage(String tag, String verb) throws Exception {
    run(
        0,
        "make",
        LANTERN,
        "--only",
        "handout,html",
        "--language",
        tag,
        "--out",
        folder.toString());
    try (PDDocument document =
        Loader.loadPDF(folder.resolve("harbour-lantern-handout.pdf").toFile())) {
      String words = new PDFTextStripper().getText(document);
      assertThat(words.replace('\u00A0', ' '))
          .containsIgnoringCase(verb)
          .contains("113,3 mm")
          .doesNotContain("113.3");
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo(tag);
    }
    assertThat(folder.resolve("harbour-lantern-handout.html"))
        .content()
        .contains("lang=\"" + tag + "\"")
        .containsIgnoringCase(verb);
  }

  @Test
  void languagesThatPapersLackAreRefused() {
    assertThat(Run.run("make", LANTERN, "--language", "it").err())
        .contains("--language: papers are written in en, fr, de or es, not in \"it\".");
  }

  /** Letter is 8.5 × 11 in (from memory, ANSI Y14.1) of 72 pt (ISO 32000-1, 8.3.2.3). */
  @Test
  void everyPaperIsOnThePagesOfThePrinter() throws Exception {
    String only = "handout,chart,guides,layers,tiles";
    String out = folder.toString();
    run(0, "make", LANTERN, "--page", "Letter", "--only", only, "--out", out);
    run(0, "ring", LANTERN, "--count", "8", "--page", "Letter", "--ruler", "1/8in", "--out", out);
    Files.delete(folder.resolve("harbour-lantern-template.pdf"));
    // A quarter of a page.
    Path card = folder.resolve("harbour-lantern-board-card.pdf");
    try (PDDocument document = Loader.loadPDF(card.toFile())) {
      PDRectangle page = document.getPage(0).getMediaBox();
      assertThat(page.getWidth() * page.getHeight()).isCloseTo(8.5f * 72 * 11 * 72 / 4, within(1f));
    }
    Files.delete(card);
    run(0, "sweep", LANTERN, "--dial", "side", "--page", "Letter", "--out", out);
    run(0, "fit", LANTERN, "--sheet", "A3", "--page", "Letter", "--out", out);
    assertThat(folder.resolve("harbour-lantern-layout.pdf")).exists();
    assertThat(folder.resolve("harbour-lantern-sweep.pdf")).exists();
    assertThat(folder.resolve("harbour-lantern-ring.pdf")).exists();
    isOn(8.5f * 72, 11 * 72);
  }

  @Test
  void layersAndGuidesObeyTheRuler() throws Exception {
    run(
        0,
        "make",
        LANTERN,
        "--ruler",
        "1/8in",
        "--only",
        "layers,guides",
        "--out",
        folder.toString());
    // A layer is 57 mm high; 2 1/4 in is 57.15 mm.
    assertThat(text("harbour-lantern-layers.pdf")).contains("57 mm (2 1/4 in is 0.15 mm too much)");
    assertThat(run(0, "layers", LANTERN, "--ruler", "1/8in"))
        .contains("57 mm (2 1/4 in is 0.15 mm too much)");
    assertThat(text("harbour-lantern-guides.pdf"))
        .containsPattern("in is [0-9.]+ mm too (much|little)");
  }

  /** Paper is what layers are cut from; a page is what the printer takes. */
  @Test
  void paperIsNotThePrintersPage() throws Exception {
    for (String command :
        List.of("make", "ring --count 8", "sweep --dial side", "fit --sheet A3")) {
      List<String> words = new ArrayList<>(List.of(command.split(" ")));
      words.addAll(List.of(LANTERN, "--paper", "A4"));
      assertThat(Run.run(words.toArray(String[]::new)))
          .satisfies(
              run -> {
                assertThat(run.exit()).isEqualTo(2);
                assertThat(run.err())
                    .contains("--paper is decorative paper", "printer takes write --page A4.");
              });
    }
    assertThat(Run.run("make", LANTERN, "--page", "A5").err())
        .contains(
            "--page: A5 is too small: each page carries a check ruler and its words, which need"
                + " 200");
    assertThat(Run.run("make", LANTERN, "--page", "Leter").err()).contains("did you mean Letter");
  }

  @Test
  void papersForARingOfEight() throws Exception {
    String words = run(0, "ring", LANTERN, "--count", "8", "--out", folder.toString());
    // Two lanterns a sheet.
    assertThat(words).contains("All 8 take:", "(needed 4)", "Spacers: 8 strips of card");
    assertThat(text("harbour-lantern-ring.pdf"))
        .contains("A ring of 8.", "What all 8 take", "The spacer at true size", "100 mm");
    assertThat(text("harbour-lantern-handout.pdf")).contains("You need, for 8 pieces");
  }

  @Test
  void aRingAsJsonTellsWhatAllPiecesTake() throws Exception {
    JsonNode ring = new ObjectMapper().readTree(run(0, "ring", LANTERN, "--count", "8", "--json"));
    assertThat(ring.path("materials").path("count").asInt()).isEqualTo(8);
    assertThat(ring.path("materials").path("shopping").path(0).path("needed").asInt()).isEqualTo(4);
    assertThat(ring.path("ways").path(0).path("spacer").path("degrees").asDouble()).isPositive();
  }
}
