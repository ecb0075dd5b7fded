package facetwright.workbench.card;

import facetwright.measure.Unbroken;
import facetwright.script.text.Edit;
import facetwright.script.text.Stretch;
import facetwright.workbench.card.text.Repair;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Fault;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is wrong with the script and what to do, at the card's foot, with a button that does it. */
final class FaultStrip extends HBox {
  /** What is said is so many letters wide at least, beside the button. */
  private static final double LEAST = 14;

  private final Desk desk;
  private final CardText text;
  private final TextMarks marks;
  private final Label message = new Label();
  private final Label remedy = new Label();
  private final Button apply = new Button();

  FaultStrip(Desk desk, CardText text, TextMarks marks) {
    this.desk = desk;
    this.text = text;
    this.marks = marks;
    getStyleClass().add("fault-strip");
    setAlignment(Pos.CENTER_LEFT);
    setAccessibleRole(AccessibleRole.TEXT);
    Label sign = new Label("✕");
    sign.setMinWidth(USE_PREF_SIZE);
    sign.getStyleClass().add("fault-sign");
    message.setWrapText(true);
    message.getStyleClass().add("fault-message");
    remedy.setWrapText(true);
    remedy.getStyleClass().add("quiet");
    VBox words = new VBox(2, message, remedy);
    Beside saying = new Beside(words, apply, () -> LEAST * message.getFont().getSize());
    HBox.setHgrow(saying, Priority.ALWAYS);
    apply.setMinWidth(USE_PREF_SIZE);
    apply.setTooltip(
        new Tip(Key.MEND.tip("Change the script so") + "; " + Key.UNDO.text() + " takes it back"));
    apply.setOnAction(_ -> apply());
    getChildren().addAll(sign, saying);
    marks.all().addListener((_, _, _) -> show());
    desk.heard().addListener((_, _, _) -> show());
    text.area().heightProperty().addListener((_, _, _) -> keepCaret());
    show();
  }

  /** The strip takes room from the text: the caret stays in sight. */
  private void keepCaret() {
    if (text.area().isFocused()) {
      Platform.runLater(text.area()::requestFollowCaret);
    }
  }

  /** Tests watch by it. */
  Button button() {
    return apply;
  }

  /** Makes the first change that would put the fault right, or a finding in the caret's line. */
  void apply() {
    List<Repair> repairs = new ArrayList<>(marks.repairs());
    marks.mendIn(text.area().getCurrentParagraph() + 1).ifPresent(repairs::add);
    if (!repairs.isEmpty()) {
      Edit edit = repairs.getFirst().edit();
      int removed = edit.to() - edit.from();
      int caret =
          new Stretch(text.caret(), text.caret())
              .moved(edit.from(), removed, edit.text().length())
              .start();
      text.apply(new Edit(edit.from(), edit.to(), edit.text(), caret, caret));
      text.area().requestFocus();
    }
  }

  private void show() {
    Fault fault = desk.fault().get();
    setVisible(fault != null);
    setManaged(fault != null);
    if (fault == null) {
      return;
    }
    String where = fault.site().lead();
    message.setText(Unbroken.measures(where + fault.message()));
    remedy.setText(Unbroken.measures(fault.remedy()));
    remedy.setManaged(!fault.remedy().isEmpty());
    setAccessibleText(where + fault.message() + ". " + fault.remedy());
    boolean can = !marks.repairs().isEmpty();
    apply.setVisible(can);
    apply.setManaged(can);
    apply.setText(can ? marks.repairs().getFirst().label() : "");
  }
}
