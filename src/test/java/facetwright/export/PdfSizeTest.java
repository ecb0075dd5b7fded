package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.LineKind;
import facetwright.fold.Folding;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.sheet.Stock;
import facetwright.papers.order.Order;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** True size, measured on what another program makes of our pages. */
class PdfSizeTest {
  private static final int DPI = 400;
  private static final double PIXEL = 25.4 / DPI;
  @TempDir Path folder;

  static Stream<Stock> sheets() {
    return Stream.of(Papers.A4, Papers.LETTER);
  }

  private Path pdf(Job job) throws IOException {
    return Files.write(folder.resolve("template.pdf"), new PdfWriter().write(job));
  }

  /** A4: ISO 216:2007, 210 mm × 297 mm. Letter: 8 1/2 in × 11 in, from memory (ANSI Y14.1). */
  @ParameterizedTest
  @MethodSource("sheets")
  void pageIsTheSheet(Stock sheet) throws IOException {
    String info = Outside.pdfinfo(pdf(Papers.job("Star", Papers.cube(40, 8), sheet)));
    Matcher m = Pattern.compile("size:\\s+([0-9.]+) x ([0-9.]+) pts").matcher(info);
    assertThat(m.find()).isTrue();
    double a = Double.parseDouble(m.group(1)) * 25.4 / 72;
    double b = Double.parseDouble(m.group(2)) * 25.4 / 72;
    assertThat(Math.min(a, b)).isCloseTo(sheet.width(), within(0.1));
    assertThat(Math.max(a, b)).isCloseTo(sheet.height(), within(0.1));
    assertThat(info).contains("Title:           Star").contains("Author:          Tidewell");
    assertThat(info).contains("Pages:           1");
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void rulerMeasures100mmAnd4Inches(Stock sheet) throws IOException {
    Path pdf = pdf(Papers.job("Star", Papers.cube(40, 8), sheet));
    Outside.render(pdf, DPI, folder.resolve("page"));
    BufferedImage page = ImageIO.read(folder.resolve("page-1.png").toFile());
    double[] runs = longestRuns(page);
    // The only level lines over 99 mm: the net's longest is 40 mm. From the middle of the first
    // mark
    // to the middle of the last is a pen's width less than the run of dark pixels.
    assertThat(runs[0] - LineKind.GUIDE.width()).isCloseTo(101.6, within(0.2));
    assertThat(runs[1] - LineKind.GUIDE.width()).isCloseTo(100, within(0.2));
  }

  /** A cut of 180 mm, by the pixels. */
  @Test
  void netIsTrueSize() throws IOException {
    Net net = Papers.slitSquares(90);
    Job job =
        Jobs.of(
            "Flags",
            "",
            Papers.at(net, Papers.A4, 15, 90),
            Folding.fold(net),
            Order.usual(Unit.MM));
    Outside.render(pdf(job), DPI, folder.resolve("page"));
    BufferedImage page = ImageIO.read(folder.resolve("page-1.png").toFile());
    assertThat(longestRuns(page)[0]).isCloseTo(180 + LineKind.CUT.width(), within(0.2));
  }

  /** Level dark runs at least a few rows of pixels apart, longest first, in mm. */
  private static double[] longestRuns(BufferedImage page) {
    Raster pixels = page.getRaster();
    int[] row = new int[page.getWidth()];
    TreeMap<Integer, Integer> runs = new TreeMap<>();
    for (int y = 0; y < page.getHeight(); y++) {
      pixels.getSamples(0, y, row.length, 1, 0, row);
      int longest = 0;
      int length = 0;
      for (int value : row) {
        length = value < 128 ? length + 1 : 0;
        longest = Math.max(longest, length);
      }
      Integer near = runs.floorKey(y);
      int key = near != null && y - near <= 5 ? near : y;
      runs.merge(key, longest, Math::max);
      if (longest < 600) {
        runs.remove(y);
      }
    }
    return runs.values().stream()
        .sorted(Comparator.reverseOrder())
        .mapToDouble(n -> n * PIXEL)
        .toArray();
  }

  @Test
  void asksThePrinterNotToScaleAndEmbedsItsFont() throws IOException {
    Path file = pdf(Papers.job("Star", Papers.tray(60, 20), Papers.A4));
    try (var document = Loader.loadPDF(file.toFile())) {
      assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .isEqualTo("None");
      assertThat(document.getDocumentCatalog().getOCProperties().getGroupNames())
          .contains("Cut", "Mountain", "Perforation", "Layer", "Tick", "Glue", "Guide", "Words");
    }
    assertThat(Outside.pdffonts(file).lines().skip(2))
        .isNotEmpty()
        .allMatch(l -> l.contains("FacetwrightSans") && l.contains("yes yes yes"));
  }

  @Test
  void saysWhatAMakerNeeds() throws IOException {
    String text =
        Outside.pdftotext(pdf(Papers.job("Harbour tray", Papers.tray(60, 20), Papers.A4)))
            .replaceAll("\\s+", " ");
    assertThat(text)
        .contains("Harbour tray")
        .contains("Outside faces up")
        .contains("mountain: the crest points at you")
        .contains("away from yourself")
        .contains("adult")
        .contains("100 mm")
        .contains("4 in");
  }
}
