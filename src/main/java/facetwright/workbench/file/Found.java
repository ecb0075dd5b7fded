package facetwright.workbench.file;

import java.nio.file.Files;
import java.nio.file.Path;

/** What is found where a script is saved. */
sealed interface Found {
  /** A script. */
  record Text(String text) implements Found {}

  /** Something that is no script, or can't be read. */
  record Unreadable(OnDisk.Refused why) implements Found {}

  /** No file. */
  record Nothing() implements Found {}

  static Found at(Path file) {
    if (Files.notExists(file)) {
      return new Nothing();
    }
    try {
      return new Text(OnDisk.read(file).text());
    } catch (OnDisk.Refused e) {
      return new Unreadable(e);
    }
  }

  /** Whether it is this script. */
  default boolean isText(String script) {
    return this instanceof Text(String text) && text.equals(script);
  }

  /** Whether there is nothing new to say about it to somebody who was told of the other. */
  default boolean isLike(Found other) {
    return this instanceof Text ? equals(other) : other != null && getClass() == other.getClass();
  }
}
