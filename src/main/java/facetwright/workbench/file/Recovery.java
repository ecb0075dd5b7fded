package facetwright.workbench.file;

import facetwright.words.Sentence;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Gives back what was kept when a program ended unexpectedly. For the window's thread. */
final class Recovery {
  private final Desk desk;
  private final Filing filing;
  private final Notices notices;
  private final Keeping keeping;
  private final Keeper keeper;

  Recovery(Desk desk, Filing filing, Notices notices, Keeping keeping, Keeper keeper) {
    this.desk = desk;
    this.filing = filing;
    this.notices = notices;
    this.keeping = keeping;
    this.keeper = keeper;
  }

  /** Offers what was left, text by text. */
  void offer() {
    for (Keeping.Left left : keeping.left()) {
      if (filing.isSaved(left.kept())) {
        keeping.putAway(left);
        continue;
      }
      notices.show(
          new Notice(
              "left " + System.identityHashCode(left),
              "Facetwright ended unexpectedly",
              "Your changes to " + left.kept().name() + " were kept.",
              List.of(
                  new Notice.Choice(
                      "Open",
                      () ->
                          filing.guard(
                              "opening them",
                              () -> restore(left.kept(), () -> keeping.putAway(left)))),
                  new Notice.Choice("Discard", () -> discard(left)),
                  new Notice.Choice("Later", () -> {}))));
    }
  }

  private void discard(Keeping.Left left) {
    Optional<String> trouble = filing.givenUp().put(left.kept());
    if (trouble.isEmpty()) {
      keeping.putAway(left);
      notices.show(
          new Notice(
              "discarded",
              "Your changes to " + left.kept().name() + " were discarded",
              "Bring back, in the File menu, finds them again.",
              List.of(
                  new Notice.Choice("Bring back", this::bringBack),
                  new Notice.Choice("Close", () -> {}))));
    } else {
      notices.tell(
          "discarded",
          "They could not be put aside, and so they stay",
          Sentence.capital(trouble.get()) + ".");
    }
  }

  /** Opens what an answer gave up last. */
  void bringBack() {
    Optional<GivenUp.Piece> last = filing.givenUp().last();
    if (last.isEmpty()) {
      notices.tell(
          "back", "Nothing was given up", "What you don't save or let be replaced is found here.");
      return;
    }
    GivenUp.Piece piece = last.get();
    filing.guard(
        "bringing back " + piece.kept().name(),
        () -> restore(piece.kept(), () -> filing.givenUp().takeAway(piece)));
  }

  /**
   * Lays kept work on the desk, unsaved.
   *
   * @param safe what to do once this window has kept it itself
   */
  private void restore(Kept kept, Runnable safe) {
    OnDisk now = OnDisk.fresh(kept.base());
    Path file = kept.file();
    if (file != null && Files.exists(file)) {
      try {
        now = OnDisk.read(file);
      } catch (OnDisk.Refused e) {
        file = null;
      }
    }
    filing.lay(file, now);
    desk.take(kept.work().dials(), kept.work().text());
    Kept again = new Kept(file, kept.name(), now.text(), kept.work());
    keeper.now(
        () -> {
          if (keeping.keep(again).isEmpty()) {
            safe.run();
          }
        });
    if (file != null && !now.text().equals(kept.base())) {
      notices.tell(
          Outside.ABOUT,
          OnDisk.name(file) + " has changed since",
          "Your kept changes are open here, unsaved. Saving them replaces what is in the file now;"
              + " Save as keeps both.");
    }
  }
}
