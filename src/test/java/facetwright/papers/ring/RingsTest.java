package facetwright.papers.ring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Folding;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.touch.Collision;
import facetwright.fold.touch.Collisions;
import facetwright.form.Form;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.Tabs;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class RingsTest {
  private record Piece(Net net, FoldedForm form, Rings rings) {
    static Piece of(Form form) {
      Net net = new Nets(form, Unfolding.as(UnfoldStyle.STRIP).with(Tabs.NONE)).on(0, 0).net();
      FoldedForm folded = Folding.fold(net);
      return new Piece(net, folded, Rings.of(net, folded));
    }
  }

  static IntStream counts() {
    return IntStream.rangeClosed(3, 12);
  }

  /** The outline of a piece seen from above, at its place in the ring. */
  private static Geometry plan(Piece piece, Motion3 place) {
    List<Coordinate> corners = new ArrayList<>();
    for (int p = 0; p < piece.net.panels().size(); p++) {
      for (Vec3 corner : piece.form.corners(piece.net, p)) {
        Vec3 c = place.apply(corner);
        corners.add(Planar.coordinate(new Vec2(c.x(), c.y())));
      }
    }
    return Planar.factory()
        .createMultiPointFromCoords(corners.toArray(Coordinate[]::new))
        .convexHull();
  }

  /** How long two outlines run along each other, to 1/1000 mm. */
  private static double contact(Geometry a, Geometry b) {
    return a.buffer(1e-3).intersection(b.getBoundary()).getLength();
  }

  /**
   * A regular piece of m upright sides of 40 mm, stood in a ring of n and measured in plan:
   * neighbours run along each other for a whole side just where sides k apart make the angle 180° −
   * 360°/n, that is where 360 k/m + 360/n = 180 for a whole k. No copy lies on another.
   */
  @ParameterizedTest
  @MethodSource("counts")
  void seatsFlushJustWhereTheAnglesSay(int count) {
    List<Integer> byAngle = new ArrayList<>();
    List<Integer> byPlacing = new ArrayList<>();
    for (int sides = 3; sides <= 24; sides++) {
      for (int k = 1; k < sides; k++) {
        if (Math.abs(360.0 * k / sides + 360.0 / count - 180) < 1e-9) {
          byAngle.add(sides);
        }
      }
      Piece piece = Piece.of(Solids.prismBySide(sides, 40, 30));
      List<RingPlan> plans =
          piece.rings.plans(count).stream().filter(p -> p.seating().tippedDegrees() < 1).toList();
      if (plans.isEmpty()) {
        continue;
      }
      RingPlan best = plans.getFirst();
      List<Geometry> outlines = best.copies().stream().map(c -> plan(piece, c)).toList();
      for (int i = 1; i < count; i++) {
        assertThat(outlines.getFirst().intersection(outlines.get(i)).getArea())
            .as(sides + " sides, ring of " + count + ", copy " + i)
            .isLessThan(0.01);
      }
      double met = contact(outlines.get(0), outlines.get(1));
      if (best.seating().isFlush()) {
        assertThat(met).isCloseTo(40, within(0.1));
        byPlacing.add(sides);
      } else {
        assertThat(met).as(sides + " sides, ring of " + count).isLessThan(20);
      }
    }
    assertThat(byPlacing).isEqualTo(byAngle).isEqualTo(SideCounts.flush(count, 24));
  }

  /** Six regular hexagons round one: inner circle of the ring 2 · 40 · cos 30°, outer 2 · √(…). */
  @Test
  void hexagonsRoundAHexagon() {
    Piece piece = Piece.of(Solids.prismBySide(6, 40, 30));
    RingPlan plan = piece.rings.plans(6).getFirst();
    assertThat(plan.seating().isFlush()).isTrue();
    assertThat(plan.seating().normalsDegrees()).isCloseTo(120, within(1e-6));
    assertThat(plan.inner()).isCloseTo(2 * 40 * Math.sqrt(3) / 2, within(1e-6));
    // A far corner of a neighbour: its middle is 40√3 away, its corner a side farther at 30° to it.
    double far = Math.hypot(40 * Math.sqrt(3) + 40 * Math.cos(Math.PI / 6), 20);
    assertThat(plan.outer()).isCloseTo(2 * far, within(1e-6));
    assertThat(plan.seating().contact()).isCloseTo(40 * 30, within(1e-6));
    assertThat(plan.glued()).isCloseTo(6 * 40 * 30, within(1e-6));
    assertThat(plan.height()).isCloseTo(30, within(1e-6));
  }

  /** Octagons with opposite sides seated: eight take 0° each, so each spacer is a wedge of 45°. */
  @Test
  void theSpacerFillsWhatThePieceLeaves() {
    Piece piece = Piece.of(Solids.prismBySide(4, 40, 30));
    RingPlan plan = piece.rings.plans(8).getFirst();
    Spacer spacer = plan.seating().spacer().orElseThrow();
    assertThat(plan.seating().normalsDegrees()).isCloseTo(180, within(1e-6));
    assertThat(spacer.degrees()).isCloseTo(45, within(1e-6));
    assertThat(spacer.length()).isCloseTo(40, within(1e-6));
    assertThat(spacer.inner()).isCloseTo(0, within(1e-6));
    // Base of a triangle of two sides of 40 mm with 45° between them.
    assertThat(spacer.outer()).isCloseTo(2 * 40 * Math.sin(Math.toRadians(22.5)), within(1e-6));
    // Squares of 40 mm that touch at their inner corners: these make a regular octagon of side 40.
    assertThat(plan.inner()).isCloseTo(40 / Math.tan(Math.PI / 8), within(1e-6));
    assertThat(plan.glued()).isCloseTo(8 * 2 * 40 * 30, within(1e-6));
  }

  /**
   * Placed forms only touch, whether upright or tipped, flush or with spacers: no panel of one copy
   * goes through one of another.
   */
  @ParameterizedTest
  @CsvSource({"6, 3", "6, 6", "6, 8", "8, 8", "5, 10", "8, 4", "7, 5", "4, 12"})
  void copiesOnlyTouch(int sides, int count) {
    for (Form form :
        List.of(
            Solids.prismBySide(sides, 40, 30),
            Solids.frustumBySide(sides, 40, 25, 30),
            Solids.antiprismBySide(sides, 30, 40),
            Solids.bipyramidBySide(sides, 30, 50))) {
      Piece piece = Piece.of(form);
      for (RingPlan plan : piece.rings.plans(count)) {
        List<Motion3> poses = new ArrayList<>();
        plan.copies().forEach(c -> piece.form.poses().forEach(p -> poses.add(p.then(c))));
        Net all = NetMerge.of(Collections.nCopies(count, piece.net));
        assertThat(Collisions.of(all, poses))
            .as(plan.toString())
            .noneMatch(c -> c.kind() == Collision.Kind.PASSING && c.depth() > 0.1);
        double low =
            IntStream.range(0, poses.size())
                .boxed()
                .flatMap(
                    p ->
                        all.panels().get(p).outline().corners().stream()
                            .map(c -> poses.get(p).apply(c)))
                .mapToDouble(Vec3::z)
                .min()
                .orElseThrow();
        assertThat(low).isCloseTo(0, within(1e-9));
      }
    }
  }

  /**
   * The cap between two leaning sides of a frustum: a square frustum whose opposite sides lean
   * 22.5° each makes 45° between them, an eighth of a circle; it seats tipped right over.
   */
  @Test
  void leaningSidesSeatTipped() {
    double in = 30 * Math.tan(Math.toRadians(22.5));
    Piece piece = Piece.of(Solids.frustumBySide(4, 60, 60 - 2 * in, 30));
    RingPlan plan = piece.rings.plans(8).getFirst();
    assertThat(plan.seating().isFlush()).isTrue();
    assertThat(plan.seating().tippedDegrees()).isCloseTo(90, within(1e-6));
    assertThat(piece.rings.flushCounts()).contains(8);
  }

  /**
   * Best ways and standing ones: none of the latter is tipped, and flush counts are those planned.
   */
  @ParameterizedTest
  @CsvSource({"5, 20, 40", "6, 17, 33", "8, 25, 60", "9, 31, 22"})
  void flushCountsAreThosePlannedSo(int sides, double side, double tall) {
    for (Form form :
        List.of(Solids.prismBySide(sides, side, tall), Solids.bipyramidBySide(sides, side, tall))) {
      Rings all = Piece.of(form).rings;
      for (Rings rings : List.of(all, all.standing())) {
        for (int count = 3; count <= 24; count++) {
          List<RingPlan> plans = rings.plans(count);
          assertThat(!plans.isEmpty() && plans.getFirst().seating().isFlush())
              .isEqualTo(rings.flushCounts().contains(count));
        }
      }
      assertThat(all.standing().plans(12)).allMatch(p -> p.seating().isUpright());
    }
  }

  @Test
  void tabsAreNoSeats() {
    Net net =
        new Nets(Solids.prismBySide(6, 40, 30), Unfolding.as(UnfoldStyle.STRIP).with(Tabs.deep(6)))
            .on(0, 0)
            .net();
    RingPlan plan = Rings.of(net, Folding.fold(net)).plans(6).getFirst();
    assertThat(plan.seating().one()).allMatch(p -> net.panels().get(p).role() == PanelRole.FACET);
  }

  @Test
  void refusesCountsThatAreNoRing() {
    Rings rings = Piece.of(Solids.box(30, 30, 30)).rings;
    assertThatThrownBy(() -> rings.plans(2)).hasMessageContaining("3 to 72");
    assertThatThrownBy(() -> rings.plans(73)).hasMessageContaining("3 to 72");
  }
}
