package facetwright.net.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.net.Net;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** What a piece covers is what its panels cover together: held against JTS's union of them. */
class PieceOutlineTest {
  static List<Path> library() {
    return LibraryDesigns.files();
  }

  @ParameterizedTest
  @MethodSource("library")
  void asItsPanelsInTheLibrary(Path file) throws ScriptException {
    hold(LibraryDesigns.design(file).net());
  }

  @Property(tries = 60, seed = "20261201")
  void asItsPanelsOfRandomForms(
      @ForAll @IntRange(min = 3, max = 12) int sides,
      @ForAll @DoubleRange(min = 15, max = 40) double side,
      @ForAll @DoubleRange(min = 15, max = 60) double height,
      @ForAll @IntRange(min = 0, max = 3) int way)
      throws ScriptException {
    String form =
        switch (way) {
          case 0 -> "prism({ sides: %1$d, side: %2$f, height: %3$f })";
          case 1 -> "antiprism({ sides: %1$d, side: %2$f, height: %3$f })";
          case 2 -> "pyramid({ sides: %1$d, side: %2$f, height: %3$f })";
          default -> "bipyramid({ sides: %1$d, side: %2$f, height: 2 * %3$f })";
        };
    hold(net(String.format(Locale.ROOT, form, sides, side, height) + ".unfold()"));
  }

  /** Card missing in the midst, and a border that meets itself along a slit. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "wrap({ columns: 6, width: 20, rows: [20, 30, 20] })",
        "const map = blank({ width: 120, height: 60 }); for (const at of [40, 80])"
            + " map.score({ from: 'left', at, fold: 90 }); map.score({ from: 'bottom', at: 30,"
            + " fold: 90 }).cut({ from: 'bottom', at: 30, between: [40, 80] });",
        "const cross = blank({ width: 90, height: 90 }); for (const from of ['left', 'right',"
            + " 'top', 'bottom']) cross.score({ from, at: 30, fold: 90 }); cross.waste([45, 45]);",
      })
  void asItsPanelsWhereTheBorderIsNoPlainRing(String script) throws ScriptException {
    hold(net(script));
  }

  private static Net net(String script) throws ScriptException {
    return Facetwright.evaluate("test.js", "design(\"Test\"); " + script, Map.of(), Budget.USUAL)
        .net();
  }

  private static void hold(Net net) {
    int[] piece = net.pieceOfPanel();
    List<Geometry> outlines = PieceOutline.all(net);
    assertThat(outlines).hasSize(net.pieces());
    for (int n = 0; n < outlines.size(); n++) {
      int number = n;
      List<Polygon2> panels =
          IntStream.range(0, piece.length)
              .filter(p -> piece[p] == number)
              .mapToObj(p -> net.panels().get(p).outline())
              .toList();
      Geometry apart =
          OverlayNGRobust.overlay(outlines.get(n), Planar.union(panels), OverlayNG.SYMDIFFERENCE);
      // To what two sides of a score may lie apart along all of them.
      assertThat(apart.getArea()).isLessThan(1e-6 * outlines.get(n).getLength());
    }
  }
}
