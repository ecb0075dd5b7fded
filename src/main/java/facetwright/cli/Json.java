package facetwright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import picocli.CommandLine.Option;

/** The option of commands that answer other programs, and how such an answer is written. */
final class Json {
  @Option(names = "--json", description = "one JSON object instead of words")
  private boolean asked;

  /** Whether an object is wanted instead of words. */
  boolean isAsked() {
    return asked;
  }

  /** Writes the fields of an object. */
  @FunctionalInterface
  interface Fields {
    void write(JsonGenerator json) throws IOException;
  }

  /** One object, a field a line. */
  static String object(Fields fields) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      fields.write(json);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
