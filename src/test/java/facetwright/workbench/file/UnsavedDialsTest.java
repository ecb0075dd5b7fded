package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.desk.Work;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Turned dials that were not saved are asked about, found again and never lost. */
class UnsavedDialsTest extends TwoHands {
  @Test
  void dialsAreAskedAboutSavedAndFoundAsTheyWereLeft() throws Exception {
    TURNED.forEach(now.desk::turn);
    boolean[] closed = {false};
    now.filing.guard("closing the window", () -> closed[0] = true);
    assertThat(now.said()).isEqualTo("Save the dials you turned in d.js?");
    now.choose("Save");
    assertThat(closed[0]).isTrue();
    assertThat(file).as("the script is left alone").hasContent(FIRST.strip());
    assertThat(now.desk.changed().get()).isFalse();
    Sitting next = sit();
    next.filing.begin(null, "none.js");
    assertThat(next.desk.work()).isEqualTo(new Work(FIRST, TURNED));
    assertThat(next.desk.changed().get()).isFalse();
    next.desk.turnAll(Map.of());
    assertThat(next.desk.changed().get()).as("turned back").isTrue();
    next.filing.save();
    Sitting third = sit();
    third.filing.begin(null, "none.js");
    assertThat(third.desk.settings().get()).isEmpty();
  }

  @Test
  void dialsOfAScriptChangedSinceAreTurnedOnlyWhenAskedFor() throws Exception {
    TURNED.forEach(now.desk::turn);
    now.filing.save();
    Files.writeString(file, THEIRS);
    Sitting next = sit();
    next.filing.open(file);
    assertThat(next.desk.settings().get()).isEmpty();
    assertThat(next.said()).isEqualTo("d.js was changed since you turned its dials");
    assertThat(next.notices.now().get().words()).contains("side 34.5, wall 61");
    next.choose("Turn them so");
    assertThat(next.desk.settings().get()).isEqualTo(TURNED);
    next.desk.undo();
    assertThat(next.desk.settings().get()).isEmpty();
  }

  /**
   * Killed while it saves, between the script and its dials: the dials left are of the old text.
   */
  @Test
  void dialsAreOfferedThatASavingDidNotComeTo() throws Exception {
    TURNED.forEach(now.desk::turn);
    now.filing.save();
    now.desk.text().set(MINE);
    now.pass();
    Files.writeString(file, MINE);
    now.keeping.close();
    Path unsaved = folder.resolve("state").resolve("unsaved");
    Kept kept = new Kept(file.toAbsolutePath(), "d.js", FIRST, new Work(MINE, TURNED));
    Files.createDirectories(unsaved);
    Files.writeString(unsaved.resolve("unsaved-9.json"), kept.json());
    Files.createFile(unsaved.resolve("unsaved-9.lock"));
    Sitting next = sit();
    next.filing.begin(file, "none.js");
    next.keeping.offer();
    assertThat(next.said()).isEqualTo("Facetwright ended unexpectedly");
    next.choose("Open");
    assertThat(next.desk.work()).isEqualTo(new Work(MINE, TURNED));
  }

  /** Dials that can't be written down are not called saved. */
  @Test
  void dialsThatCannotBeSavedStayUnsaved() throws Exception {
    Files.writeString(folder.resolve("state").resolve("dials"), "in the way");
    TURNED.forEach(now.desk::turn);
    now.desk.text().set(MINE);
    boolean[] closed = {false};
    now.filing.guard("closing the window", () -> closed[0] = true);
    now.choose("Save");
    assertThat(now.said()).isEqualTo("The script was saved, its dials were not");
    assertThat(closed[0]).isFalse();
    assertThat(file).hasContent(MINE.strip());
    assertThat(now.desk.changed().get()).isTrue();
    assertThat(now.desk.work()).isEqualTo(new Work(MINE, TURNED));
  }
}
