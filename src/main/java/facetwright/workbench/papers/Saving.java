package facetwright.workbench.papers;

import facetwright.draw.Drawing;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What needs the system's own dialogs: where to save papers, and printing. */
public interface Saving {
  /** Asks for a folder; empty where the user changed their mind. */
  Optional<Path> folder(String title);

  /** Whether there is a printer to print on. */
  boolean canPrint();

  /** Shows the system's print dialog and prints at true size; false where nothing was printed. */
  boolean print(String title, List<Drawing> pages);
}
