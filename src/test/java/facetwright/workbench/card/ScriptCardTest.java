package facetwright.workbench.card;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.net.Site;
import facetwright.script.Facetwright;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.workbench.Fx;
import facetwright.workbench.Room;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Selection;
import facetwright.worker.Reply;
import facetwright.worker.Request;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.fxmisc.richtext.CodeArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The card in a window without a screen; scripts are evaluated in this process. */
class ScriptCardTest {
  private static final String BOX =
      """
      design("Crate", { units: "mm" });
      const side = dial("side", 40, { from: 25, to: 60 });
      const foot = panel("foot", { width: side, height: 50 });
      const back = foot.attach("top", "back", { depth: 90, fold: 70 });
      sheet("A4");
      """;

  private final List<String> asked = new ArrayList<>();
  private Desk desk;
  private ScriptCard card;
  private CodeArea area;
  private Stage stage;

  @BeforeEach
  void open() throws Exception {
    Fx.start();
    Fx.run(
        () -> {
          desk = new Desk(this::answer, Runnable::run);
          Room room = new Room(desk, Runnable::run, Runnable::run);
          card = room.card();
          area = card.area();
          stage = new Stage();
          stage.setScene(new Scene(room, 980, 760));
          stage.show();
          desk.lay(Path.of("crate.js"), BOX);
          area.requestFocus();
        });
    Fx.pulse();
  }

  @AfterEach
  void close() throws Exception {
    Fx.run(stage::close);
  }

  private CompletableFuture<Reply> answer(Request request) {
    asked.add(request.source());
    try {
      return CompletableFuture.completedFuture(
          new Reply.Done(
              Facetwright.evaluate(
                  request.fileName(), request.source(), request.settings(), Budget.USUAL)));
    } catch (ScriptException e) {
      return CompletableFuture.completedFuture(
          new Reply.Failed(e.kind(), e.getMessage(), e.site(), e.remedy(), e.mends()));
    }
  }

  private void type(String letters) throws Exception {
    for (int i = 0; i < letters.length(); i++) {
      char c = letters.charAt(i);
      Fx.run(
          () ->
              Event.fireEvent(
                  area,
                  new KeyEvent(
                      KeyEvent.KEY_TYPED,
                      "" + c,
                      "",
                      KeyCode.UNDEFINED,
                      false,
                      false,
                      false,
                      false)));
    }
  }

  private void press(String keys) throws Exception {
    Fx.run(() -> Fx.press(area, keys));
    Fx.pulse();
  }

  private void go(String before) throws Exception {
    Fx.run(() -> area.moveTo(area.getText().indexOf(before)));
    Fx.pulse();
  }

  private Collection<String> inks(String word) throws Exception {
    return Fx.get(() -> area.getStyleOfChar(area.getText().indexOf(word)));
  }

  private String text() throws Exception {
    return Fx.get(area::getText);
  }

  @Test
  void everyLetterReachesTheDeskAndUndoTakesAllBack() throws Exception {
    asked.clear();
    go("sheet(");
    type("say(1);");
    assertThat(text()).contains("say(1);sheet");
    assertThat(Fx.get(() -> desk.text().get())).isEqualTo(text());
    assertThat(asked).hasSize("say(1);".length());
    assertThat(Fx.get(() -> desk.design().get().said())).containsExactly("1");
    press("Enter");
    press("Tab");
    press("Shortcut+Slash");
    assertThat(text()).contains("say(1);\n  // sheet").isNotEqualTo(BOX);
    for (int i = 0; i < 20 && !text().equals(BOX); i++) {
      Fx.run(area::undo);
    }
    assertThat(text()).isEqualTo(BOX);
    assertThat(Fx.get(() -> desk.text().get())).isEqualTo(BOX);
    String typed = asked.get("say(1);".length() - 1);
    for (int i = 0; i < 20 && !text().equals(typed); i++) {
      Fx.run(area::redo);
    }
    assertThat(text()).isEqualTo(typed);
  }

