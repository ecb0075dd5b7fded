package facetwright.net.wrap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.NamedPanel;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.Overlaps;
import facetwright.net.Panel;
import facetwright.net.Score;
import facetwright.net.Sense;
import facetwright.net.Stance;
import facetwright.words.Site;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class WrapDraftTest {
  static final Site AT = new Site(3, 1);

  static WrapDraft wrap(int n, double width, Double... rows) {
    return WrapDraft.of(Collections.nCopies(n, width), WrapRow.usual(List.of(rows)), AT);
  }

  /** The eight-sided lantern with pinched ends. */
  static WrapDraft lantern() {
    WrapDraft wrap = wrap(8, 28, 28.0, 60.0, 60.0, 28.0).seam(12, AT);
    wrap.all().columns("even", AT).rows("rim", AT).remove(AT);
    wrap.all().columns("even", AT).rows("wall", AT).gusset(Pinch.IN, null, AT);
    wrap.all().columns("odd", AT).rows("rim", AT).tabs(AT).hole(3, AT);
    wrap.all().columns("odd", AT).rows("wall", AT).layer(1.5, "paper", AT);
    return wrap;
  }

  @Test
  void lanternCounts() {
    Net net = lantern().build();
    // Counted by hand: 8 tabs, 8 whole walls, 8 pinched walls of 3, a flap in 2 rows.
    assertThat(net.panels()).hasSize(42);
    // 16 diagonals, 14 column scores and 2 of the flap, 8 rim and 8 waist scores, 1 over the flap.
    assertThat(net.scores()).hasSize(49);
    // Sides left: 24 of tabs, 16 pinched halves, 2 of column 1, 4 of the flap; and 8 holes.
    assertThat(net.boundary()).hasSize(46);
    assertThat(net.cuts()).isEqualTo(54);
    // 8 pinched edges and 2 rows of seam.
    assertThat(net.joins()).hasSize(10);
    assertThat(net.layers()).hasSize(8);
    assertThat(net.pieces()).isEqualTo(1);
    assertThat(Overlaps.find(net)).isEmpty();
    assertThat(net.box().width()).isCloseTo(8 * 28 + 12, within(1e-9));
    assertThat(net.box().height()).isCloseTo(176, within(1e-9));
  }

  /** What was cut away lay against two halves of each pinched edge and the tabs beside. */
  @Test
  void rememberWhichLineFreedASide() {
    Site cutting = new Site(7, 1);
    WrapDraft wrap = wrap(8, 28, 28.0, 60.0, 60.0, 28.0).seam(12, AT);
    wrap.all().columns("even", AT).rows("rim", AT).remove(cutting).remove(AT);
    wrap.all().columns("even", AT).rows("wall", AT).gusset(Pinch.IN, null, AT);
    wrap.all().columns("odd", AT).rows("rim", AT).tabs(AT);
    Net net = wrap.build();
    assertThat(net.cutaways()).hasSize(8).allMatch(c -> c.site().equals(cutting));
    // Counted by hand: 8 cells of 2 halves, a tab at the left of each and at the right of 6.
    assertThat(net.cutaways().stream().flatMap(c -> c.sides().stream()).distinct()).hasSize(30);
    assertThat(net.boundary())
        .containsAll(net.cutaways().stream().flatMap(c -> c.sides().stream()).toList());
    Net twice = NetMerge.of(List.of(net, net));
    assertThat(twice.cutaways()).hasSize(16);
    assertThat(twice.cutaways().getLast().sides().getFirst().panel())
        .isEqualTo(net.cutaways().getLast().sides().getFirst().panel() + net.panels().size());
  }

  @Test
  void aFoldThatIsSaidIsFoundWhereItIsSaid() {
    Site folding = new Site(9, 1);
    WrapDraft wrap = wrap(4, 30, 14.0, 50.0, 14.0);
    wrap.all().rows("rim", AT).fold(FoldAngle.TO_SOLVE, null, folding);
    Net net = wrap.build();
    assertThat(net.scores().stream().filter(s -> s.site().equals(folding))).hasSize(8);
  }

  @Test
  void lanternStandsOnItsWaist() {
    Net net = lantern().build();
    assertThat(net.stance().ring()).hasSize(8);
    for (int c = 0; c < 8; c++) {
      Stance.Corner corner = net.stance().ring().get(c);
      Vec2 at = net.panels().get(corner.panel()).outline().corner(corner.corner());
      assertThat(at.distance(new Vec2(28 * c, 88))).isLessThan(1e-9);
    }
  }

  @Test
  void pinchedHalvesAreEqualAndMeetAtTheMiddle() {
    Net net = lantern().build();
    for (Join join : net.joins()) {
      Join.Seam seam = (Join.Seam) join;
      Segment2 a = net.segment(seam.a());
      Segment2 b = net.segment(seam.b());
      assertThat(a.length()).isCloseTo(b.length(), within(1e-9));
      assertThat(seam.tab() == Join.Seam.NO_TAB).isEqualTo(a.length() < 15);
    }
  }

  @Test
  void lanternSensesAreThoseOfAnInwardPinch() {
    Net net = lantern().build();
    for (Score s : net.scores()) {
      Segment2 line = net.segment(s.a());
      boolean slanted =
          Math.abs(line.direction().x()) > 0.01 && Math.abs(line.direction().y()) > 0.01;
      assertThat(s.sense()).isEqualTo(slanted ? Sense.VALLEY : Sense.MOUNTAIN);
    }
    WrapDraft out = lantern();
    out.all().columns("even", AT).rows("wall", AT).gusset(Pinch.OUT, null, AT);
    long valleys = out.build().scores().stream().filter(s -> s.sense() == Sense.VALLEY).count();
    assertThat(valleys).isEqualTo(16); // the column scores, all beside a gusset
  }

  /** The rim tab's fold follows from the closing height 2·√(h² − (a − b)²). */
  @Test
  void rimTabsOfALanternFoldLevel() {
    double a = 28 / (2 * Math.tan(Math.PI / 8));
    double b = 28 / (2 * Math.tan(Math.PI / 4));
    double lean = Math.toDegrees(Math.acos(Math.sqrt(60 * 60 - (a - b) * (a - b)) / 60));
    Net net = lantern().build();
    List<Double> known =
        net.scores().stream()
            .map(Score::angle)
            .filter(FoldAngle.Known.class::isInstance)
            .map(f -> ((FoldAngle.Known) f).degrees())
            .toList();
    assertThat(known).hasSize(8).allSatisfy(k -> assertThat(k).isCloseTo(90 - lean, within(1e-9)));
  }

  /** Folds the columns in turn as a chain of exact rotations; outside up, mountains fall away. */
  private static double gapAround(Net net, int n) {
    Motion3 motion = Motion3.NONE;
    for (int c = 0; c + 1 < n; c++) {
      Segment2 line = net.segment(new EdgeRef(c, 1));
      Vec3 from = motion.apply(line.from());
      Vec3 to = motion.apply(line.to());
      double angle = angleOf(net, line);
      motion = motion.then(Motion3.about(from, to, Math.toRadians(angle)));
    }
    Segment2 end = net.segment(new EdgeRef(n - 1, 1));
    Segment2 start = net.segment(new EdgeRef(0, 3));
    return motion.apply(end.from()).distance(Motion3.NONE.apply(start.to()));
  }

  private static double angleOf(Net net, Segment2 line) {
    return net.scores().stream()
        .filter(s -> net.segment(s.a()).equals(line))
        .map(s -> ((FoldAngle.Known) s.angle()).degrees())
        .findFirst()
        .orElseThrow();
  }

  @Property(tries = 60, seed = "20261125")
  void plainPrismsClose(@ForAll @IntRange(min = 3, max = 64) int n) {
    Net net = wrap(n, 20, 50.0).build();
    assertThat(gapAround(net, n)).isLessThan(1e-8);
    net.scores()
        .forEach(
            s ->
                assertThat(((FoldAngle.Known) s.angle()).degrees())
                    .isCloseTo(360.0 / n, within(1e-9)));
  }

  @Property(tries = 200, seed = "20261125")
  void unequalColumnsClose(
      @ForAll @Size(min = 3, max = 9) List<@DoubleRange(min = 5, max = 60) Double> widths) {
    double sum = widths.stream().mapToDouble(w -> w).sum();
    Assume.that(widths.stream().allMatch(w -> 2 * w < sum * 0.98));
    Net net = WrapDraft.of(widths, WrapRow.usual(List.of(40.0)), AT).build();
    assertThat(gapAround(net, widths.size())).isLessThan(1e-5);
  }

  @Test
  void aRectangularSleeveFoldsSquare() {
    Net net =
        WrapDraft.of(List.of(60.0, 40.0, 60.0, 40.0), WrapRow.usual(List.of(90.0)), AT).build();
    net.scores()
        .forEach(
            s -> assertThat(((FoldAngle.Known) s.angle()).degrees()).isCloseTo(90, within(1e-9)));
  }

  @Test
  void prismWithRimTabs() {
    WrapDraft wrap = wrap(6, 30, 12.0, 80.0, 12.0).seam(10, AT);
    wrap.all().rows("rim", AT).tabs(0, AT);
    Net net = wrap.build();
    assertThat(net.panels()).hasSize(19);
    // Square-ended tabs stand side by side, slit from each other.
    assertThat(net.slits()).hasSize(10);
    assertThat(net.scores()).hasSize(5 + 1 + 12);
    assertThat(net.scores().stream().filter(s -> s.angle().equals(FoldAngle.degrees(90))).count())
        .isEqualTo(12);
    assertThat(net.stance().ring()).hasSize(6);
    assertThat(net.segment(new EdgeRef(6, 0)).from().y()).isEqualTo(12);
    assertThat(Overlaps.find(net)).isEmpty();
  }

  @Test
  void rowScoresBetweenPlainWallsStayFlat() {
    Net net = wrap(6, 30, 40.0, 40.0).build();
    assertThat(net.scores().stream().filter(s -> s.angle().equals(FoldAngle.degrees(0))).count())
        .isEqualTo(6);
  }

  @Test
  void theSeamFlapStaysAwayFromRemovedCells() {
    WrapDraft wrap = wrap(6, 30, 40.0, 40.0).seam(10, AT);
    wrap.all().columns(List.of(6), AT).rows(List.of(2), AT).remove(AT);
    Net net = wrap.build();
    assertThat(NamedPanel.of(net, "seam flap (row 1)")).isPresent();
    assertThat(NamedPanel.of(net, "seam flap (row 2)")).isEmpty();
    assertThat(net.joins()).hasSize(1);
  }

  @Test
  void underAGussetTheFlapStaysOnItsSideOfTheDiagonal() {
    WrapDraft wrap = wrap(6, 30, 40.0, 40.0).seam(14, AT);
    wrap.all().columns("odd", AT).gusset(Pinch.IN, null, AT);
    Net net = wrap.build();
    Panel flap = NamedPanel.of(net, "seam flap (row 2)").orElseThrow();
    // The diagonal of column 1 rises 40 mm over 15 mm from the waist at 40 mm.
    for (Vec2 corner : flap.outline().corners()) {
      assertThat(corner.y()).isGreaterThanOrEqualTo(40 + (corner.x() - 180) * 40 / 15 - 1e-9);
    }
    wrap.seam(16, AT);
    assertThatThrownBy(wrap::build).hasMessageContaining("narrower than 15 mm");
  }
}
