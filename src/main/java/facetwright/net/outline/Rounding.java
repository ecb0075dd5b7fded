package facetwright.net.outline;

import facetwright.geom.Corner;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Most;
import facetwright.geom.RoundCorners;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.NetException;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/** Corners rounded, as far as their arcs find room on the sides. */
final class Rounding {
  private Rounding() {}

  static Outline of(Outline from, double radius, List<Integer> which, Site site) {
    for (int c : which) {
      if (RoundCorners.isStraight(from.corners(), c)) {
        throw new NetException(
            "corner " + (c + 1) + " of the outline lies on a straight side: nothing to round",
            site);
      }
    }
    List<Corner> asked = with(from, radius, which);
    if (fits(asked)) {
      return new Outline(asked);
    }
    double most = Most.under(radius, mm -> fits(with(from, mm, which)));
    throw new NetException(
        Message.of(
            "corners rounded by %s find no room on their sides: at most by %s",
            Value.given(radius), Value.atMost(most)),
        site);
  }

  private static List<Corner> with(Outline from, double radius, List<Integer> which) {
    List<Corner> corners = new ArrayList<>(from.corners());
    which.forEach(c -> corners.set(c, new Corner(corners.get(c).at(), radius)));
    return corners;
  }

  private static boolean fits(List<Corner> corners) {
    for (int side = 0; side < corners.size(); side++) {
      double straight = RoundCorners.straight(corners, side, RoundCorners.along(corners, side));
      if (straight < -LengthTolerance.FINE.mm()) {
        return false;
      }
    }
    return RoundCorners.polygon(corners).isPresent();
  }

  /** The area that rounding takes off, in mm²: below 0 where it fills hollow corners. */
  static double lost(Outline outline) {
    double lost = 0;
    for (int c = 0; c < outline.size(); c++) {
      double turn = RoundCorners.turn(outline.corners(), c);
      double r = outline.corner(c).radius();
      // Two tangents of length r·tan(t/2) with the middle make a kite; of it the sector stays.
      lost += Math.signum(turn) * r * r * (Math.tan(Math.abs(turn) / 2) - Math.abs(turn) / 2);
    }
    return lost;
  }
}
