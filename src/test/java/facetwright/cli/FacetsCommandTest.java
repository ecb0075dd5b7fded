package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.LibraryDesigns;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The word {@code facets}: for every way in, and what it writes. */
class FacetsCommandTest {
  @TempDir private Path dir;

  static List<Path> library() throws IOException {
    return LibraryDesigns.files();
  }

  private JsonNode json(String script) throws IOException {
    Path file = Files.writeString(dir.resolve("said.js"), script);
    Run run = run("facets", file.toString(), "--json");
    assertThat(run.exit()).as(run.err()).isZero();
    return new ObjectMapper().readTree(run.out());
  }

  private static List<String> words(JsonNode facet) {
    return facet.path("words").valueStream().map(JsonNode::asString).toList();
  }

  /** Numbers run from 1 without a gap; each has a word, a size and a way it faces. */
  @ParameterizedTest
  @MethodSource("library")
  void everyDesignOfTheLibrary(Path design) throws IOException {
    Run run = run("facets", design.toString(), "--json");
    assertThat(run.exit()).as(run.err()).isZero();
    JsonNode facets = new ObjectMapper().readTree(run.out()).path("facets");
    assertThat(facets.size()).isPositive();
    for (int i = 0; i < facets.size(); i++) {
      JsonNode facet = facets.path(i);
      assertThat(facet.path("number").asInt()).isEqualTo(i + 1);
      // No call chooses a wrap's floor.
      assertThat(words(facet).isEmpty() && !facet.path("name").asString().equals("floor"))
          .as(facet.toString())
          .isFalse();
      assertThat(facet.path("corners").asInt()).isGreaterThanOrEqualTo(3);
      assertThat(facet.path("width_mm").asDouble()).isPositive();
      assertThat(facet.path("faces").path("text").asString()).isNotEmpty();
    }
  }

  /** The paper of the facets is the same by this word and among the papers. */
  @Test
  void theSamePaperAsAmongThePapers() throws IOException {
    Path script =
        Files.writeString(
            dir.resolve("box.js"),
            "design(\"Box\");\nbox({ width: 60, depth: 40, height: 25 }).unfold();");
    Path one = dir.resolve("one");
    Path other = dir.resolve("other");
    assertThat(run("facets", script.toString(), "--out", one.toString()).exit()).isZero();
    assertThat(run("make", script.toString(), "--only", "facets", "--out", other.toString()).exit())
        .isZero();
    assertThat(other.resolve("box-facets.pdf"))
        .hasSameBinaryContentAs(one.resolve("box-facets.pdf"));
  }

  /** A prism's sides stand upright, and side 1 is at the front. */
  @Test
  void aFormByItsNames() throws IOException {
    JsonNode facets =
        json("design(\"Box\");\nbox({ width: 60, depth: 40, height: 25 }).unfold();")
            .path("facets");
    Set<String> seen = new HashSet<>();
    for (JsonNode f : facets) {
      seen.add(
          words(f)
              + " "
              + Math.rint(f.path("width_mm").asDouble())
              + " "
              + f.path("faces").path("text").asString());
    }
    assertThat(seen)
        .containsExactlyInAnyOrder(
            "[\"base\", \"all\"] 60.0 down",
            "[\"top\", \"all\"] 60.0 up",
            "[\"side 1\", \"side\", \"all\"] 60.0 front",
            "[\"side 2\", \"side\", \"all\"] 40.0 right",
            "[\"side 3\", \"side\", \"all\"] 60.0 back",
            "[\"side 4\", \"side\", \"all\"] 40.0 left");
  }

  /** What is listed of each way in means that facet where it is written into the script. */
  @Test
  void wrapsPanelsAndBlanksBySayingWhereTheyAre() throws IOException {
    JsonNode band =
        json(
            "design(\"Band\");\nconst band = wrap({ columns: 4, width: 30, rows: [10, 50, 10] });");
    assertThat(words(band.path("facets").path(5)))
        .containsExactly(
            "columns(2).rows(\"wall\")",
            "rows(\"wall\")",
            "columns(2)",
            "columns(\"even\")",
            "columns(\"all\")");
    JsonNode stand =
        json(
            "design(\"Stand\");\nconst foot = panel(\"foot\", { width: 80, height: 50 });\n"
                + "const back = foot.attach(\"top\", \"back\", { depth: 90, fold: 70 });\n"
                + "back.attach(\"top\", \"prop\", { depth: 40, fold: 110 });");
    assertThat(stand.path("facets").valueStream().map(f -> words(f).getFirst()))
        .containsExactly("foot", "back", "\"prop\"");
    JsonNode card =
        json(
            "design(\"Card\");\nblank({ width: 80, height: 150 }).score({ from: \"bottom\", at: 40,"
                + " fold: 80, sense: \"valley\" });");
    assertThat(card.path("facets").valueStream().map(f -> words(f).getFirst()))
        .containsExactly("[40, 20]", "[40, 100]");
  }

  @Test
  void groupsTellWhatAWordMeans() throws IOException {
    JsonNode groups =
        json("design(\"Tower\");\nprism({ sides: 6, side: 22, height: 60 }).twist(20).unfold();")
            .path("groups");
    for (JsonNode g : groups) {
      if (g.path("word").asString().equals("\"side\"")) {
        assertThat(g.path("facets").size()).isEqualTo(12);
      }
    }
    assertThat(groups.toString()).contains("side 1", "\\\"all\\\"");
  }

  @Test
  void pagesShowEachFacetByItsNumber() throws IOException {
    Path out = dir.resolve("out");
    Run run = run("facets", "library/cut-gem.js", "--out", out.toString());
    assertThat(run.exit()).as(run.err()).isZero();
    assertThat(run.out()).contains("row 2 side 8", "42° up", "Words for several:");
    try (PDDocument pdf = Loader.loadPDF(out.resolve("cut-gem-facets.pdf").toFile())) {
      String text = new PDFTextStripper().getText(pdf);
      assertThat(text).contains("\"row 1 side 3\"; 3 corners").contains("\"row 2\": 9 to 16");
      for (int n = 1; n <= 17; n++) {
        assertThat(text.lines().map(String::strip)).as("number " + n).contains("" + n);
      }
    }
    assertThat(ImageIO.read(out.resolve("cut-gem-facets.png").toFile()).getWidth()).isEqualTo(1200);
    assertThat(out.resolve("cut-gem-facets.svg")).content().contains("row 1 side 3");
  }
}
