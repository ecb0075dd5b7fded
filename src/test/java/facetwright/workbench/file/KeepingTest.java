package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.desk.Work;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepingTest {
  private static final String BEFORE = "design(\"Before\");\n";
  private static final String AFTER = "design(\"After\");\n// \"quotes\", \\ and ü\n";

  @TempDir private Path folder;
  private Path unsaved;
  private Path file;

  @BeforeEach
  void aFile() throws Exception {
    unsaved = folder.resolve("state").resolve("unsaved");
    file = Files.writeString(folder.resolve("mine.js"), BEFORE);
  }

  private Sitting sit() {
    return new Sitting(folder.resolve("state"), folder.resolve("library"));
  }

  /** What a program that is killed leaves: its files, but no lock on them. */
  private void leaveBehind(Kept kept, int number) throws Exception {
    Files.createDirectories(unsaved);
    Files.writeString(unsaved.resolve("unsaved-" + number + ".lock"), "");
    Files.writeString(unsaved.resolve("unsaved-" + number + ".json"), kept.json());
  }

  private List<Path> files() throws Exception {
    try (Stream<Path> all = Files.list(unsaved)) {
      return all.toList();
    }
  }

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

  @Test
  void twoWindowsDoNotFight() throws Exception {
    Sitting one = sit();
    Sitting two = sit();
    one.filing.open(file);
    one.desk.text().set(AFTER);
    one.pass();
    two.keeping.offer();
    assertThat(two.said()).as("the other window is alive").isEmpty();
    two.filing.open(file);
    two.desk.text().set("two");
    two.pass();
    assertThat(unsaved.resolve("unsaved-1.json")).exists();
    assertThat(unsaved.resolve("unsaved-2.json")).exists();
    two.keeping.close();
    assertThat(
            Kept.of(Files.readString(unsaved.resolve("unsaved-1.json")))
                .orElseThrow()
                .work()
                .text())
        .isEqualTo(AFTER);
    one.keeping.close();
    assertThat(files()).isEmpty();
  }

  @Test
  void damagedLeftoversAreCleared() throws Exception {
    Files.createDirectories(unsaved);
    Files.writeString(unsaved.resolve("unsaved-7.lock"), "");
    Files.writeString(unsaved.resolve("unsaved-7.json"), "{\"file\": \"x\"");
    Sitting next = sit();
    next.keeping.offer();
    assertThat(next.said()).isEmpty();
    assertThat(files()).isEmpty();
  }

  /** A text that lost its lock is somebody's still: it is offered, and nobody writes over it. */
  @Test
  void aTextWithoutItsLockIsOfferedAndNotOverwritten() throws Exception {
    leaveBehind(new Kept(null, "an untitled design", "", Work.of(AFTER)), 1);
    Files.delete(unsaved.resolve("unsaved-1.lock"));
    Sitting other = sit();
    other.filing.open(file);
    other.desk.text().set("other");
    other.pass();
    assertThat(unsaved.resolve("unsaved-1.json")).content().contains("After");
    other.keeping.offer();
    assertThat(other.said()).isEqualTo("Facetwright ended unexpectedly");
    other.choose("Open");
    other.choose("Don't save");
    assertThat(other.desk.text().get()).isEqualTo(AFTER);
    other.keeping.close();
    assertThat(files()).isEmpty();
  }

  /** Of many drafts without a file each can be told from the others and be reached at once. */
  @Test
  void eachOfManyDraftsIsToldAndReached() throws Exception {
    List<String> titles = List.of("Buoy", "Crate", "Dory", "Eel trap");
    for (String title : titles) {
      String text = "design(\"" + title + "\");\n";
      leaveBehind(
          new Kept(null, "an untitled design", "", Work.of(text)), 1 + titles.indexOf(title));
    }
    Sitting next = sit();
    next.filing.begin(null, "none.js");
    next.keeping.offer();
    next.keeping.offer();
    for (String title : titles) {
      assertThat(next.notices.now().get().words()).contains("\"" + title + "\"");
      next.choose("Later");
    }
    assertThat(next.said()).as("each is offered once").isEmpty();
    List<String> left = new ArrayList<>(titles);
    while (left.size() > 1) {
      next.keeping.bringBack();
      String wanted = left.getFirst();
      for (int i = 0; !words(next).contains("\"" + wanted + "\""); i++) {
        assertThat(i).as("%s is listed", wanted).isLessThan(titles.size());
        next.choose("Next");
      }
      next.choose("Bring it back");
      assertThat(next.desk.text().get()).contains(wanted);
      next.pass();
      next.answers.add(folder.resolve(wanted + ".js"));
      next.filing.save();
      left.remove(wanted);
    }
    next.keeping.bringBack();
    assertThat(next.desk.text().get()).as("the last one opens").contains(left.getFirst());
    next.keeping.bringBack();
    assertThat(next.said()).isEqualTo("There is nothing to bring back");
    next.keeping.close();
    assertThat(files()).isEmpty();
  }

  private static String words(Sitting now) {
    return now.notices.now().get().words();
  }

  /** Whatever is answered on the way to what was kept, the offer stays until it is open. */
  @Test
  void cancellingLosesNoOffer() throws Exception {
    leaveBehind(new Kept(null, "an untitled design", "", Work.of(AFTER)), 1);
    Sitting next = sit();
    next.filing.open(file);
    next.keeping.offer();
    next.desk.text().set(BEFORE + "// mine");
    next.choose("Open");
    next.choose("Cancel");
    assertThat(next.said()).isEqualTo("Facetwright ended unexpectedly");
    next.choose("Open");
    next.choose("Save");
    assertThat(next.desk.text().get()).isEqualTo(AFTER);
    assertThat(next.said()).isEmpty();
    assertThat(file).content().contains("// mine");
    next.keeping.close();
  }

  /** Programs begin at once in one folder and are killed: the next one finds every text. */
  @Test
  void ofProgramsKilledAtOnceNoTextIsLost() throws Exception {
    for (int round = 0; round < 3; round++) {
      List<Process> programs = new ArrayList<>();
      List<String> texts = List.of("one " + round, "two " + round, "three " + round);
      for (String text : texts) {
        programs.add(start(text));
      }
      for (Process program : programs) {
        assertThat(program.inputReader().readLine()).isEqualTo("kept");
      }
      Keeping other = new Keeping(unsaved);
      assertThat(other.left()).as("they still run").isEmpty();
      // The first die before the others: what is found stays found.
      for (int i = 0; i < programs.size(); i++) {
        programs.get(i).destroyForcibly().waitFor();
        assertThat(other.left()).hasSize(i + 1);
      }
      assertThat(other.left().stream().map(l -> l.kept().work().text()))
          .containsExactlyInAnyOrderElementsOf(texts);
      other.left().forEach(other::putAway);
      assertThat(files()).isEmpty();
    }
  }

  private Process start(String text) throws Exception {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            KeepingProgram.class.getName(),
            unsaved.toString(),
            text)
        .start();
  }
}
