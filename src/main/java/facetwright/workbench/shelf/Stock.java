package facetwright.workbench.shelf;

import facetwright.workbench.file.Scripts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What stands on the shelf. */
final class Stock {
  private Stock() {}

  /** The designs of a folder, by name; those that can't be read are left out. */
  static List<Entry> in(Path folder, boolean own) {
    List<Entry> entries = new ArrayList<>();
    for (Path file : Scripts.in(folder)) {
      Scripts.text(file).ifPresent(text -> entries.add(Entry.of(file, own, text)));
    }
    return entries;
  }
}
