package facetwright.workbench.card;

import facetwright.script.text.Edit;
import facetwright.script.text.Stretch;
import facetwright.workbench.card.text.Hits;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Finds and replaces text, and goes to a line. */
final class FindBar extends VBox {
  /** So many letters show at least of what is sought, beside the buttons. */
  private static final int COLUMNS = 7;

  private final CardText text;
  private final Painting painting;
  private final TextField sought = new TextField();
  private final TextField by = new TextField();
  private final TextField line = new TextField();
  private final CheckBox capitals = new CheckBox("Aa");
  private final Label count = new Label();
  private final Region finding;
  private final Region replacing;
  private final Region going;

  FindBar(CardText text, Painting painting) {
    this.text = text;
    this.painting = painting;
    getStyleClass().add("find-bar");
    say(
        sought,
        "Find",
        "What to look for in the script (" + Key.PRESS.one() + " goes to the next)");
    say(by, "Replace with", "What to write in its place (" + Key.PRESS.one() + " replaces one)");
    say(line, "Line", "The number of a line (" + Key.PRESS.one() + " goes there)");
    line.setPrefColumnCount(6);
    count.setMinWidth(USE_PREF_SIZE);
    count.getStyleClass().add("quiet");
    capitals.setMinWidth(USE_PREF_SIZE);
    capitals.setAccessibleText("Capitals count");
    capitals.setTooltip(new Tip("Tell capitals from small letters"));
    sought.setPrefColumnCount(COLUMNS);
    by.setPrefColumnCount(COLUMNS);
    finding =
        row(
            sought,
            count,
            button("↑", "The one before (" + Key.FIND_ON.other() + ")", () -> go(false)),
            button(
                "↓",
                "The next (" + Key.FIND_ON.one() + " or " + Key.PRESS.one() + ")",
                () -> go(true)),
            capitals,
            button("✕", Key.AWAY.tip("Close"), this::close));
    replacing =
        row(
            by,
            button("Replace", Key.PRESS.tipOne("Replace this one"), this::replaceOne),
            button("Replace all", "Replace every one of them", this::replaceAll));
    HBox where = new HBox(6, new Label("Go to line"), line);
    where.setAlignment(Pos.CENTER_LEFT);
    going = row(where, button("Go", Key.PRESS.tipOne("Go there"), this::goToLine));
    sought.textProperty().addListener((_, _, _) -> search());
    capitals.selectedProperty().addListener((_, _, _) -> search());
    text.area()
        .textProperty()
        .addListener(
            (_, _, _) -> {
              if (isVisible() && finding.isVisible()) {
                painting.hits().set(hits());
                tell();
              }
            });
    text.area().selectionProperty().addListener((_, _, _) -> tell());
    sought.setOnAction(_ -> go(true));
    by.setOnAction(_ -> replaceOne());
    line.setOnAction(_ -> goToLine());
    addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (Key.AWAY.is(e)) {
            close();
            e.consume();
          } else if (Key.FIND_ON.is(e)) {
            go(Key.FIND_ON.sense(e) > 0);
            e.consume();
          }
        });
    showOnly();
  }

  private static void say(TextField field, String words, String tip) {
    field.setPromptText(words);
    field.setAccessibleText(words);
    field.setTooltip(new Tip(tip));
  }

  private Region row(Region field, Node... nodes) {
    HBox firm = new HBox(6, nodes);
    firm.setAlignment(Pos.CENTER_LEFT);
    Beside row = new Beside(field, firm, () -> field.prefWidth(-1));
    getChildren().add(row);
    return row;
  }

  private static Button button(String words, String tip, Runnable action) {
    Button button = new Button(words);
    button.setTooltip(new Tip(tip));
    button.setAccessibleText(tip);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(_ -> action.run());
    return button;
  }

  private void showOnly(Region... rows) {
    for (Node row : getChildren()) {
      boolean on = List.of(rows).contains(row);
      row.setVisible(on);
      row.setManaged(on);
    }
    setVisible(rows.length > 0);
    setManaged(rows.length > 0);
  }

  /** Tests watch by it. */
  TextField sought() {
    return sought;
  }

  /** Tests watch by it. */
  TextField by() {
    return by;
  }

  /** Tests watch by it. */
  TextField line() {
    return line;
  }

  /** Tests watch by it. */
  String count() {
    return count.getText();
  }

  /** Opens it to find, and to replace if wanted; what is selected is looked for. */
  void open(boolean replace) {
    if (replace) {
      showOnly(finding, replacing);
    } else {
      showOnly(finding);
    }
    String selected = text.area().getSelectedText();
    if (!selected.isEmpty() && !selected.contains("\n")) {
      sought.setText(selected);
    }
    sought.requestFocus();
    sought.selectAll();
    search();
  }

  /** Opens it to go to a line. */
  void openLine() {
    showOnly(going);
    painting.hits().set(Hits.NONE);
    line.clear();
    line.requestFocus();
  }

  void close() {
    showOnly();
    painting.hits().set(Hits.NONE);
    text.area().requestFocus();
  }

  private Hits hits() {
    return Hits.of(text.text(), sought.getText(), capitals.isSelected());
  }

  private void search() {
    if (!isVisible() || !finding.isVisible()) {
      return;
    }
    Hits hits = hits();
    painting.hits().set(hits);
    int first = hits.next(text.selected().start());
    if (first >= 0) {
      select(hits.all().get(first));
    }
    tell();
  }

  private void tell() {
    count.setText(sought.getText().isEmpty() ? "" : painting.hits().get().count(current()));
  }

  private int current() {
    return painting.hits().get().all().indexOf(text.selected());
  }

  /** Goes to the next hit, or the one before. */
  void go(boolean on) {
    if (sought.getText().isEmpty()) {
      open(false);
      return;
    }
    Hits hits = hits();
    painting.hits().set(isVisible() ? hits : Hits.NONE);
    int i = on ? hits.next(text.selected().end()) : hits.previous(text.selected().start());
    if (i >= 0) {
      select(hits.all().get(i));
    }
    tell();
  }

  private void select(Stretch hit) {
    text.area().selectRange(hit.start(), hit.end());
    text.area().requestFollowCaret();
  }

  /** Replaces the hit that is selected and goes to the next. */
  void replaceOne() {
    if (current() >= 0) {
      Stretch hit = text.selected();
      text.apply(Edit.replace(hit.start(), hit.end(), by.getText()));
    }
    go(true);
  }

  /** Replaces every hit, to be taken back in one step. */
  void replaceAll() {
    Hits hits = hits();
    if (!hits.all().isEmpty()) {
      String changed = hits.replaced(text.text(), by.getText());
      int caret = Math.min(text.caret(), changed.length());
      text.apply(new Edit(0, text.text().length(), changed, caret, caret));
    }
  }

  private void goToLine() {
    try {
      int wanted = Integer.parseInt(line.getText().strip());
      close();
      text.area().moveTo(text.reading().lineStart(wanted));
      text.area().requestFollowCaret();
    } catch (NumberFormatException e) {
      line.selectAll();
    }
  }
}
