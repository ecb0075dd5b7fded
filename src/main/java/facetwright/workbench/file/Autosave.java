package facetwright.workbench.file;

import facetwright.workbench.desk.Desk;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Keeps the unsaved script while it is written: a little after a change, and at once after many.
 */
public final class Autosave {
  private static final int MANY = 20;

  private final Desk desk;
  private final Keeping keeping;
  private final Executor aside;
  private final Consumer<Runnable> later;
  private int changes;
  private boolean due;

  /**
   * @param aside does work in its order, beside the window's thread
   * @param later does something on the window's thread a few seconds from now
   */
  public Autosave(Desk desk, Keeping keeping, Executor aside, Consumer<Runnable> later) {
    this.desk = desk;
    this.keeping = keeping;
    this.aside = aside;
    this.later = later;
    desk.text().addListener((_, _, _) -> changed());
    desk.changed()
        .addListener(
            (_, _, on) -> {
              if (!on) {
                now();
              }
            });
  }

  private void changed() {
    if (++changes >= MANY) {
      now();
    } else if (!due) {
      due = true;
      later.accept(
          () -> {
            due = false;
            now();
          });
    }
  }

  /** Keeps the text as it stands, or nothing where nothing is unsaved. */
  public void now() {
    changes = 0;
    if (desk.changed().get()) {
      Kept kept = new Kept(desk.file().get(), desk.shownName(), desk.saved(), desk.text().get());
      aside.execute(() -> keeping.keep(kept));
    } else {
      aside.execute(keeping::clear);
    }
  }
}
