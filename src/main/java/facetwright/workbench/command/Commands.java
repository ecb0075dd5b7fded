package facetwright.workbench.command;

import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.beans.property.BooleanProperty;
import javafx.scene.control.Control;
import javafx.scene.input.KeyEvent;

/** The table of all commands. */
public final class Commands {
  private final List<Command> all = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();
  private final Set<Key> keys = new HashSet<>();
  private Command.In menu = Command.In.FILE;
  private int group;

  /** What follows stands in this menu. */
  public Commands in(Command.In next) {
    menu = next;
    group = 0;
    return this;
  }

  /** A line between what is before and what follows. */
  public Commands line() {
    group++;
    return this;
  }

  /**
   * Adds a command that does something.
   *
   * @param key null for none
   */
  public Commands act(String id, String name, Key key, String tip, Runnable action) {
    return add(new Command(id, menu, group, name, key, tip, action, null));
  }

  /** Adds a command that turns something on and off. */
  public Commands tick(String id, String name, Key key, String tip, BooleanProperty what) {
    return add(new Command(id, menu, group, name, key, tip, null, what));
  }

  /**
   * @throws IllegalArgumentException when its name or its keys are taken
   */
  private Commands add(Command command) {
    if (!ids.add(command.id())) {
      throw new IllegalArgumentException("two commands are called " + command.id());
    }
    if (command.key() != null && !keys.add(command.key())) {
      throw new IllegalArgumentException("two commands have the keys " + command.keys());
    }
    all.add(command);
    return this;
  }

  /** All, in the order of the menus. */
  public List<Command> all() {
    return List.copyOf(all);
  }

  /** The command called so. */
  public Command named(String id) {
    return all.stream()
        .filter(c -> c.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no command is called " + id));
  }

  /** Runs the command whose keys are pressed otherwise than its menu takes them. */
  public void pressed(KeyEvent e) {
    for (Command command : all) {
      if (command.key() != null && command.key().isOther(e)) {
        command.run();
        e.consume();
        return;
      }
    }
  }

  /** Lets a control tell what the command does, and its keys. */
  public void explain(Control control, String id) {
    Command command = named(id);
    String tip = command.tip().isEmpty() ? command.name() : command.tip();
    control.setTooltip(new Tip(command.key() == null ? tip : command.key().tip(tip)));
  }
}
