package facetwright.workbench.file;

import facetwright.workbench.desk.Desk;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * New, open, save: whatever takes the script from disk or puts it there. Nothing unsaved is put
 * away unasked, and library designs are only ever opened as copies. For the window's thread.
 */
public final class Filing {
  private static final String GUARD = "unsaved";
  private static final String REFUSED = "refused";
  private static final String OUTSIDE = "outside";

  /** Stands for the text of a file that is not there; no text holds this character. */
  private static final String GONE = "\0";

  private final Desk desk;
  private final Choosing choosing;
  private final Notices notices;
  private final State state;
  private final Keeping keeping;
  private final Executor aside;
  private final Path library;
  private OnDisk base = OnDisk.fresh("");
  private String seenOutside;

  /**
   * @param aside does work in its order, beside the window's thread; the one that also autosaves
   * @param library the folder whose designs are opened as copies
   */
  public Filing(
      Desk desk,
      Choosing choosing,
      Notices notices,
      State state,
      Keeping keeping,
      Executor aside,
      Path library) {
    this.desk = desk;
    this.choosing = choosing;
    this.notices = notices;
    this.state = state;
    this.keeping = keeping;
    this.aside = aside;
    this.library = library.toAbsolutePath().normalize();
  }

  /** A new design. */
  public void fresh() {
    guard("starting a new one", () -> lay(null, OnDisk.fresh(Starter.TEXT)));
  }

  /** Lets the user choose a script to open. */
  public void open() {
    choosing.toOpen(folder("folder.open")).ifPresent(this::open);
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
      remember("folder.open", whole);
      state.opened(whole);
    }
  }

  private void lay(Path file, OnDisk read) {
    base = read;
    seenOutside = null;
    notices.withdraw(OUTSIDE);
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
    Optional<String> outside = textOutside(file);
    if (outside.isPresent() && !outside.get().equals(desk.saved())) {
      notices.show(
          new Notice(
              OUTSIDE,
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
    Path start = file == null ? folder("folder.save") : file.getParent();
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
    seenOutside = null;
    notices.withdraw(OUTSIDE);
    desk.kept(whole);
    remember("folder.save", whole);
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

  /** Offers what was left when a program ended unexpectedly. */
  public void offerLeft() {
    for (Keeping.Left left : keeping.left()) {
      Kept kept = left.kept();
      notices.show(
          new Notice(
              "left " + System.identityHashCode(left),
              "Facetwright ended unexpectedly",
              "Your changes to " + kept.name() + " were kept.",
              List.of(
                  new Notice.Choice("Open", () -> guard("opening them", () -> restore(left))),
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
    lay(file, now);
    desk.text().set(kept.text());
    Kept again = new Kept(file, kept.name(), now.text(), kept.text());
    aside.execute(
        () -> {
          if (keeping.keep(again)) {
            keeping.putAway(left);
          }
        });
    if (file != null && !now.text().equals(kept.base())) {
      notices.tell(
          OUTSIDE,
          OnDisk.name(file) + " has changed since",
          "Your kept changes are open here, unsaved. Saving them replaces what is in the file now;"
              + " Save as keeps both.");
    }
  }

  /** Looks whether the file was changed by another program, and offers to reload it. */
  public void lookOutside() {
    Path file = desk.file().get();
    if (file == null) {
      return;
    }
    if (Files.notExists(file) && !GONE.equals(seenOutside)) {
      seenOutside = GONE;
      notices.show(
          new Notice(
              OUTSIDE,
              OnDisk.name(file) + " is gone",
              "It was moved, renamed or deleted. Your script is still here; saving writes it anew.",
              List.of(
                  new Notice.Choice("Save it again", this::save),
                  new Notice.Choice("Close", () -> {}))));
      return;
    }
    Optional<String> outside = textOutside(file);
    if (outside.isEmpty()
        || outside.get().equals(desk.saved())
        || Objects.equals(outside.get(), seenOutside)) {
      return;
    }
    seenOutside = outside.get();
    String unsaved = desk.changed().get() ? " Your unsaved changes would be lost by it." : "";
    notices.show(
        new Notice(
            OUTSIDE,
            OnDisk.name(file) + " was changed by another program",
            "It can be opened anew as it is now." + unsaved,
            List.of(
                new Notice.Choice("Reload", () -> reload(file)),
                new Notice.Choice("Keep mine", () -> {}))));
  }

  private void reload(Path file) {
    try {
      lay(file, OnDisk.read(file));
    } catch (OnDisk.Refused e) {
      refuse(e);
    }
  }

  /** Empty where the file can't be read or is gone. */
  private static Optional<String> textOutside(Path file) {
    try {
      return Optional.of(OnDisk.read(file).text());
    } catch (OnDisk.Refused e) {
      return Optional.empty();
    }
  }

  private boolean isOfLibrary(Path file) {
    return file.toAbsolutePath().normalize().startsWith(library);
  }

  /** The folder remembered for something, or the user's own. */
  private Path folder(String key) {
    return state.path(key).filter(Files::isDirectory).orElseGet(this::own);
  }

  /** The folder of the user's own designs. */
  public Path own() {
    return state
        .path("folder.own")
        .orElseGet(() -> Path.of(System.getProperty("user.home"), "Facetwright"));
  }

  /** Lets the user choose the folder of the own designs; true when one was chosen. */
  public boolean chooseOwn() {
    Optional<Path> chosen = choosing.folder("The folder of your own designs", own());
    chosen.ifPresent(f -> state.remember("folder.own", f.toAbsolutePath().toString()));
    return chosen.isPresent();
  }

  private void remember(String key, Path file) {
    Path folder = file.getParent();
    if (folder != null) {
      state.remember(key, folder.toString());
    }
  }

  private void refuse(OnDisk.Refused e) {
    notices.tell(REFUSED, capital(e.getMessage()), e.remedy());
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }
}
