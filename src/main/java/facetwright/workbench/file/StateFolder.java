package facetwright.workbench.file;

import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Where the program keeps its own things for the user, as the system wants it. */
public final class StateFolder {
  /** The system property that names another folder. */
  public static final String PROPERTY = "facetwright.state";

  private StateFolder() {}

  /** The folder; it need not exist yet. */
  public static Path find() {
    return find(System.getProperty("os.name"), System::getProperty, System::getenv);
  }

  static Path find(String system, UnaryOperator<String> property, UnaryOperator<String> env) {
    String named = property.apply(PROPERTY);
    if (isGiven(named)) {
      return Path.of(named);
    }
    Path home = Path.of(property.apply("user.home"));
    String kind = system.toLowerCase(Locale.ROOT);
    if (kind.startsWith("windows")) {
      String local = env.apply("LOCALAPPDATA");
      Path base = isGiven(local) ? Path.of(local) : home.resolve("AppData").resolve("Local");
      return base.resolve("Facetwright");
    }
    if (kind.startsWith("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Facetwright");
    }
    // The XDG base directory specification: a path that is not absolute is to be ignored.
    String xdg = env.apply("XDG_STATE_HOME");
    Path base =
        isGiven(xdg) && Path.of(xdg).isAbsolute()
            ? Path.of(xdg)
            : home.resolve(".local").resolve("state");
    return base.resolve("facetwright");
  }

  private static boolean isGiven(String value) {
    return value != null && !value.isBlank();
  }
}