  @Test
  void eachPieceIsWrittenInItsInk() throws Exception {
    assertThat(inks("const")).containsExactly("ink-keyword");
    assertThat(inks("design(")).contains("ink-known");
    assertThat(inks("attach(")).containsExactly("ink-known");
    assertThat(inks("\"Crate")).containsExactly("ink-text");
    assertThat(inks("90")).containsExactly("ink-number");
    assertThat(inks("side =")).isEmpty();
  }

  @Test
  void aFaultIsMarkedSaidAndMended() throws Exception {
    go("attach");
    Fx.run(() -> area.deleteText(area.getCaretPosition(), area.getCaretPosition() + 1));
    Fx.pulse();
    assertThat(inks("ttach")).contains("mark-fault");
    assertThat(Fx.get(() -> area.getParagraph(3).getParagraphStyle())).contains("fault-line");
    assertThat(Fx.get(() -> Fx.says(card, "Line 4: ttach is not a function"))).isTrue();
    assertThat(Fx.get(() -> card.fault().button().getText())).isEqualTo("Write attach");
    press("Alt+Enter");
    assertThat(text()).isEqualTo(BOX);
    assertThat(Fx.get(() -> desk.fault().get())).isNull();
    assertThat(inks("attach")).doesNotContain("mark-fault");
    assertThat(Fx.get(() -> card.fault().isVisible())).isFalse();
    Fx.run(area::undo);
    assertThat(text()).contains("foot.ttach");
  }

  @Test
  void aMarkMovesAlongWithItsWord() throws Exception {
    go("attach");
    type("x");
    String wrong = "xattach";
    assertThat(inks(wrong)).contains("mark-fault");
    Fx.run(() -> area.insertText(0, "// more\n\n"));
    Fx.pulse();
    assertThat(inks(wrong)).contains("mark-fault");
    assertThat(Fx.get(() -> area.getParagraph(5).getParagraphStyle())).contains("fault-line");
    assertThat(Fx.get(() -> area.getParagraph(3).getParagraphStyle())).isEmpty();
  }

  @Test
  void findingsHaveTheirPinsInTheMargin() throws Exception {
    go("sheet(");
    type("panel(\"big\", { width: 900, height: 900 });");
    Fx.pulse();
    List<Mark> marks = Fx.get(() -> card.marks().all().get());
    int findings = Fx.get(() -> desk.design().get().findings().size());
    assertThat(findings).isPositive();
    assertThat(marks).isNotEmpty().allSatisfy(m -> assertThat(m.number()).isBetween(1, findings));
    Mark first = marks.getFirst();
    assertThat(first.message())
        .isEqualTo(Fx.get(() -> desk.design().get().findings().get(first.number() - 1).message()));
    assertThat(Fx.get(() -> Fx.says(card, Integer.toString(first.number())))).isTrue();
    assertThat(Fx.get(() -> area.getStyleOfChar(first.at().start())))
        .contains("mark-" + first.style());
  }

  @Test
  void anOfferIsTakenAndItsArgumentsAreExplained() throws Exception {
    go("sheet(");
    type("back.att");
    assertThat(Fx.get(() -> card.prompting().isOffering())).isTrue();
    assertThat(Fx.get(() -> card.prompting().list().chosen().word())).isEqualTo("attach");
    press("Enter");
    assertThat(text()).contains("back.attach()sheet");
    assertThat(Fx.get(() -> card.prompting().isOffering())).isFalse();
    assertThat(Fx.get(() -> card.prompting().isHinting())).isTrue();
    type("\"to");
    assertThat(Fx.get(() -> card.prompting().list().chosen().word())).isEqualTo("top");
    press("Tab");
    type(", \"lid\", { dep");
    press("Enter");
    type("40 });");
    assertThat(text()).contains("back.attach(\"top\", \"lid\", { depth: 40 });sheet");
    assertThat(Fx.get(() -> desk.design().get().net().panels())).hasSize(3);
  }

