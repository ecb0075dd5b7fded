package facetwright.workbench.command;

import facetwright.workbench.key.Key;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Every key and what it does. */
public final class KeysPage extends GridPane {
  private int row;
  private String under = "";

  public KeysPage(Commands commands) {
    getStyleClass().add("keys");
    ColumnConstraints names = new ColumnConstraints();
    names.setMinWidth(Region.USE_PREF_SIZE);
    ColumnConstraints does = new ColumnConstraints();
    does.setHgrow(Priority.ALWAYS);
    getColumnConstraints().addAll(names, does);
    for (Command command : commands.all()) {
      if (command.key() != null) {
        add(
            command.menu().title(),
            command.keys(),
            command.tip().isEmpty() ? command.name().replace(" …", "") : command.tip());
      }
    }
    for (Key key : Key.values()) {
      if (!key.does().isEmpty()) {
        add(key.where().title(), key.text(), key.does());
      }
    }
  }

  private void add(String where, String keys, String does) {
    if (!where.equals(under)) {
      under = where;
      Label head = new Label(where);
      head.getStyleClass().add("keys-head");
      add(head, 0, row++, 2, 1);
    }
    Label pressed = new Label(keys);
    pressed.getStyleClass().add("key");
    Label what = new Label(does);
    what.setWrapText(true);
    add(pressed, 0, row);
    add(what, 1, row++);
  }
}
