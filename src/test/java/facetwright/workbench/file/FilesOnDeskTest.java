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

/** The window with a script that uses other files. */
class FilesOnDeskTest {
  private static final String MAIN = "design(\"Tubs\");\nuse(\"tubs.js\");\nuse(\"lent.js\");\n";

  @TempDir private Path folder;
  private Path library;
  private Path mine;
  private Path tubs;
  private Sitting now;

  @BeforeEach
  void sitDown() throws Exception {
    library = folder.resolve("library");
    Files.createDirectories(library.resolve("use"));
    Files.writeString(library.resolve("use").resolve("lent.js"), "const lent = 1;\n");
    Files.createDirectories(folder.resolve("own"));
    mine = Files.writeString(folder.resolve("own").resolve("mine.js"), MAIN);
    tubs = Files.writeString(folder.resolve("own").resolve("tubs.js"), "const tub = 1;\n");
    now = new Sitting(folder.resolve("state"), library);
    now.filing.open(mine);
  }

  private String asked() {
    return now.desk.request(Map.of()).source();
  }

  @Test
  void theFilesGoWithWhatIsAskedAndNotIntoTheScript() {
    assertThat(Gathered.of(asked()).pieces())
        .extracting(Piece::text)
        .containsExactly("const tub = 1;\n", "const lent = 1;\n");
    assertThat(now.desk.text().get()).isEqualTo(MAIN);
    assertThat(now.desk.changed().get()).isFalse();
  }

  @Test
  void aFileThatIsSavedElsewhereIsSeen() throws Exception {
    Files.writeString(tubs, "const tub = 2;\n");
    assertThat(asked()).contains("tub = 1");
    now.filing.lookOutside();
    assertThat(asked()).contains("tub = 2");
    Files.delete(tubs);
    now.filing.lookOutside();
    assertThat(Gathered.of(asked()).pieces().getFirst().state()).isEqualTo(Piece.State.LACKING);
    assertThat(now.desk.text().get()).isEqualTo(MAIN);
  }

  @Test
  void aScriptWithoutAFolderHasTheLibraryOnly() {
    now.filing.fresh();
    now.desk.text().set(MAIN);
    assertThat(Gathered.of(asked()).pieces())
        .extracting(Piece::state)
        .containsExactly(Piece.State.LACKING, Piece.State.READ);
    assertThat(asked()).contains("no folder before it is saved");
  }

  @Test
  void asOneFileItHoldsAllAndTheDeskStays() throws Exception {
    Path one = folder.resolve("one.js");
    now.answers.add(one);
    now.filing.saveWhole();
    Gathered whole = Gathered.of(Files.readString(one));
    assertThat(whole.main()).isEqualTo(MAIN);
    assertThat(whole.pieces()).extracting(Piece::state).containsOnly(Piece.State.GATHERED);
    assertThat(whole.pieces()).hasSize(2);
    assertThat(now.desk.file().get()).isEqualTo(mine);
    assertThat(now.desk.text().get()).isEqualTo(MAIN);
    now.filing.open(one);
    assertThat(asked()).isEqualTo(Files.readString(one));
  }

  @Test
  void whatIsLackingIsNotHandedOn() throws Exception {
    Files.delete(tubs);
    now.filing.saveWhole();
    assertThat(now.asked).isEmpty();
  }

  @Test
  void aCopyTakesTheFilesOfItsFolderAlong() {
    now.filing.startFrom(mine, () -> {});
    assertThat(now.desk.file().get()).isNull();
    assertThat(Gathered.of(asked()).pieces())
        .extracting(Piece::state)
        .containsOnly(Piece.State.GATHERED);
  }
}
