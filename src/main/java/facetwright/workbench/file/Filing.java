package facetwright.workbench.file;

import facetwright.words.Sentence;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * New, open, save: whatever takes the script from disk or puts it there. Nothing unsaved is put
 * away unasked, and library designs are only ever opened as copies. For the window's thread.
 */
public final class Filing {
  private static final String GUARD = "unsaved";
  private static final String REFUSED = ToDisk.REFUSED;
  static final String DIALS = "dials";

  private final Desk desk;
  private final Choosing choosing;
  private final Notices notices;
  private final State state;
  private final Folders folders;
  private final LeftDials dials;
  private final GivenUp givenUp;
  private final Outside outside;
  private final ToDisk toDisk;
  private final UsedFiles used;
  private final Path library;
  private SideBySide sideBySide = (_, _, _, _, _) -> {};

  /**
   * @param library the folder whose designs are opened as copies
   */
  public Filing(Desk desk, Choosing choosing, Notices notices, State state, Path library) {
    this.desk = desk;
    this.choosing = choosing;
    this.notices = notices;
    this.state = state;
    this.library = library.toAbsolutePath().normalize();
    used = new UsedFiles(desk, this.library);
    folders = new Folders(state, choosing);
    dials = new LeftDials(state.folder().resolve("dials"));
    givenUp = new GivenUp(state.folder().resolve("given-up"));
    outside = new Outside(desk, notices, this);
    toDisk = new ToDisk(desk, choosing, notices, state, folders, dials, givenUp, outside, used);
  }

  /** Who shows two scripts side by side. */
  public void showBothWith(SideBySide pane) {
    sideBySide = pane;
  }

  /** A new design. */
  public void fresh() {
    guard("starting a new one", () -> lay(null, OnDisk.fresh(Starter.TEXT)));
  }

  /** Lets the user choose a script to open. */
  public void open() {
    choosing.toOpen(folders.last(Folders.OPEN)).ifPresent(this::open);
  }

  /** Opens a script; one of the library as a copy. */
  public void open(Path file) {
    try {
      OnDisk read = OnDisk.read(file);
      guard("opening " + OnDisk.name(file), () -> opened(file, read));
    } catch (OnDisk.Refused e) {
      state.forget(file);
      refuse(e);
    }
  }

  /** Opens a copy without a file, then goes on. */
  public void startFrom(Path file, Runnable then) {
    try {
      OnDisk read = OnDisk.read(file);
      guard(
          "starting from " + OnDisk.name(file),
          () -> {
            lay(
                null,
                OnDisk.fresh(used.isOfLibrary(file) ? read.text() : used.copy(file, read.text())));
            then.run();
          });
    } catch (OnDisk.Refused e) {
      refuse(e);
    }
  }

  /** Opens the first of some files that were dragged in. */
  public void dropped(List<Path> files) {
    if (!files.isEmpty()) {
      open(files.getFirst());
    }
  }

  /**
   * Opens what the window begins with, without asking: the file named, the last one, or a copy of
   * the demo.
   *
   * @param named null for none
   * @param demo file name in the library
   */
  public void begin(Path named, String demo) {
    Path last = state.path("last").filter(Files::isRegularFile).orElse(null);
    Path first = named != null ? named : last;
    try {
      if (first != null) {
        opened(first, OnDisk.read(first));
        return;
      }
    } catch (OnDisk.Refused e) {
      refuse(e);
    }
    try {
      lay(null, OnDisk.fresh(OnDisk.read(library.resolve(demo)).text()));
    } catch (OnDisk.Refused e) {
      lay(null, OnDisk.fresh(Starter.TEXT));
    }
  }

  private void opened(Path file, OnDisk read) {
    if (used.isOfLibrary(file)) {
      lay(null, OnDisk.fresh(read.text()));
    } else {
      Path whole = file.toAbsolutePath().normalize();
      lay(whole, read);
      folders.remember(Folders.OPEN, whole);
      state.opened(whole);
    }
  }

  /** Lays a script on the desk, unasked, its dials as they were left. */
  private void lay(Path file, OnDisk read) {
    lay(file, read, Optional.empty());
  }

