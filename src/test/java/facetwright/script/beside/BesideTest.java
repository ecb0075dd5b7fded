package facetwright.script.beside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import facetwright.script.sandbox.ScriptLength;
import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Which files are read for a script, and which never are. */
class BesideTest {
  @TempDir Path home;
  private Path own;
  private Path library;

  @BeforeEach
  void folders() throws IOException {
    own = Files.createDirectory(home.resolve("own"));
    library = Files.createDirectory(home.resolve("library"));
    Files.createDirectory(library.resolve("use"));
  }

  private Gathered whole(String script) {
    return Gathered.of(Beside.of(own.resolve("design.js"), library).whole(script));
  }

  private Piece one(String name) {
    return whole("use(\"" + name + "\");").piece(name).orElseThrow();
  }

  private void assertLacking(String name, String why) {
    Piece piece = one(name);
    assertThat(piece.state()).isEqualTo(Piece.State.LACKING);
    assertThat(piece.text()).contains(why);
  }

  @Test
  void aFileOfItsFolderComesBeforeTheLibrarys() throws IOException {
    Files.writeString(library.resolve("use/lid.js"), "const from = 'library';\n");
    assertThat(one("lid.js").text()).contains("library");
    Files.writeString(own.resolve("lid.js"), "const from = 'own';\n");
    assertThat(one("lid.js").text()).contains("own");
  }

  /** A design of the library is no file to use, but in its own folder. */
  @Test
  void theLibrarysDesignsAreNotWhatItLends() throws IOException {
    Files.writeString(library.resolve("box.js"), "design(\"Box\");");
    assertLacking("box.js", "there is no box.js in the script's folder, nor in the library");
  }

  @Test
  void aScriptWithoutAFolderHasTheLibraryOnly() throws IOException {
    Files.writeString(library.resolve("use/lid.js"), "const a = 1;\n");
    Files.writeString(own.resolve("tubs.js"), "const a = 1;\n");
    Beside beside = new Beside(Optional.empty(), library);
    Gathered all = Gathered.of(beside.whole("use(\"lid.js\"); use(\"tubs.js\");"));
    assertThat(all.piece("lid.js").orElseThrow().state()).isEqualTo(Piece.State.READ);
    assertThat(all.piece("tubs.js").orElseThrow().text()).contains("no folder before it is saved");
  }

  @Test
  void whatAFileUsesComesToo() throws IOException {
    Files.writeString(own.resolve("a.js"), "const b = use(\"b.js\");\n");
    Files.writeString(own.resolve("b.js"), "const c = use(\"a.js\");\n");
    assertThat(whole("use(\"a.js\");").pieces())
        .extracting(Piece::name)
        .containsExactly("a.js", "b.js");
  }

  @Test
  void aLinkAFolderAndAPipeAreRefused() throws Exception {
    Path secret = Files.writeString(home.resolve("secret.js"), "const secret = 1;");
    Files.createSymbolicLink(own.resolve("link.js"), secret);
    assertLacking("link.js", "is a link");
    Files.createSymbolicLink(own.resolve("lost.js"), home.resolve("nowhere.js"));
    assertLacking("lost.js", "is a link");
    Files.createDirectory(own.resolve("folder.js"));
    assertLacking("folder.js", "is a folder");
    Process pipe = new ProcessBuilder("mkfifo", own.resolve("pipe.js").toString()).start();
    assumeTrue(pipe.waitFor() == 0);
    assertLacking("pipe.js", "is a pipe or a device");
  }

