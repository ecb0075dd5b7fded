package facetwright.workbench.file;

import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notices;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Unsaved work of one window, kept while it is made and given back when the program was ended
 * unexpectedly.
 */
public final class SafeKeeping implements AutoCloseable {
  private final Keeping keeping;
  private final Recovery recovery;
  private final Keeper keeper;
  private final Autosave autosave;

  /**
   * @param state the folder of the program's own things
   * @param told told by the keeper, whenever it changes, why work is not safe; empty where it is
   */
  public SafeKeeping(
      Desk desk,
      Filing filing,
      Notices notices,
      Path state,
      Keeper keeper,
      Consumer<Optional<String>> told) {
    keeping = new Keeping(state.resolve("unsaved"));
    this.keeper = keeper;
    recovery = new Recovery(filing, notices, keeping, keeper);
    autosave = new Autosave(desk, filing::asItStands, keeping, keeper, told);
  }

  /** Offers what programs left that ended unexpectedly, and was not offered yet. */
  public void offer() {
    recovery.offer();
  }

  /**
   * Looks once more, beside the window, whether a program was ended: one that is killed may take a
   * while to die, and other windows may be.
   *
   * @param ui runs work on the window's thread
   */
  public void lookAgain(Executor ui) {
    keeper.now(
        () -> {
          List<Keeping.Left> found = keeping.left();
          if (!found.isEmpty()) {
            ui.execute(() -> recovery.offer(found));
          }
        });
  }

  /** Opens what was given up or left, the latest first; where there is more, asks which. */
  public void bringBack() {
    recovery.bringBack();
  }

  /** Keeps the work as it stands, without delay. */
  public void now() {
    autosave.now();
  }

  /** Ends in order: nothing is kept. */
  @Override
  public void close() {
    keeping.close();
  }
}
