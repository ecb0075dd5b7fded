package facetwright.workbench;

import facetwright.workbench.card.ScriptCard;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.look.Pen;
import facetwright.workbench.table.TableView;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;

/** Everything in the window. */
public final class Room extends BorderPane {
  private final TableView table;
  private final ScriptCard card;

  public Room(Desk desk) {
    Pen.Type.ready();
    getStylesheets().add(Room.class.getResource("room.css").toExternalForm());
    getStyleClass().add("room");
    table = new TableView(desk);
    card = new ScriptCard(desk);
    Label verdict = new Label();
    verdict.getStyleClass().add("verdict");
    setTop(verdict);
    SplitPane split = new SplitPane(table, card);
    split.setDividerPositions(0.64);
    setCenter(split);
    Label told = new Label();
    told.getStyleClass().add("told");
    told.textProperty().bind(table.told());
    setBottom(told);
  }

  public TableView table() {
    return table;
  }

  public ScriptCard card() {
    return card;
  }
}