  @Test
  void escapeClosesOffersAndArrowsChoose() throws Exception {
    go("sheet(");
    type("foot.");
    String first = Fx.get(() -> card.prompting().list().chosen().word());
    press("Down");
    assertThat(Fx.get(() -> card.prompting().list().chosen().word())).isNotEqualTo(first);
    press("Up");
    press("Up");
    press("Down");
    assertThat(Fx.get(() -> card.prompting().list().chosen().word())).isEqualTo(first);
    press("Esc");
    assertThat(Fx.get(() -> card.prompting().isOffering())).isFalse();
    assertThat(text()).contains("foot.sheet");
    press("Shortcut+Space");
    assertThat(Fx.get(() -> card.prompting().isOffering())).isTrue();
  }

  private void mouse(javafx.event.EventType<MouseEvent> type, double x, double y, boolean alt) {
    Event.fireEvent(
        area,
        new MouseEvent(
            type,
            x,
            y,
            x,
            y,
            MouseButton.PRIMARY,
            1,
            false,
            false,
            alt,
            false,
            true,
            false,
            false,
            false,
            false,
            false,
            null));
  }

  @Test
  void aNumberIsDraggedAndTakenBackInOneStep() throws Exception {
    asked.clear();
    Fx.run(
        () -> {
          int at = area.getText().indexOf("50 }");
          Bounds place =
              area.localToScene(
                  area.screenToLocal(area.getCharacterBoundsOnScreen(at, at + 1).orElseThrow()));
          double x = place.getCenterX();
          double y = place.getCenterY();
          mouse(MouseEvent.MOUSE_PRESSED, x, y, true);
          for (int px = 6; px <= 30; px += 6) {
            mouse(MouseEvent.MOUSE_DRAGGED, x + px, y, true);
          }
          mouse(MouseEvent.MOUSE_RELEASED, x + 30, y, true);
        });
    assertThat(text()).contains("height: 55 }");
    assertThat(asked).hasSize(5).last().asString().contains("height: 55 }");
    assertThat(asked.getFirst()).contains("height: 51 }");
    Fx.run(area::undo);
    assertThat(text()).isEqualTo(BOX);
    Fx.run(area::redo);
    assertThat(text()).contains("height: 55 }");
  }

  private void point(String word) throws Exception {
    Fx.run(
        () -> {
          int at = area.getText().indexOf(word);
          Bounds place = area.getCharacterBoundsOnScreen(at, at + 1).orElseThrow();
          new Robot().mouseMove(place.getCenterX(), place.getCenterY());
        });
    Fx.pulse();
  }

  @Test
  void restingOnAWordSaysWhatItMeansAndOnAMarkWhatIsWrong() throws Exception {
    point("attach(");
    Fx.until("the word is explained", () -> card.prompting().isNoting());
    assertThat(Fx.get(() -> Fx.says(card, "attach(edge, name, {"))).isTrue();
    go("attach(");
    type("x");
    point("xattach");
    Fx.until("the fault is told", () -> Fx.says(card, "✕ xattach is not a function"));
  }

  @Test
  void aNumberIsTurnedByKeys() throws Exception {
    go("90,");
    press("Shortcut+Alt+Up");
    press("Shortcut+Alt+Shift+Down");
    assertThat(text()).contains("depth: 90.9,");
  }

  @Test
  void aLineAndWhatItMadeAreOne() throws Exception {
    go("const foot");
    press("Down");
    Fx.until("line 3 is told", () -> desk.selection().get() instanceof Selection.OfLine);
    Selection.OfLine line = (Selection.OfLine) Fx.get(() -> desk.selection().get());
    assertThat(List.of(3, 4)).contains(line.line());
    Fx.run(() -> desk.selection().set(new Selection.OfPanel(1)));
    Fx.pulse();
    Site made = Fx.get(() -> desk.design().get().net().panels().get(1).site());
    assertThat(Fx.get(() -> desk.selection().get())).isEqualTo(new Selection.OfPanel(1));
    assertThat(Fx.get(() -> area.getCurrentParagraph() + 1)).isEqualTo(made.line());
    assertThat(Fx.get(() -> area.getParagraph(made.line() - 1).getParagraphStyle()))
        .contains("halo");
    Fx.run(() -> desk.pointTo(new Site(2, 1)));
    assertThat(Fx.get(() -> area.getParagraph(1).getParagraphStyle())).contains("halo");
    assertThat(Fx.get(() -> area.getParagraph(made.line() - 1).getParagraphStyle())).isEmpty();
  }

