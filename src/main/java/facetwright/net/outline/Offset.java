package facetwright.net.outline;

import facetwright.geom.Corner;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Most;
import facetwright.geom.RoundCorners;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.NetException;
import facetwright.words.Site;
import java.util.List;

/** An outline whose sides all move outward by one distance, and what hinders it. */
final class Offset {
  private Offset() {}

  static Outline of(Outline from, double by, Site site) {
    List<Corner> corners = corners(from, by);
    String wrong = wrong(from, corners);
    if (wrong.isEmpty()) {
      return new Outline(corners);
    }
    double most =
        Most.under(Math.abs(by), mm -> wrong(from, corners(from, Math.copySign(mm, by))).isEmpty());
    throw new NetException(
        Message.of(
            "the outline can't be set off %s by %s: %s; at most by %s",
            by > 0 ? "outward" : "inward", Value.given(Math.abs(by)), wrong, Value.atMost(most)),
        site);
  }

  private static List<Corner> corners(Outline from, double by) {
    return RoundCorners.setOff(from.corners(), by).orElse(List.of());
  }

  /** What is wrong with it; empty where nothing is. */
  private static String wrong(Outline from, List<Corner> corners) {
    if (corners.isEmpty() || corners.stream().anyMatch(Offset::isFar)) {
      return "a corner as sharp as that would reach out too far";
    }
    for (int side = 0; side < corners.size(); side++) {
      double straight =
          RoundCorners.straight(corners, side, RoundCorners.along(from.corners(), side));
      boolean isRound =
          corners.get(side).isRound() || corners.get((side + 1) % corners.size()).isRound();
      if (isRound ? straight < -LengthTolerance.FINE.mm() : straight < Ask.LEAST_SIDE) {
        return "side " + (side + 1) + " would be gone";
      }
    }
    return RoundCorners.polygon(corners).isPresent() ? "" : "it would cross itself";
  }

  private static boolean isFar(Corner corner) {
    return Math.max(Math.abs(corner.at().x()), Math.abs(corner.at().y())) > Ask.LONGEST;
  }
}
