package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.desk.Work;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class KeepingTest extends InFolder {
  @Test
  void keepsWhileOneWritesAndLeavesNothingWhenSaved() throws Exception {
    Sitting now = sit();
    now.filing.open(file);
    now.desk.text().set(AFTER);
    assertThat(unsaved).as("not at every key").doesNotExist();
    now.pass();
    String kept = Files.readString(unsaved.resolve("unsaved-1.json"));
    assertThat(Kept.of(kept)).contains(new Kept(file, "mine.js", BEFORE, Work.of(AFTER)));
    now.filing.save();
    assertThat(unsaved.resolve("unsaved-1.json")).doesNotExist();
    now.keeping.close();
    assertThat(files()).isEmpty();
  }

  /** However fast one writes, the first change since the last keeping brings the next one. */
  @Test
  void manyEditsAreKeptInOneGo() throws Exception {
    Sitting now = sit();
    now.filing.open(file);
    for (int round = 0; round < 3; round++) {
      for (int i = 0; i < 25; i++) {
        now.desk.text().set(BEFORE + round + "." + i);
      }
      assertThat(now.keeper.waiting()).as("keepings asked for").isEqualTo(1);
      now.pass();
      assertThat(kept().work().text()).isEqualTo(BEFORE + round + ".24");
    }
    now.keeping.close();
  }

  private Kept kept() throws Exception {
    return Kept.of(Files.readString(unsaved.resolve("unsaved-1.json"))).orElseThrow();
  }

  @Test
  void turnedDialsAreKeptAndComeBackAfterACrash() throws Exception {
    Sitting now = sit();
    now.filing.open(file);
    now.desk.turn("side", "34.5");
    assertThat(now.desk.changed().get()).isTrue();
    now.pass();
    assertThat(kept().work()).isEqualTo(new Work(BEFORE, Map.of("side", "34.5")));
    Kept kept = kept();
    now.keeping.close();
    leaveBehind(kept, 4);
    Sitting next = sit();
    next.filing.begin(null, "none.js");
    next.keeping.offer();
    next.choose("Open");
    assertThat(next.desk.work()).isEqualTo(new Work(BEFORE, Map.of("side", "34.5")));
    assertThat(next.desk.changed().get()).isTrue();
    next.desk.undo();
    assertThat(next.desk.work())
        .as("undo does not go behind what was recovered")
        .isEqualTo(new Work(BEFORE, Map.of("side", "34.5")));
    assertThat(next.desk.changed().get()).isTrue();
    next.keeping.close();
  }

  /** Killed between saving and clearing, a program leaves what is on disk already. */
  @Test
  void whatIsSavedIsNotOffered() throws Exception {
    leaveBehind(new Kept(file, "mine.js", AFTER, Work.of(BEFORE)), 1);
    Sitting next = sit();
    next.keeping.offer();
    assertThat(next.said()).isEmpty();
    assertThat(files()).isEmpty();
  }

  @Test
  void whatCannotBeKeptIsSaidAsLongAsItIsSo() throws Exception {
    Files.createDirectories(folder.resolve("state"));
    Files.writeString(unsaved, "in the way");
    Sitting now = sit();
    now.filing.open(file);
    now.desk.text().set(AFTER);
    now.pass();
    assertThat(now.unkept).singleElement().asString().contains("is a file, not a folder");
    now.pass();
    assertThat(now.unkept).as("said once").hasSize(1);
    Files.delete(unsaved);
    now.pass();
    assertThat(now.unkept).as("tried by itself").hasSize(2).last().isEqualTo("");
    assertThat(kept().work().text()).isEqualTo(AFTER);
    now.keeping.close();
  }

  /** What is kept can be found again even where somebody cleared the folder meanwhile. */
  @Test
  void aClearedFolderIsNoHindrance() throws Exception {
    Sitting now = sit();
    now.filing.open(file);
    now.desk.text().set(AFTER);
    now.pass();
    for (Path each : files()) {
      Files.delete(each);
    }
    Files.delete(unsaved);
    now.desk.text().set(AFTER + "//");
    now.pass();
    assertThat(files().stream().map(f -> f.getFileName().toString()))
        .containsExactlyInAnyOrder("unsaved-1.lock", "unsaved-1.json");
    now.keeping.close();
  }

  @Test
  void afterACrashTheNextStartOffersIt() throws Exception {
    leaveBehind(new Kept(file, "mine.js", BEFORE, Work.of(AFTER)), 1);
    Sitting next = sit();
    next.filing.begin(null, "none.js");
    next.keeping.offer();
    assertThat(next.said()).isEqualTo("Facetwright ended unexpectedly");
    assertThat(next.notices.now().get().words())
        .startsWith("Your changes to mine.js were kept: \"After\", mine.js, of ")
        .endsWith(", with the line: design(\"After\");");
    next.choose("Open");
    assertThat(next.desk.text().get()).isEqualTo(AFTER);
    assertThat(next.desk.file().get()).isEqualTo(file);
    assertThat(next.desk.changed().get()).isTrue();
    assertThat(file).as("only Save writes it").hasContent(BEFORE.strip());
    assertThat(Files.exists(unsaved.resolve("unsaved-1.json")))
        .isNotEqualTo(Files.exists(unsaved.resolve("unsaved-2.json")));
    next.keeping.close();
    assertThat(files()).isEmpty();
  }

  @Test
  void aProgramThatIsKilledLeavesWhatItKept() throws Exception {
    Process program = start(AFTER);
    try (var words = program.inputReader()) {
      assertThat(words.readLine()).isEqualTo("kept");
      Keeping other = new Keeping(unsaved);
      assertThat(other.left()).as("it still runs").isEmpty();
      program.destroyForcibly().waitFor();
      assertThat(other.left())
          .singleElement()
          .satisfies(left -> assertThat(left.kept().work().text()).isEqualTo(AFTER))
          .satisfies(other::putAway);
    } finally {
      program.destroyForcibly();
    }
    assertThat(files()).isEmpty();
  }

  @Test
  void itCanBeDiscardedOrPutOff() throws Exception {
    leaveBehind(new Kept(null, "an untitled design", "", Work.of(AFTER)), 1);
    leaveBehind(new Kept(file, "mine.js", BEFORE, Work.of(AFTER)), 2);
    Sitting next = sit();
    next.keeping.offer();
    next.choose("Discard");
    assertThat(unsaved.resolve("unsaved-1.json")).doesNotExist();
    next.choose("Later");
    assertThat(unsaved.resolve("unsaved-2.json")).exists();
    assertThat(next.said()).isEqualTo("Your changes to an untitled design were discarded");
    next.choose("Bring back");
    assertThat(next.said()).isEmpty();
    assertThat(next.desk.text().get()).isEqualTo(AFTER);
    assertThat(next.desk.changed().get()).isTrue();
    next.keeping.close();
  }

  @Test
  void aChangedFileIsSaid() throws Exception {
    leaveBehind(new Kept(file, "mine.js", "design(\"Older\");\n", Work.of(AFTER)), 1);
    Sitting next = sit();
    next.keeping.offer();
    next.choose("Open");
    assertThat(next.said()).isEqualTo("mine.js has changed since");
    assertThat(next.desk.saved().text()).isEqualTo(BEFORE);
    next.keeping.close();
  }

  @Test
  void aFileThatIsGoneIsNoHindrance() throws Exception {
    Path gone = folder.resolve("gone.js");
    leaveBehind(new Kept(gone, "gone.js", BEFORE, Work.of(AFTER)), 1);
    Sitting next = sit();
    next.keeping.offer();
    next.choose("Open");
    assertThat(next.desk.text().get()).isEqualTo(AFTER);
    next.filing.save();
    assertThat(Files.readString(gone)).isEqualTo(AFTER);
    next.keeping.close();
  }
}
