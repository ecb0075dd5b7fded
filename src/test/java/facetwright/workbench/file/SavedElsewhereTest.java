package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A script that uses files of its own folder is saved into another one. */
class SavedElsewhereTest {
  private static final String MAIN = "design(\"Tubs\");\nuse(\"tubs.js\");\nuse(\"lent.js\");\n";

  @TempDir private Path folder;
  private Path mine;
  private Path other;
  private Sitting now;

  @BeforeEach
  void sitDown() throws Exception {
    Path library = folder.resolve("library");
    Files.createDirectories(library.resolve("use"));
    Files.writeString(library.resolve("use").resolve("lent.js"), "const lent = 1;\n");
    Files.createDirectories(folder.resolve("own"));
    Files.createDirectories(folder.resolve("new"));
    mine = Files.writeString(folder.resolve("own").resolve("mine.js"), MAIN);
    Files.writeString(folder.resolve("own").resolve("tubs.js"), "use(\"deep.js\");\r\n");
    Files.writeString(folder.resolve("own").resolve("deep.js"), "const deep = 1;\n");
    other = folder.resolve("new").resolve("moved.js");
    now = new Sitting(folder.resolve("state"), library);
    now.filing.open(mine);
    now.answers.add(other);
  }

  private Gathered asked() {
    return Gathered.of(now.desk.request(Map.of()).source());
  }

  @Test
  void itsFilesGoAlongAsTheyAreAndThoseOfTheLibraryStay() throws Exception {
    now.filing.saveAs();
    assertThat(other).doesNotExist();
    now.choose("Bring them along");
    assertThat(other).content().isEqualTo(MAIN);
    assertThat(other.resolveSibling("tubs.js")).content().isEqualTo("use(\"deep.js\");\r\n");
    assertThat(other.resolveSibling("deep.js")).exists();
    assertThat(other.resolveSibling("lent.js")).doesNotExist();
    assertThat(now.desk.file().get()).isEqualTo(other);
    assertThat(asked().pieces()).extracting(Piece::state).containsOnly(Piece.State.READ);
  }

  @Test
  void madeOneFileItHoldsThem() throws Exception {
    now.filing.saveAs();
    now.choose("Make it one file");
    assertThat(other.resolveSibling("tubs.js")).doesNotExist();
    Gathered saved = Gathered.of(Files.readString(other));
    assertThat(saved.main()).isEqualTo(MAIN);
    assertThat(saved.pieces()).extracting(Piece::name).contains("tubs.js", "deep.js");
    assertThat(now.desk.changed().get()).isFalse();
    assertThat(mine).content().isEqualTo(MAIN);
  }

  @Test
  void aloneOrNotAtAllAsItIsSaid() throws Exception {
    now.filing.saveAs();
    now.choose("Cancel");
    assertThat(other).doesNotExist();
    assertThat(now.desk.file().get()).isEqualTo(mine);
    now.answers.add(other);
    now.filing.saveAs();
    now.choose("Save the script alone");
    assertThat(other).exists();
    assertThat(other.resolveSibling("tubs.js")).doesNotExist();
  }

  @Test
  void anotherFileOfThatNameIsNotReplaced() throws Exception {
    Path theirs = Files.writeString(other.resolveSibling("tubs.js"), "const mine = 2;\n");
    now.filing.saveAs();
    now.choose("Use what lies there");
    assertThat(theirs).content().isEqualTo("const mine = 2;\n");
    assertThat(other).exists();
  }

  @Test
  void nothingIsAskedWhereAllLiesThereOrTheFolderIsTheSame() throws Exception {
    Files.copy(mine.resolveSibling("tubs.js"), other.resolveSibling("tubs.js"));
    Files.copy(mine.resolveSibling("deep.js"), other.resolveSibling("deep.js"));
    now.filing.saveAs();
    assertThat(other).exists();
    now.answers.add(other.resolveSibling("again.js"));
    now.filing.saveAs();
    assertThat(other.resolveSibling("again.js")).exists();
  }
}
