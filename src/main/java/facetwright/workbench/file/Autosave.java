package facetwright.workbench.file;

import facetwright.workbench.desk.Desk;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Keeps unsaved work while it is made. The first change after a keeping asks for the next one, so
 * that no more is ever lost than {@link #SOON} and the time one keeping takes. The window's thread
 * only says what there is to keep: it neither waits for the disk nor is waited for.
 */
final class Autosave {
  /** From a change to its keeping. */
  static final Duration SOON = Duration.ofMillis(400);

  /** From a keeping that failed to the next try. */
  static final Duration AGAIN = Duration.ofSeconds(2);

  private final Desk desk;
  private final Supplier<Kept> standing;
  private final Keeping keeping;
  private final Keeper keeper;
  private final Consumer<Optional<String>> told;
  private final AtomicReference<Optional<Kept>> latest = new AtomicReference<>(Optional.empty());
  private final AtomicBoolean due = new AtomicBoolean();
  private Optional<String> trouble = Optional.empty();

  /**
   * @param standing what is on the desk, to be put aside
   * @param told told by the keeper, whenever it changes, why work is not safe; empty where it is
   */
  Autosave(
      Desk desk,
      Supplier<Kept> standing,
      Keeping keeping,
      Keeper keeper,
      Consumer<Optional<String>> told) {
    this.desk = desk;
    this.standing = standing;
    this.keeping = keeping;
    this.keeper = keeper;
    this.told = told;
    desk.text().addListener((_, _, _) -> changed());
    desk.settings().addListener((_, _, _) -> changed());
    desk.file().addListener((_, _, _) -> changed());
    desk.changed()
        .addListener(
            (_, _, on) -> {
              changed();
              if (!on) {
                now();
              }
            });
  }

  /** Keeps the work as it stands, or nothing where nothing is unsaved, without delay. */
  void now() {
    changed();
    keeper.now(this::keep);
  }

  private void changed() {
    latest.set(desk.isUnsaved() ? Optional.of(standing.get()) : Optional.empty());
    if (!due.getAndSet(true)) {
      keeper.after(SOON, this::keep);
    }
  }

  private void keep() {
    due.set(false);
    Optional<Kept> kept = latest.get();
    if (kept.isEmpty()) {
      keeping.clear();
    }
    Optional<String> now = kept.flatMap(keeping::keep);
    if (!now.equals(trouble)) {
      trouble = now;
      told.accept(now);
    }
    if (now.isPresent() && !due.getAndSet(true)) {
      keeper.after(AGAIN, this::keep);
    }
  }
}
