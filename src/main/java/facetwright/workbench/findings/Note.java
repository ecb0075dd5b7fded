package facetwright.workbench.findings;

import facetwright.check.finding.Finding;
import facetwright.measure.Unbroken;
import facetwright.workbench.card.text.Repair;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.goal.Wish;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One finding as a note; a click selects where it stands, buttons put it right. */
final class Note extends HBox {
  private final Desk desk;
  private final Consumer<Wish> solver;
  private Said said;

  /**
   * What a note says.
   *
   * @param number from 1
   * @param repair a change of the script that would put it right
   * @param wish dials to solve for that would
   */
  record Said(int number, Finding finding, Optional<Repair> repair, Optional<Wish> wish) {
    private boolean readsAs(Said other) {
      return number == other.number
          && finding.severity() == other.finding.severity()
          && finding.message().equals(other.finding.message())
          && finding.fix().equals(other.finding.fix())
          && repair.map(Repair::label).equals(other.repair.map(Repair::label))
          && wish.map(Wish::verb).equals(other.wish.map(Wish::verb));
    }
  }

  /**
   * @param solver who solves for dials
   */
  Note(Desk desk, Consumer<Wish> solver) {
    super(8);
    this.desk = desk;
    this.solver = solver;
    setAlignment(Pos.TOP_LEFT);
    getStyleClass().add("note");
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    Tooltip.install(this, new Tip(Key.PRESS.tip("Show where it stands, in net and script")));
    setOnMouseClicked(_ -> desk.pointOut(said.finding()));
    setOnKeyPressed(
        e -> {
          if (Key.PRESS.is(e)) {
            desk.pointOut(said.finding());
            e.consume();
          }
        });
  }

  /** Whether the words on this note are those of another finding, too. */
  boolean reads(Said other) {
    return said != null && said.readsAs(other);
  }

  /** Says something else, or the same of a newer design. */
  void say(Said next) {
    boolean written = reads(next);
    said = next;
    if (!written) {
      write();
    }
  }

  private void write() {
    Finding finding = said.finding();
    Label pin = new Label(Integer.toString(said.number()));
    pin.getStyleClass().addAll("pin", finding.severity().name().toLowerCase(Locale.ROOT));
    Label message = new Label(Unbroken.measures(finding.message()));
    message.setWrapText(true);
    Label fix = new Label(Unbroken.measures(finding.fix()));
    fix.setWrapText(true);
    fix.getStyleClass().add("quiet");
    VBox words = new VBox(2, message, fix);
    said.repair()
        .ifPresent(
            repair ->
                words
                    .getChildren()
                    .add(
                        button(
                            repair.label(),
                            "Change the script so ("
                                + Key.MEND.text()
                                + " in its line); "
                                + Key.UNDO.text()
                                + " takes it back",
                            this::repair)));
    said.wish()
        .ifPresent(
            wish ->
                words
                    .getChildren()
                    .add(
                        button(
                            wish.verb(),
                            "Look for such dials; nothing turns before you take them",
                            () -> said.wish().ifPresent(solver))));
    words.setFillWidth(true);
    HBox.setHgrow(words, Priority.ALWAYS);
    getChildren().setAll(pin, words);
    setAccessibleText("Finding " + said.number() + ": " + finding.message() + " " + finding.fix());
  }

  private static Button button(String verb, String tip, Runnable action) {
    Button button = new Button(verb);
    button.setTooltip(new Tip(tip));
    button.setOnAction(_ -> action.run());
    return button;
  }

  /** Changes the script, where it is still the one that the finding is about. */
  private void repair() {
    FindingsList.repair(desk, said.finding())
        .ifPresent(repair -> desk.text().set(repair.edit().in(desk.text().get())));
  }
}
