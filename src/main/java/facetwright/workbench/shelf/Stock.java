package facetwright.workbench.shelf;

import facetwright.script.beside.Beside;
import facetwright.script.scope.DesignCall;
import facetwright.script.text.Gathered;
import facetwright.workbench.file.Scripts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What stands on the shelf. */
final class Stock {
  private Stock() {}

  /**
   * The designs of a folder, by name; those that can't be read are left out, and files that designs
   * use.
   *
   * @param library the folder of the designs that come with the program
   */
  static List<Entry> in(Path folder, boolean own, Path library) {
    List<Entry> entries = new ArrayList<>();
    for (Path file : Scripts.in(folder)) {
      Scripts.text(file)
          .filter(text -> DesignCall.isIn(text) || Gathered.offered(text).isEmpty())
          .map(text -> Beside.of(file, library).whole(text))
          .ifPresent(text -> entries.add(Entry.of(file, own, text)));
    }
    return entries;
  }
}
