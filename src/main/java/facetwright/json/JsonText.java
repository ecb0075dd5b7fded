package facetwright.json;

import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonWriteFeature;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** Writes and reads JSON (RFC 8259) text. */
public final class JsonText {
  private static final JsonFactory JSON =
      JsonFactory.builder().disable(JsonWriteFeature.ESCAPE_FORWARD_SLASHES).build();

  private JsonText() {}

  /** One object, a field a line. */
  public static String object(Consumer<JsonGenerator> fields) {
    return object(new DefaultPrettyPrinter(), fields);
  }

  /** One object, a field a line, its arrays without blanks inside their brackets. */
  public static String dense(Consumer<JsonGenerator> fields) {
    return object(new DefaultPrettyPrinter().withArrayIndenter(null), fields);
  }

  private static String object(DefaultPrettyPrinter printer, Consumer<JsonGenerator> fields) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json =
        JSON.createGenerator(
            new ObjectWriteContext.Base() {
              @Override
              public PrettyPrinter getPrettyPrinter() {
                return printer;
              }
            },
            text)) {
      json.writeStartObject();
      fields.accept(json);
      json.writeEndObject();
    }
    return text.toString();
  }

  /** A field that is a list of texts. */
  public static void strings(JsonGenerator json, String name, List<String> values) {
    json.writeName(name);
    json.writeArray(values.toArray(String[]::new), 0, values.size());
  }

  /** A field that is a list of whole numbers. */
  public static void numbers(JsonGenerator json, String name, List<Integer> values) {
    json.writeName(name);
    json.writeArray(values.stream().mapToInt(Integer::intValue).toArray(), 0, values.size());
  }

  /** A field that is a list of objects, each with the fields that are written for its value. */
  public static <T> void objects(
      JsonGenerator json, String name, Iterable<T> values, Consumer<T> fields) {
    json.writeArrayPropertyStart(name);
    for (T value : values) {
      json.writeStartObject();
      fields.accept(value);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Reads a text from its beginning. What is no JSON is refused by the parser as it comes. */
  public static JsonParser parser(String text) {
    return JSON.createParser(ObjectReadContext.empty(), text);
  }
}
