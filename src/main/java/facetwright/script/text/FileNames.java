package facetwright.script.text;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which names a file may have that a script uses. They name a file and no way to one, look like no
 * other name, and mean the same file on every system.
 */
public final class FileNames {
  private static final int LONGEST = 60;

  private static final Pattern PLAIN =
      Pattern.compile("[A-Za-z0-9_](?:[A-Za-z0-9_ -]*[A-Za-z0-9_-])?\\.js");

  /** Names that some systems keep for devices, whatever follows them. */
  private static final Pattern DEVICE =
      Pattern.compile("(?:con|prn|aux|nul|com[0-9]|lpt[0-9]|conin|conout)");

  private FileNames() {}

  /** What a name may be. */
  public static final String WANTED =
      "the name of a file of the script's own folder or of the library, such as \"tubs.js\": plain"
          + " letters, digits, spaces, - and _, then .js";

  /** Why a name is refused; empty where it may be. */
  public static Optional<String> fault(String name) {
    if (name.contains("/") || name.contains("\\") || name.contains("..") || name.contains(":")) {
      return Optional.of("a script reaches no other folders");
    }
    if (!name.endsWith(".js")) {
      return Optional.of("that is no name of a script, for it does not end in .js");
    }
    if (name.length() > LONGEST) {
      return Optional.of("that name is longer than " + LONGEST + " letters");
    }
    if (!PLAIN.matcher(name).matches()) {
      return Optional.of("that name has other letters than those that are the same everywhere");
    }
    String stem = name.substring(0, name.length() - 3).strip().toLowerCase(Locale.ROOT);
    return DEVICE.matcher(stem).matches()
        ? Optional.of("that name is a device's on some systems")
        : Optional.empty();
  }
}
