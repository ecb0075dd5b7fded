package facetwright.worker;

import java.io.Serializable;
import java.util.Map;

/**
 * A script to evaluate.
 *
 * @param fileName what its user calls it
 * @param source its text
 * @param settings dial values by name, as a person types them
 */
public record Request(String fileName, String source, Map<String, String> settings)
    implements Serializable {
  public Request {
    settings = Map.copyOf(settings);
  }
}
