package facetwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A script that uses files, on the command line. */
class GatherCommandTest {
  private static final String MAIN =
      """
      design("Two tubs", { units: "mm" });
      const side = dial("side", "30 mm", { from: "20 mm", to: "50 mm" });
      const { tub } = use("tubs.js");
      tub("small", side);
      """;
  private static final String TUBS =
      """
      const facets = 6;
      function tub(part, side) {
        return prism({ sides: facets, side, height: "40.3 mm" }).open("top").unfold({ part });
      }
      """;

  @TempDir private Path folder;
  private Path main;

  @BeforeEach
  void files() throws Exception {
    main = Files.writeString(folder.resolve("main.js"), MAIN);
    Files.writeString(folder.resolve("tubs.js"), TUBS);
  }

  private static byte[] template(Path script, Path out) throws Exception {
    Run.run(0, "make", script.toString(), "--only", "svg", "--out", out.toString());
    try (Stream<Path> all = Files.list(out)) {
      return Files.readAllBytes(
          all.filter(f -> f.toString().endsWith(".svg")).sorted().findFirst().orElseThrow());
    }
  }

  /** Wherever the one file lies, it makes the same bytes; taken apart it is what it was. */
  @Test
  void oneFileMakesTheSameAndComesApartAgain() throws Exception {
    Path away = Files.createDirectory(folder.resolve("away"));
    Path one = away.resolve("one.js");
    Run.run(0, "gather", main.toString(), "--out", one.toString());
    assertThat(Files.readString(one))
        .isEqualTo(MAIN + "// ======== gathered in: tubs.js ========\n" + TUBS)
        .isEqualTo(Run.run("gather", main.toString()).out());
    assertThat(template(one, folder.resolve("a"))).isEqualTo(template(main, folder.resolve("b")));
    Path apart = folder.resolve("apart");
    Run.run(0, "gather", one.toString(), "--apart", "--out", apart.toString());
    assertThat(apart.resolve("one.js")).hasContent(MAIN);
    assertThat(apart.resolve("tubs.js")).hasContent(TUBS);
  }

  @Test
  void nothingIsReplacedUnasked() throws Exception {
    Path one = Files.writeString(folder.resolve("one.js"), "mine");
    assertThat(Run.run(2, "gather", main.toString(), "--out", one.toString()))
        .contains("one.js is there already");
    assertThat(one).hasContent("mine");
  }

  @Test
  void whatCanNotBeGatheredIsSaid() throws Exception {
    Path alone = Files.writeString(folder.resolve("alone.js"), "design(\"A\");\n");
    assertThat(Run.run(2, "gather", alone.toString())).contains("uses no other files");
    assertThat(Run.run(2, "gather", alone.toString(), "--apart")).contains("no files gathered in");
    Files.delete(folder.resolve("tubs.js"));
    assertThat(Run.run(2, "gather", main.toString())).contains("there is no tubs.js");
  }

  @Test
  void aFaultInAFileNamesItsPlaceAndTheCalls() throws Exception {
    Files.writeString(folder.resolve("tubs.js"), TUBS.replace("facets,", "facts,"));
    Run run = Run.run("check", main.toString(), "--json");
    assertThat(run.err())
        .startsWith("tubs.js:3:25: facts is not defined")
        .contains("Called from " + main + ":4:1.");
    assertThat(run.out())
        .contains("\"line\" : 4")
        .contains("\"in\" : {")
        .contains("\"file\" : \"tubs.js\"");
  }

  /** Every command that takes a script. */
  @Test
  void everyCommandTakesThemAlong() {
    String script = main.toString();
    for (String[] call :
        List.of(
            new String[] {"check", script},
            new String[] {"dials", script},
            new String[] {"chart", script},
            new String[] {"materials", script},
            new String[] {"layers", script, "--count", "2"},
            new String[] {"facets", script},
            new String[] {"sweep", script, "--dial", "side"},
            new String[] {"aim", script, "width=50"},
            new String[] {"fit", script, "--sheet", "A3"},
            new String[] {"ring", script, "--count", "8"},
            new String[] {"round", script, "--ruler", "1mm"})) {
      assertThat(Run.run(call).err()).as(call[0]).doesNotContain("tubs");
    }
  }

  /** The script alone is written, in the other unit too, and no file. */
  @Test
  void aScriptThatIsWrittenKeepsItsUse() throws Exception {
    Path rounded = folder.resolve("rounded.js");
    assertThat(
            Run.run(
                0, "round", main.toString(), "--ruler", "1/8in", "--script", rounded.toString()))
        .contains("Numbers in tubs.js stay as they are")
        .contains("The script becomes one in inches");
    assertThat(Files.readString(rounded))
        .contains("use(\"tubs.js\")")
        .contains("units: \"in\"")
        .doesNotContain("====");
    assertThat(folder.resolve("tubs.js")).hasContent(TUBS);
    Run.run(0, "check", rounded.toString());
  }
}
