package facetwright.workbench.findings;

import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.scope.Scope;
import facetwright.workbench.card.text.Repair;
import facetwright.workbench.card.text.Repairs;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.focus.Reach;
import facetwright.workbench.goal.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** The findings as notes under each other; a click selects where one stands. */
public final class FindingsList extends VBox {
  private final Desk desk;
  private Consumer<Wish> solver = _ -> {};
  private Runnable otherwise = () -> {};

  public FindingsList(Desk desk) {
    this.desk = desk;
    getStyleClass().add("findings");
    desk.heard().addListener((_, _, _) -> show(desk.design().get()));
  }

  /** How high the first note is, with what is above it. */
  public double first() {
    return getChildren().isEmpty()
        ? 0
        : getInsets().getTop() + getChildren().getFirst().prefHeight(getWidth());
  }

  /** Who solves for dials that put a finding right. */
  public void onMend(Consumer<Wish> newSolver) {
    solver = newSolver;
  }

  /** Who takes the focus when the note that had it goes and none takes its place. */
  public void onLast(Runnable newOtherwise) {
    otherwise = newOtherwise;
  }

  private void mend(Wish wish) {
    solver.accept(wish);
  }

  private void show(Design design) {
    List<Note> notes = new ArrayList<>();
    List<Finding> findings = design == null ? List.of() : design.findings();
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i);
      Note.Said said = new Note.Said(i + 1, finding, repair(desk, finding), wish(design, finding));
      Note shown = i < getChildren().size() ? (Note) getChildren().get(i) : null;
      // A note that says the same stays: it may have the focus.
      boolean stays = shown != null && shown.reads(said);
      notes.add(stays ? shown : new Note(desk, this::mend));
      notes.getLast().say(said);
    }
    int focused = focused();
    boolean goes = focused >= 0 && !notes.contains(getChildren().get(focused));
    if (!notes.equals(getChildren())) {
      getChildren().setAll(notes);
    }
    setVisible(!notes.isEmpty());
    setManaged(isVisible());
    if (goes && focused < notes.size()) {
      notes.get(focused).requestFocus();
    } else if (goes) {
      otherwise.run();
    }
  }

  /** Which note has the focus, or a button on it; -1 when none has. */
  private int focused() {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    for (int i = 0; i < getChildren().size(); i++) {
      if (owner != null && Reach.isIn(owner, getChildren().get(i))) {
        return i;
      }
    }
    return -1;
  }

  private Optional<Wish> wish(Design design, Finding finding) {
    return desk.fault().get() == null ? Wish.mending(design, finding) : Optional.empty();
  }

  /**
   * A change of the script as it stands that would put a finding right; none where the finding is
   * about another.
   */
  static Optional<Repair> repair(Desk desk, Finding finding) {
    String text = desk.text().get();
    boolean isOfText = desk.fault().get() == null && desk.made().equals(text);
    return finding.mends().isEmpty() || !isOfText
        ? Optional.empty()
        : Repairs.of(Scope.of(text), finding.site(), finding.mends()).stream().findFirst();
  }
}
