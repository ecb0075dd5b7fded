package facetwright.papers.layers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Layer;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.words.Site;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Insets by known sizes, and against the buffers of the plane-geometry library. */
class InsetTest {
  private static final double INCH = 25.4;

  static Panel panel(Polygon2 outline, Opening... openings) {
    return new Panel("panel", PanelRole.FACET, outline, List.of(openings), Site.NONE);
  }

  private static Polygon region(Inset inset) {
    return Planar.polygon(inset.outline(), inset.windows());
  }

  private static Geometry buffer(Panel panel, double reveal) {
    BufferParameters sharp = new BufferParameters(8);
    sharp.setJoinStyle(BufferParameters.JOIN_MITRE);
    sharp.setMitreLimit(20);
    return BufferOp.bufferOp(panel.region(), -reveal, sharp);
  }

  /** Common practice, no source: the reveal is 1/16 in a side. */
  @Test
  void aSixteenthOfAnInchASide() {
    Panel panel = panel(Polygon2.rectangle(3, 4, 1.25 * INCH, 2.5 * INCH));
    Inset inset = Inset.of(panel, INCH / 16).getFirst();
    assertThat(inset.outline().box().width()).isCloseTo(1.125 * INCH, within(1e-12));
    assertThat(inset.outline().box().height()).isCloseTo(2.375 * INCH, within(1e-12));
    assertThat(inset.outline().size()).isEqualTo(4);
  }

  @Test
  void windowsGrowByTheReveal() {
    Polygon2 window = Polygon2.rectangle(20, 20, 10, 15);
    Panel panel = panel(Polygon2.rectangle(0, 0, 60, 50), new Opening.Window(window, Site.NONE));
    Inset inset = Inset.of(panel, 2).getFirst();
    assertThat(inset.windows()).hasSize(1);
    assertThat(inset.windows().getFirst().area()).isCloseTo(14.0 * 19, within(1e-9));
    assertThat(inset.area()).isCloseTo(56.0 * 46 - 14 * 19, within(1e-9));
  }

  @Test
  void aHoleGrowsByTheReveal() {
    Panel panel =
        panel(Polygon2.rectangle(0, 0, 60, 50), new Opening.Hole(new Vec2(30, 25), 3, Site.NONE));
    Inset inset = Inset.of(panel, 2).getFirst();
    assertThat(inset.windows().getFirst().area()).isCloseTo(Math.PI * 3.5 * 3.5, within(0.2));
  }

  @Test
  void aWindowNearTheEdgeBecomesANotch() {
    Polygon2 window = Polygon2.rectangle(20, 3, 10, 15);
    Panel panel = panel(Polygon2.rectangle(0, 0, 60, 50), new Opening.Window(window, Site.NONE));
    Inset inset = Inset.of(panel, 2).getFirst();
    assertThat(inset.windows()).isEmpty();
    assertThat(inset.outline().size()).isEqualTo(8);
    assertThat(inset.area()).isCloseTo(56.0 * 46 - 14 * 18, within(1e-9));
  }

  @Test
  void aNeckPartsThePanelInTwo() {
    Polygon2 bone =
        new Polygon2(
            List.of(
                new Vec2(0, 0),
                new Vec2(20, 0),
                new Vec2(20, 9),
                new Vec2(30, 9),
                new Vec2(30, 0),
                new Vec2(50, 0),
                new Vec2(50, 20),
                new Vec2(30, 20),
                new Vec2(30, 11),
                new Vec2(20, 11),
                new Vec2(20, 20),
                new Vec2(0, 20)));
    assertThat(Inset.of(panel(bone), 2)).hasSize(2).allMatch(i -> Math.abs(i.area() - 256) < 1e-6);
    assertThat(Inset.of(panel(bone), 10)).isEmpty();
  }

  @Property(seed = "20261125", tries = 300)
  void convexPanelsAgainstBuffers(
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = 0, max = 12) double reveal) {
    Panel panel = panel(Shapes.convex(corners, seed));
    List<Inset> insets = Inset.of(panel, reveal);
    Geometry expected = buffer(panel, reveal);
    if (insets.isEmpty()) {
      // Nothing is left that a circle of half a millimetre goes into.
      assertThat(buffer(panel, reveal + Layer.NARROWEST / 2 + 1e-5).isEmpty()).isTrue();
      return;
    }
    double area = insets.stream().mapToDouble(Inset::area).sum();
    assertThat(area).isCloseTo(expected.getArea(), within(1e-3));
    for (Inset inset : insets) {
      Geometry edge = panel.region().getExteriorRing();
      for (Vec2 corner : inset.outline().corners()) {
        var point = Planar.factory().createPoint(Planar.coordinate(corner));
        assertThat(edge.distance(point)).isCloseTo(reveal, within(1e-6));
      }
    }
  }

  @Property(seed = "20261125", tries = 150)
  void anyPanelAgainstBuffers(
      @ForAll @IntRange(min = 4, max = 14) int corners,
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = 0.1, max = 4) double reveal) {
    Panel panel = panel(Shapes.star(corners, seed));
    List<Inset> insets = Inset.of(panel, reveal);
    double area = insets.stream().mapToDouble(Inset::area).sum();
    // The buffer may leave out a corner nearer to its neighbours than a hundredth of the reveal.
    assertThat(area).isCloseTo(buffer(panel, reveal).getArea(), within(0.02 * reveal * 60));
    for (Inset inset : insets) {
      // No point is nearer to the edge of the panel than the reveal, but for the half of a percent
      // within which the library closes its curves.
      assertThat(region(inset).distance(panel.region().getExteriorRing()))
          .isGreaterThanOrEqualTo(0.995 * reveal);
    }
  }
}
