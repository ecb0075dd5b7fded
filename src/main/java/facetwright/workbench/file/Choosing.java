package facetwright.workbench.file;

import java.nio.file.Path;
import java.util.Optional;

/** Whoever lets the user choose files; empty where the user would rather not. */
public interface Choosing {
  /** A script to open. */
  Optional<Path> toOpen(Path startingIn);

  /** A place to save a script at; the user was asked about a file that stands there. */
  Optional<Path> toSave(Path startingIn, String name);

  /** A folder. */
  Optional<Path> folder(String title, Path startingIn);
}
