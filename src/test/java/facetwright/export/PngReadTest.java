package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.export.file.ExportException;
import facetwright.fold.Folding;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.draft.NetDraft;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.papers.order.Order;
import facetwright.words.Site;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Pictures read by the reader of images that comes with Java, and checked against the format's
 * specification (W3C, Portable Network Graphics Specification, Third Edition, 24 June 2025).
 */
class PngReadTest {
  private static final int[] WIDTHS = {100, 299, 1201};

  /** A picture as another program reads it. */
  private record Read(BufferedImage pixels, int perMetre) {
    /** How opaque a place of the net is, whose middle is that of the picture. */
    int alpha(Vec2 place, Net net) {
      Vec2 from = place.minus(net.box().centre()).times(perMetre / 1000.0);
      return pixels.getRGB(
              (int) Math.floor(pixels.getWidth() / 2.0 + from.x()),
              (int) Math.floor(pixels.getHeight() / 2.0 - from.y()))
          >>> 24;
    }

    double mm(int pixels) {
      return 1000.0 * pixels / perMetre;
    }

    /** The first and the last column in which something is seen more than half. */
    int[] columns() {
      int[] found = {Integer.MAX_VALUE, -1};
      for (int x = 0; x < pixels.getWidth(); x++) {
        for (int y = 0; y < pixels.getHeight(); y++) {
          if (pixels.getRGB(x, y) >>> 24 > 127) {
            found[0] = Math.min(found[0], x);
            found[1] = x;
          }
        }
      }
      return found;
    }
  }

