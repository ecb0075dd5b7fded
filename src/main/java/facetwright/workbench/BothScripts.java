package facetwright.workbench;

import facetwright.workbench.command.Pages;
import facetwright.workbench.desk.Change;
import facetwright.workbench.file.Abridged;
import facetwright.workbench.file.Aligned;
import facetwright.workbench.file.SideBySide;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/**
 * Two scripts side by side on a page, line by line: what is alike stands on one height, lines that
 * differ are marked, and in them what differs.
 */
final class BothScripts implements SideBySide {
  /** What stands around the list, and the window's edge, px. */
  private static final double AROUND = 250;

  private static final double LEAST = 150;

  /** What a row has beside its halves: its edges and the bar that scrolls. */
  private static final double BESIDE = 40;

  private final Pages pages;

  BothScripts(Pages pages) {
    this.pages = pages;
  }

  @Override
  public void show(
      String name, String mine, String theirs, Runnable takeTheirs, Runnable saveMine) {
    List<Aligned.Row> rows = Aligned.of(mine, theirs);
    ListView<Abridged.Shown> list = new ListView<>();
    list.setCellFactory(_ -> new Cell(list));
    list.setAccessibleText("Both scripts, line by line, yours at the left");
    list.prefHeightProperty()
        .bind(pages.heightProperty().map(high -> Math.max(LEAST, high.doubleValue() - AROUND)));
    // The list has no use for Esc, but takes it.
    list.addEventFilter(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (Key.AWAY.is(e)) {
            e.consume();
            pages.close();
          }
        });
    CheckBox whole = new CheckBox("All lines");
    whole.setTooltip(new Tip("Show lines that are alike, too"));
    whole.selectedProperty().addListener((_, _, on) -> show(rows, list, on));
    show(rows, list, false);
    long apart = rows.stream().filter(r -> !r.isAlike()).count();
    HBox heads =
        new HBox(
            6,
            half("Yours, as it stands at the desk", list),
            half("Theirs, as it lies on disk", list));
    heads.getStyleClass().add("both-heads");
    Label told = new Label(apart + (apart == 1 ? " line differs" : " lines differ"));
    told.getStyleClass().add("quiet");
    HBox foot =
        new HBox(
            10,
            act("Keep mine", "Nothing changes at the desk", () -> {}),
            act("Take theirs", "Go on with theirs; undo brings yours back", takeTheirs),
            act("Save mine as …", "Keep both, yours under another name", saveMine),
            told,
            whole);
    foot.setAlignment(Pos.CENTER_LEFT);
    foot.getStyleClass().add("both-foot");
    BorderPane all = new BorderPane(list, heads, null, foot, null);
    all.getStyleClass().add("both");
    pages.showWide(name + ": yours and theirs", all);
    // Only then it is on the page.
    list.skinProperty().addListener((_, _, _) -> Platform.runLater(list::requestFocus));
  }

  /** Shows what differs with a few lines around it, or all; from the first difference on. */
  private static void show(List<Aligned.Row> rows, ListView<Abridged.Shown> list, boolean whole) {
    list.getItems().setAll(Abridged.of(rows, whole ? rows.size() : Abridged.AROUND));
    int first = 0;
    while (first < list.getItems().size() && !isApart(list.getItems().get(first))) {
      first++;
    }
    int from = Math.max(0, first - Abridged.AROUND - 1);
    list.scrollTo(from);
    // Rows have their height only once they are laid out.
    Platform.runLater(() -> list.scrollTo(from));
  }

  private static boolean isApart(Abridged.Shown shown) {
    return shown instanceof Abridged.Line line && !line.row().isAlike();
  }

  private Button act(String name, String what, Runnable action) {
    Button button = new Button(name);
    button.setMinWidth(Button.USE_PREF_SIZE);
    button.setTooltip(new Tip(what));
    button.setOnAction(
        _ -> {
          pages.close();
          action.run();
        });
    return button;
  }

  private static Label half(String text, ListView<?> of) {
    Label label = new Label(text);
    label.prefWidthProperty().bind(of.widthProperty().subtract(BESIDE).divide(2));
    label.setMinWidth(0);
    return label;
  }

  private static final class Cell extends ListCell<Abridged.Shown> {
    private final Half mine = new Half();
    private final Half theirs = new Half();
    private final HBox both = new HBox(6, mine, theirs);

    private Cell(ListView<Abridged.Shown> list) {
      for (Half half : List.of(mine, theirs)) {
        half.prefWidthProperty().bind(list.widthProperty().subtract(BESIDE).divide(2));
      }
      // As wide as the list, and as high as its lines come to there.
      setPrefWidth(0);
    }

    @Override
    protected void updateItem(Abridged.Shown shown, boolean empty) {
      super.updateItem(shown, empty);
      setText(null);
      setGraphic(null);
      if (empty || shown == null) {
        return;
      }
      switch (shown) {
        case Abridged.Alike(int lines) -> setText("⋯ " + lines + " lines alike");
        case Abridged.Line(int a, int b, Aligned.Row row) -> {
          boolean paired = row.mine() != null && row.theirs() != null;
          Change change = paired ? Change.between(row.mine(), row.theirs()) : new Change(0, "", "");
          mine.show(a, row.mine(), change.at(), change.taken().length(), row.isAlike());
          theirs.show(b, row.theirs(), change.at(), change.put().length(), row.isAlike());
          setGraphic(both);
        }
      }
    }
  }

  /** A line of one of them with its number; its wrapped ends stand under its beginning. */
  private static final class Half extends HBox {
    private final Label number = new Label();
    private final Text before = new Text();
    private final Text differing = new Text();
    private final Text after = new Text();
    private final TextFlow line = new TextFlow();

    private Half() {
      super(6);
      getStyleClass().add("both-line");
      number.getStyleClass().add("both-number");
      differing.getStyleClass().add("differing");
      setMinWidth(0);
      line.setMinWidth(0);
      HBox.setHgrow(line, Priority.ALWAYS);
      getChildren().setAll(number, line);
    }

    /** A line that only one has is marked by its ground and by a sign beside its number. */
    private void show(int at, String text, int from, int length, boolean alike) {
      String shown = text == null ? "" : text;
      number.setText(text == null ? "" : (alike ? "" : "▸ ") + at);
      before.setText(plain(shown.substring(0, from)));
      differing.setText(plain(shown.substring(from, from + length)));
      after.setText(plain(shown.substring(from + length)));
      line.getChildren()
          .setAll(length == 0 ? List.of(before, after) : List.of(before, differing, after));
      getStyleClass().removeAll("differs", "missing");
      if (!alike) {
        getStyleClass().add(text == null ? "missing" : "differs");
      }
    }

    private static String plain(String text) {
      return text.replace("\t", "    ");
    }
  }
}
