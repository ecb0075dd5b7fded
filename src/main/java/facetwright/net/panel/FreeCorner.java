package facetwright.net.panel;

import facetwright.geom.Arc;
import facetwright.geom.Corner;
import facetwright.geom.RoundCorners;
import facetwright.geom.Vec2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/** A corner of a panel in the making, between two of its sides. */
record FreeCorner(EdgeDraft before, EdgeDraft after) {
  /** Of a side so much may be cut away: something of it stays. */
  private static final double PART = 0.999;

  /** How far back along both sides it may be cut. */
  double most() {
    return PART * Math.min(after.length(), before.length());
  }

  /** The place so far along the side after it, below 0 back along the one before. */
  Vec2 on(double mm) {
    Vec2 along = (mm < 0 ? before : after).segment().direction();
    return after.from().plus(along.times(mm));
  }

  /** How far the outline turns here, to either side. */
  private double turn() {
    return Math.abs(RoundCorners.turn(corners(1), 1));
  }

  private List<Corner> corners(double radius) {
    return List.of(
        new Corner(before.from()), new Corner(after.from(), radius), new Corner(after.to()));
  }

  /**
   * Refuses to round corners by more than their sides have room for, those in common among them.
   *
   * @param panel its name
   */
  static void refuse(List<FreeCorner> corners, String panel, double radius, Site site) {
    double most = Ask.LONGEST;
    for (FreeCorner corner : corners) {
      for (EdgeDraft side : List.of(corner.before, corner.after)) {
        double set =
            corners.stream()
                .filter(c -> c.before == side || c.after == side)
                .mapToDouble(c -> Math.tan(c.turn() / 2))
                .sum();
        most = Math.min(most, PART * side.length() / set);
      }
    }
    double greatest = most;
    Ask.that(
        radius <= most && corners.stream().noneMatch(c -> RoundCorners.isStraight(c.corners(1), 1)),
        () ->
            Message.of(
                "a corner of %s rounded by %s finds no room on its edges: at most by %s",
                Value.name(panel), Value.given(radius), Value.atMost(greatest)),
        site);
  }

  /** Rounds it by an arc that meets both sides without a kink, for which there is room. */
  void round(PanelDraft draft, double radius) {
    List<Corner> corners = corners(radius);
    List<Vec2> places = RoundCorners.places(corners, 1, Arc.sides(radius, turn()));
    EdgeDraft first = draft.cutCorner(after, places.getFirst(), places.getLast());
    List<EdgeDraft> sides = new ArrayList<>(List.of(first));
    sides.addAll(draft.detour(first, places.subList(1, places.size() - 1)));
    draft.round(sides, RoundCorners.centre(corners, 1));
  }
}
