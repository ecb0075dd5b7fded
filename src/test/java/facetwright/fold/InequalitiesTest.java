package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Sense;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Forms of open angles that an inequality decides: on its one side they close, on its other they
 * miss by what it lacks, and at its limit they close flat.
 */
class InequalitiesTest {
  private static final Site AT = Site.NONE;

  /** Nearer to a limit than this, as a part, card gives; that is another matter. */
  private static final double NEAR = 0.02;

  private static void fold(EdgeDraft side, PanelDraft panel, NetDraft net) {
    net.score(side, panel.edge(0), Sense.MOUNTAIN, FoldAngle.TO_SOLVE, AT);
  }

  /** A regular base with a petal at each side, so long; they meet over it. */
  private static Net petals(int n, double side, double petal) {
    NetDraft net = new NetDraft();
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      corners.add(Vec2.polar(side / (2 * Math.sin(Math.PI / n)), 2 * Math.PI * i / n));
    }
    PanelDraft base = net.panel("base", PanelRole.FACET, corners, AT);
    List<PanelDraft> petals = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      EdgeDraft edge = base.edge(i);
      Vec2 out = edge.segment().direction().left().times(-petal);
      Vec2 tip = edge.segment().middle().plus(out);
      PanelDraft panel =
          net.panel("petal " + (i + 1), PanelRole.FACET, List.of(edge.to(), edge.from(), tip), AT);
      fold(edge, panel, net);
      petals.add(panel);
    }
    for (int i = 0; i < n; i++) {
      net.seam(petals.get(i).edge(2), petals.get((i + 1) % n).edge(1), null, AT);
    }
    net.standOn(base);
    return net.build();
  }

  /** The inner radius of a regular polygon: side/(2·tan(π/n)), handbook, from memory. */
  private static double apothem(int n, double side) {
    return side / (2 * Math.tan(Math.PI / n));
  }

  @Property(tries = 40, seed = "20261130")
  void petalsCloseFromTheApothemOn(
      @ForAll @IntRange(min = 3, max = 9) int n,
      @ForAll @DoubleRange(min = 20, max = 90) double side,
      @ForAll @DoubleRange(min = 0.4, max = 2) double times) {
    Assume.that(Math.abs(times - 1) > NEAR);
    double apothem = apothem(n, side);
    FoldedForm form = Folding.fold(petals(n, side, times * apothem));
    if (times > 1) {
      assertThat(form.closure()).isEqualTo(Closure.CLOSES);
      assertThat(form.measures().height())
          .isCloseTo(apothem * Math.sqrt(times * times - 1), within(1e-6));
    } else {
      assertThat(form.closure()).isEqualTo(Closure.OPEN);
      // Two tips lie so far from each other round the middle.
      assertThat(form.gap())
          .isCloseTo(2 * (1 - times) * apothem * Math.sin(Math.PI / n), within(0.05 * apothem));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 8})
  void petalsOfTheApothemCloseFlat(int n) {
    FoldedForm form = Folding.fold(petals(n, 40, apothem(n, 40)));
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.measures().height()).isCloseTo(0, within(1e-3));
  }

  /** Three triangles round a corner, their sides there so long. */
  private static Net corner(double length, double... degrees) {
    NetDraft net = new NetDraft();
    List<PanelDraft> sides = new ArrayList<>();
    double at = 0;
    for (double d : degrees) {
      double next = at + Math.toRadians(d);
      List<Vec2> corners = List.of(Vec2.ZERO, Vec2.polar(length, at), Vec2.polar(length, next));
      sides.add(net.panel("side " + (sides.size() + 1), PanelRole.FACET, corners, AT));
      at = next;
    }
    for (int i = 1; i < degrees.length; i++) {
      net.score(
          sides.get(i - 1).edge(2), sides.get(i).edge(0), Sense.MOUNTAIN, FoldAngle.TO_SOLVE, AT);
    }
    net.seam(sides.getLast().edge(2), sides.getFirst().edge(0), null, AT);
    return net.build();
  }

  /**
   * Three angles make a corner when none is larger than the other two together (Euclid, Elements
   * XI.20); that they go into the flat sheet makes them less than 360°.
   */
  @Property(tries = 60, seed = "20261130")
  void cornersCloseByTheTriangleOfTheirAngles(
      @ForAll @DoubleRange(min = 15, max = 110) double a,
      @ForAll @DoubleRange(min = 15, max = 110) double b,
      @ForAll @DoubleRange(min = 15, max = 110) double c) {
    double most = Math.max(a, Math.max(b, c));
    double lacks = 2 * most - a - b - c;
    Assume.that(Math.abs(lacks) > 1.5);
    FoldedForm form = Folding.fold(corner(60, a, b, c));
    if (lacks < 0) {
      assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    } else {
      assertThat(form.closure()).isEqualTo(Closure.OPEN);
      // Flat, the two sides to be joined are so many degrees from each other.
      assertThat(form.gap())
          .isCloseTo(120 * Math.sin(Math.toRadians(lacks / 2)), within(0.15 * 60));
    }
  }

  @ParameterizedTest
  @CsvSource({"40, 50, 90", "90, 40, 50", "40, 90, 50", "20, 20, 40", "35, 100, 65"})
  void cornersAtTheLimitCloseFlat(double a, double b, double c) {
    assertThat(Folding.fold(corner(60, a, b, c)).closure()).isEqualTo(Closure.CLOSES);
  }

  private static Net tube(double height, double... widths) {
    NetDraft net = new NetDraft();
    List<PanelDraft> walls = new ArrayList<>();
    double x = 0;
    for (double w : widths) {
      List<Vec2> corners =
          List.of(new Vec2(x, 0), new Vec2(x + w, 0), new Vec2(x + w, height), new Vec2(x, height));
      walls.add(net.panel("wall " + (walls.size() + 1), PanelRole.FACET, corners, AT));
      x += w;
    }
    for (int i = 1; i < widths.length; i++) {
      net.score(
          walls.get(i - 1).edge(1), walls.get(i).edge(3), Sense.MOUNTAIN, FoldAngle.TO_SOLVE, AT);
    }
    net.seam(walls.getLast().edge(1), walls.getFirst().edge(3), null, AT);
    return net.build();
  }

  /**
   * Walls close when none is wider than the others together (Euclid, Elements I.20, and from memory
   * for more sides). Three hold each other; four or more sway.
   */
  @Property(tries = 60, seed = "20261130")
  void tubesCloseByTheInequalityOfTheirWalls(
      @ForAll @IntRange(min = 3, max = 5) int n,
      @ForAll @Size(5) List<@DoubleRange(min = 15, max = 60) Double> widths,
      @ForAll @DoubleRange(min = 0.3, max = 1.6) double times) {
    double[] walls = widths.stream().limit(n).mapToDouble(w -> w).toArray();
    double others = Arrays.stream(walls, 0, n - 1).sum();
    walls[n - 1] = times * others;
    double most = Arrays.stream(walls).max().orElseThrow();
    double lacks = 2 * most - Arrays.stream(walls).sum();
    Assume.that(Math.abs(lacks) > NEAR * others);
    FoldedForm form = Folding.fold(tube(50, walls));
    if (lacks < 0) {
      assertThat(form.closure()).isEqualTo(n == 3 ? Closure.CLOSES : Closure.NOT_SOLVED);
    } else {
      assertThat(form.closure()).isEqualTo(Closure.OPEN);
      assertThat(form.gap()).isCloseTo(lacks, within(0.05 * others));
    }
  }

  @ParameterizedTest
  @CsvSource({"30, 40, 70, 0", "70, 30, 40, 0", "30, 70, 40, 0", "20, 30, 40, 90"})
  void tubesAtTheLimitCloseFlat(double a, double b, double c, double d) {
    Net net = d == 0 ? tube(50, a, b, c) : tube(50, a, b, c, d);
    assertThat(Folding.fold(net).closure()).isEqualTo(Closure.CLOSES);
  }
}