  @Test
  @Timeout(20)
  void aHugeFileIsNotRead() throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(own.resolve("huge.js").toFile(), "rw")) {
      file.setLength(1L << 30);
    }
    assertLacking("huge.js", ScriptLength.WRONG.strip());
  }

  @Test
  void whatIsNoTextIsRefused() throws IOException {
    Files.write(own.resolve("latin.js"), "const ü = 1;".getBytes(StandardCharsets.ISO_8859_1));
    assertLacking("latin.js", "not text in UTF-8");
    Files.write(own.resolve("nul.txt.js"), new byte[] {0});
    Files.write(own.resolve("bytes.js"), new byte[] {'a', 0, 'b'});
    assertLacking("bytes.js", "is not text");
  }

  @Test
  void marksAndLineEndsOfOtherSystemsAreTakenAsLineEnds() throws IOException {
    Files.writeString(own.resolve("win.js"), "\uFEFFconst a = 1;\r\nconst b = 2;\rconst c = 3;");
    assertThat(one("win.js").text()).isEqualTo("const a = 1;\nconst b = 2;\nconst c = 3;");
  }

  @Test
  void aFileThatHoldsOthersIsTakenApartFirst() throws IOException {
    Files.writeString(
        own.resolve("all.js"), "a;\n// ======== gathered in: b.js ========\nconst c = 1;\n");
    assertLacking("all.js", "take it apart first");
  }

  @Test
  void namesThatAreNoNamesAreNotLookedFor() throws IOException {
    Files.writeString(home.resolve("up.js"), "const a = 1;");
    assertThat(whole("use(\"../up.js\"); use(\"/etc/passwd\"); use(\"con.js\");").pieces())
        .isEmpty();
  }

  @Test
  void theNearestNameIsSuggested() throws IOException {
    Files.writeString(own.resolve("tubs.js"), "const a = 1;");
    assertLacking("tub.js", "did you mean tubs.js?");
  }

  @Test
  void theFilesAreBoundedInNumberAndLength() throws IOException {
    for (int i = 0; i < 30; i++) {
      Files.writeString(own.resolve("n" + i + ".js"), "use(\"n" + (i + 1) + ".js\");\n");
    }
    Gathered many = whole("use(\"n0.js\");");
    assertThat(many.pieces()).hasSize(Gathered.MOST + 1);
    assertThat(many.pieces().getLast().text()).contains("up to 20 files");
    String long1 = "// " + "x".repeat(ScriptLength.MOST / 2) + "\n";
    Files.writeString(own.resolve("l1.js"), long1);
    Files.writeString(own.resolve("l2.js"), long1);
    Gathered all = whole("use(\"l1.js\"); use(\"l2.js\");");
    assertThat(all.pieces())
        .extracting(Piece::state)
        .containsExactly(Piece.State.READ, Piece.State.LACKING);
    assertThat(all.text().length()).isLessThan(ScriptLength.MOST);
  }

  @Test
  void whatIsGatheredInIsNotReadFromDisk() throws IOException {
    Files.writeString(own.resolve("a.js"), "const now = 'disk';\n");
    String script = "use(\"a.js\");\n// ======== gathered in: a.js ========\nconst now = 'own';\n";
    assertThat(whole(script).text()).isEqualTo(script);
  }

  /** Asked again for a text that has the files below it already, it reads them anew. */
  @Test
  void gatheringTwiceIsGatheringOnce() throws IOException {
    Files.writeString(own.resolve("a.js"), "const one = 1;");
    String once = whole("use(\"a.js\");").text();
    Files.writeString(own.resolve("a.js"), "const two = 2;");
    assertThat(whole(once).text()).isEqualTo(once.replace("one = 1", "two = 2"));
    assertThat(Gathered.own(once)).isEqualTo("use(\"a.js\");\n");
  }

  @Test
  void aTextIsRememberedUntilItIsForgotten() throws IOException {
    Files.writeString(own.resolve("a.js"), "const one = 1;");
    Beside beside = Beside.of(own.resolve("d.js"), library);
    String script =
        IntStream.range(0, 2).mapToObj(_ -> "use(\"a.js\");").reduce("", String::concat);
    String first = beside.whole(script);
    Files.writeString(own.resolve("a.js"), "const two = 2;");
    assertThat(beside.whole(script)).isEqualTo(first);
    beside.forget();
    assertThat(beside.whole(script)).contains("two");
  }
}
