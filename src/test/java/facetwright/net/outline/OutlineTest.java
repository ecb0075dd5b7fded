package facetwright.net.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Arc;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.NetException;
import facetwright.words.Site;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Outlines made, changed and asked, against formulas of plane geometry. */
class OutlineTest {
  private static final Site AT = new Site(2, 1);

  /** Area n/2 r² sin 2π/n of a regular polygon (from memory). */
  @ParameterizedTest
  @CsvSource({"3, 10", "4, 10", "7, 25.4", "64, 100"})
  void regularHasTheAreaOfItsFormula(int sides, double radius) {
    double formula = sides * radius * radius * Math.sin(2 * Math.PI / sides) / 2;
    Outline made = Outline.regular(sides, radius, AT);
    assertThat(made.area()).isCloseTo(formula, within(1e-9 * formula));
    Vec2 from = made.corner(0).at();
    assertThat(made.corner(1).at().y()).isCloseTo(from.y(), within(1e-9));
    assertThat(from.y()).isEqualTo(made.box().minY(), within(1e-9));
  }

  /** n triangles each side of a point: area n R r sin π/n (from memory). */
  @ParameterizedTest
  @CsvSource({"5, 101.6, 0.5", "3, 40, 0.2", "8, 60, 0.9"})
  void starHasTheAreaOfItsFormula(int points, double across, double inner) {
    double formula = points * across * across / 4 * inner * Math.sin(Math.PI / points);
    Outline made = Outline.star(points, across, inner, AT);
    assertThat(made.area()).isCloseTo(formula, within(1e-9 * formula));
    assertThat(made.box().maxY()).isEqualTo(across / 2, within(1e-9));
  }

  @Test
  void circleHasTheAreaOfACircle() {
    Outline circle = Outline.circle(28, AT);
    assertThat(circle.area()).isCloseTo(Math.PI * 14 * 14, within(1e-9));
    assertThat(circle.box().width()).isEqualTo(28, within(1e-9));
    Polygon2 cut = circle.polygon();
    assertThat(cut.arcs()).hasSize(4);
    assertThat(cut.arcs().stream().mapToInt(Arc::sides).sum()).isEqualTo(cut.size());
    for (int i = 0; i < cut.size(); i++) {
      assertThat(cut.corner(i).length()).isEqualTo(14, within(1e-9));
      assertThat(cut.isRound(i)).isTrue();
      assertThat(14 - cut.side(i).middle().length()).isBetween(0.0, Arc.CHORD.mm());
    }
  }

  /**
   * Set off by d, each side moves by d, and area becomes A + P d + d² Σ tan(turn / 2): a strip a
   * side and a kite a corner (from memory, after Steiner).
   */
  @Property(tries = 200, seed = "20261130")
  void setOffEverySideMovesAsFar(
      @ForAll @IntRange(min = 3, max = 14) int corners,
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @DoubleRange(min = -3, max = 3) double by) {
    Outline from = RandomOutlines.of(corners, seed);
    Outline moved;
    try {
      moved = from.offset(by, AT);
    } catch (NetException tooFar) {
      assertThat(tooFar).hasMessageContaining("at most by");
      return;
    }
    Polygon2 was = from.polygon();
    Polygon2 is = moved.polygon();
    double formula = was.area();
    for (int i = 0; i < was.size(); i++) {
      Segment2 side = was.side(i);
      Vec2 outward = side.direction().left().times(-1);
      assertThat(is.corner(i).minus(side.from()).dot(outward)).isEqualTo(by, within(1e-8));
      assertThat(is.corner(i + 1).minus(side.from()).dot(outward)).isEqualTo(by, within(1e-8));
      formula += by * side.length() + by * by * Math.tan((Math.PI - was.angle(i)) / 2);
    }
    assertThat(is.area()).isCloseTo(formula, within(1e-7 * was.area()));
    assertThat(is.isSimple()).isTrue();
    Outline back = moved.offset(-by, AT);
    for (int i = 0; i < was.size(); i++) {
      assertThat(back.corner(i).at().distance(was.corner(i))).isLessThan(1e-7);
    }
  }

