package facetwright.workbench.file;

import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Executor;

/** Gives back what was kept when a program ended unexpectedly. For the window's thread. */
public final class Recovery {
  private final Desk desk;
  private final Filing filing;
  private final Notices notices;
  private final Keeping keeping;
  private final Executor aside;

  /**
   * @param aside does work in its order, beside the window's thread; the one that also autosaves
   */
  public Recovery(Desk desk, Filing filing, Notices notices, Keeping keeping, Executor aside) {
    this.desk = desk;
    this.filing = filing;
    this.notices = notices;
    this.keeping = keeping;
    this.aside = aside;
  }

  /** Offers what was left, text by text. */
  public void offer() {
    for (Keeping.Left left : keeping.left()) {
      notices.show(
          new Notice(
              "left " + System.identityHashCode(left),
              "Facetwright ended unexpectedly",
              "Your changes to " + left.kept().name() + " were kept.",
              List.of(
                  new Notice.Choice(
                      "Open", () -> filing.guard("opening them", () -> restore(left))),
                  new Notice.Choice("Discard", () -> keeping.putAway(left)),
                  new Notice.Choice("Later", () -> {}))));
    }
  }

  private void restore(Keeping.Left left) {
    Kept kept = left.kept();
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
    desk.text().set(kept.text());
    Kept again = new Kept(file, kept.name(), now.text(), kept.text());
    // What was left is put away only once this window has kept it itself.
    aside.execute(
        () -> {
          if (keeping.keep(again)) {
            keeping.putAway(left);
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
