package facetwright.workbench.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where the user opens and saves, and where their own designs are. */
public final class Folders {
  static final String OPEN = "folder.open";
  static final String SAVE = "folder.save";
  private static final String OWN = "folder.own";
  private static final String PAPERS = "folder.papers";

  private final State state;
  private final Choosing choosing;

  /**
   * @param state where folders are remembered
   */
  public Folders(State state, Choosing choosing) {
    this.state = state;
    this.choosing = choosing;
  }

  /** The folder used last for something, or the user's own. */
  Path last(String what) {
    return state.path(what).filter(Files::isDirectory).orElseGet(this::own);
  }

  /** Remembers the folder that a file is in. */
  void remember(String what, Path file) {
    Path folder = file.getParent();
    if (folder != null) {
      state.remember(what, folder.toString());
    }
  }

  /** The folder of the user's own designs; it need not exist yet. */
  public Path own() {
    return state.path(OWN).orElseGet(() -> StateFolder.home().resolve("Facetwright"));
  }

  /** Lets the user choose the folder of their own designs; true when one was chosen. */
  public boolean chooseOwn() {
    Optional<Path> chosen = choosing.folder("The folder of your own designs", own());
    chosen.ifPresent(f -> state.remember(OWN, f.toAbsolutePath().toString()));
    return chosen.isPresent();
  }

  /**
   * Lets the user choose the folder that papers go to. The one chosen last is offered first; before
   * there is one, the folder where scripts are saved.
   *
   * @return empty where none was chosen
   */
  public Optional<Path> choosePapers(String title) {
    Path first = state.path(PAPERS).orElseGet(() -> last(SAVE));
    Optional<Path> chosen = choosing.folder(title, first);
    chosen.ifPresent(f -> state.remember(PAPERS, f.toAbsolutePath().toString()));
    return chosen;
  }
}
