package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SequencedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each file says of which design it is, and what. */
class TitledTest {
  static Stream<Exporter> exporters() {
    // A single piece makes no ring.
    return Exporters.all().values().stream().filter(e -> !e.format().equals("ring"));
  }

  @ParameterizedTest
  @MethodSource("exporters")
  void saysItsDesignAndWhatItIs(Exporter exporter) throws Exception {
    Job job = Papers.job("Kite box", Papers.tray(60, 20), Papers.A4);
    SequencedMap<String, byte[]> files = exporter.files(job);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      assertThat(file.getKey()).startsWith("kite-box-");
      assertThat(title(file.getKey(), file.getValue()))
          .startsWith("Kite box: ")
          .contains(exporter.title(job));
    }
  }

  private static String title(String name, byte[] bytes) throws Exception {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    return switch (name.substring(name.lastIndexOf('.') + 1)) {
      case "pdf" -> {
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
          yield pdf.getDocumentInformation().getTitle();
        }
      }
      case "svg", "html" -> found(text, "<title>([^<]*)</title>");
      // A comment at the head (the format's published reference, group code 999).
      case "dxf" -> found(text, "^999\r\n([^\r]*)\r\n");
      case "fold" -> found(text, "\"file_title\" *: *\"([^\"]*)\"");
      case "obj" -> found(text, "^# ([^\n]*)\n");
      case "stl" -> found(text.substring(0, 80), "\\. ([^\0]*)");
      // W3C, PNG, 11.3.3.4: keyword, two bytes, language, keyword translated, each ended by 0.
      case "png" -> found(text, "iTXtTitle\0\0\0\0\0(Kite box[a-z: ]*)");
      default -> throw new AssertionError(name);
    };
  }

  private static String found(String text, String pattern) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    assertThat(matcher.find()).as(pattern).isTrue();
    return matcher.group(1);
  }
}
