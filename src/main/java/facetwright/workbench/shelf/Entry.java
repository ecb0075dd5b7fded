package facetwright.workbench.shelf;

import facetwright.script.ScriptHeader;
import facetwright.script.design.Design;
import facetwright.workbench.file.FileName;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * One design on the shelf, as far as its script tells without being run.
 *
 * @param own whether it is the user's own, not the library's
 */
record Entry(Path file, boolean own, String script, String title, Design.Header header) {

  static Entry of(Path file, boolean own, String script) {
    String title = FileName.title(script);
    return new Entry(
        file,
        own,
        script,
        title.isEmpty() ? file.getFileName().toString() : title,
        ScriptHeader.read(script));
  }

  /** Whether each of the words begins a word of it, and all the tags are on it. */
  boolean matches(String words, Collection<String> tags) {
    List<String> all =
        words(
            String.join(
                " ",
                title,
                String.join(" ", header.tags()),
                header.notes(),
                header.author(),
                file.getFileName().toString()));
    return header.tags().containsAll(tags)
        && words(words).stream().allMatch(w -> all.stream().anyMatch(a -> a.startsWith(w)));
  }

  private static List<String> words(String text) {
    return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
        .filter(w -> !w.isEmpty())
        .toList();
  }
}
