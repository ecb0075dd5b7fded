package facetwright.workbench.card;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.words.Site;
import facetwright.workbench.Fx;
import facetwright.workbench.desk.Selection;
import facetwright.workbench.desk.Work;
import java.nio.file.Path;
import java.util.List;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

/** What is wrong and what is pointed out, marked on the card. */
class CardMarksTest extends CardRoom {
  @Test
  void aFaultIsMarkedSaidAndMended() throws Exception {
    go("attach");
    Fx.run(() -> area.deleteText(area.getCaretPosition(), area.getCaretPosition() + 1));
    Fx.pulse();
    assertThat(inks("ttach")).contains("mark-fault");
    assertThat(Fx.get(() -> area.getParagraph(3).getParagraphStyle())).contains("fault-line");
    assertThat(Fx.get(() -> Fx.says(card, "Line 4: a panel has no function ttach"))).isTrue();
    assertThat(Fx.get(() -> card.fault().button().getText())).isEqualTo("Write attach");
    press("Alt+Enter");
    assertThat(text()).isEqualTo(BOX);
    assertThat(Fx.get(() -> desk.fault().get())).isNull();
    assertThat(inks("attach")).doesNotContain("mark-fault");
    assertThat(Fx.get(() -> card.fault().isVisible())).isFalse();
    Fx.run(desk::undo);
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
    List<TextMark> marks = Fx.get(() -> card.marks().all().get());
    int findings = Fx.get(() -> desk.design().get().findings().size());
    assertThat(findings).isPositive();
    assertThat(marks).isNotEmpty().allSatisfy(m -> assertThat(m.number()).isBetween(1, findings));
    TextMark first = marks.getFirst();
    assertThat(first.message())
        .isEqualTo(Fx.get(() -> desk.design().get().findings().get(first.number() - 1).message()));
    assertThat(Fx.get(() -> Fx.says(card, Integer.toString(first.number())))).isTrue();
    assertThat(Fx.get(() -> area.getStyleOfChar(first.at().start())))
        .contains("mark-" + first.style());
  }

  @Test
  void restingOnAWordSaysWhatItMeansAndOnAMarkWhatIsWrong() throws Exception {
    point("attach(");
    Fx.until("the word is explained", () -> card.prompting().isNoting());
    assertThat(Fx.get(() -> Fx.says(card, "attach(edge, name, {"))).isTrue();
    go("attach(");
    type("x");
    point("xattach");
    Fx.until("the fault is told", () -> Fx.says(card, "✕ a panel has no function xattach"));
  }

  /** However much there is to say, it stands on its note, and the note on the card. */
  @Test
  void whatIsSaidOfALongCallStaysOnItsNote() throws Exception {
    String script =
        "design(\"Band\");\n"
            + "\n".repeat(7)
            + "wrap({ columns: 8, width: 20, rows: [20], seam: 8 });\n";
    Fx.run(() -> desk.lay(Path.of("band.js"), Work.of(script), Work.of(script)));
    for (double high : new double[] {760, 640, 560}) {
      Fx.run(() -> stage.setHeight(high));
      Fx.pulse();
      point("sign(");
      Fx.until("it is there", () -> !Fx.says(card, "wrap({ columns"));
      point("wrap(");
      Fx.until("the call is explained", () -> Fx.says(card, "wrap({ columns"));
      Fx.pulse();
      Region note = (Region) Fx.get(() -> card.lookup(".hover-note"));
      Bounds all = Fx.get(() -> note.localToScene(note.getLayoutBounds()));
      Region help = (Region) Fx.get(() -> note.lookup(".help"));
      Node last = help.getChildrenUnmodifiable().getLast();
      Bounds end = Fx.get(() -> last.localToScene(last.getLayoutBounds()));
      assertThat(end.getMaxY())
          .as("in a window of %s", high)
          .isLessThanOrEqualTo(all.getMaxY() + 0.5);
      Bounds whole = Fx.get(() -> card.localToScene(card.getLayoutBounds()));
      assertThat(whole.contains(all)).as("in a window of %s", high).isTrue();
    }
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

  /** A pin has room for its number, the twelfth of several in a line as well. */
  @Test
  void aPinShowsItsNumberWhole() throws Exception {
    StringBuilder many =
        new StringBuilder(
            "design(\"Many\");\nconst foot = panel(\"foot\", { width: 140, height: 60 });\n");
    for (int i = 0; i < 12; i++) {
      String hole = "foot.hole({ at: [%d, %d], across: 2 });";
      many.append(hole.formatted(-60 + 10 * i, 27));
      many.append(i < 11 ? "\n" : hole.formatted(-60, -27) + "\n");
    }
    Fx.run(() -> desk.lay(Path.of("many.js"), Work.of(many.toString()), Work.of(many.toString())));
    Fx.until("pins show", () -> card.lookupAll(".margin-pin").size() == 12);
    Fx.pulse();
    assertThat(Fx.get(() -> Fx.says(card, "12+"))).isTrue();
    for (javafx.scene.Node node :
        Fx.get(() -> java.util.List.copyOf(card.lookupAll(".margin-pin")))) {
      javafx.scene.control.Label pin = (javafx.scene.control.Label) node;
      javafx.scene.text.Text shown = (javafx.scene.text.Text) Fx.get(() -> pin.lookup(".text"));
      assertThat(Fx.get(shown::getText)).isEqualTo(pin.getText());
      assertThat(Fx.get(() -> shown.getLayoutBounds().getWidth()))
          .isLessThanOrEqualTo(Fx.get(pin::getWidth));
    }
  }
}
