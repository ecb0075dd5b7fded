package facetwright.workbench.doc;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** A document of the program's, to be read in the window. */
public final class DocPage extends VBox {
  private static final double INDENT = 18;

  private final Map<String, Node> anchors = new HashMap<>();
  private final Consumer<String> open;

  /**
   * @param text the document, in Markdown
   * @param open opens another document by its file's name
   */
  public DocPage(String text, Consumer<String> open) {
    this.open = open;
    getStyleClass().add("doc");
    getStylesheets().add(DocPage.class.getResource("doc.css").toExternalForm());
    for (DocText.Block block : DocText.of(text).blocks()) {
      getChildren().add(node(block));
    }
  }

  private Node node(DocText.Block block) {
    return switch (block) {
      case DocText.Heading(int level, List<DocText.Piece> words) -> {
        TextFlow flow = flow(words);
        flow.getStyleClass().add("doc-head-" + Math.min(level, 3));
        anchors.putIfAbsent(DocText.anchor(words), flow);
        yield flow;
      }
      case DocText.Paragraph(List<DocText.Piece> words) -> flow(words);
      case DocText.Item(int depth, List<DocText.Piece> words) -> {
        Label sign = new Label("•");
        sign.setMinWidth(USE_PREF_SIZE);
        TextFlow flow = flow(words);
        HBox.setHgrow(flow, Priority.ALWAYS);
        HBox item = new HBox(8, sign, flow);
        item.setStyle("-fx-padding: 0 0 0 " + INDENT * (depth + 0.5) + ";");
        yield item;
      }
      case DocText.Code(String code) -> {
        Label label = new Label(code);
        label.getStyleClass().add("doc-code");
        label.setWrapText(true);
        label.setMaxWidth(Double.MAX_VALUE);
        yield label;
      }
      case DocText.Table(List<List<List<DocText.Piece>>> rows) -> table(rows);
    };
  }

  private Node table(List<List<List<DocText.Piece>>> rows) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("doc-table");
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    for (int c = 0; c < columns; c++) {
      ColumnConstraints each = new ColumnConstraints();
      each.setPercentWidth(share(rows, c, columns));
      grid.getColumnConstraints().add(each);
    }
    for (int r = 0; r < rows.size(); r++) {
      for (int c = 0; c < rows.get(r).size(); c++) {
        TextFlow cell = flow(rows.get(r).get(c));
        cell.getStyleClass().add(r == 0 ? "doc-table-head" : "doc-cell");
        grid.add(cell, c, r);
      }
    }
    return grid;
  }

  /** A column's part of the width, in percent, by its longest cell, the longest of them cut. */
  private static double share(List<List<List<DocText.Piece>>> rows, int column, int columns) {
    double all = 0;
    double own = 0;
    for (int c = 0; c < columns; c++) {
      int at = c;
      double longest =
          rows.stream()
              .filter(row -> row.size() > at)
              .mapToInt(row -> DocText.plain(row.get(at)).length())
              .max()
              .orElse(0);
      double wide = Math.clamp(longest, 10, 44);
      all += wide;
      own = c == column ? wide : own;
    }
    return 100 * own / all;
  }

  private TextFlow flow(List<DocText.Piece> words) {
    TextFlow flow = new TextFlow();
    flow.getStyleClass().add("doc-words");
    for (DocText.Piece piece : words) {
      flow.getChildren().add(node(piece));
    }
    return flow;
  }

  private Node node(DocText.Piece piece) {
    if (piece instanceof DocText.Link(String words, String target)) {
      Hyperlink link = new Hyperlink(words);
      link.setOnAction(_ -> follow(target));
      return link;
    }
    Text text = new Text(piece.text());
    text.getStyleClass()
        .addAll(
            "doc-text",
            switch (piece) {
              case DocText.Inline _ -> "doc-inline";
              case DocText.Stressed _ -> "doc-stressed";
              case DocText.Words _, DocText.Link _ -> "doc-plain";
            });
    return text;
  }

  private void follow(String target) {
    int hash = target.indexOf('#');
    if (hash != 0) {
      open.accept(hash < 0 ? target : target.substring(0, hash));
      return;
    }
    Node to = anchors.get(target.substring(1));
    if (to != null) {
      scrollTo(to);
    }
  }

  /** Brings a part of the page to the head of what is in view. */
  private void scrollTo(Node to) {
    Node around = getParent();
    while (around != null && !(around instanceof ScrollPane)) {
      around = around.getParent();
    }
    if (around instanceof ScrollPane pane) {
      Bounds place = to.getBoundsInParent();
      double hidden = getHeight() - pane.getViewportBounds().getHeight();
      pane.setVvalue(hidden <= 0 ? 0 : Math.min(1, place.getMinY() / hidden));
      pane.requestFocus();
    }
  }
}
