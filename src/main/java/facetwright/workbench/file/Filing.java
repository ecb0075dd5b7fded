package facetwright.workbench.file;

import facetwright.geom.Sentence;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * New, open, save: whatever takes the script from disk or puts it there. Nothing unsaved is put
 * away unasked, and library designs are only ever opened as copies. For the window's thread.
 */
public final class Filing {
  private static final String GUARD = "unsaved";
  private static final String REFUSED = "refused";

  private final Desk desk;
  private final Choosing choosing;
  private final Notices notices;
  private final State state;
  private final Folders folders;
  private final Outside outside;
  private final Path library;
  private OnDisk base = OnDisk.fresh("");

  /**
   * @param library the folder whose designs are opened as copies
   */
  public Filing(Desk desk, Choosing choosing, Notices notices, State state, Path library) {
    this.desk = desk;
    this.choosing = choosing;
    this.notices = notices;
    this.state = state;
    this.folders = new Folders(state, choosing);
    this.outside = new Outside(desk, notices, this);
    this.library = library.toAbsolutePath().normalize();
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

  /** Opens a copy without a file. */
  public void startFrom(Path file) {
    startFrom(file, () -> {});
  }

  /** Opens a copy without a file, then goes on. */
  public void startFrom(Path file, Runnable then) {
    try {
      OnDisk read = OnDisk.read(file);
      guard(
          "starting from " + OnDisk.name(file),
          () -> {
            lay(null, OnDisk.fresh(read.text()));
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
    if (isOfLibrary(file)) {
      lay(null, OnDisk.fresh(read.text()));
    } else {
      Path whole = file.toAbsolutePath().normalize();
      lay(whole, read);
      folders.remember(Folders.OPEN, whole);
      state.opened(whole);
    }
  }

  /** Lays a script on the desk, unasked. */
  void lay(Path file, OnDisk read) {
    base = read;
    outside.forget();
    desk.lay(file, read.text());
  }

  /** Saves the script, asking for a place where it has none. */
  public void save() {
    save(() -> {});
  }

  private void save(Runnable then) {
    Path file = desk.file().get();
    if (file == null) {
      saveAs(then);
      return;
    }
    if (outside.isChanged(file)) {
      notices.show(
          new Notice(
              Outside.ABOUT,
              OnDisk.name(file) + " was changed by another program",
              "Saving now would replace those changes with what you see here.",
              List.of(
                  new Notice.Choice("Save as …", () -> saveAs(then)),
                  new Notice.Choice("Replace them", () -> put(file, then)),
                  new Notice.Choice("Cancel", () -> {}))));
      return;
    }
    put(file, then);
  }

  /** Saves the script at a place that the user chooses. */
  public void saveAs() {
    saveAs(() -> {});
  }

  private void saveAs(Runnable then) {
    Path file = desk.file().get();
    String name = file == null ? FileName.of(FileName.title(desk.text().get())) : OnDisk.name(file);
    Path start = file == null ? folders.last(Folders.SAVE) : file.getParent();
    choosing
        .toSave(start, name)
        .map(Filing::named)
        .ifPresent(
            chosen -> {
              if (isOfLibrary(chosen)) {
                notices.tell(
                    REFUSED,
                    "The library stays as it is",
                    "Save your design in a folder of your own.");
              } else {
                put(chosen, then);
              }
            });
  }

  private static Path named(Path chosen) {
    String name = OnDisk.name(chosen);
    return name.contains(".") ? chosen : chosen.resolveSibling(name + ".js");
  }

  private void put(Path file, Runnable then) {
    Path whole = file.toAbsolutePath().normalize();
    OnDisk next = base.with(desk.text().get());
    try {
      next.write(whole);
    } catch (OnDisk.Refused e) {
      refuse(e);
      return;
    }
    base = next;
    outside.forget();
    desk.kept(whole);
    folders.remember(Folders.SAVE, whole);
    state.opened(whole);
    then.run();
  }

  /**
   * Does something that puts the script away, once the user has said what is to become of unsaved
   * changes.
   *
   * @param doing what it is, to end the sentence "before ..."
   */
  public void guard(String doing, Runnable then) {
    if (!desk.changed().get()) {
      then.run();
      return;
    }
    notices.show(
        new Notice(
            GUARD,
            "Save the changes to " + desk.shownName() + "?",
            "They would be lost by " + doing + ".",
            List.of(
                new Notice.Choice("Save", () -> save(then)),
                new Notice.Choice("Don't save", then),
                new Notice.Choice("Cancel", () -> {}))));
  }

  /** Looks whether the file was changed by another program, and offers to reload it. */
  public void lookOutside() {
    outside.look();
  }

  /** The folders that are remembered. */
  public Folders folders() {
    return folders;
  }

  private boolean isOfLibrary(Path file) {
    return file.toAbsolutePath().normalize().startsWith(library);
  }

  void refuse(OnDisk.Refused e) {
    notices.tell(REFUSED, Sentence.capital(e.getMessage()), e.remedy());
  }
}
