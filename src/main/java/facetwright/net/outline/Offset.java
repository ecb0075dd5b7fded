package facetwright.net.outline;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.NetException;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An outline whose sides all move outward by one distance. A corner moves to where its two moved
 * sides meet: along n + m by d / (1 + n·m), where n and m are their directions outward.
 */
final class Offset {
  private final Outline from;
  private final double by;

  private Offset(Outline from, double by) {
    this.from = from;
    this.by = by;
  }

  static Outline of(Outline from, double by, Site site) {
    Offset asked = new Offset(from, by);
    List<Corner> corners = asked.corners();
    String wrong = asked.wrong(corners);
    if (wrong.isEmpty()) {
      return new Outline(corners);
    }
    double most =
        Most.under(
            Math.abs(by),
            mm -> {
              Offset less = new Offset(from, Math.copySign(mm, by));
              return less.wrong(less.corners()).isEmpty();
            });
    String way = by > 0 ? "outward" : "inward";
    throw new NetException(
        Message.of(
            "the outline can't be set off %s by %s: %s; at most by %s",
            way, Value.given(Math.abs(by)), wrong, Value.atMost(most)),
        site);
  }

  private List<Corner> corners() {
    List<Corner> moved = new ArrayList<>();
    for (int c = 0; c < from.size(); c++) {
      Vec2 n = outward(c - 1);
      Vec2 m = outward(c);
      double along = by / (1 + n.dot(m));
      if (!Double.isFinite(along) || Math.abs(along) > Ask.MOST_MM) {
        return List.of();
      }
      // Where sides turn left the round corner's middle lies inside, and the arc grows.
      double grows = Rounding.turn(from, c) > 0 ? by : -by;
      double radius = from.corner(c).isRound() ? Math.max(0, from.corner(c).radius() + grows) : 0;
      moved.add(new Corner(from.corner(c).at().plus(n.plus(m).times(along)), radius));
    }
    return moved;
  }

  private Vec2 outward(int side) {
    return from.corner(side + 1).at().minus(from.corner(side).at()).unit().left().times(-1);
  }

  /** What is wrong with it; empty where nothing is. */
  private String wrong(List<Corner> corners) {
    if (corners.stream()
            .anyMatch(c -> Math.max(Math.abs(c.at().x()), Math.abs(c.at().y())) > Ask.MOST_MM)
        || corners.isEmpty()) {
      return "a corner as sharp as that would reach out too far";
    }
    Outline moved = new Outline(corners);
    for (int side = 0; side < corners.size(); side++) {
      Vec2 along = moved.corner(side + 1).at().minus(moved.corner(side).at());
      double straight = along.dot(outward(side).left()) - Rounding.taken(moved, side);
      boolean isRound = moved.corner(side).isRound() || moved.corner(side + 1).isRound();
      if (isRound ? straight < -LengthTolerance.FINE.mm() : straight < Ask.LEAST_SIDE) {
        return "side " + (side + 1) + " would be gone";
      }
    }
    return isSimple(moved) ? "" : "it would cross itself";
  }

  static boolean isSimple(Outline outline) {
    Optional<Polygon2> polygon = Polygon2.wide(outline.polygon().corners());
    return polygon.isPresent() && polygon.get().isSimple();
  }
}
