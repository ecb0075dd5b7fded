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

  /** Rounds it by an arc that meets both sides without a kink. */
  void round(PanelDraft draft, double radius, Site site) {
    List<Corner> corners =
        List.of(
            new Corner(before.from()), new Corner(after.from(), radius), new Corner(after.to()));
    double turn = Math.abs(RoundCorners.turn(corners, 1));
    double most = most() / Math.tan(turn / 2);
    Ask.that(
        !RoundCorners.isStraight(corners, 1) && radius <= most,
        () ->
            Message.of(
                "a corner of %s rounded by %s finds no room on its edges: at most by %s",
                Value.name(draft.name()),
                Value.given(radius),
                Value.atMost(Math.min(most, Ask.MOST_MM))),
        site);
    List<Vec2> places = RoundCorners.places(corners, 1, Arc.sides(radius, turn));
    EdgeDraft first = draft.cutCorner(after, places.getFirst(), places.getLast());
    List<EdgeDraft> sides = new ArrayList<>(List.of(first));
    sides.addAll(draft.detour(first, places.subList(1, places.size() - 1)));
    draft.round(sides, RoundCorners.centre(corners, 1));
  }
}
