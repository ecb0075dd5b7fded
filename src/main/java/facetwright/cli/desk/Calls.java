package facetwright.cli.desk;

import facetwright.measure.Ruler;
import java.nio.file.Path;
import java.util.Map;

/** Calls of this program, ready to be typed at a prompt. */
public final class Calls {
  private Calls() {}

  /** The call that makes a design with its dials so, its papers told for a ruler. */
  public static String make(Path file, Map<String, String> settings, Ruler ruler) {
    String name = ruler.name().replace(" ", "");
    return make(file, settings) + " --ruler " + name;
  }

  /** The call that makes a design with its dials so. */
  public static String make(Path file, Map<String, String> settings) {
    StringBuilder call = new StringBuilder("facetwright make ").append(quoted(file.toString()));
    if (!settings.isEmpty()) {
      call.append(" --set");
      settings.forEach((name, value) -> call.append(' ').append(quoted(name + "=" + value)));
    }
    return call.toString();
  }

  private static String quoted(String word) {
    return word.matches("[\\w./=:+,-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
  }
}
