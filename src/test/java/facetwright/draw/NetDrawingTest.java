package facetwright.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.export.Papers;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class NetDrawingTest {
  private static double length(Drawing drawing, LineKind kind) {
    double sum = 0;
    for (Mark mark : drawing.marks()) {
      if (mark instanceof Mark.Stroke s && s.kind() == kind) {
        for (int i = 0; i + 1 < s.points().size(); i++) {
          sum += s.points().get(i).distance(s.points().get(i + 1));
        }
        sum += s.closed() ? s.points().getLast().distance(s.points().getFirst()) : 0;
      }
    }
    return sum;
  }

  @Test
  void cutsASlitOnce() {
    Laid laid = Papers.at(Papers.slitSquares(50), Papers.A4, 20, 20);
    Drawing drawing = NetDrawing.of(laid, 0, NetDrawing.TEMPLATE);
    // Round a square of 100 mm, and 50 mm of slit.
    assertThat(length(drawing, LineKind.CUT)).isCloseTo(450, within(1e-9));
    assertThat(length(drawing, LineKind.VALLEY)).isCloseTo(50, within(1e-9));
    assertThat(length(drawing, LineKind.MOUNTAIN)).isCloseTo(50, within(1e-9));
  }

  @Test
  void cutsOnceWhereCutsLieOnEachOther() {
    Vec2 o = new Vec2(0, 0);
    List<Segment2> once =
        CutLines.once(
            List.of(
                new Segment2(new Vec2(10, 0), new Vec2(30, 0)),
                new Segment2(new Vec2(40, 0), o),
                new Segment2(o, new Vec2(0, 7)),
                new Segment2(new Vec2(5, 1e-3), new Vec2(35, 1e-3))));
    assertThat(once.stream().mapToDouble(Segment2::length).sum())
        .as("20 + the two ends of 10 + 7 + 30 beside it")
        .isCloseTo(20 + 20 + 7 + 30, within(1e-9));
  }

  @Test
  void hatchesTabsAt45Degrees() {
    Drawing drawing =
        NetDrawing.of(Papers.at(Papers.tray(60, 20), Papers.A4, 30, 40), 0, NetDrawing.TEMPLATE);
    List<Mark.Stroke> hatch =
        drawing.marks().stream()
            .filter(m -> m instanceof Mark.Stroke s && s.kind() == LineKind.GLUE)
            .map(m -> (Mark.Stroke) m)
            .toList();
    assertThat(hatch).hasSizeGreaterThan(8);
    for (Mark.Stroke line : hatch) {
      Vec2 way = line.points().get(1).minus(line.points().get(0));
      assertThat(way.x()).isCloseTo(way.y(), within(1e-9));
    }
  }

  @Test
  void drawsALayerSmallerByTheReveal() {
    Drawing drawing =
        NetDrawing.of(Papers.at(Papers.tray(60, 20), Papers.A4, 30, 40), 0, NetDrawing.TEMPLATE);
    // A wall of 60 by 20 less 3 mm all round.
    assertThat(length(drawing, LineKind.LAYER)).isCloseTo(2 * (54 + 14), within(1e-6));
  }

  @Test
  void namesAreReadableAndLieInTheirPanels() {
    Net net = Papers.tray(60, 20);
    Drawing drawing = NetDrawing.of(Papers.at(net, Papers.A4, 30, 40), 0, NetDrawing.TEMPLATE);
    List<String> names =
        drawing.marks().stream()
            .filter(m -> m instanceof Mark.Text)
            .map(m -> (Mark.Text) m)
            .peek(t -> assertThat(t.size()).isGreaterThanOrEqualTo(Lettering.pt(8)))
            .map(Mark.Text::content)
            .toList();
    assertThat(names)
        .containsExactlyInAnyOrder("floor", "wall 1", "wall 2", "wall 3", "wall 4", "flap");
    Drawing small =
        NetDrawing.of(Papers.at(Papers.tray(20, 4), Papers.A4, 30, 40), 0, NetDrawing.TEMPLATE);
    assertThat(small.marks())
        .noneMatch(m -> m instanceof Mark.Text t && t.content().equals("flap"));
  }

  @Test
  void growsThePageWhereTheNetIsLarger() {
    Laid laid = Papers.at(Papers.tray(120, 60), Papers.A4, -20, 10);
    Drawing drawing = NetDrawing.of(laid, 0, NetDrawing.TEMPLATE);
    assertThat(drawing.width()).isGreaterThan(laid.net().box().width());
    assertThat(length(drawing, LineKind.SHEET)).isCloseTo(2 * (210 + 297), within(1e-9));
    assertThatThrownBy(() -> NetDrawing.of(laid, 1, NetDrawing.TEMPLATE))
        .hasMessageContaining("no sheet 2");
  }

  /** Against a look at every pair, over cuts that lie on each other in part. */
  @Property(tries = 40, seed = "4")
  void cutsOnceHoweverManyCutsThereAre(@ForAll @IntRange(min = 1, max = 120) int count) {
    Random random = new Random(count);
    List<Segment2> cuts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double from = random.nextInt(20);
      double to = from + 1 + random.nextInt(9);
      double line = random.nextInt(4) * 5;
      Vec2 a = random.nextBoolean() ? new Vec2(from, line) : new Vec2(line, from);
      Vec2 b = a.y() == line ? new Vec2(to, line) : new Vec2(line, to);
      cuts.add(random.nextBoolean() ? new Segment2(a, b) : new Segment2(b, a));
    }
    // Every unit of a line that a cut covers, once.
    Set<List<Double>> covered = new HashSet<>();
    for (Segment2 cut : cuts) {
      for (double t = 0.5; t < cut.length(); t++) {
        Vec2 at = cut.from().plus(cut.direction().times(t));
        boolean level = cut.from().y() == cut.to().y();
        covered.add(
            List.of(
                level ? 1.0 : 0.0,
                (double) Math.round(2 * at.x()),
                (double) Math.round(2 * at.y())));
      }
    }
    List<Segment2> once = CutLines.once(cuts);
    assertThat(once.stream().mapToDouble(Segment2::length).sum())
        .isCloseTo(covered.size(), within(1e-6));
  }
}