  /** The same, with unsaved work on it. */
  void lay(Path file, OnDisk read, Optional<Work> unsaved) {
    toDisk.isOnDisk(read);
    outside.forget();
    notices.withdraw(DIALS);
    Optional<LeftDials.Left> left = file == null ? Optional.empty() : dials.of(file, read.text());
    Optional<LeftDials.Left> own = left.filter(LeftDials.Left::isOfThis);
    Work saved = new Work(read.text(), own.map(LeftDials.Left::values).orElse(Map.of()));
    desk.lay(file, saved, unsaved.orElse(saved));
    if (own.isEmpty() && unsaved.isEmpty()) {
      left.ifPresent(l -> notices.show(l.question(DIALS, OnDisk.name(file), desk)));
    }
  }

  /** Saves the script, asking for a place where it has none. */
  public void save() {
    toDisk.save(() -> {});
  }

  /** Saves the script at a place that the user chooses. */
  public void saveAs() {
    toDisk.saveAs(() -> {});
  }

  /**
   * Does something that puts the script away, once the user has said what is to become of unsaved
   * changes.
   *
   * @param doing what it is, to begin the sentence "... puts them away"
   */
  public void guard(String doing, Runnable then) {
    if (!desk.changed().get()) {
      then.run();
      return;
    }
    notices.show(
        Notice.question(
            GUARD,
            "Save " + unsaved() + "?",
            "Otherwise "
                + doing
                + " puts them away; Bring back, in the File menu, finds them again.",
            new Notice.Choice("Save", () -> toDisk.save(then)),
            new Notice.Choice("Don't save", () -> giveUp(then)),
            new Notice.Choice("Cancel", () -> {})));
  }

  /** What is not saved, in words. */
  private String unsaved() {
    String name = desk.shownName();
    if (!desk.saved().text().equals(desk.text().get())) {
      return "the changes to " + name;
    }
    return desk.saved().equals(desk.work())
        ? name + ", whose file is gone, again"
        : "the dials you turned in " + name;
  }

  /** What can't be put aside is lost only where the user says so. */
  private void giveUp(Runnable then) {
    Optional<String> trouble = givenUp.put(asItStands());
    if (trouble.isEmpty()) {
      then.run();
      return;
    }
    notices.show(
        Notice.question(
            GUARD,
            "Your changes can't be put aside",
            Sentence.capital(trouble.get()) + ". Unsaved, they would be lost for good.",
            new Notice.Choice("Save as …", () -> toDisk.saveAs(then)),
            new Notice.Choice("Lose them", then),
            new Notice.Choice("Cancel", () -> {})));
  }

  /** What is on the desk, to be put aside. */
  Kept asItStands() {
    return new Kept(desk.file().get(), desk.shownName(), desk.saved().text(), desk.work());
  }

  /** Whether kept work is just what opening its file brings, its dials as they were left. */
  boolean isSaved(Kept kept) {
    Path file = kept.file();
    return file != null
        && Found.at(file).isText(kept.work().text())
        && kept.work().dials().equals(dials.own(file, kept.work().text()));
  }

  /** What answers gave up. */
  GivenUp givenUp() {
    return givenUp;
  }

  /** Goes on with what another program wrote; undo comes back from it. */
  void takeTheirs(Path file) {
    Found now = Found.at(file);
    if (!(now instanceof Found.Text(String theirs))) {
      outside.forget();
      outside.look();
      return;
    }
    Optional<String> trouble = desk.changed().get() ? givenUp.put(asItStands()) : Optional.empty();
    if (trouble.isPresent()) {
      notices.tell(
          REFUSED,
          "Yours can't be put aside, and so it stays",
          Sentence.capital(trouble.get()) + ". Save as keeps both.");
      return;
    }
    try {
      toDisk.isOnDisk(OnDisk.read(file));
    } catch (OnDisk.Refused e) {
      refuse(e);
      return;
    }
    outside.forget();
    desk.kept(file, new Work(theirs, desk.saved().dials()));
    desk.text().set(theirs);
  }

  /** Shows what is on the desk beside what another program wrote. */
  void showBoth(Path file, String theirs) {
    sideBySide.show(
        OnDisk.name(file), desk.text().get(), theirs, () -> takeTheirs(file), this::saveAs);
  }

  /** Saves the script with all that it uses as one file; the desk stays as it is. */
  public void saveWhole() {
    used.saveWhole(toDisk, notices);
  }

  /** Looks whether other programs changed the file, to offer it, or one that it uses. */
  public void lookOutside() {
    outside.look();
    used.look();
  }

  /** The folders that are remembered. */
  public Folders folders() {
    return folders;
  }

  void refuse(OnDisk.Refused e) {
    notices.tell(REFUSED, e.getMessage(), e.remedy());
  }
}
