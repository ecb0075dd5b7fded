package facetwright.workbench.file;

import facetwright.json.JsonText;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** One JSON object whose values are texts. */
final class FlatJson {
  private FlatJson() {}

  /** As text, keys in their order. */
  static String write(Map<String, String> values) {
    return JsonText.object(json -> new TreeMap<>(values).forEach(json::writeStringProperty)) + "\n";
  }

  /** What a text holds; empty where it is anything else. */
  static Optional<Map<String, String>> read(String text) {
    Map<String, String> values = new TreeMap<>();
    try (JsonParser in = JsonText.parser(text)) {
      if (in.nextToken() != JsonToken.START_OBJECT) {
        return Optional.empty();
      }
      while (in.nextToken() == JsonToken.PROPERTY_NAME) {
        String key = in.currentName();
        if (in.nextToken() != JsonToken.VALUE_STRING) {
          return Optional.empty();
        }
        values.put(key, in.getString());
      }
      return in.currentToken() == JsonToken.END_OBJECT ? Optional.of(values) : Optional.empty();
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }

  /** Puts texts among others, their keys under a prefix. */
  static void put(Map<String, String> into, String prefix, Map<String, String> part) {
    part.forEach((key, value) -> into.put(prefix + key, value));
  }

  /** The texts whose keys are under a prefix, without it. */
  static Map<String, String> part(Map<String, String> of, String prefix) {
    Map<String, String> part = new TreeMap<>();
    of.forEach(
        (key, value) -> {
          if (key.startsWith(prefix)) {
            part.put(key.substring(prefix.length()), value);
          }
        });
    return part;
  }
}