  @Test
  void findsAndReplaces() throws Exception {
    press("Shortcut+H");
    Fx.run(() -> card.find().sought().setText("foot"));
    assertThat(Fx.get(() -> card.find().count())).isEqualTo("1 of 3");
    assertThat(inks("foot =")).contains("hit");
    Fx.run(() -> card.find().by().setText("base"));
    Fx.run(() -> card.find().replaceOne());
    assertThat(Fx.get(() -> card.find().count())).isEqualTo("1 of 2");
    Fx.run(() -> card.find().replaceAll());
    assertThat(text()).isEqualTo(BOX.replace("foot", "base"));
    assertThat(Fx.get(() -> desk.fault().get())).isNull();
    Fx.run(area::undo);
    Fx.run(area::undo);
    assertThat(text()).isEqualTo(BOX);
    press("Esc");
    assertThat(Fx.get(() -> card.find().isVisible())).isFalse();
    assertThat(inks("foot =")).isEmpty();
  }

  @Test
  void goesToALineAndChangesTheSizeOfLetters() throws Exception {
    press("Shortcut+L");
    Fx.run(
        () -> {
          card.find().line().setText("4");
          card.find().line().fireEvent(new javafx.event.ActionEvent());
        });
    assertThat(Fx.get(() -> area.getCurrentParagraph())).isEqualTo(3);
    int size = Fx.get(() -> card.size().size());
    press("Shortcut+Equals");
    assertThat(Fx.get(() -> card.size().size())).isEqualTo(size + 1);
    press("Shortcut+0");
    assertThat(Fx.get(() -> card.size().size())).isEqualTo(size);
  }

  @Test
  void bracketsThatBelongTogetherShow() throws Exception {
    go("(\"foot\"");
    assertThat(inks("(\"foot\"")).contains("bracket");
    int close = text().indexOf(");\nconst back");
    assertThat(Fx.get(() -> area.getStyleOfChar(close))).contains("bracket");
  }

  @Test
  void keysLeaveTheScript() throws Exception {
    assertThat(Fx.get(() -> area.isFocused())).isTrue();
    press("Shortcut+Tab");
    assertThat(Fx.get(() -> area.isFocused())).isFalse();
    assertThat(text()).isEqualTo(BOX);
  }

  @Test
  void aPinThatIsPressedPointsOutWhatItIsAbout() throws Exception {
    go("sheet(");
    type("panel(\"big\", { width: 900, height: 900 });");
    Fx.pulse();
    Fx.run(() -> desk.selection().set(Selection.nothing()));
    Fx.run(
        () -> {
          Node pin = card.lookup(".margin-pin");
          Event.fireEvent(
              pin,
              new MouseEvent(
                  MouseEvent.MOUSE_PRESSED,
                  1,
                  1,
                  1,
                  1,
                  MouseButton.PRIMARY,
                  1,
                  false,
                  false,
                  false,
                  false,
                  true,
                  false,
                  false,
                  false,
                  false,
                  false,
                  null));
        });
    int line = Fx.get(() -> desk.pointed().get().line());
    assertThat(line).isPositive();
    assertThat(Fx.get(() -> area.getCurrentParagraph() + 1)).isEqualTo(line);
    assertThat(Fx.get(() -> area.getParagraph(line - 1).getParagraphStyle())).contains("halo");
  }

  @Test
  void anotherScriptBeginsAfresh() throws Exception {
    type("// mine\n");
    Fx.run(() -> desk.lay(Path.of("other.js"), "design(\"Other\");\n"));
    assertThat(text()).isEqualTo("design(\"Other\");\n");
    Fx.run(area::undo);
    assertThat(text()).isEqualTo("design(\"Other\");\n");
    assertThat(Fx.get(() -> area.getCaretPosition())).isZero();
  }
}
