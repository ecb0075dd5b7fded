package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.file.Kept;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One types on whatever comes up: no key meant for the script answers a notice. */
class TypingOnTest {
  private static final String BOX =
      """
      design("Plain box", { units: "mm" });
      const tall = dial("tall", 30, { from: 20, to: 40 });
      prism({ sides: 4, side: 30, height: tall }).unfold({ tab: 6 });
      """;
  private static final String WORDS = "// a word \n and one\n";

  @TempDir private Path folder;
  private Visit visit;
  private House house;
  private Path file;

  @BeforeEach
  void start() throws Exception {
    visit = Visit.at(folder, "box.js", BOX);
    house = visit.house;
    file = folder.resolve("box.js");
    Fx.run(
        () -> {
          house.room().card().area().requestFocus();
          house.room().card().area().moveTo(0);
        });
  }

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  /** Types as a keyboard does, where the focus is. */
  private void type(String letters) throws Exception {
    for (int i = 0; i < letters.length(); i++) {
      char letter = letters.charAt(i);
      Fx.run(
          () -> {
            KeyCode code =
                letter == '\n' ? KeyCode.ENTER : letter == ' ' ? KeyCode.SPACE : KeyCode.UNDEFINED;
            fire(KeyEvent.KEY_PRESSED, KeyEvent.CHAR_UNDEFINED, code);
            fire(KeyEvent.KEY_TYPED, letter == '\n' ? "\r" : "" + letter, KeyCode.UNDEFINED);
            fire(KeyEvent.KEY_RELEASED, KeyEvent.CHAR_UNDEFINED, code);
          });
    }
  }

  private void fire(javafx.event.EventType<KeyEvent> type, String letter, KeyCode code) {
    Node owner = house.getScene().getFocusOwner();
    Event.fireEvent(
        owner == null ? house : owner,
        new KeyEvent(type, letter, "", code, false, false, false, false));
  }

  private Node owner() throws Exception {
    return Fx.get(() -> house.getScene().getFocusOwner());
  }

  private void typesOnUnder(String title) throws Exception {
    Fx.pulse();
    assertThat(Fx.get(() -> Fx.says(house, title))).as(title).isTrue();
    assertThat(owner()).isEqualTo(house.room().card().area());
    Fx.run(() -> house.room().card().area().moveTo(0));
    type(WORDS);
    assertThat(visit.text()).startsWith("// a word");
    assertThat(visit.text().replace(" ", "")).contains("//aword\nandone\n");
    assertThat(Fx.get(() -> Fx.says(house, title))).as("it still waits").isTrue();
  }

  @Test
  void underAFileThatAnotherProgramChanged() throws Exception {
    Files.writeString(file, BOX + "// theirs\n", StandardCharsets.UTF_8);
    Fx.run(house.filing()::lookOutside);
    typesOnUnder("box.js was changed by another program");
    assertThat(visit.text()).endsWith(BOX);
    assertThat(file).content().endsWith("// theirs\n");
    visit.pass();
    assertThat(kept().work().text()).isEqualTo(visit.text());
  }

  private Kept kept() throws Exception {
    return Kept.of(Files.readString(folder.resolve("unsaved").resolve("unsaved-1.json")))
        .orElseThrow();
  }

  /** A paper that takes long to draw, and whatever else is done aside, holds up no keeping. */
  @Test
  void keepingDoesNotWaitForWhatIsDoneAside() throws Exception {
    CountDownLatch drawn = new CountDownLatch(1);
    var drawing = visit.aside.submit(() -> drawn.await(60, TimeUnit.SECONDS));
    type(WORDS);
    Fx.run(() -> house.desk().turn("tall", "33"));
    visit.pass();
    assertThat(kept().work()).isEqualTo(Fx.get(() -> house.desk().work()));
    assertThat(kept().work().dials()).containsEntry("tall", "33");
    assertThat(drawing.isDone()).isFalse();
    drawn.countDown();
    assertThat(drawing.get()).isTrue();
  }

  @Test
  void underAFileThatIsGone() throws Exception {
    Files.delete(file);
    Fx.run(house.filing()::lookOutside);
    typesOnUnder("box.js is gone");
    assertThat(file).doesNotExist();
    visit.pass();
    assertThat(kept().work().text()).isEqualTo(visit.text());
  }

  @Test
  void underWhatIsToldOfAFailure() throws Exception {
    Fx.run(() -> house.filing().open(folder.resolve("nowhere.js")));
    typesOnUnder("nowhere.js is not there any more");
  }

  @Test
  void underTheWordThatNothingIsKept() throws Exception {
    Files.writeString(folder.resolve("unsaved"), "in the way");
    Fx.run(() -> house.room().card().area().appendText("//"));
    visit.pass();
    Fx.until("it is said", () -> Fx.says(house, "What you have not saved is not being kept"));
    typesOnUnder("What you have not saved is not being kept");
    Files.delete(folder.resolve("unsaved"));
    visit.pass();
    Fx.until("it is kept", () -> !Fx.says(house, "What you have not saved is not being kept"));
  }

