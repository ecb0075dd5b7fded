package facetwright.fold;

import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import facetwright.net.Stance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether the card round a corner inside the net can be folded flat, every score right over. Both
 * conditions are necessary; together they do not promise that the layers pass each other.
 *
 * @param corners of the panels round it, counter-clockwise
 * @param alternating the angles of the panels taken with signs in turn, summed, in degrees: 0 where
 *     it can be folded flat (T. Kawasaki 1989, J. Justin 1986; from memory)
 * @param surplus mountains less valleys: 2 or −2 where it can be folded flat (J. Justin 1986,
 *     Maekawa in K. Kasahara and T. Takahama, 1987; from memory)
 * @param isMeant whether the net says that every score there is folded right over, 180°
 */
public record FlatFolding(
    List<Stance.Corner> corners, double alternating, int surplus, boolean isMeant) {
  private static final double SAME_DEGREES = 1e-6;
  private static final FoldAngle RIGHT_OVER = FoldAngle.degrees(180);

  public FlatFolding {
    corners = List.copyOf(corners);
  }

  /** Whether both conditions hold. */
  public boolean isPossible() {
    return corners.size() % 2 == 0
        && Math.abs(alternating) <= SAME_DEGREES
        && Math.abs(surplus) == 2;
  }

  /** The test at a vertex inside the net; empty for a vertex on its border. */
  public static Optional<FlatFolding> at(Net net, Vertices.Vertex vertex) {
    if (!vertex.interior()) {
      return Optional.empty();
    }
    Map<EdgeRef, Score> scoreOf = new LinkedHashMap<>();
    for (Score s : net.scores()) {
      scoreOf.put(s.a(), s);
      scoreOf.put(s.b(), s);
    }
    List<Stance.Corner> round = new ArrayList<>();
    double alternating = 0;
    int surplus = 0;
    boolean meant = true;
    Stance.Corner corner = vertex.corners().getFirst();
    do {
      var outline = net.panels().get(corner.panel()).outline();
      double angle = Math.toDegrees(outline.angle(corner.corner()));
      alternating += round.size() % 2 == 0 ? angle : -angle;
      round.add(corner);
      // The side that ends in the corner leads to the next panel, counter-clockwise.
      int side = Math.floorMod(corner.corner() - 1, outline.size());
      EdgeRef here = new EdgeRef(corner.panel(), side);
      Score score = scoreOf.get(here);
      meant &= score.angle().equals(RIGHT_OVER);
      surplus += score.sense() == Sense.MOUNTAIN ? 1 : -1;
      EdgeRef there = score.a().equals(here) ? score.b() : score.a();
      corner = new Stance.Corner(there.panel(), there.edge());
    } while (!corner.equals(round.getFirst()) && round.size() < vertex.corners().size());
    return Optional.of(new FlatFolding(round, alternating, surplus, meant));
  }
}
