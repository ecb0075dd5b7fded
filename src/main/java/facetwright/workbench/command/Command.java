package facetwright.workbench.command;

import facetwright.workbench.key.Key;
import javafx.beans.property.BooleanProperty;

/**
 * One thing the window can be told to do.
 *
 * @param id what the program calls it
 * @param menu the menu it stands in
 * @param group commands of a menu with unlike groups have a line between them
 * @param name a verb, as the menu says it
 * @param key null for none
 * @param tip what it does, in a sentence without an end; may be empty
 * @param action does it; null where it only ticks on and off
 * @param ticked what it turns on and off; null where it does something once
 */
public record Command(
    String id,
    In menu,
    int group,
    String name,
    Key key,
    String tip,
    Runnable action,
    BooleanProperty ticked) {

  /** The menus, in their order. */
  public enum In {
    FILE("File"),
    EDIT("Edit"),
    VIEW("View"),
    HELP("Help");

    private final String title;

    In(String title) {
      this.title = title;
    }

    public String title() {
      return title;
    }
  }

  /**
   * @throws IllegalArgumentException when there is neither or both of an action and a tick
   */
  public Command {
    if ((action == null) == (ticked == null)) {
      throw new IllegalArgumentException(id + " must either act or tick");
    }
  }

  /** Does it, or turns it on or off. */
  public void run() {
    if (ticked != null) {
      ticked.set(!ticked.get());
    } else {
      action.run();
    }
  }

  /** Its keys as printed on them; empty for none. */
  public String keys() {
    return key == null ? "" : key.text();
  }
}
