package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.NetDrawing;
import facetwright.fold.Folding;
import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.papers.order.Order;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The tiles as a printer of other people's making sets them, laid on each other by the shared
 * strip: every straight cut of the net is where the net has it, to 0.2 mm.
 */
class TilesOnPaperTest {
  private static final int DPI = 300;
  private static final double PIXEL = 25.4 / DPI;

  /** What the key page tells a maker: the edge left white, the strip below, the strip shared. */
  private static final double WHITE = 9;

  private static final double FOOT = 17;
  private static final double SHARED = 10;

  /** How far across a line is looked, and how far from its ends, in mm. */
  private static final double ACROSS = 0.8;

  private static final double ENDS = 4;

  private static final Laid LAID = SheetLayout.lay(Papers.tray(190, 90), Papers.A2, new Room(5, 2));

  @TempDir private Path folder;

  /** One page as printed, and where its lower left corner lies on the sheet, in mm. */
  private record Page(BufferedImage picture, Vec2 corner) {
    boolean shows(Vec2 at) {
      double x = at.x() - corner.x();
      double y = at.y() - corner.y();
      return x > WHITE + 1
          && y > WHITE + FOOT + 1
          && x < picture.getWidth() * PIXEL - WHITE - 1
          && y < picture.getHeight() * PIXEL - WHITE - 1;
    }

    boolean isDark(Vec2 at) {
      int x = (int) ((at.x() - corner.x()) / PIXEL);
      int y = picture.getHeight() - 1 - (int) ((at.y() - corner.y()) / PIXEL);
      return (picture.getRGB(x, y) & 0xFF) < 110;
    }
  }

  private List<Page> pages(Box2 outer) throws IOException {
    Job job = Jobs.of("Tray", "", LAID, Folding.fold(LAID.net()), Order.usual(Unit.MM));
    Path pdf = folder.resolve("tiles.pdf");
    Files.write(pdf, TilesWriter.ofOutside().write(job));
    Outside.render(pdf, DPI, folder.resolve("page"));
    List<BufferedImage> pictures = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".png")).sorted().toList()) {
        pictures.add(ImageIO.read(file.toFile()));
      }
    }
    double wide = pictures.getLast().getWidth() * PIXEL - 2 * WHITE;
    double high = pictures.getLast().getHeight() * PIXEL - 2 * WHITE - FOOT;
    int columns = count(outer.width() + 4, wide);
    int rows = count(outer.height() + 4, high);
    // The key has a page of its own where none of them has room for it.
    assertThat(pictures.size() - rows * columns).isBetween(0, 1);
    List<BufferedImage> tiles = pictures.subList(pictures.size() - rows * columns, pictures.size());
    double left = outer.centre().x() - (columns * wide - (columns - 1) * SHARED) / 2;
    double top = outer.centre().y() + (rows * high - (rows - 1) * SHARED) / 2;
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < tiles.size(); i++) {
      double x = left + i % columns * (wide - SHARED);
      double y = top - Math.floorDiv(i, columns) * (high - SHARED);
      pages.add(new Page(tiles.get(i), new Vec2(x - WHITE, y - high - WHITE - FOOT)));
    }
    return pages;
  }

  private static int count(double all, double window) {
    return 1 + (int) Math.max(0, Math.ceil((all - window) / (window - SHARED)));
  }

  @Test
  void putTogetherEveryCutIsInItsPlace() throws IOException {
    List<Mark.Stroke> cuts =
        NetDrawing.of(LAID, 0, NetDrawing.TEMPLATE).marks().stream()
            .filter(m -> m instanceof Mark.Stroke s && s.kind() == LineKind.CUT)
            .map(Mark.Stroke.class::cast)
            .toList();
    List<Page> pages = pages(Box2.around(cuts.stream().flatMap(s -> s.points().stream()).toList()));
    int looked = 0;
    int seen = 0;
    int twice = 0;
    for (Mark.Stroke cut : cuts) {
      int sides = cut.points().size() - (cut.closed() ? 0 : 1);
      for (int i = 0; i < sides; i++) {
        Vec2 from = cut.points().get(i);
        Vec2 to = cut.points().get((i + 1) % cut.points().size());
        double length = from.distance(to);
        for (double s = ENDS; s < length - ENDS; s += 7) {
          Vec2 along = to.minus(from).times(1 / length);
          Vec2 at = from.plus(along.times(s));
          List<Page> here = pages.stream().filter(p -> p.shows(at)).toList();
          for (Page page : here) {
            double off = off(page, at, new Vec2(-along.y(), along.x()));
            if (!Double.isNaN(off)) {
              assertThat(off).as(at + " of a cut").isCloseTo(0, within(0.2));
              seen++;
            }
          }
          looked += here.size();
          twice += here.size() > 1 ? 1 : 0;
        }
      }
    }
    assertThat(seen).isGreaterThan(100).isGreaterThan(looked * 9 / 10);
    assertThat(twice).isPositive();
  }

  /**
   * How far the middle of the line printed lies to the left of where it should; NaN where another
   * line or a round mark crosses it there.
   */
  private static double off(Page page, Vec2 at, Vec2 left) {
    double nearest = Double.NaN;
    for (double d = 0; d <= ACROSS && Double.isNaN(nearest); d += PIXEL / 2) {
      if (page.isDark(at.plus(left.times(d)))) {
        nearest = d;
      } else if (page.isDark(at.plus(left.times(-d)))) {
        nearest = -d;
      }
    }
    assertThat(nearest).as(at + " of a cut is printed").isNotNaN();
    double low = end(page, at, left, nearest, -PIXEL / 2);
    double high = end(page, at, left, nearest, PIXEL / 2);
    return high - low > ACROSS ? Double.NaN : (low + high) / 2;
  }

  private static double end(Page page, Vec2 at, Vec2 left, double from, double step) {
    double d = from;
    while (Math.abs(d) < 2 * ACROSS && page.isDark(at.plus(left.times(d + step)))) {
      d += step;
    }
    return d;
  }
}
