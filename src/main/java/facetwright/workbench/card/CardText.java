package facetwright.workbench.card;

import facetwright.script.scope.Scope;
import facetwright.script.text.Edit;
import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import facetwright.workbench.card.text.Offers;
import facetwright.workbench.desk.Change;
import facetwright.workbench.desk.Desk;
import java.util.Map;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.fxmisc.richtext.CodeArea;
import org.fxmisc.richtext.util.UndoUtils;

/** The text on the card and the desk's script, kept the same; its reading. */
final class CardText {
  private final CodeArea area = new CodeArea();
  private final ReadOnlyObjectWrapper<Scope> scope = new ReadOnlyObjectWrapper<>();
  private final Desk desk;
  private long laid;

  /** Where one was writing, wherever the caret was led to since. */
  private int own;

  private Change last = new Change(0, "", "");

  CardText(Desk desk) {
    this.desk = desk;
    // The desk tells the story of script and dials alike.
    area.setUndoManager(UndoUtils.noOpUndoManager());
    read(desk.text().get());
    area.replaceText(desk.text().get());
    area.moveTo(0);
    area.plainTextChanges()
        .subscribe(c -> last = new Change(c.getPosition(), c.getRemoved(), c.getInserted()));
    area.textProperty().addListener((_, _, text) -> changed(text));
    area.caretPositionProperty().addListener((_, _, at) -> own = at);
    desk.text().addListener((_, _, text) -> laid(text));
  }

  /** What could be written at the caret. */
  Offers offers() {
    return Offers.at(scope.get(), caret(), this::file, () -> desk.files().get().names());
  }

  /** What a file holds that the script uses; empty where it can't be had. */
  private String file(String name) {
    return Gathered.of(desk.request(Map.of()).source())
        .piece(name)
        .filter(piece -> piece.state() != Piece.State.LACKING)
        .map(Piece::text)
        .orElse("");
  }

  private void changed(String text) {
    read(text);
    desk.write(text, last);
  }

  private void read(String text) {
    scope.set(Scope.of(text));
  }

  /** Another script lies on the desk, or this one was changed there. */
  private void laid(String text) {
    if (!text.equals(area.getText())) {
      replace(text);
    }
    if (desk.laid().get() != laid) {
      laid = desk.laid().get();
      area.moveTo(0);
      area.requestFollowCaret();
    }
  }

  /** Puts in only what differs, so that the place is kept. */
  private void replace(String text) {
    Change change = Change.between(area.getText(), text);
    area.replaceText(change.at(), change.end(), change.put());
    area.requestFollowCaret();
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

  /** What is selected; where the caret was led elsewhere since, where one left it. */
  Stretch own() {
    int at = Math.min(own, area.getLength());
    return at == caret() ? selected() : new Stretch(at, at);
  }

  /** Leads the caret to a place that is pointed out; where one was writing is not forgotten. */
  void lead(int at) {
    int left = own;
    area.moveTo(at);
    own = left;
  }

  int caret() {
    return area.getCaretPosition();
  }

  /** Makes an edit that is undone in one step. */
  void apply(Edit edit) {
    desk.endStep();
    if (edit.from() != edit.to() || !edit.text().isEmpty()) {
      area.replaceText(edit.from(), edit.to(), edit.text());
    }
    area.selectRange(edit.anchor(), edit.caret());
    desk.endStep();
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
    private Stretch at;

    private Turning(Stretch at) {
      this.at = at;
      desk.hold(true);
    }

    void show(String text) {
      if (!text.equals(area.getText(at.start(), at.end()))) {
        area.replaceText(at.start(), at.end(), text);
        at = new Stretch(at.start(), at.start() + text.length());
        area.selectRange(at.start(), at.end());
      }
    }

    /** What was shown last stands. */
    void end() {
      desk.hold(false);
    }
  }
}
