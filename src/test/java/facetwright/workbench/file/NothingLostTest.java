package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.desk.Work;
import facetwright.workbench.notice.Notice;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What other programs, answers and endings do to work that is not saved. */
class NothingLostTest extends TwoHands {
  /** What comes by itself takes no keys; what holds up the user loses nothing by its first. */
  @Test
  void whatComesByItselfIsNotAwaited() throws Exception {
    now.desk.text().set(MINE);
    writeTheirs();
    assertThat(now.notices.now().get().isAwaited()).isFalse();
    assertThat(now.desk.text().get()).isEqualTo(MINE);
    Files.delete(file);
    now.filing.lookOutside();
    assertThat(now.said()).isEqualTo("d.js is gone");
    assertThat(now.notices.now().get().isAwaited()).isFalse();
    Files.write(file, new byte[] {(byte) 0xFF, 0});
    now.filing.lookOutside();
    assertThat(now.said()).isEqualTo("d.js was changed by another program");
    assertThat(now.notices.now().get().isAwaited()).isFalse();
    now.filing.open(folder.resolve("nowhere.js"));
    assertThat(now.notices.now().get().isAwaited()).isFalse();
  }

  @Test
  void theFirstAnswerOfAQuestionLosesNothing() throws Exception {
    now.desk.text().set(MINE);
    now.filing.fresh();
    assertThat(first()).isEqualTo("Save");
    now.choose("Cancel");
    Files.writeString(file, THEIRS);
    now.filing.save();
    assertThat(first()).isEqualTo("Save as …");
    now.choose("Cancel");
    now.answers.add(folder.resolve("other"));
    Path other = Files.writeString(folder.resolve("other.js"), THEIRS);
    now.filing.saveAs();
    assertThat(now.said()).isEqualTo("There is a other.js already");
    assertThat(first()).isEqualTo("Save as …");
    now.choose("Cancel");
    assertThat(other).hasContent(THEIRS.strip());
    assertThat(file).hasContent(THEIRS.strip());
    assertThat(now.desk.text().get()).isEqualTo(MINE);
  }

  private String first() {
    Notice notice = now.notices.now().get();
    assertThat(notice.isAwaited()).isTrue();
    return notice.choices().getFirst().name();
  }

  @Test
  void aFileChangedUnderneathLeavesThreeWays() throws Exception {
    now.desk.text().set(MINE);
    now.desk.turn("side", "34.5");
    writeTheirs();
    assertThat(now.notices.now().get().choices().stream().map(Notice.Choice::name))
        .containsExactly("See both", "Take theirs", "Keep mine");
    now.choose("See both");
    assertThat(now.both).isEqualTo(List.of("d.js", MINE, THEIRS));
    assertThat(now.said()).as("the question stays").contains("changed by another program");
    now.choose("Keep mine");
    now.pass();
    assertThat(now.desk.work()).isEqualTo(new Work(MINE, Map.of("side", "34.5")));
    assertThat(folder.resolve("state").resolve("unsaved").resolve("unsaved-1.json")).exists();
    now.filing.lookOutside();
    assertThat(now.said()).as("asked once").isEmpty();
  }

  /** Every answer that gives something up can be undone, script and dials. */
  @Test
  void whatAnAnswerGaveUpIsBroughtBack() throws Exception {
    Work mine = new Work(MINE, TURNED);
    now.desk.text().set(MINE);
    TURNED.forEach(now.desk::turn);
    writeTheirs();
    now.choose("Take theirs");
    assertThat(now.desk.text().get()).isEqualTo(THEIRS);
    now.filing.guard("trying", () -> now.filing.lay(file, OnDisk.fresh(THEIRS), Optional.empty()));
    now.choose("Don't save");
    now.keeping.bringBack();
    assertThat(now.said()).isEqualTo("Bring back 1 of 2, the latest first?");
    now.choose("Bring it back");
    assertThat(now.desk.work()).as("not saved").isEqualTo(new Work(THEIRS, TURNED));
    now.filing.save();
    now.keeping.bringBack();
    assertThat(now.desk.work()).as("theirs taken").isEqualTo(mine);
    Files.writeString(file, FIRST);
    now.filing.save();
    now.choose("Replace them");
    assertThat(file).hasContent(MINE.strip());
    now.keeping.bringBack();
    assertThat(now.desk.work()).as("replaced").isEqualTo(Work.of(FIRST));
    assertThat(now.desk.changed().get()).isTrue();
    now.filing.save();
    now.keeping.bringBack();
    assertThat(now.said()).isEqualTo("There is nothing to bring back");
    now.keeping.close();
  }

