package facetwright.workbench.card;

import facetwright.workbench.card.text.Edit;
import facetwright.workbench.card.text.Reading;
import facetwright.workbench.card.text.Scope;
import facetwright.workbench.card.text.Stretch;
import facetwright.workbench.desk.Desk;
import java.time.Duration;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.model.PlainTextChange;
import org.fxmisc.richtext.model.TextChange;
import org.fxmisc.richtext.util.UndoUtils;
import org.fxmisc.undo.UndoManager;
import org.fxmisc.undo.UndoManagerFactory;
import org.reactfx.SuspendableYes;

/** The text on the card and the desk's script, kept the same; its reading; its undo. */
final class CardText {
  private final CodeArea area = new CodeArea();
  private final SuspendableYes recording = new SuspendableYes();
  private final ReadOnlyObjectWrapper<Scope> scope = new ReadOnlyObjectWrapper<>();
  private final Desk desk;
  private boolean telling = true;
  private long laid;

  CardText(Desk desk) {
    this.desk = desk;
    area.setUndoManager(undo());
    read(desk.text().get());
    area.replaceText(desk.text().get());
    area.getUndoManager().forgetHistory();
    area.moveTo(0);
    area.textProperty().addListener((_, _, text) -> changed(text));
    desk.text().addListener((_, _, text) -> laid(text));
  }

  private UndoManager<List<PlainTextChange>> undo() {
    return UndoManagerFactory.unlimitedHistoryFactory()
        .createMultiChangeUM(
            area.multiPlainChanges().conditionOn(recording),
            TextChange::invert,
            UndoUtils.applyMultiPlainTextChange(area),
            TextChange::mergeWith,
            TextChange::isIdentity,
            Duration.ofMillis(500));
  }

  private void changed(String text) {
    read(text);
    if (telling) {
      desk.text().set(text);
    }
  }

  private void read(String text) {
    scope.set(new Scope(Reading.of(text)));
  }

  /** Another script lies on the desk, or this one was changed there. */
  private void laid(String text) {
    if (!text.equals(area.getText())) {
      replace(text);
    }
    if (desk.laid().get() != laid) {
      laid = desk.laid().get();
      area.getUndoManager().forgetHistory();
      area.moveTo(0);
      area.requestFollowCaret();
    }
  }

  /** Puts in only what differs, so that it can be undone and the place is kept. */
  private void replace(String text) {
    String old = area.getText();
    int least = Math.min(old.length(), text.length());
    int same = 0;
    while (same < least && old.charAt(same) == text.charAt(same)) {
      same++;
    }
    int end = 0;
    while (end < least - same
        && old.charAt(old.length() - 1 - end) == text.charAt(text.length() - 1 - end)) {
      end++;
    }
    area.getUndoManager().preventMerge();
    area.replaceText(same, old.length() - end, text.substring(same, text.length() - end));
    area.getUndoManager().preventMerge();
  }

  CodeArea area() {
    return area;
  }

  String text() {
    return area.getText();
  }

  /** The reading of the text as it stands, and what its names stand for. */
  ReadOnlyObjectProperty<Scope> scope() {
    return scope.getReadOnlyProperty();
  }

  Reading reading() {
    return scope.get().reading();
  }

  Stretch selected() {
    return new Stretch(area.getSelection().getStart(), area.getSelection().getEnd());
  }

  int caret() {
    return area.getCaretPosition();
  }

  /** Makes an edit that is undone in one step. */
  void apply(Edit edit) {
    area.getUndoManager().preventMerge();
    if (edit.from() != edit.to() || !edit.text().isEmpty()) {
      area.replaceText(edit.from(), edit.to(), edit.text());
    }
    area.selectRange(edit.anchor(), edit.caret());
    area.getUndoManager().preventMerge();
    area.requestFollowCaret();
  }

  /** Begins to change one stretch over and over. */
  Turning turn(Stretch at) {
    return new Turning(at);
  }

  /**
   * A stretch that is changed over and over, each time told to the desk, and undone in one step.
   */
  final class Turning {
    private final String before;
    private Stretch at;

    private Turning(Stretch at) {
      this.at = at;
      this.before = area.getText(at.start(), at.end());
    }

    /** Where it stands now. */
    Stretch at() {
      return at;
    }

    void show(String text) {
      if (!text.equals(area.getText(at.start(), at.end()))) {
        recording.suspendWhile(() -> put(text));
      }
    }

    private void put(String text) {
      area.replaceText(at.start(), at.end(), text);
      at = new Stretch(at.start(), at.start() + text.length());
      area.selectRange(at.start(), at.end());
    }

    /** What was shown last stands, as one step. */
    void end() {
      String last = area.getText(at.start(), at.end());
      if (last.equals(before)) {
        return;
      }
      telling = false;
      recording.suspendWhile(() -> put(before));
      area.getUndoManager().preventMerge();
      put(last);
      area.getUndoManager().preventMerge();
      telling = true;
    }
  }
}