  @Test
  void underTheWelcomeAndWhatWasLeft() throws Exception {
    visit.close();
    Path state = Files.createDirectories(folder.resolve("fresh"));
    visit = Visit.start(state, Path.of("").toAbsolutePath(), null);
    house = visit.house;
    Fx.until("the design is made", () -> house.desk().design().get() != null);
    typesOnUnder("Welcome");
  }

  /** F6 leads to the notice, and its answer back to the script. */
  @Test
  void oneGoesToTheNoticeByKeysAndComesBack() throws Exception {
    Files.writeString(file, BOX + "// theirs\n", StandardCharsets.UTF_8);
    Fx.run(house.filing()::lookOutside);
    Fx.pulse();
    Fx.run(() -> Fx.press(house, "F6"));
    assertThat(owner()).isEqualTo(Fx.get(() -> Fx.button(house, "See both")));
    Fx.run(() -> Fx.button(house, "Take theirs").fire());
    Fx.pulse();
    assertThat(owner()).isEqualTo(house.room().card().area());
    assertThat(visit.text()).isEqualTo(BOX + "// theirs\n");
    Fx.run(() -> house.desk().undo());
    assertThat(visit.text()).as("undo comes back").isEqualTo(BOX);
  }

  @Test
  void bothScriptsStandSideBySide() throws Exception {
    Fx.run(() -> house.room().card().area().appendText("// mine\n"));
    Files.writeString(file, BOX + "// theirs\n// more\n", StandardCharsets.UTF_8);
    Fx.run(house.filing()::lookOutside);
    Fx.pulse();
    Fx.run(() -> Fx.button(house, "See both").fire());
    Fx.pulse();
    assertThat(Fx.get(() -> Fx.says(house.pages(), "2 lines differ"))).isTrue();
    ListView<?> list = (ListView<?>) house.pages().lookup(".list-view");
    assertThat(list.getItems()).hasSize(5);
    Fx.run(() -> Fx.press(house, "Esc"));
    assertThat(house.pages().isVisible()).isFalse();
    assertThat(visit.text()).isEqualTo(BOX + "// mine\n");
    assertThat(Fx.get(() -> Fx.says(house, "box.js was changed by another program"))).isTrue();
    Fx.run(() -> Fx.button(house, "See both").fire());
    Fx.pulse();
    Fx.run(() -> Fx.button(house.pages(), "Take theirs").fire());
    assertThat(visit.text()).isEqualTo(BOX + "// theirs\n// more\n");
    Fx.run(() -> house.commands().named("bring-back").run());
    assertThat(visit.text()).isEqualTo(BOX + "// mine\n");
  }

  /** However far down they first differ, that is what one sees. */
  @Test
  void bothScriptsOpenAtTheFirstDifference() throws Exception {
    String same =
        "// the same in both, and a line so long that it is broken at the card's edge\n".repeat(60);
    Fx.run(() -> house.desk().text().set(BOX + same + "// mine\n" + same));
    Files.writeString(file, BOX + same + "// theirs\n" + same, StandardCharsets.UTF_8);
    Fx.run(house.filing()::lookOutside);
    Fx.pulse();
    Fx.run(() -> Fx.button(house, "See both").fire());
    Fx.until("the difference shows", this::seesDifference);
    Fx.run(
        () ->
            ((javafx.scene.control.CheckBox) house.pages().lookup(".both-foot .check-box"))
                .setSelected(true));
    Fx.until("the difference shows among all lines", this::seesDifference);
    assertThat(((ListView<?>) house.pages().lookup(".list-view")).getItems())
        .hasSizeGreaterThan(120);
  }

  private boolean seesDifference() {
    javafx.scene.Node list = house.pages().lookup(".list-view");
    return list != null
        && list.lookupAll(".both-line.differs").stream()
            .anyMatch(
                half ->
                    list.localToScene(list.getLayoutBounds())
                        .contains(half.localToScene(half.getLayoutBounds())));
  }

  /** Esc, where the script has no use for it, puts a notice away and changes nothing. */
  @Test
  void escPutsTheNoticeAway() throws Exception {
    Fx.run(() -> house.room().card().area().appendText("// mine\n"));
    Files.writeString(file, BOX + "// theirs\n", StandardCharsets.UTF_8);
    Fx.run(house.filing()::lookOutside);
    Fx.pulse();
    Fx.run(() -> Fx.press(house, "Esc"));
    assertThat(Fx.get(() -> house.notices().now().get())).isNull();
    assertThat(visit.text()).isEqualTo(BOX + "// mine\n");
    assertThat(owner()).isEqualTo(house.room().card().area());
  }
}