  @Test
  void whatCannotBePutAsideIsGivenUpOnlyKnowingly() throws Exception {
    Files.writeString(folder.resolve("state").resolve("given-up"), "in the way");
    now.desk.text().set(MINE);
    boolean[] closed = {false};
    now.filing.guard("closing the window", () -> closed[0] = true);
    now.choose("Don't save");
    assertThat(now.said()).isEqualTo("Your changes can't be put aside");
    assertThat(closed[0]).isFalse();
    now.choose("Cancel");
    writeTheirs();
    now.choose("Take theirs");
    assertThat(now.desk.text().get()).isEqualTo(MINE);
    now.notices.putAway();
    now.filing.save();
    now.choose("Replace them");
    assertThat(file).as("theirs could not be put aside").hasContent(THEIRS.strip());
    assertThat(now.said()).isEqualTo("d.js was not saved");
    now.choose("Close");
    now.filing.guard("closing the window", () -> closed[0] = true);
    now.choose("Don't save");
    now.choose("Lose them");
    assertThat(closed[0]).isTrue();
  }

  /** A file that is deleted leaves the script unsaved, though it is what was saved. */
  @Test
  void aFileDeletedUnderneathLeavesTheScriptKept() throws Exception {
    Files.delete(file);
    now.filing.lookOutside();
    assertThat(now.desk.changed().get()).isTrue();
    now.pass();
    assertThat(folder.resolve("state").resolve("unsaved").resolve("unsaved-1.json")).exists();
    now.filing.fresh();
    assertThat(now.said()).isEqualTo("Save d.js, whose file is gone, again?");
    now.choose("Cancel");
    Files.writeString(file, FIRST);
    now.filing.lookOutside();
    assertThat(now.desk.changed().get()).as("it is back").isFalse();
    assertThat(now.said()).isEmpty();
    Files.delete(file);
    now.filing.lookOutside();
    now.choose("Save it again");
    assertThat(file).hasContent(FIRST.strip());
    assertThat(now.desk.changed().get()).isFalse();
    now.keeping.close();
  }

  /** What can't be read is not replaced: nobody could bring it back. */
  @Test
  void whatIsNoScriptAnyMoreIsNotReplaced() throws Exception {
    byte[] other = {(byte) 0xFF, 0, 3};
    Files.write(file, other);
    now.desk.text().set(MINE);
    now.filing.save();
    assertThat(now.notices.now().get().choices().stream().map(Notice.Choice::name))
        .containsExactly("Save as …", "Cancel");
    assertThat(file).hasBinaryContent(other);
  }

  /** Where saving fails, one can save elsewhere or try again, and the file keeps its own name. */
  @Test
  void aSavingThatFailedOffersWaysOn() throws Exception {
    now.desk.text().set(MINE);
    Path blocked = folder.resolve("blocked");
    Files.writeString(blocked, "a file");
    now.answers.add(blocked.resolve("d.js"));
    now.filing.saveAs();
    assertThat(now.said()).isEqualTo("d.js was not saved");
    assertThat(now.notices.now().get().words())
        .contains("is a file, not a folder")
        .endsWith("Your text is still here, unsaved.");
    assertThat(now.notices.now().get().choices().stream().map(Notice.Choice::name))
        .containsExactly("Save as …", "Try again", "Close");
    Files.delete(blocked);
    now.choose("Try again");
    assertThat(blocked.resolve("d.js")).hasContent(MINE.strip());
    assertThat(now.desk.changed().get()).isFalse();
  }

  /** Only so much given up is held: the latest. */
  @Test
  void theLatestOfWhatIsGivenUpIsHeld() throws Exception {
    GivenUp givenUp = new GivenUp(folder.resolve("some"));
    for (int i = 1; i <= GivenUp.MOST + 5; i++) {
      assertThat(givenUp.put(new Kept(null, "n", "", Work.of("text " + i)))).isEmpty();
    }
    for (int i = GivenUp.MOST + 5; i > 5; i--) {
      GivenUp.Piece last = givenUp.last().orElseThrow();
      assertThat(last.kept().work().text()).isEqualTo("text " + i);
      givenUp.takeAway(last);
    }
    assertThat(givenUp.last()).isEmpty();
  }
}
