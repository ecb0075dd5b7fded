package facetwright.workbench.desk;

import java.util.Map;

/**
 * What a person makes at the desk and would not lose: a script and how its dials are turned.
 *
 * @param text the script
 * @param dials the values of turned dials by name, as a person types them; dials not named stand as
 *     the script says
 */
public record Work(String text, Map<String, String> dials) {
  public Work {
    dials = Map.copyOf(dials);
  }

  /** A script with its dials as it says. */
  public static Work of(String text) {
    return new Work(text, Map.of());
  }
}
