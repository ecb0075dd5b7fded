package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** What check says of a design every paper and every answer says, the maker's own checks too. */
class OneVerdictTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private static String plain(String text) {
    return text.replaceAll("[\\s\u00a0\u202f]+", " ");
  }

  private String read(String file) throws Exception {
    return plain(Files.readString(folder.resolve("out").resolve(file)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0 | Closes: | must(h > 9, \"higher\"); box({ width: 40, depth: 40, height: h })",
        "1 | Can't be made as meant: h > 90 does not hold | must(h > 90, \"higher\"); box({ width:"
            + " 40, depth: 40, height: h })",
        "1 | Can't be made as meant: h > 90 does not hold; and 1 other fault | must(h > 90,"
            + " \"higher\"); must(h > 80, \"more\"); box({ width: 40, depth: 40, height: h })",
        "1 | Does not close: | must(h > 90, \"higher\"); mesh({ points: [[0, 0, 0], [9, 0, 0], [0,"
            + " 9, 0], [0, 0, 9]], facets: [[0, 2, 1], [0, 1, 3]] })",
      })
  void oneVerdict(int exit, String told, String lines) throws Exception {
    Path script = folder.resolve("d.js");
    Files.writeString(
        script,
        "design(\"D\");\nsheet(\"A4\");\nconst h = dial(\"h\", 30);\n" + lines + ".unfold();\n");
    JsonNode json = JSON.readTree(run(exit, "check", script.toString(), "--json")).get("folded");
    String verdict = json.get("verdict").asString();
    if (!told.startsWith("Does")) {
      assertThat(verdict).startsWith(told);
      assertThat(json.get("closed").asBoolean()).isEqualTo(exit == 0);
    }
    assertThat(plain(run(exit, "check", script.toString()))).contains(verdict);
    String out = folder.resolve("out").toString();
    run(exit, "make", script.toString(), "--only", "handout,html,fold", "--out", out);
    try (PDDocument handout = Loader.loadPDF(folder.resolve("out/d-handout.pdf").toFile())) {
      PDFTextStripper first = new PDFTextStripper();
      first.setEndPage(1);
      assertThat(plain(first.getText(handout))).contains(verdict);
    }
    assertThat(read("d-handout.html").replace("&gt;", ">").replace("&#39;", "'")).contains(verdict);
    assertThat(JSON.readTree(read("d-net.fold")).get("frame_description").asString())
        .contains(verdict);
    JsonNode sweep =
        JSON.readTree(
            run(
                0,
                "sweep",
                script.toString(),
                "--dial",
                "h",
                "--from",
                "30",
                "--to",
                "30",
                "--step",
                "1",
                "--json"));
    JsonNode row = sweep.get("steps").get(0);
    assertThat(row.get("verdict").asString()).isEqualTo(verdict);
  }
}
