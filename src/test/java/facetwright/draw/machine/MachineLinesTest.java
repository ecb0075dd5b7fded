package facetwright.draw.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Score;
import facetwright.net.sheet.Laid;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** All lines of a net, each once, and only these; held against the net by JTS. */
class MachineLinesTest {
  /** Corners of outlines are set on a grid, so that lengths are off by as much at each. */
  private static final double OFF = 1e-3;

  static List<Path> library() {
    return LibraryDesigns.files();
  }

  @ParameterizedTest
  @MethodSource("library")
  void everyLineOfALibraryDesignOnce(Path file) throws ScriptException {
    hold(LibraryDesigns.design(file).laid());
  }

  @Property(tries = 40, shrinking = ShrinkingMode.OFF)
  void everyLineOfRandomForms(
      @ForAll @IntRange(min = 3, max = 9) int sides,
      @ForAll @DoubleRange(min = 15, max = 40) double side,
      @ForAll @DoubleRange(min = 15, max = 60) double height,
      @ForAll @IntRange(min = 0, max = 3) int way)
      throws ScriptException {
    String script =
        switch (way) {
          case 0 ->
              "prism({ sides: %1$d, side: %2$f, height: %3$f }).hole(\"side\", { across: 5"
                  + " }).unfold()";
          case 1 -> "antiprism({ sides: %1$d, side: %2$f, height: %3$f }).unfold()";
          case 2 ->
              "wrap({ columns: %1$d, width: %2$f, rows: [9, %3$f] }).rows(2).window({ border: 4 })";
          default -> "bipyramid({ sides: %1$d, side: %2$f, height: 2 * %3$f }).unfold()";
        };
    hold(
        Facetwright.evaluate(
                "random.js",
                "design(\"Random\");\nsheet({ width: 900, height: 900 });\n"
                    + String.format(Locale.ROOT, script, sides, side, height)
                    + ";",
                Map.of(),
                Budget.USUAL)
            .laid());
  }

  /** The nearest next is no longer than the order in which a net has its lines. */
  @ParameterizedTest
  @MethodSource("library")
  void theWayBetweenLinesIsNoLongerThanAsTheyCome(Path file) throws ScriptException {
    Laid laid = LibraryDesigns.design(file).laid();
    for (Run run : MachineLines.of(laid, 0).runs()) {
      List<Mark> byId = new ArrayList<>(run.lines());
      byId.sort(Comparator.comparing(Mark::toString));
      assertThat(between(Travel.order(byId, Vec2.ZERO)))
          .as(run.id())
          .isLessThanOrEqualTo(between(byId) + OFF);
    }
  }

  private static double between(List<Mark> lines) {
    double way = 0;
    Vec2 at = Vec2.ZERO;
    for (Mark line : lines) {
      way += at.distance(Travel.start(line));
      at = Travel.end(line);
    }
    return way;
  }

  private static void hold(Laid laid) {
    Net net = laid.net();
    List<Mark> scored = new ArrayList<>();
    List<Mark> cut = new ArrayList<>();
    List<Mark> around = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      MachineLines sheet = MachineLines.of(laid, i);
      for (Run run : sheet.runs()) {
        assertThat(run.lines()).isNotEmpty();
        (run.kind() == LineKind.CUT ? cut : scored).addAll(run.lines());
        if (run.id().equals("cut-outline")) {
          around.addAll(run.lines());
        }
      }
      assertThat(sheet.runs().getLast().id())
          .as("what holds the card is cut last")
          .isEqualTo("cut-outline");
    }
    double scores = net.scores().stream().mapToDouble(s -> length(net, s)).sum();
    assertThat(length(scored)).as("scores").isCloseTo(scores, within(OFF));
    assertThat(covered(scored)).as("scores run once").isCloseTo(scores, within(OFF));
    assertThat(length(cut)).as("cuts run once").isCloseTo(covered(cut), within(OFF));
    assertThat(length(cut)).as("cuts").isCloseTo(cuts(net), within(OFF));
    assertThat(around)
        .allMatch(m -> m instanceof Mark.Circle || (m instanceof Mark.Stroke s && s.closed()))
        .hasSize(net.pieces());
    double card = net.panels().stream().mapToDouble(p -> p.outline().area()).sum();
    double within =
        around.stream()
            .mapToDouble(
                m ->
                    m instanceof Mark.Stroke s
                        ? Polygon2.ofEitherSense(s.points()).area()
                        : Math.PI * Math.pow(((Mark.Circle) m).radius(), 2))
            .sum();
    assertThat(within).as("the outlines hold all card").isGreaterThan(card - 0.01 * card);
  }

  private static double length(Net net, Score score) {
    return net.segment(score.a()).length();
  }

  /** The length of all that is cut, what two sides share once. */
  private static double cuts(Net net) {
    List<Geometry> all = new ArrayList<>();
    net.boundary().forEach(e -> all.add(line(List.of(net.segment(e).from(), net.segment(e).to()))));
    net.slits()
        .forEach(s -> all.add(line(List.of(net.segment(s.a()).from(), net.segment(s.a()).to()))));
    // What is apart by less than a grid's step is one line.
    double length = UnaryUnionNG.union(all, Planar.factory(), new PrecisionModel(1e4)).getLength();
    for (var panel : net.panels()) {
      for (Opening o : panel.openings()) {
        length +=
            o instanceof Opening.Hole h
                ? Math.PI * h.diameter()
                : o instanceof Opening.Slot s && s.isLine()
                    ? s.line().length()
                    : Planar.polygon(o.outline()).getLength();
      }
    }
    return length;
  }

  private static double length(List<Mark> lines) {
    return lines.stream()
        .mapToDouble(
            m -> m instanceof Mark.Circle c ? 2 * Math.PI * c.radius() : line(m).getLength())
        .sum();
  }

  private static double covered(List<Mark> lines) {
    double round =
        lines.stream()
            .mapToDouble(m -> m instanceof Mark.Circle c ? 2 * Math.PI * c.radius() : 0)
            .sum();
    List<Geometry> all =
        lines.stream()
            .filter(Mark.Stroke.class::isInstance)
            .<Geometry>map(MachineLinesTest::line)
            .toList();
    return round + OverlayNGRobust.union(Planar.factory().buildGeometry(all)).getLength();
  }

  private static LineString line(Mark mark) {
    Mark.Stroke s = (Mark.Stroke) mark;
    List<Vec2> points = new ArrayList<>(s.points());
    if (s.closed()) {
      points.add(points.getFirst());
    }
    return line(points);
  }

  private static LineString line(List<Vec2> points) {
    return Planar.factory()
        .createLineString(points.stream().map(Planar::coordinate).toArray(Coordinate[]::new));
  }
}
