package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.pose.Closure;
import facetwright.papers.order.Order;
import java.io.ByteArrayInputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.SequencedMap;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every exporter promises. */
class ExporterContractTest {
  /** Those made of every job. */
  static Collection<Exporter> exporters() {
    return Exporters.all().values().stream().filter(Exporter::isUsual).toList();
  }

  @Test
  void namesEachFormatOnce() {
    assertThat(Exporters.all().keySet())
        .containsExactly(
            "pdf",
            "ring",
            "tiles",
            "inside",
            "layout",
            "layers",
            "guides",
            "handout",
            "html",
            "chart",
            "board-card",
            "facets",
            "svg",
            "machine",
            "machine-layers",
            "dxf",
            "fold",
            "obj",
            "stl",
            "net-png",
            "folded-png");
    assertThat(Exporters.all().values().stream().map(Exporter::ending))
        .containsExactly(
            "template.pdf",
            "ring.pdf",
            "template-tiles.pdf",
            "template-inside.pdf",
            "layout.pdf",
            "layers.pdf",
            "guides.pdf",
            "handout.pdf",
            "handout.html",
            "chart.pdf",
            "board-card.pdf",
            "facets.pdf",
            "template.svg",
            "machine.svg",
            "machine-layers.svg",
            "template.dxf",
            "net.fold",
            "folded.obj",
            "folded.stl",
            "net.png",
            "folded.png");
  }

  /** The list in the window, help and docs have their words from here. */
  @Test
  void saysWhatItIsInWordsAndTheDocsSayTheSame() throws Exception {
    String docs = Files.readString(Path.of("docs/papers.md"));
    for (Exporter e : Exporters.all().values()) {
      assertThat(e.name()).as(e.format()).matches("[A-Z].{2,}[^.]");
      assertThat(e.use()).as(e.format()).matches("[A-Z].{20,}\\.");
      assertThat(e.when()).as(e.format()).matches("|where .{8,}[^.]");
      assertThat(docs)
          .contains(
              "| `-%s` | `%s` | %s | %s%s |"
                  .formatted(
                      e.ending(),
                      e.format(),
                      e.name(),
                      e.use(),
                      e.when().isEmpty() ? "" : " Made " + e.when() + "."));
    }
    assertThat(Exporters.all().values().stream().map(Exporter::name)).doesNotHaveDuplicates();
  }

  /** Pages to look at are the pages of the document. */
  @ParameterizedTest
  @MethodSource("exporters")
  void pagesAreThoseOfTheDocument(Exporter exporter) throws Exception {
    Job job = Papers.job("Kite box", Papers.tray(60, 20), Papers.A4);
    if (exporter.ending().endsWith(".pdf")) {
      assertThat(PdfReading.of(exporter.write(job))).hasSameSizeAs(exporter.pages(job));
    } else {
      assertThat(exporter.pages(job)).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("exporters")
  void sameJobSameBytes(Exporter exporter) {
    byte[] once = exporter.write(Papers.job("Kite box", Papers.tray(60, 20), Papers.A4));
    byte[] again = exporter.write(Papers.job("Kite box", Papers.tray(60, 20), Papers.A4));
    assertThat(once).isNotEmpty().isEqualTo(again);
  }

  @ParameterizedTest
  @MethodSource("exporters")
  void anotherNetOtherBytes(Exporter exporter) {
    byte[] one = exporter.write(Papers.job("Kite box", Papers.tray(60, 20), Papers.A4));
    byte[] other = exporter.write(Papers.job("Kite box", Papers.tray(61, 20), Papers.A4));
    assertThat(one).isNotEqualTo(other);
  }

  @ParameterizedTest
  @MethodSource("exporters")
  void firstFileIsTheFile(Exporter exporter) {
    Job job = Papers.job("Kite box", Papers.tray(60, 20), Papers.A4);
    SequencedMap<String, byte[]> files = exporter.files(job);
    assertThat(files.firstEntry().getKey()).isEqualTo("kite-box-" + exporter.ending());
    assertThat(files.firstEntry().getValue()).isEqualTo(exporter.write(job));
  }

  @ParameterizedTest
  @MethodSource("exporters")
  void readsBackWhateverTheTitle(Exporter exporter) throws Exception {
    for (String title :
        new String[] {
          "<b>&\"'</b> ]]> \u0000\u0007\uD800 \\ \n ½ × 灯 😀", "", " ", "w".repeat(5000)
        }) {
      Job job = Papers.job(title, Papers.tray(60, 20), Papers.A4);
      for (Map.Entry<String, byte[]> file : exporter.files(job).entrySet()) {
        parse(exporter.format(), file.getValue());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("exporters")
  void writesWhatIsKnownOfAnUnsolvedForm(Exporter exporter) throws Exception {
    Job unsolved = Papers.job("Flags", Papers.slitSquares(40), Papers.A4);
    assertThat(unsolved.form().closure()).isEqualTo(Closure.NOT_SOLVED);
    parse(exporter.format(), exporter.write(unsolved));
  }

  private static void parse(String format, byte[] bytes) throws Exception {
    switch (format) {
      case "pdf",
          "tiles",
          "inside",
          "layout",
          "layers",
          "guides",
          "handout",
          "chart",
          "board-card" ->
          Loader.loadPDF(bytes).close();
      case "svg", "machine", "machine-layers", "html" ->
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(bytes));
      case "dxf" ->
          assertThat(new String(bytes, StandardCharsets.US_ASCII)).endsWith("0\r\nEOF\r\n");
      case "fold" -> new tools.jackson.databind.ObjectMapper().readTree(bytes);
      case "obj" ->
          assertThat(new String(bytes, StandardCharsets.UTF_8).lines())
              .allMatch(l -> l.matches("#.*|v( -?[0-9.]+){3}|f( [0-9]+){3,}|g [a-z]+"));
      case "stl" ->
          assertThat(bytes.length)
              .isEqualTo(
                  84 + 50 * ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).getInt(80));
      case "net-png", "folded-png" ->
          assertThat(ImageIO.read(new ByteArrayInputStream(bytes)).getWidth())
              .isEqualTo(Order.USUAL_PIXELS);
      default -> throw new AssertionError(format);
    }
  }
}
