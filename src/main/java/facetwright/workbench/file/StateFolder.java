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

  /** The user's home folder. */
  static Path home() {
    return home(System.getProperty("os.name"), System::getProperty, System::getenv);
  }

  /**
   * Java reads the home folder out of the table of users; on Unix the environment, where it names
   * one, comes first, as for every other program (POSIX, Base Definitions, 8.3).
   */
  private static Path home(
      String system, UnaryOperator<String> property, UnaryOperator<String> env) {
    String named = env.apply("HOME");
    boolean unix = !system.toLowerCase(Locale.ROOT).startsWith("windows");
    return unix && isGiven(named) && Path.of(named).isAbsolute()
        ? Path.of(named)
        : Path.of(property.apply("user.home"));
  }

  static Path find(String system, UnaryOperator<String> property, UnaryOperator<String> env) {
    String named = property.apply(PROPERTY);
    if (isGiven(named)) {
      return Path.of(named);
    }
    Path home = home(system, property, env);
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
