package facetwright.workbench.file;

import facetwright.words.Sentence;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Gives back what was kept when a program ended unexpectedly. For the window's thread. */
final class Recovery {
  private static final String BACK = "back";

  private final Filing filing;
  private final Notices notices;
  private final Keeping keeping;
  private final Keeper keeper;
  private final Set<Keeping.Left> offered = new HashSet<>();

  /** What is open here already, while the keeper still puts it away. */
  private final Set<Keeping.Left> opened = new HashSet<>();

  Recovery(Filing filing, Notices notices, Keeping keeping, Keeper keeper) {
    this.filing = filing;
    this.notices = notices;
    this.keeping = keeping;
    this.keeper = keeper;
  }

  /** Offers what was left and was not offered yet, text by text. */
  void offer() {
    offer(keeping.left());
  }

  /** The same, for what a look has found. */
  void offer(List<Keeping.Left> found) {
    for (Keeping.Left left : found) {
      if (filing.isSaved(left.kept())) {
        keeping.putAway(left);
      } else if (offered.add(left)) {
        // Its dials are those that would be asked about.
        notices.withdraw(Filing.DIALS);
        ask(left);
      }
    }
  }

  private void ask(Keeping.Left left) {
    notices.show(
        new Notice(
            about(left),
            "Facetwright ended unexpectedly",
            "Your changes to " + left.kept().name() + " were kept: " + of(left).text(),
            List.of(
                new Notice.Choice("Open", () -> open(left)),
                new Notice.Choice("Discard", () -> discard(left)),
                new Notice.Choice("Later", () -> {}))));
  }

  /** The offer stays until it is open, whatever is asked meanwhile. */
  private void open(Keeping.Left left) {
    ask(left);
    filing.guard("opening them", () -> restore(of(left)));
  }

  private static String about(Keeping.Left left) {
    return "left " + left.name();
  }

  private Recoverable of(Keeping.Left left) {
    return new Recoverable(
        left.kept(),
        left.when(),
        () -> {
          opened.add(left);
          notices.withdraw(about(left));
        },
        () -> keeping.putAway(left));
  }

  private void discard(Keeping.Left left) {
    Optional<String> trouble = filing.givenUp().put(left.kept());
    if (trouble.isEmpty()) {
      Optional<GivenUp.Piece> piece = filing.givenUp().last();
      keeping.putAway(left);
      notices.show(
          new Notice(
              "discarded",
              "Your changes to " + left.kept().name() + " were discarded",
              "Bring back, in the File menu, finds them again.",
              List.of(
                  new Notice.Choice("Bring back", () -> piece.map(this::of).ifPresent(this::open)),
                  new Notice.Choice("Close", () -> {}))));
    } else {
      notices.tell(
          "discarded",
          "They could not be put aside, and so they stay",
          Sentence.capital(trouble.get()) + ".");
    }
  }

  private Recoverable of(GivenUp.Piece piece) {
    return new Recoverable(
        piece.kept(),
        Keeping.when(piece.place()),
        () -> {},
        () -> filing.givenUp().takeAway(piece));
  }

  private void open(Recoverable piece) {
    filing.guard("bringing back " + piece.kept().name(), () -> restore(piece));
  }

  /** Opens what can be brought back, the latest first; where there is more, asks which. */
  void bringBack() {
    offer();
    List<Recoverable> all = new ArrayList<>();
    keeping.left().stream().filter(l -> !opened.contains(l)).map(this::of).forEach(all::add);
    filing.givenUp().all().stream().map(this::of).forEach(all::add);
    all.sort(Comparator.comparing(Recoverable::when).reversed());
    switch (all.size()) {
      case 0 ->
          notices.tell(
              BACK,
              "There is nothing to bring back",
              "What you don't save or let be replaced is found here.");
      case 1 -> open(all.getFirst());
      default -> ask(all, 0);
    }
  }

  /** Which of several, one after the other. */
  private void ask(List<Recoverable> all, int at) {
    Recoverable piece = all.get(at);
    notices.show(
        Notice.question(
            BACK,
            "Bring back " + (at + 1) + " of " + all.size() + ", the latest first?",
            piece.text(),
            new Notice.Choice("Bring it back", () -> open(piece)),
            new Notice.Choice("Next", () -> ask(all, (at + 1) % all.size())),
            new Notice.Choice("Cancel", () -> {})));
  }

  /** Lays kept work on the desk, unsaved. */
  private void restore(Recoverable piece) {
    Kept kept = piece.kept();
    OnDisk now = OnDisk.fresh(kept.base());
    Path file = kept.file();
    if (file != null && Files.exists(file)) {
      try {
        now = OnDisk.read(file);
      } catch (OnDisk.Refused e) {
        file = null;
      }
    }
    filing.lay(file, now, Optional.of(kept.work()));
    piece.taken().run();
    Kept again = new Kept(file, kept.name(), now.text(), kept.work());
    keeper.now(
        () -> {
          if (keeping.keep(again).isEmpty()) {
            piece.safe().run();
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
