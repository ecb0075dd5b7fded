package facetwright.workbench;

import facetwright.workbench.desk.Asking;
import facetwright.workbench.desk.Helpers;
import facetwright.workbench.file.Choosing;
import facetwright.workbench.file.Keeper;
import facetwright.workbench.file.State;
import facetwright.workbench.papers.Saving;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/**
 * What the window works with, so that tests can hand it other tools.
 *
 * @param designs turns scripts into designs
 * @param hire starts workers for pictures and for questions at the table
 * @param aside runs work in its order, beside the window
 * @param slow runs work that may wait, beside the window
 * @param papers runs the work on papers in its order, beside the window; it may take minutes
 * @param ui runs work on the window's thread
 * @param keeper keeps unsaved work, and does nothing else
 * @param choosing lets the user choose files
 * @param saving takes papers
 * @param state what is remembered
 * @param home the folder that the program's library and docs are in
 * @param quit ends the program
 */
record Tools(
    Asking designs,
    Supplier<Helpers> hire,
    Executor aside,
    Executor slow,
    Executor papers,
    Executor ui,
    Keeper keeper,
    Choosing choosing,
    Saving saving,
    State state,
    Path home,
    Runnable quit) {

  Path library() {
    return library(home);
  }

  static Path library(Path home) {
    return home.resolve("library");
  }
}