  private static Read read(byte[] file) throws Exception {
    ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      reader.setInput(in);
      Node all = reader.getImageMetadata(0).getAsTree("javax_imageio_png_1.0");
      NodeList sizes = ((Element) all).getElementsByTagName("pHYs");
      assertThat(sizes.getLength()).isEqualTo(1);
      Element size = (Element) sizes.item(0);
      assertThat(size.getAttribute("unitSpecifier")).isEqualTo("meter");
      String across = size.getAttribute("pixelsPerUnitXAxis");
      assertThat(size.getAttribute("pixelsPerUnitYAxis")).isEqualTo(across);
      return new Read(reader.read(0), Integer.parseInt(across));
    } finally {
      reader.dispose();
    }
  }

  private static Job job(Net net, int pixels) {
    Laid laid = SheetLayout.lay(net, Papers.A2, new Room(5, 2));
    return Jobs.of(
        "Kite box", "", laid, Folding.fold(laid.net()), Order.usual(Unit.MM).wide(pixels));
  }

  static Stream<Arguments> sizesAndWidths() {
    return Stream.of(8, 60, 110)
        .flatMap(side -> Arrays.stream(WIDTHS).mapToObj(w -> Arguments.of(side, w)));
  }

  /** Printed at the resolution that the file states, the net is as large as it is. */
  @ParameterizedTest
  @MethodSource("sizesAndWidths")
  void theNetIsTrueToScale(int side, int width) throws Exception {
    Net net = Papers.cube(side, side / 4.0);
    Job job = job(net, width);
    Read read = read(PngWriter.ofNet().write(job));
    assertThat(read.pixels.getWidth()).isEqualTo(width);
    int[] columns = read.columns();
    int seen = columns[1] + 1 - columns[0];
    // Half a line on each side belongs to what is seen: 0.35 mm at four pixels to the mm at least.
    double pen = Math.max(4, width / Math.max(75, job.laid().net().box().width() + 2));
    double wide = job.laid().net().box().width() * read.perMetre / 1000;
    assertThat((double) seen).isCloseTo(wide + 0.35 * pen, within(2.0));
    assertThat(read.mm(read.pixels.getHeight()) / read.mm(width))
        .isCloseTo(
            (job.laid().net().box().height() * read.perMetre / 1000 + 2 * pen) / width,
            within(1.01 / width));
  }

  /** Ground, windows and holes are transparent; card is not. */
  @ParameterizedTest
  @ValueSource(ints = {300, 1200})
  void whatIsCutAwayIsTransparent(int width) throws Exception {
    Job job = job(Papers.tray(60, 20), width);
    Read read = read(PngWriter.ofNet().write(job));
    assertThat(read.pixels.getColorModel().hasAlpha()).isTrue();
    assertThat(read.pixels.getRGB(0, 0)).isZero();
    assertThat(read.pixels.getRGB(width - 1, read.pixels.getHeight() - 1)).isZero();
    int[] counts = new int[2];
    Net net = job.laid().net();
    for (Panel panel : net.panels()) {
      for (Opening opening : panel.openings()) {
        // Beside the cross that marks the middle of a hole.
        Vec2 at = opening.outline().centroid().plus(new Vec2(1.6, 1.6));
        assertThat(read.alpha(at, net)).isZero();
        counts[0]++;
      }
      if (panel.openings().isEmpty()) {
        assertThat(read.alpha(panel.outline().centroid(), net)).isEqualTo(255);
        counts[1]++;
      }
    }
    assertThat(counts[0]).isEqualTo(2);
    assertThat(counts[1]).isPositive();
  }

  /** However small a picture, its cuts are dark and its letters have pixels enough. */
  @ParameterizedTest
  @ValueSource(ints = {300, 4000})
  void linesAndTypeAreLegible(int width) throws Exception {
    Read net = read(PngWriter.ofNet().write(job(Papers.tray(110, 50), width)));
    Read form = read(PngWriter.ofForm().write(job(Papers.cube(110, 25), width)));
    for (Read read : List.of(net, form)) {
      int middle = read.pixels.getHeight() / 2;
      int darkest = 255;
      for (int x = 0; x < width; x++) {
        darkest = Math.min(darkest, read.pixels.getRGB(x, middle) & 0xFF);
      }
      // Of the ink's 40, at a line half a pixel off the pixels.
      assertThat(darkest).isLessThan(110);
    }
    // The names' grey stands at full strength somewhere, so that strokes are a pixel wide.
    boolean isWritten = false;
    for (int y = 0; y < net.pixels.getHeight(); y++) {
      for (int x = 0; x < width; x++) {
        int rgb = net.pixels.getRGB(x, y);
        isWritten |= Math.abs((rgb >> 16 & 0xFF) - 0x6B) < 40 && Math.abs((rgb & 0xFF) - 0x62) < 40;
      }
    }
    assertThat(isWritten).isTrue();
  }

  /** Each part of the file says its length, its kind and the check of both (5.3 of the W3C's). */
  @Test
  void partsAreAsTheFormatHasThem() throws Exception {
    byte[] file = PngWriter.ofForm().write(job(Papers.cube(60, 15), 500));
    List<String> kinds = new ArrayList<>();
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(file))) {
      assertThat(in.readNBytes(8)).containsExactly(137, 80, 78, 71, 13, 10, 26, 10);
      while (in.available() > 0) {
        byte[] data = new byte[in.readInt()];
        byte[] kind = in.readNBytes(4);
        in.readFully(data);
        CRC32 check = new CRC32();
        check.update(kind);
        check.update(data);
        assertThat(in.readInt()).isEqualTo((int) check.getValue());
        kinds.add(new String(kind, StandardCharsets.US_ASCII));
      }
    }
    assertThat(kinds).containsExactly("IHDR", "pHYs", "iTXt", "IDAT", "IEND");
  }

  @Test
  void aPictureThatWouldBeTooHighIsRefusedWithTheWidthThatGoes() {
    NetDraft draft = new NetDraft();
    draft.panel("strip", PanelRole.FACET, Polygon2.rectangle(0, 0, 40, 400).corners(), Site.NONE);
    Laid laid = Papers.at(draft.build(), Papers.A2, 10, 10);
    Order order = Order.usual(Unit.MM);
    Job wide = Jobs.of("Strip", "", laid, Folding.fold(laid.net()), order.wide(10_000));
    assertThatThrownBy(() -> PngWriter.ofNet().write(wide))
        .isInstanceOf(ExportException.class)
        .hasMessageMatching(
            "Picture of the net: 10000 pixels wide, it would be 9\\d{4} high, which is too much for"
                + " one picture\\. Ask for 4\\d{3} pixels or fewer\\.");
    Job fits = Jobs.of("Strip", "", laid, Folding.fold(laid.net()), order.wide(100));
    assertThat(PngWriter.ofNet().files(fits)).containsOnlyKeys("strip-net.png");
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 99, 10_001, Integer.MAX_VALUE})
  void widthsOutOfRangeAreNoOrder(int pixels) {
    assertThatThrownBy(() -> Order.usual(Unit.MM).wide(pixels))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("pictures are 100 to 10000 pixels wide, not " + pixels);
  }
}
