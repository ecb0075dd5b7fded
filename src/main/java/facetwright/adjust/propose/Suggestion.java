package facetwright.adjust.propose;

import java.io.Serializable;
import java.util.Map;

/**
 * A way to take what is proposed.
 *
 * @param name what it does, in a few words
 * @param settings dial values by name, as a person types them; all others stand as the script says
 * @param source the script's text
 */
public record Suggestion(String name, Map<String, String> settings, String source)
    implements Serializable {
  public Suggestion {
    settings = Map.copyOf(settings);
  }
}
