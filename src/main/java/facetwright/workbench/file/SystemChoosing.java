package facetwright.workbench.file;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The system's own dialogs. */
public final class SystemChoosing implements Choosing {
  private final Supplier<Window> over;

  /**
   * @param over the window the dialogs belong to
   */
  public SystemChoosing(Supplier<Window> over) {
    this.over = over;
  }

  @Override
  public Optional<Path> toOpen(Path startingIn) {
    return path(chooser("Open a design", startingIn).showOpenDialog(over.get()));
  }

  @Override
  public Optional<Path> toSave(Path startingIn, String name) {
    FileChooser chooser = chooser("Save the design", startingIn);
    chooser.setInitialFileName(name);
    return path(chooser.showSaveDialog(over.get()));
  }

  @Override
  public Optional<Path> folder(String title, Path startingIn) {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle(title);
    chooser.setInitialDirectory(existing(startingIn));
    return path(chooser.showDialog(over.get()));
  }

  private static FileChooser chooser(String title, Path startingIn) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(title);
    chooser.setInitialDirectory(existing(startingIn));
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter("Designs (*.js)", "*.js", "*.mjs"));
    return chooser;
  }

  /** The folder, or the nearest one above it that is there. */
  private static File existing(Path folder) {
    Path place = folder.toAbsolutePath();
    while (place != null && !Files.isDirectory(place)) {
      place = place.getParent();
    }
    return place == null ? null : place.toFile();
  }

  private static Optional<Path> path(File file) {
    return Optional.ofNullable(file).map(File::toPath);
  }
}
