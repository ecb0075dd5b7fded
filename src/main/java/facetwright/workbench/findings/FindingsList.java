package facetwright.workbench.findings;

import facetwright.check.Finding;
import facetwright.script.Design;
import facetwright.workbench.card.text.Reading;
import facetwright.workbench.card.text.Repair;
import facetwright.workbench.card.text.Repairs;
import facetwright.workbench.card.text.Scope;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.goal.Wish;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The findings as notes under each other; a click selects where one stands. */
public final class FindingsList extends VBox {
  private final Desk desk;
  private Consumer<Wish> mend = _ -> {};

  public FindingsList(Desk desk) {
    this.desk = desk;
    getStyleClass().add("findings");
    desk.design().addListener((_, _, design) -> show(design));
  }

  /** How high the first note is, with what is above it. */
  double first() {
    return getChildren().isEmpty()
        ? 0
        : getInsets().getTop() + getChildren().getFirst().prefHeight(getWidth());
  }

  /** Who solves for dials that put a finding right. */
  public void onMend(Consumer<Wish> solver) {
    mend = solver;
  }

  private void show(Design design) {
    getChildren().clear();
    for (int i = 0; i < design.findings().size(); i++) {
      getChildren().add(note(i + 1, design.findings().get(i)));
    }
    setVisible(!design.findings().isEmpty());
    setManaged(isVisible());
  }

  private HBox note(int number, Finding finding) {
    Label pin = new Label(Integer.toString(number));
    pin.getStyleClass().addAll("pin", finding.severity().name().toLowerCase(java.util.Locale.ROOT));
    Label message = new Label(finding.message());
    message.setWrapText(true);
    Label fix = new Label(finding.fix());
    fix.setWrapText(true);
    fix.getStyleClass().add("quiet");
    VBox words = new VBox(2, message, fix);
    repair(finding).ifPresent(r -> words.getChildren().add(button(r)));
    Wish.mending(desk.design().get(), finding)
        .ifPresent(
            wish -> {
              Button find = new Button(wish.verb());
              find.setTooltip(new Tooltip("Solves for dials; nothing turns before you say so"));
              find.setOnAction(_ -> mend.accept(wish));
              words.getChildren().add(find);
            });
    words.setFillWidth(true);
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox note = new HBox(8, pin, words);
    note.setAlignment(Pos.TOP_LEFT);
    note.getStyleClass().add("note");
    note.setFocusTraversable(true);
    note.setAccessibleRole(AccessibleRole.BUTTON);
    note.setAccessibleText("Finding " + number + ": " + finding.message() + " " + finding.fix());
    note.setOnMouseClicked(_ -> point(finding));
    note.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.SPACE) {
            point(finding);
            e.consume();
          }
        });
    return note;
  }

  /** A change of the script that would put a finding right. */
  private Optional<Repair> repair(Finding finding) {
    Scope scope = new Scope(Reading.of(desk.text().get()));
    return finding.mends().isEmpty()
        ? Optional.empty()
        : Repairs.of(scope, finding.site(), finding.mends()).stream().findFirst();
  }

  private Button button(Repair repair) {
    Button write = new Button(repair.label());
    write.setTooltip(
        new Tooltip("Changes the script so (Alt+Enter in its line); Ctrl+Z takes it back"));
    String before = desk.text().get();
    write.setOnAction(
        _ -> {
          // What was found is for the script as it was.
          if (desk.text().get().equals(before)) {
            desk.text().set(repair.edit().in(before));
          }
        });
    return write;
  }

  private void point(Finding finding) {
    desk.pointOut(finding);
  }
}
