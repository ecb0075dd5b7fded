package facetwright.papers.chart;

import facetwright.check.finding.Mm;
import facetwright.fold.Folding;
import facetwright.fold.making.Bodies;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Panel;
import facetwright.net.Renumbering;
import facetwright.net.Stance;
import facetwright.net.sheet.Laid;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The net as it comes out in a maker's hands: every measure of its chart set on the ruler's nearest
 * mark, all else done as it should be. Folding it tells what the ruler does to the form.
 *
 * <p>Corners that no step tells lie between the lines beside them in the proportion they should.
 * Openings, layers and ticks are left out; each piece lies on its blank.
 */
public final class AsSet {
  /** In place of the number of a side that is set to no length. */
  private static final int GONE = -1;

  private final Net net;
  private final ScoreChart chart;
  private final List<Replay.Shifts> shifts;
  private final int[] piece;
  private final Predicate<PieceChart> isByRuler;

  private AsSet(Net net, ScoreChart chart, Predicate<PieceChart> isByRuler) {
    this.net = net;
    this.chart = chart;
    this.isByRuler = isByRuler;
    this.shifts = chart.pieces().stream().map(p -> Replay.shifts(p.steps())).toList();
    this.piece = net.pieceOfPanel();
  }

  /**
   * The net of a chart, as set.
   *
   * @param chart of this net
   * @return empty where the ruler is so coarse that a panel is left without area
   */
  static Optional<Net> net(Net net, ScoreChart chart) {
    return net(net, chart, _ -> true);
  }

  /**
   * The same where some pieces are pricked through the template, which sets them as they should be.
   *
   * @param isByRuler which are set by the ruler
   */
  static Optional<Net> net(Net net, ScoreChart chart, Predicate<PieceChart> isByRuler) {
    try {
      return Optional.of(new AsSet(net, chart, isByRuler).net());
    } catch (IllegalArgumentException | NetException _) {
      return Optional.empty();
    }
  }

  /**
   * What a chart's net comes to in a maker's hands.
   *
   * @param net as set
   * @param form of that net
   */
  public record Result(Net net, FoldedForm form) {}

  /**
   * That net and its form.
   *
   * @param laid the net of the chart
   * @return empty as for {@link #net(Net, ScoreChart)}
   */
  public static Optional<Result> of(Laid laid, ScoreChart chart) {
    return net(laid.net(), chart).map(n -> new Result(n, Folding.near(n, laid)));
  }

  /**
   * What setting all on the nearest marks does to the form, in a sentence. Where it is made of
   * several bodies, such as a box and its lid, the size is told of the one that changes most.
   *
   * @param laid the net as it should be
   * @param meant the form as it should be
   * @param set what it comes to; empty where there is nothing
   */
  public static String text(Laid laid, FoldedForm meant, Optional<Result> set, Telling tell) {
    boolean isKnown =
        meant.closure() != Closure.NOT_SOLVED
            && set.filter(s -> s.form().closure() != Closure.NOT_SOLVED).isPresent();
    if (!isKnown) {
      return tell.say("chart.as-set-unknown");
    }
    FoldedForm form = set.orElseThrow().form();
    Net asSet = set.orElseThrow().net();
    double most =
        Bodies.of(laid.net()).stream()
            .mapToDouble(
                body -> change(meant.measures(laid.net(), body), form.measures(asSet, body)))
            .max()
            .orElse(0);
    return tell.say(
        "chart.as-set",
        "size",
        most < Mm.LEAST ? "kept" : "changed",
        "off",
        tell.length(most),
        "joins",
        switch (form.closure()) {
          case IN_ITSELF -> "through";
          case OPEN -> "open";
          case CLOSES_WITH_STRAIN -> "bent";
          default -> "meet";
        },
        "gap",
        form.closure() == Closure.OPEN ? tell.length(form.gap()) : "",
        "strain",
        tell.figures(Decimals.places(100 * form.strain(), 2)));
  }

