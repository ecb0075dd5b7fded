package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.FillKind;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
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
import facetwright.net.sheet.SheetLayout;
import facetwright.papers.order.Order;
import facetwright.words.Site;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
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
    Laid laid = SheetLayout.lay(net, Papers.A2, 5, 2);
    return new Job(
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
    assertThat(kinds).containsExactly("IHDR", "pHYs", "IDAT", "IEND");
  }

  /** Java draws the same lines and areas, with other samples. */
  @Test
  void anotherRasterGivesTheSame() {
    int size = 240;
    double scale = 4;
    Random random = new Random(5);
    List<Mark> marks = new ArrayList<>();
    BufferedImage other = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
    Graphics2D on = other.createGraphics();
    on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    on.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    on.translate(0, size);
    on.scale(scale, -scale);
    for (int i = 0; i < 12; i++) {
      double x = 5 + 50 * random.nextDouble();
      double y = 5 + 50 * random.nextDouble();
      FillKind fill = FillKind.values()[i % FillKind.values().length];
      Polygon2 ring = Polygon2.regular(new Vec2(x, y), 3 + i % 4, 4, random.nextDouble());
      marks.add(new Mark.Fill(List.of(ring), fill));
      Path2D path = new Path2D.Double();
      path.moveTo(ring.corner(0).x(), ring.corner(0).y());
      ring.corners().forEach(c -> path.lineTo(c.x(), c.y()));
      path.closePath();
      on.setColor(new Color(fill.ink().rgb()));
      on.fill(path);
      LineKind kind = LineKind.values()[i % LineKind.values().length];
      Vec2 to = new Vec2(60 * random.nextDouble(), 60 * random.nextDouble());
      marks.add(Mark.Stroke.line(new Vec2(x, y), to, kind));
      float[] dashes = new float[kind.dashes().size()];
      for (int k = 0; k < dashes.length; k++) {
        dashes[k] = kind.dashes().get(k).floatValue();
      }
      on.setStroke(
          new BasicStroke(
              (float) kind.width(),
              BasicStroke.CAP_BUTT,
              BasicStroke.JOIN_ROUND,
              1,
              dashes.length == 0 ? null : dashes,
              0));
      on.setColor(new Color(kind.ink().rgb()));
      on.draw(new Line2D.Double(x, y, to.x(), to.y()));
    }
    on.dispose();
    Raster raster = new Raster(size, size, scale, scale, Vec2.ZERO);
    raster.paint(marks);
    long apart = 0;
    int seen = 0;
    for (int y = 0; y < size; y++) {
      byte[] row = raster.row(y);
      for (int x = 0; x < size; x++) {
        int alpha = other.getRGB(x, y) >>> 24;
        int difference = Math.abs(alpha - (row[4 * x + 3] & 0xFF));
        assertThat(difference).as(x + ", " + y).isLessThan(72);
        apart += difference;
        seen += alpha > 0 ? 1 : 0;
      }
    }
    assertThat(seen).isGreaterThan(5000);
    assertThat((double) apart / seen).isLessThan(2);
  }

  /** Where two areas touch, no ground shines through, whatever way their border runs. */
  @Test
  void touchingAreasHaveNoSeam() {
    Random random = new Random(3);
    for (int i = 0; i < 50; i++) {
      double a = 60 * random.nextDouble();
      double b = 60 * random.nextDouble();
      Polygon2 left =
          Polygon2.ofEitherSense(
              List.of(new Vec2(0, 0), new Vec2(a, 0), new Vec2(b, 60), new Vec2(0, 60)));
      Polygon2 right =
          Polygon2.ofEitherSense(
              List.of(new Vec2(a, 0), new Vec2(60, 0), new Vec2(60, 60), new Vec2(b, 60)));
      Raster raster = new Raster(60, 60, 1, 1, Vec2.ZERO);
      raster.paint(
          List.of(
              new Mark.Fill(List.of(left), FillKind.CARD),
              new Mark.Fill(List.of(right), FillKind.CARD)));
      for (int y = 0; y < 60; y++) {
        byte[] row = raster.row(y);
        for (int x = 0; x < 60; x++) {
          assertThat(row[4 * x + 3]).isEqualTo((byte) 255);
        }
      }
    }
  }

  /** What is drawn twice over counts as inside for lines, and as outside for areas with holes. */
  @Test
  void ringsInsideRingsAreHoles() {
    Raster raster = new Raster(40, 40, 1, 1, Vec2.ZERO);
    raster.paint(
        List.of(
            new Mark.Fill(
                List.of(Polygon2.rectangle(2, 2, 36, 36), Polygon2.rectangle(10, 10, 20, 20)),
                FillKind.GLUE)));
    byte[] row = raster.row(20);
    assertThat(row[4 * 5 + 3]).isEqualTo((byte) 255);
    assertThat(row[4 * 20 + 3]).isZero();
  }

  @Test
  void aPictureThatWouldBeTooHighIsRefusedWithTheWidthThatGoes() {
    NetDraft draft = new NetDraft();
    draft.panel("strip", PanelRole.FACET, Polygon2.rectangle(0, 0, 40, 400).corners(), Site.NONE);
    Laid laid = Papers.at(draft.build(), Papers.A2, 10, 10);
    Order order = Order.usual(Unit.MM);
    Job wide = new Job("Strip", "", laid, Folding.fold(laid.net()), order.wide(10_000));
    assertThatThrownBy(() -> PngWriter.ofNet().write(wide))
        .isInstanceOf(ExportException.class)
        .hasMessageMatching(
            "Picture of the net: 10000 pixels wide, it would be 9\\d{4} high, which is too much for"
                + " one picture\\. Ask for 4\\d{3} pixels or fewer\\.");
    Job fits = new Job("Strip", "", laid, Folding.fold(laid.net()), order.wide(100));
    assertThat(PngWriter.ofNet().files(fits)).containsOnlyKeys("net.png");
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 99, 10_001, Integer.MAX_VALUE})
  void widthsOutOfRangeAreNoOrder(int pixels) {
    assertThatThrownBy(() -> Order.usual(Unit.MM).wide(pixels))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("pictures are 100 to 10000 pixels wide, not " + pixels);
  }
}
