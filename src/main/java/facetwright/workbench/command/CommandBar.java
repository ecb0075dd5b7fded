package facetwright.workbench.command;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** The menu bar, made of the table of commands. */
public final class CommandBar extends MenuBar {
  /** The command after which the recent files stand. */
  public static final String OPEN = "open";

  /**
   * @param recent the recent files, asked for whenever the menu shows
   * @param open opens one of them
   */
  public CommandBar(Commands commands, Supplier<List<Path>> recent, Consumer<Path> open) {
    getStyleClass().add("command-bar");
    MenuLetters.of(this);
    for (Command.In in : Command.In.values()) {
      // Its first letter opens it, with Alt.
      Menu menu = new Menu("_" + in.title());
      int group = 0;
      for (Command command : commands.all()) {
        if (command.menu() == in) {
          if (command.group() != group && !menu.getItems().isEmpty()) {
            menu.getItems().add(new SeparatorMenuItem());
          }
          group = command.group();
          menu.getItems().add(item(command));
          if (command.id().equals(OPEN)) {
            menu.getItems().add(recent(menu, recent, open));
          }
        }
      }
      getMenus().add(menu);
    }
  }

  private static MenuItem item(Command command) {
    MenuItem item;
    if (command.ticked() != null) {
      CheckMenuItem check = new CheckMenuItem(command.name());
      check.selectedProperty().bindBidirectional(command.ticked());
      item = check;
    } else {
      item = new MenuItem(command.name());
      item.setOnAction(_ -> command.run());
    }
    item.setId(command.id());
    item.setMnemonicParsing(false);
    if (command.key() != null) {
      item.setAccelerator(command.key().first());
    }
    return item;
  }

  private static Menu recent(Menu in, Supplier<List<Path>> files, Consumer<Path> open) {
    Menu menu = new Menu("Open recent");
    menu.setId("recent");
    Runnable fill =
        () -> {
          menu.getItems().clear();
          for (Path file : files.get()) {
            MenuItem item = new MenuItem(file.getFileName() + "   " + file.getParent());
            item.setMnemonicParsing(false);
            item.setOnAction(_ -> open.accept(file));
            menu.getItems().add(item);
          }
          menu.setDisable(menu.getItems().isEmpty());
        };
    in.setOnShowing(_ -> fill.run());
    fill.run();
    return menu;
  }
}
