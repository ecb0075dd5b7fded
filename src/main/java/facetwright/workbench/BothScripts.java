package facetwright.workbench;

import facetwright.workbench.command.Pages;
import facetwright.workbench.file.Aligned;
import facetwright.workbench.file.SideBySide;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;

/**
 * Two scripts side by side on a page, line by line: what is alike stands on one height, and lines
 * that only one of them has are marked.
 */
final class BothScripts implements SideBySide {
  private static final double HIGH = 430;

  private final Pages pages;

  BothScripts(Pages pages) {
    this.pages = pages;
  }

  @Override
  public void show(
      String name, String mine, String theirs, Runnable takeTheirs, Runnable saveMine) {
    List<Aligned.Row> rows = Aligned.of(mine, theirs);
    ListView<Aligned.Row> list = new ListView<>();
    list.getItems().setAll(rows);
    list.setCellFactory(_ -> new Cell(list));
    list.setAccessibleText("Both scripts, line by line");
    list.setTooltip(new Tooltip("Yours at the left, theirs at the right (arrows)"));
    list.setPrefHeight(HIGH);
    rows.stream().filter(r -> !r.isAlike()).findFirst().ifPresent(list::scrollTo);
    long apart = rows.stream().filter(r -> !r.isAlike()).count();
    Label left = half("Yours, as it stands at the desk", list);
    Label right = half("Theirs, as it lies on disk", list);
    HBox heads = new HBox(left, right);
    heads.getStyleClass().add("both-heads");
    Label told = new Label(apart + (apart == 1 ? " line differs" : " lines differ"));
    told.getStyleClass().add("quiet");
    HBox foot =
        new HBox(
            10,
            told,
            act("Keep mine", "Nothing changes at the desk", () -> {}),
            act("Take theirs", "Go on with theirs; undo brings yours back", takeTheirs),
            act("Save mine as …", "Keep both, yours under another name", saveMine));
    foot.setAlignment(Pos.CENTER_LEFT);
    foot.getStyleClass().add("both-foot");
    BorderPane all = new BorderPane(list, heads, null, foot, null);
    all.getStyleClass().add("both");
    pages.show(name + ": yours and theirs", all);
    list.requestFocus();
  }

  private Button act(String name, String what, Runnable action) {
    Button button = new Button(name);
    button.setMinWidth(Button.USE_PREF_SIZE);
    button.setTooltip(new Tooltip(what));
    button.setOnAction(
        _ -> {
          pages.close();
          action.run();
        });
    return button;
  }

  private static Label half(String text, ListView<?> of) {
    Label label = new Label(text);
    label.prefWidthProperty().bind(of.widthProperty().divide(2));
    label.setMinWidth(0);
    return label;
  }

  private static final class Cell extends ListCell<Aligned.Row> {
    private final Label mine = new Label();
    private final Label theirs = new Label();
    private final HBox both = new HBox(mine, theirs);

    private Cell(ListView<Aligned.Row> list) {
      for (Label half : List.of(mine, theirs)) {
        half.getStyleClass().add("both-line");
        half.setMinWidth(0);
        half.setWrapText(true);
        half.setMaxHeight(Double.MAX_VALUE);
        half.setAlignment(Pos.TOP_LEFT);
        half.prefWidthProperty().bind(list.widthProperty().subtract(40).divide(2));
      }
    }

    @Override
    protected void updateItem(Aligned.Row row, boolean empty) {
      super.updateItem(row, empty);
      setGraphic(empty || row == null ? null : both);
      if (!empty && row != null) {
        show(mine, row.mine(), row.isAlike());
        show(theirs, row.theirs(), row.isAlike());
      }
    }

    /** A line that only one has is marked by its ground and by a sign before it. */
    private static void show(Label half, String line, boolean alike) {
      half.setText(line == null ? "" : (alike ? "  " : "▸ ") + line.replace("\t", "    "));
      half.getStyleClass().removeAll("differs", "missing");
      if (!alike) {
        half.getStyleClass().add(line == null ? "missing" : "differs");
      }
    }
  }
}
