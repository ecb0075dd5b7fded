package facetwright.papers.chart;

import facetwright.geom.AngleTolerance;
import facetwright.geom.Arc;
import facetwright.geom.Leg;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.measure.Ruler;
import facetwright.net.Opening;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The cuts of a piece in a safe order: what lies inside first, while the blank is whole and firm;
 * slits next; waste last. Common practice, no source.
 */
final class CutSteps {
  private CutSteps() {}

  /**
   * @param spot how a point is told
   */
  static List<Step> of(FlatPiece piece, Ruler ruler, Function<Vec2, Spot> spot) {
    List<Step> steps = new ArrayList<>();
    Map<Double, List<Spot>> holes = new LinkedHashMap<>();
    for (Opening.Hole h : piece.holes()) {
      holes.computeIfAbsent(h.diameter(), _ -> new ArrayList<>()).add(spot.apply(h.centre()));
    }
    holes.forEach((mm, at) -> steps.add(new Step.Punch(Measure.of(mm, ruler), at)));
    List<Polygon2> windows =
        piece.windows().subList(0, piece.windows().size() - piece.slots().size());
    if (!windows.isEmpty()) {
      steps.add(new Step.Windows(outlines(windows, ruler, spot), "window"));
    }
    if (!piece.slots().isEmpty()) {
      steps.add(new Step.Windows(outlines(piece.slots(), ruler, spot), "slot"));
    }
    if (!piece.lines().isEmpty()) {
      steps.add(new Step.Slits(paths(piece.lines(), spot), true));
    }
    List<Polygon2> waste = Waste.of(piece);
    List<Segment2> slits = Lines.without(slits(piece), Waste.sides(waste));
    if (!slits.isEmpty()) {
      steps.add(new Step.Slits(paths(slits, spot), false));
    }
    if (!waste.isEmpty()) {
      steps.add(new Step.CutAway(outlines(waste, ruler, spot)));
    }
    return steps;
  }

  private static List<Step.Path> paths(List<Segment2> lines, Function<Vec2, Spot> spot) {
    return lines.stream()
        .map(s -> new Step.Path(spot.apply(s.from()), spot.apply(s.to())))
        .toList();
  }

  private static List<Segment2> slits(FlatPiece piece) {
    List<Segment2> within = Lines.without(piece.cuts(), piece.edges());
    return Lines.without(Lines.without(within, Waste.sides(piece.windows())), piece.lines());
  }

  private static List<List<Spot>> outlines(
      List<Polygon2> areas, Ruler ruler, Function<Vec2, Spot> spot) {
    return areas.stream().map(a -> outline(a, ruler, spot)).toList();
  }

  /** By its corners; an arc by its ends with its radius between, a circle by middle and radius. */
  private static List<Spot> outline(Polygon2 area, Ruler ruler, Function<Vec2, Spot> spot) {
    Optional<Vec2> circle = Arc.circle(area.arcs(), area.size());
    if (circle.isPresent()) {
      double radius = circle.get().distance(area.corner(0));
      return List.of(new Spot.Circle(spot.apply(circle.get()), Measure.of(radius, ruler)));
    }
    List<Spot> spots = new ArrayList<>();
    for (Leg leg : Leg.of(area.corners(), true, area.arcs())) {
      spots.add(spot.apply(leg.from()));
      if (!leg.isStraight()) {
        spots.add(bow(leg, ruler));
      }
    }
    return spots;
  }

  private static Spot bow(Leg leg, Ruler ruler) {
    Vec2 along = leg.to().minus(leg.from()).unit();
    Vec2 out = leg.turn() > 0 ? along.left().times(-1) : along.left();
    // An eighth of a turn each: level, upright or between.
    double least = Math.sin(Math.PI / 8);
    String upright = out.y() > least ? "top" : out.y() < -least ? "bottom" : "";
    String level = out.x() > least ? "right" : out.x() < -least ? "left" : "";
    return new Spot.Bow(
        Measure.of(leg.radius(), ruler),
        Measure.of(2 * leg.radius(), ruler),
        leg.turn() > 0,
        AngleTolerance.UNSEEN.same(Math.abs(leg.turn()), Math.PI),
        (upright + " " + level).strip());
  }

  /** Every point that a cut needs. */
  static List<Vec2> corners(FlatPiece piece) {
    List<Vec2> all = new ArrayList<>();
    of(
        piece,
        Ruler.MM,
        p -> {
          all.add(p);
          return new Spot.Numbered(1);
        });
    return all;
  }
}
