package facetwright.workbench.file;

import facetwright.script.beside.Beside;
import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import facetwright.words.Sentence;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.desk.ScriptFiles;
import facetwright.workbench.notice.Notices;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The files that the script on the desk uses, as they lie on disk. For the window's thread. */
final class UsedFiles implements ScriptFiles {
  private static final String ABOUT = "gather";

  private final Desk desk;
  private final Path library;
  private Beside beside;
  private String asked = "";

  /**
   * From now on a design is asked for with the files that its script uses.
   *
   * @param library the folder of the designs that come with the program
   */
  UsedFiles(Desk desk, Path library) {
    this.desk = desk;
    this.library = library;
    beside = new Beside(Optional.empty(), library);
    desk.file().addListener((_, _, file) -> goTo(file));
    desk.files().set(this);
  }

  @Override
  public String whole(String script) {
    asked = beside.whole(script);
    return asked;
  }

  @Override
  public List<String> names() {
    return beside.names().stream().filter(name -> !name.equals(desk.fileName())).toList();
  }

  /** Whether it lies in the library. */
  boolean isOfLibrary(Path file) {
    return file.toAbsolutePath().normalize().startsWith(library);
  }

  /** The files beside a script. */
  Beside of(Path script) {
    return Beside.of(script, library);
  }

  private void goTo(Path file) {
    beside = file == null ? new Beside(Optional.empty(), library) : of(file);
    askAnew();
  }

  /** Looks whether one of them was changed, and then asks for the design anew. */
  void look() {
    beside.forget();
    askAnew();
  }

  private void askAnew() {
    if (!asked.isEmpty() && !beside.whole(desk.text().get()).equals(asked)) {
      desk.ask();
    }
  }

  /** Saves the script and all that it uses as one file, at a place that the user chooses. */
  void saveWhole(ToDisk toDisk, Notices notices) {
    beside.forget();
    Gathered all = Gathered.of(beside.whole(desk.text().get()));
    Optional<Piece> lacking =
        all.pieces().stream().filter(p -> p.state() == Piece.State.LACKING).findFirst();
    if (lacking.isPresent()) {
      String why = Sentence.capital(lacking.get().text());
      notices.tell(ABOUT, "The script can't be made one file", why + ".");
    } else if (all.pieces().stream().noneMatch(p -> p.state() == Piece.State.READ)) {
      notices.tell(ABOUT, "The script is one file already", "Save as hands on all of it.");
    } else {
      toDisk
          .saveCopy(all.gathered().text())
          .ifPresent(
              name ->
                  notices.tell(
                      ABOUT,
                      name + " holds the script and all that it uses",
                      "It makes the same design in any folder. Here you go on with your own"
                          + " files."));
    }
  }

  /**
   * A copy of a script that is to lie in no folder, or in another: it takes the files of its own
   * folder along.
   */
  String copy(Path file, String script) {
    Gathered all = Gathered.of(of(file).whole(script));
    boolean isWhole = all.pieces().stream().noneMatch(p -> p.state() == Piece.State.LACKING);
    return isWhole ? all.gathered().text() : script;
  }
}