  /** The same for a chart; empty where every measure lies on a mark. */
  public static Optional<String> text(Laid laid, FoldedForm meant, ScoreChart chart, Telling tell) {
    return chart.pieces().stream().allMatch(p -> p.offRuler().isEmpty())
        ? Optional.empty()
        : Optional.of(text(laid, meant, of(laid, chart), tell));
  }

  private static double change(Measures from, Measures to) {
    return Math.max(
        Math.abs(to.height() - from.height()),
        Math.max(Math.abs(to.width() - from.width()), Math.abs(to.depth() - from.depth())));
  }

  /** By how much the size of a part changes, in mm. */
  static double change(Net net, FoldedForm meant, Net set, FoldedForm form, int part) {
    List<Integer> panels = net.parts().all().get(part).panels();
    return change(meant.measures(net, panels), form.measures(set, panels));
  }

  private Net net() {
    List<Panel> panels = new ArrayList<>();
    List<int[]> sides = new ArrayList<>();
    for (int i = 0; i < net.panels().size(); i++) {
      Panel p = net.panels().get(i);
      int of = piece[i];
      List<Vec2> corners = p.outline().corners().stream().map(c -> set(of, c)).toList();
      sides.add(sides(corners));
      Polygon2 outline = new Polygon2(Polygon2.distinct(corners));
      panels.add(new Panel(p.name(), p.role(), outline, List.of(), p.site()));
    }
    Renumbering now = new Renumbering(p -> p, side -> side(sides, side));
    return new Net(
        panels,
        net.scores().stream().map(now::of).toList(),
        net.slits().stream().map(now::of).toList(),
        net.joins().stream().map(now::of).toList(),
        List.of(),
        List.of(),
        List.of(),
        new Stance(net.stance().ring().stream().map(c -> corner(sides, c)).toList()));
  }

  /** The number of each side among those left: two corners may be set on one mark. */
  private static int[] sides(List<Vec2> corners) {
    int[] numbers = new int[corners.size()];
    int left = 0;
    for (int e = 0; e < numbers.length; e++) {
      boolean isGone =
          LengthTolerance.FINE.same(corners.get(e), corners.get((e + 1) % numbers.length));
      numbers[e] = isGone ? GONE : left++;
    }
    return numbers;
  }

  private static EdgeRef side(List<int[]> sides, EdgeRef side) {
    int number = sides.get(side.panel())[side.edge()];
    if (number == GONE) {
      throw new IllegalArgumentException("a side that meets another is set to no length");
    }
    return new EdgeRef(side.panel(), number);
  }

  private static Stance.Corner corner(List<int[]> sides, Stance.Corner corner) {
    int[] numbers = sides.get(corner.panel());
    int side = corner.corner();
    while (numbers[side] == GONE) {
      side = (side + 1) % numbers.length;
    }
    return new Stance.Corner(corner.panel(), numbers[side]);
  }

  private Vec2 set(int of, Vec2 corner) {
    Vec2 at = chart.pieces().get(of).toBlank().apply(corner);
    if (!isByRuler.test(chart.pieces().get(of))) {
      return at;
    }
    Replay.Shifts by = shifts.get(of);
    for (Map.Entry<Vec2, Vec2> point : by.points().entrySet()) {
      if (point.getKey().distance(at) <= 10 * LengthTolerance.FINE.mm()) {
        return point.getValue();
      }
    }
    return new Vec2(between(by.across(), at.x()), between(by.down(), at.y()));
  }

  private static double between(NavigableMap<Double, Double> lines, double at) {
    Map.Entry<Double, Double> low = lines.floorEntry(at);
    Map.Entry<Double, Double> high = lines.ceilingEntry(at);
    if (low == null || high == null) {
      Map.Entry<Double, Double> end = low == null ? high : low;
      return at + end.getValue() - end.getKey();
    }
    double apart = high.getKey() - low.getKey();
    double part = apart > 0 ? (at - low.getKey()) / apart : 0;
    return low.getValue() + part * (high.getValue() - low.getValue());
  }
}
