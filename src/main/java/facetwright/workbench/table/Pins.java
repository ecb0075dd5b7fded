package facetwright.workbench.table;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.geom.Vec2;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;

/** Where findings are pinned. */
final class Pins {
  private Pins() {}

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
