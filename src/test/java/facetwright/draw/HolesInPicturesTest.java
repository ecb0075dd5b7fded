package facetwright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.picture.Scaling;
import facetwright.fold.Folding;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Sense;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.FlapShape;
import facetwright.net.panel.Hinge;
import facetwright.net.panel.PanelBuild;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A hole in a picture is one line round, and as round as can be seen. */
class HolesInPicturesTest {
  private static final Site AT = new Site(3, 1);

  private static Net pricked(int holes) {
    PanelBuild build = new PanelBuild();
    CardPanel panel = build.rectangle("sieve", 100, 100, AT);
    panel.attach(
        "flap",
        "top",
        new FlapShape.Tapered(20, 0),
        Hinge.whole(Sense.MOUNTAIN, FoldAngle.degrees(90)),
        AT);
    for (int i = 0; i < holes; i++) {
      panel.hole(2, new Vec2(i % 10 * 9 - 40, Math.floorDiv(i, 10) * 9 - 40), AT);
    }
    return build.build();
  }

  @Test
  void eachHoleIsOneStroke() {
    Net net = pricked(60);
    FoldedDrawing drawing = new FoldedDrawing(net, Folding.fold(net).poses(), true);
    List<Mark.Stroke> edges =
        drawing.seen(Viewpoint.USUAL).stream().flatMap(p -> p.edges().stream()).toList();
    // The panel and the flap are cut on three sides each and folded on the one they share.
    assertThat(edges.stream().filter(Mark.Stroke::closed)).hasSize(60);
    assertThat(edges.stream().filter(e -> e.kind() == LineKind.FOLDED)).hasSize(2);
    assertThat(edges).hasSize(64);
  }

  /** Every corner of the card is still on a line, every side drawn once. */
  @Test
  void noEdgeIsLost() {
    Net net = pricked(12);
    FoldedDrawing drawing = new FoldedDrawing(net, Folding.fold(net).poses(), true);
    double drawn =
        drawing.seen(new Viewpoint(-Math.PI / 2, Math.PI / 2)).stream()
            .flatMap(p -> p.edges().stream())
            .mapToDouble(HolesInPicturesTest::length)
            .sum();
    double hole = 48 * 2 * Math.tan(Math.PI / 48);
    // The flap stands upright and is not seen from above.
    assertThat(drawn).isBetween(400 + 12 * hole - 1e-3, 400 + 12 * hole + 1e-3);
  }

  private static double length(Mark.Stroke stroke) {
    List<Vec2> points = new ArrayList<>(stroke.points());
    if (stroke.closed()) {
      points.add(points.getFirst());
    }
    double length = 0;
    for (int i = 0; i + 1 < points.size(); i++) {
      length += points.get(i).distance(points.get(i + 1));
    }
    return length;
  }

  private static double off(Vec2 place, List<Vec2> ring) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i < ring.size(); i++) {
      Segment2 side = new Segment2(ring.get(i), ring.get((i + 1) % ring.size()));
      least = Math.min(least, side.distance(place));
    }
    return least;
  }

  /** Rings of all sizes, round and ragged, full size and made small. */
  @Property(tries = 200)
  void noCornerLeftOutIsSeen(@ForAll @IntRange(max = 1_000_000) int seed) {
    Random random = new Random(seed);
    double radius = Math.pow(10, -3 + 5 * random.nextDouble());
    int sides = 3 + random.nextInt(120);
    double ragged = random.nextBoolean() ? 0 : random.nextDouble() / 2;
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double r = radius * (1 - ragged * random.nextDouble());
      corners.add(Vec2.polar(r, 2 * Math.PI * i / sides));
    }
    double factor = 0.05 + 0.95 * random.nextDouble();
    Polygon2 ring = new Polygon2(corners);
    Mark.Fill fill =
        (Mark.Fill)
            new Scaling(factor).of(List.of(new Mark.Fill(List.of(ring), FillKind.CARD))).getFirst();
    List<Vec2> kept = fill.rings().getFirst().corners();
    assertThat(kept.size()).isLessThanOrEqualTo(sides);
    for (Vec2 corner : corners) {
      assertThat(off(corner.times(factor), kept)).isLessThan(0.0101);
    }
  }

  /** A pin hole of a small picture has a dozen corners, not 48. */
  @Test
  void pinHolesHaveFewCorners() {
    Opening.Hole hole = new Opening.Hole(new Vec2(20, 20), 1.5, AT);
    Mark.Stroke stroke =
        (Mark.Stroke)
            new Scaling(0.5)
                .of(List.of(Mark.Stroke.around(hole.outline(), LineKind.CUT)))
                .getFirst();
    assertThat(stroke.points()).hasSizeBetween(8, 18);
  }
}
