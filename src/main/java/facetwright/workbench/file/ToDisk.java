package facetwright.workbench.file;

import facetwright.words.Sentence;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.Work;
import facetwright.workbench.notice.Notice;
import facetwright.workbench.notice.Notice.Choice;
import facetwright.workbench.notice.Notices;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Puts the script on disk, and its dials beside the program's own things. What another program
 * wrote is never replaced unasked, and what is replaced can be brought back.
 */
final class ToDisk {
  static final String REFUSED = "refused";

  /** Not what is said when the file changes: that stays, whatever is answered here. */
  private static final String OVER = "over";

  private static final String LIBRARY = "The library stays as it is";
  private static final String OWN_FOLDER = "Save your design in a folder of your own.";

  private static final String THERE = "there";

  private final Desk desk;
  private final Choosing choosing;
  private final Notices notices;
  private final State state;
  private final Folders folders;
  private final LeftDials dials;
  private final GivenUp givenUp;
  private final Outside outside;
  private final UsedFiles used;
  private final Along along;
  private OnDisk base = OnDisk.fresh("");

  ToDisk(
      Desk desk,
      Choosing choosing,
      Notices notices,
      State state,
      Folders folders,
      LeftDials dials,
      GivenUp givenUp,
      Outside outside,
      UsedFiles used) {
    this.desk = desk;
    this.choosing = choosing;
    this.notices = notices;
    this.state = state;
    this.folders = folders;
    this.dials = dials;
    this.givenUp = givenUp;
    this.outside = outside;
    this.used = used;
    this.along = new Along(desk, notices, used);
  }

  /** What the file holds, and how it is written there. */
  void isOnDisk(OnDisk read) {
    base = read;
  }

  /** Saves the script where it belongs, then goes on; a file changed meanwhile is asked about. */
  void save(Runnable then) {
    Path file = desk.file().get();
    if (file == null) {
      saveAs(then);
      return;
    }
    switch (Found.at(file)) {
      case Found.Text(String now) when !now.equals(desk.saved().text()) ->
          notices.show(
              Notice.question(
                  OVER,
                  OnDisk.name(file) + " was changed by another program",
                  "Saving now replaces those changes with what you see here. Save as keeps both.",
                  new Choice("Save as …", () -> saveAs(then)),
                  new Choice("Replace them", () -> put(file, then)),
                  new Choice("Cancel", () -> {})));
      case Found.Unreadable(OnDisk.Refused why) ->
          notices.show(
              Notice.question(
                  OVER,
                  OnDisk.name(file) + " was changed by another program",
                  why.getMessage() + ": it was not replaced. Save your script under another name.",
                  new Choice("Save as …", () -> saveAs(then)),
                  new Choice("Cancel", () -> {})));
      case Found.Text _, Found.Nothing _ -> put(file, then);
    }
  }

  /** Saves the script at a place that the user chooses, then goes on. */
  void saveAs(Runnable then) {
    Path file = desk.file().get();
    String name = file == null ? FileName.of(FileName.title(desk.text().get())) : OnDisk.name(file);
    Path start = file == null ? folders.last(Folders.SAVE) : file.getParent();
    choosing.toSave(start, name).ifPresent(chosen -> saveAt(chosen, then));
  }

  /**
   * Saves a text at a place that the user chooses; the desk keeps its own file.
   *
   * @return what the file is called; empty where none was written
   */
  Optional<String> saveCopy(String text) {
    String name = FileName.of(FileName.title(text) + " whole");
    Optional<Path> chosen = choosing.toSave(folders.last(Folders.SAVE), name).map(ToDisk::named);
    if (chosen.isEmpty()) {
      return Optional.empty();
    }
    try {
      if (used.isOfLibrary(chosen.get())) {
        throw new OnDisk.Refused(LIBRARY, OWN_FOLDER);
      }
      OnDisk.fresh(text).write(chosen.get());
      return chosen.map(OnDisk::name);
    } catch (OnDisk.Refused e) {
      notices.tell(REFUSED, e.getMessage(), e.remedy());
      return Optional.empty();
    }
  }

  private void saveAt(Path chosen, Runnable then) {
    Path named = named(chosen);
    if (used.isOfLibrary(named)) {
      notices.tell(REFUSED, LIBRARY, OWN_FOLDER);
    } else if (!named.equals(chosen) && Files.exists(named, LinkOption.NOFOLLOW_LINKS)) {
      notices.show(
          Notice.question(
              THERE,
              "There is a " + OnDisk.name(named) + " already",
              "Saving there replaces it.",
              new Choice("Save as …", () -> saveAs(then)),
              new Choice("Replace it", () -> along.then(named, () -> put(named, then))),
              new Choice("Cancel", () -> {})));
    } else {
      along.then(named, () -> put(named, then));
    }
  }

  private static Path named(Path chosen) {
    String name = OnDisk.name(chosen);
    return name.contains(".") ? chosen : chosen.resolveSibling(name + ".js");
  }

  private void put(Path file, Runnable then) {
    Path whole = file.toAbsolutePath().normalize();
    Work work = desk.work();
    OnDisk next = base.with(work.text());
    Found before = Found.at(whole);
    if (!before.isText(work.text())) {
      if (before instanceof Found.Text(String theirs) && !theirs.equals(desk.saved().text())) {
        // What can't be put aside first is not replaced.
        Optional<String> trouble =
            givenUp.put(new Kept(whole, OnDisk.name(whole), theirs, Work.of(theirs)));
        if (trouble.isPresent()) {
          refuse(
              new OnDisk.Refused(
                  OnDisk.name(whole) + " was not saved",
                  "What it holds now could not be put aside: " + trouble.get() + "."),
              whole,
              then);
          return;
        }
      }
      try {
        next.write(whole);
      } catch (OnDisk.Refused e) {
        refuse(e, whole, then);
        return;
      }
    }
    base = next;
    outside.forget();
    Optional<String> trouble = dials.leave(whole, work);
    desk.kept(whole, trouble.isEmpty() ? work : new Work(work.text(), desk.saved().dials()));
    folders.remember(Folders.SAVE, whole);
    state.opened(whole);
    if (trouble.isEmpty()) {
      then.run();
    } else {
      notices.tell(
          REFUSED,
          "The script was saved, its dials were not",
          Sentence.capital(trouble.get())
              + ". Keep these dials as … writes them into the script itself.");
    }
  }

  private void refuse(OnDisk.Refused why, Path file, Runnable then) {
    notices.show(
        new Notice(
            REFUSED,
            why.getMessage(),
            why.remedy(),
            List.of(
                new Choice("Save as …", () -> saveAs(then)),
                new Choice("Try again", () -> put(file, then)),
                new Choice("Close", () -> {}))));
  }
}
