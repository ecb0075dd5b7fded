package facetwright.papers.handout;

import facetwright.geom.Decimals;
import facetwright.net.Join;
import facetwright.net.Laid;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What so many pieces take. */
final class Needs {
  private Needs() {}

  static List<String> lines(Laid laid, int copies) {
    Net net = laid.net();
    Stock stock = laid.stock();
    List<String> lines = new ArrayList<>();
    long sheets = (long) laid.sheets() * copies;
    lines.add(
        Handout.count(sheets, "sheet")
            + " of card, "
            + stock.name()
            + ", "
            + Decimals.places(stock.weight(), 0)
            + " g/m² ("
            + Decimals.places(stock.caliper(), 2)
            + " mm thick)"
            + (copies == 1 ? "." : ": " + laid.sheets() + " a piece."));
    Map<String, Integer> layers = new TreeMap<>();
    for (Layer layer : net.layers()) {
      layers.merge(layer.paper(), 1, Integer::sum);
    }
    layers.forEach(
        (paper, count) ->
            lines.add(
                Handout.count((long) count * copies, "panel")
                    + " to cover with "
                    + (paper.isBlank() ? "decorative paper" : paper)
                    + "."));
    double glued = glued(net);
    if (glued > 0) {
      lines.add(
          "Glue or tape for "
              + Decimals.places(glued * copies / 100, 0)
              + " cm² of tabs and laps.");
    }
    long holes = Handout.openings(net, true) * copies;
    if (holes > 0) {
      lines.add("A punch for " + Handout.count(holes, "hole") + ", and thread or ribbon for them.");
    }
    lines.add("A bone folder or a spent pen, a ruler with a metal edge, a knife and a mat.");
    return lines;
  }

  /** Card that is glued under other card, in mm². */
  private static double glued(Net net) {
    boolean[] under = new boolean[net.panels().size()];
    for (int p = 0; p < under.length; p++) {
      under[p] = net.panels().get(p).role() == PanelRole.TAB;
    }
    for (Join join : net.joins()) {
      if (join instanceof Join.Lap lap) {
        under[lap.under()] = true;
      }
    }
    double area = 0;
    for (int p = 0; p < under.length; p++) {
      area += under[p] ? net.panels().get(p).cardArea() : 0;
    }
    return area;
  }
}