  /** What is said to be the most can be done, and a little more can't. */
  @Property(tries = 60, seed = "20261130")
  void theMostThatIsToldHolds(
      @ForAll @IntRange(min = 3, max = 14) int corners, @ForAll @LongRange(min = 0) long seed) {
    Outline from = RandomOutlines.of(corners, seed);
    for (double by : new double[] {-200, 200}) {
      Throwable tooFar = catchThrowable(() -> from.offset(by, AT));
      if (tooFar == null) {
        assertThat(by).isPositive();
        continue;
      }
      double most = told(tooFar.getMessage());
      if (most > 0.01) {
        assertThat(from.offset(Math.copySign(most, by), AT).size()).isEqualTo(corners);
      }
      assertThat(catchThrowable(() -> from.offset(Math.copySign(most + 0.02, by), AT))).isNotNull();
    }
  }

  private static double told(String message) {
    Matcher number = Pattern.compile("at most by ([0-9.]+) mm").matcher(message);
    assertThat(number.find()).as(message).isTrue();
    return Double.parseDouble(number.group(1));
  }

  /** Inward a regular outline goes as far as its middle: r cos π/n. */
  @Test
  void inwardGoesAsFarAsTheMiddle() {
    Throwable tooFar = catchThrowable(() -> Outline.regular(6, 20, AT).offset(-30, AT));
    assertThat(tooFar)
        .hasMessageContaining("inward by 30 mm")
        .hasMessageContaining("would be gone");
    assertThat(told(tooFar.getMessage()))
        .isCloseTo(20 * Math.cos(Math.PI / 6), within(0.02))
        .isLessThan(20 * Math.cos(Math.PI / 6));
  }

  /** A slot closes when its walls have grown by half its width each. */
  @Test
  void outwardStopsWhereItWouldMeetItself() {
    Outline slot =
        Outline.through(
            List.of(
                new Vec2(0, 0),
                new Vec2(60, 0),
                new Vec2(60, 40),
                new Vec2(34, 40),
                new Vec2(40, 20),
                new Vec2(30, 20),
                new Vec2(30, 40),
                new Vec2(0, 40)),
            AT);
    Throwable tooFar = catchThrowable(() -> slot.offset(8, AT));
    assertThat(tooFar).hasMessageContaining("outward by 8 mm");
    assertThat(told(tooFar.getMessage())).isBetween(1.5, 2.0);
  }

  /** Parallel arcs have one middle; the area between is P d + π d² for what is convex (Steiner). */
  @ParameterizedTest
  @CsvSource({"90, 55, 6, 2", "40, 40, 20, 3", "40, 40, 20, -5", "30, 60, 15, 1.5"})
  void roundOutlinesStayRoundWhenSetOff(double width, double height, double radius, double by) {
    Outline from = Outline.rectangle(width, height, AT).rounded(radius, List.of(), AT);
    Outline moved = from.offset(by, AT);
    double perimeter = 2 * (width + height) - 8 * radius + 2 * Math.PI * radius;
    assertThat(moved.area() - from.area())
        .isCloseTo(perimeter * by + Math.PI * by * by, within(1e-8));
    for (int a = 0; a < 4; a++) {
      Vec2 was = from.polygon().arcs().get(a).centre();
      assertThat(moved.polygon().arcs().get(a).centre().distance(was)).isLessThan(1e-9);
    }
  }

