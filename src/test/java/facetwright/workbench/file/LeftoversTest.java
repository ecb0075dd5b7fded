package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.desk.Work;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What other programs left: those that run, those that were killed, and more than one at once. */
class LeftoversTest extends InFolder {
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
}
