package facetwright.workbench.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One JSON object whose values are texts. */
final class FlatJson {
  private static final JsonFactory JSON = new JsonFactory();

  private FlatJson() {}

  /** As text, keys in their order. */
  static String write(Map<String, String> values) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = JSON.createGenerator(text)) {
      out.useDefaultPrettyPrinter();
      out.writeStartObject();
      for (Map.Entry<String, String> e : new TreeMap<>(values).entrySet()) {
        out.writeStringField(e.getKey(), e.getValue());
      }
      out.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text + "\n";
  }

  /** What a text holds; empty where it is anything else. */
  static Optional<Map<String, String>> read(String text) {
    Map<String, String> values = new TreeMap<>();
    try (JsonParser in = JSON.createParser(text)) {
      if (in.nextToken() != JsonToken.START_OBJECT) {
        return Optional.empty();
      }
      while (in.nextToken() == JsonToken.FIELD_NAME) {
        String key = in.currentName();
        if (in.nextToken() != JsonToken.VALUE_STRING) {
          return Optional.empty();
        }
        values.put(key, in.getText());
      }
      return in.currentToken() == JsonToken.END_OBJECT ? Optional.of(values) : Optional.empty();
    } catch (IOException e) {
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