  /** What rounding takes off, and the polygon of it, to the chord's tolerance along its arcs. */
  @Property(tries = 150, seed = "20261130")
  void theCutPolygonFollowsItsArcs(
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @DoubleRange(min = 0.2, max = 12) double radius) {
    Outline round;
    try {
      round = RandomOutlines.of(corners, seed).rounded(radius, List.of(), AT);
    } catch (NetException noRoom) {
      assertThat(told(noRoom.getMessage())).isLessThan(radius);
      return;
    }
    Polygon2 cut = round.polygon();
    assertThat(cut.isSimple()).isTrue();
    assertThat(cut.arcs()).hasSize(corners);
    double arcs = 0;
    for (Arc arc : cut.arcs()) {
      for (int i = 0; i <= arc.sides(); i++) {
        assertThat(cut.corner(arc.first() + i).distance(arc.centre()))
            .isEqualTo(radius, within(1e-8));
      }
      for (int i = 0; i < arc.sides(); i++) {
        double off = radius - cut.side(arc.first() + i).middle().distance(arc.centre());
        assertThat(off).isBetween(0.0, Arc.CHORD.mm() * 1.0001);
        arcs += cut.side(arc.first() + i).length();
      }
      // No kink where the arc meets its side: side and radius stand square.
      Segment2 before = cut.side(arc.first() - 1);
      if (!cut.isRound(Math.floorMod(arc.first() - 1, cut.size()))) {
        Vec2 spoke = cut.corner(arc.first()).minus(arc.centre()).unit();
        assertThat(before.direction().dot(spoke)).isEqualTo(0, within(1e-7));
      }
    }
    assertThat(Math.abs(round.area() - cut.area())).isLessThan(arcs * Arc.CHORD.mm());
  }

  @Property(tries = 60, seed = "20261130")
  void mirroringAndTurningKeepTheArea(
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @DoubleRange(min = -360, max = 360) double degrees) {
    Outline from = RandomOutlines.of(corners, seed);
    Outline mirrored = from.mirrored();
    assertThat(mirrored.area()).isCloseTo(from.area(), within(1e-9 * from.area()));
    assertThat(mirrored.mirrored()).isEqualTo(from);
    // Side 1 stays side 1.
    assertThat(mirrored.corner(0).at().x()).isEqualTo(-from.corner(1).at().x(), within(0.0));
    assertThat(mirrored.corner(1).at().y()).isEqualTo(from.corner(0).at().y(), within(0.0));
    Outline turned = from.turned(degrees);
    assertThat(turned.area()).isCloseTo(from.area(), within(1e-9 * from.area()));
    assertThat(turned.corner(0).at().length())
        .isEqualTo(from.corner(0).at().length(), within(1e-9));
    assertThat(from.offset(0, AT)).isEqualTo(from);
  }

  @Test
  void facetedArcsAreStraightSidesOnTheArc() {
    Outline round = Outline.rectangle(40, 40, AT).rounded(10, List.of(1, 3), AT);
    Outline faceted = round.faceted(3);
    assertThat(faceted.isRound()).isFalse();
    assertThat(faceted.size()).isEqualTo(2 * 4 + 2);
    assertThat(faceted.sharpCorners())
        .filteredOn(c -> c.x() < -10.001 && c.y() < -10.001)
        .hasSize(2)
        .allSatisfy(c -> assertThat(c.distance(new Vec2(-10, -10))).isEqualTo(10, within(1e-9)));
    assertThat(faceted.folded("prism", AT)).hasSize(10);
    assertThat(catchThrowable(() -> round.folded("prism", AT)))
        .hasMessageContaining("2 round corners of this outline")
        .hasMessageContaining(".rounded(radius, { sides: 3 })");
  }

  @Test
  void whatMakesNoSenseIsRefused() {
    Outline bar = Outline.rectangle(40, 10, AT);
    assertThat(told(catchThrowable(() -> bar.rounded(6, List.of(), AT)).getMessage()))
        .isBetween(4.99, 5.0);
    assertThat(catchThrowable(() -> bar.rounded(1, List.of(5), AT))).hasMessageContaining("1 to 4");
    Outline divided =
        Outline.through(
            List.of(new Vec2(0, 0), new Vec2(9, 0), new Vec2(20, 0), new Vec2(0, 20)), AT);
    assertThat(catchThrowable(() -> divided.folded("prism", AT)))
        .hasMessageContaining("corner 2")
        .hasMessageContaining("leave it out");
    assertThat(catchThrowable(() -> divided.rounded(2, List.of(2), AT)))
        .hasMessageContaining("nothing to round");
  }
}
