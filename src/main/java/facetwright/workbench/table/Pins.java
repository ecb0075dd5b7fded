package facetwright.workbench.table;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.geom.Vec2;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import java.util.List;
import java.util.Optional;

/** Where findings are pinned. */
final class Pins {
  /** So near, as part of their width, two pins hide too much of each other. */
  private static final double APART = 0.9;

  private Pins() {}

  /**
   * Where a pin hides none of those set before: at its place, or beside it to the one side.
   *
   * @param set where others are
   * @param wide how wide each is
   * @param right whether it goes to the right where it would hide one; else to the left
   */
  static Vec2 beside(List<Vec2> set, Vec2 place, double wide, boolean right) {
    Vec2 free = place;
    for (int i = 0; i < set.size(); i++) {
      Vec2 now = free;
      Optional<Vec2> hidden = set.stream().filter(p -> p.distance(now) < APART * wide).findFirst();
      if (hidden.isEmpty()) {
        break;
      }
      free = new Vec2(hidden.get().x() + (right ? wide : -wide), free.y());
    }
    return free;
  }

  static Vec2 place(Laid laid, Finding finding) {
    Net net = laid.net();
    return switch (finding.place()) {
      case Place.WholeNet _ -> new Vec2(laid.sheet(0).maxX() - 8, laid.sheet(0).maxY() - 8);
      case Place.AtPanel(int p) -> net.panels().get(p).outline().centroid();
      case Place.AtScore(int s) -> net.segment(net.scores().get(s).a()).middle();
      case Place.AtJoin(int j) ->
          switch (net.joins().get(j)) {
            case Join.Seam seam -> net.segment(seam.a()).middle();
            case Join.Lap lap -> net.panels().get(lap.under()).outline().centroid();
          };
    };
  }
}
