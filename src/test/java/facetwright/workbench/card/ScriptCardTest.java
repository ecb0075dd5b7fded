package facetwright.workbench.card;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.Fx;
import facetwright.workbench.desk.Work;
import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

/** The card as one writes on it. */
class ScriptCardTest extends CardRoom {
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
      Fx.run(desk::undo);
    }
    assertThat(text()).isEqualTo(BOX);
    assertThat(Fx.get(() -> desk.text().get())).isEqualTo(BOX);
    String typed = asked.get("say(1);".length() - 1);
    for (int i = 0; i < 20 && !text().equals(typed); i++) {
      Fx.run(desk::redo);
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

  /** The words on a call stand whole in their note, as they are lettered. */
  @Test
  void whatACallTakesIsShownWhole() throws Exception {
    go("sheet(");
    type("prism({ ");
    assertThat(Fx.get(() -> card.prompting().isHinting())).isTrue();
    Fx.pulse();
    Region hint = (Region) Fx.get(() -> card.lookup(".hint"));
    assertThat(hint.getHeight())
        .isGreaterThanOrEqualTo(Fx.get(() -> hint.prefHeight(hint.getWidth())) - 0.5);
  }

  /** The words on a fault take of the script's room; what is typed last stays in sight there. */
  @Test
  void whatIsTypedAtTheFootStaysInSight() throws Exception {
    Fx.run(() -> area.appendText("\n".repeat(60)));
    Fx.run(() -> area.moveTo(area.getLength()));
    Fx.run(() -> area.requestFollowCaret());
    Fx.pulse();
    type("foot.attach(");
    Fx.until("the fault is told", () -> card.fault().isVisible());
    Fx.until("the caret shows", () -> area.getCaretBounds().isPresent());
    for (int i = 0; i < 4; i++) {
      Fx.pulse();
    }
    assertThat(Fx.get(() -> card.prompting().isHinting())).isTrue();
    Bounds caret = Fx.get(() -> area.getCaretBounds().orElseThrow());
    Bounds seen = Fx.get(() -> area.localToScreen(area.getLayoutBounds()));
    assertThat(caret.getMaxY()).isLessThanOrEqualTo(seen.getMaxY() + 0.5);
    Region hint = (Region) Fx.get(() -> card.lookup(".hint"));
    Bounds words = Fx.get(() -> hint.localToScreen(hint.getLayoutBounds()));
    assertThat(words.getMaxY()).isLessThanOrEqualTo(caret.getMinY() + 0.5);
    assertThat(hint.getHeight())
        .isGreaterThanOrEqualTo(Fx.get(() -> hint.prefHeight(hint.getWidth())) - 0.5);
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
    Fx.run(desk::undo);
    assertThat(text()).isEqualTo(BOX);
    Fx.run(desk::redo);
    assertThat(text()).contains("height: 55 }");
  }

  @Test
  void aNumberIsTurnedByKeys() throws Exception {
    go("90,");
    press("Shortcut+Alt+Up");
    press("Shortcut+Alt+Shift+Down");
    assertThat(text()).contains("depth: 90.9,");
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
    Fx.run(desk::undo);
    Fx.run(desk::undo);
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
  void anotherScriptBeginsAfresh() throws Exception {
    type("// mine\n");
    Fx.run(
        () ->
            desk.lay(
                Path.of("other.js"),
                Work.of("design(\"Other\");\n"),
                Work.of("design(\"Other\");\n")));
    assertThat(text()).isEqualTo("design(\"Other\");\n");
    Fx.run(desk::undo);
    assertThat(text()).isEqualTo("design(\"Other\");\n");
    assertThat(Fx.get(() -> area.getCaretPosition())).isZero();
  }

  /** A line broken at the card's edge is one line all the same. */
  @Test
  void homeAndEndGoToTheLinesEnds() throws Exception {
    String line = "  const long = [" + "12345, ".repeat(40) + "];";
    Fx.run(() -> desk.text().set("design(\"x\");\n" + line + "\n// end\n"));
    Fx.pulse();
    for (int column : new int[] {0, 1, 2, 9, 60, 150, line.length()}) {
      Fx.run(() -> area.moveTo(1, column));
      press("End");
      assertThat(at()).isEqualTo(List.of(1, line.length()));
      Fx.run(() -> area.moveTo(1, column));
      press("Home");
      assertThat(at()).isEqualTo(List.of(1, column == 2 ? 0 : 2));
      press("Home");
      assertThat(at()).isEqualTo(List.of(1, column == 2 ? 2 : 0));
    }
    Fx.run(() -> area.moveTo(1, 60));
    press("Shift+End");
    assertThat(Fx.get(area::getSelectedText)).isEqualTo(line.substring(60));
    Fx.run(() -> area.moveTo(1, 60));
    press("Shift+Home");
    assertThat(Fx.get(area::getSelectedText)).isEqualTo(line.substring(2, 60));
  }

  private List<Integer> at() throws Exception {
    return Fx.get(() -> List.of(area.getCurrentParagraph(), area.getCaretColumn()));
  }
}
