package facetwright.script.api;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.script.text.Edit;
import facetwright.words.Decimals;
import facetwright.words.Spoken;
import java.util.List;

/** How a script speaks of the panels of what it makes. */
public interface Speaking {
  /** Of panels that have names of their own; the variables that hold them are not known here. */
  Speaking BY_NAME =
      (net, p) ->
          net.panels().get(p).role() == PanelRole.TAB
              ? Spoken.NONE
              : new Spoken(List.of(Edit.inQuotes(net.panels().get(p).name())), true);

  /**
   * The words for a panel.
   *
   * @param net as the script made it, its panels in their first places and by their first names
   */
  Spoken of(Net net, int panel);

  /** By a place inside the panel, as those of a blank are meant: as round as there is room for. */
  static Speaking byPlace(Unit unit) {
    return (net, p) -> new Spoken(List.of(place(net.panels().get(p), unit)));
  }

  private static String place(Panel panel, Unit unit) {
    Vec2 inmost = Planar.inmost(panel.outline(), List.of(), Places.NEAR);
    double room = Places.distance(panel.outline(), inmost);
    Vec2 found = inmost;
    for (double step : Places.STEPS) {
      double mm = step * unit.mm();
      Vec2 round = new Vec2(mm * Math.rint(inmost.x() / mm), mm * Math.rint(inmost.y() / mm));
      if (panel.outline().contains(round)
          && Places.distance(panel.outline(), round) > Places.ENOUGH * room) {
        found = round;
        break;
      }
    }
    return "[" + typed(found.x(), unit) + ", " + typed(found.y(), unit) + "]";
  }

  private static String typed(double mm, Unit unit) {
    return Decimals.plain(Math.rint(mm / unit.mm() * Places.PARTS) / Places.PARTS);
  }

  /** Round places inside a panel. */
  final class Places {
    /** Steps of the design's unit, the roundest first. */
    private static final List<Double> STEPS = List.of(10.0, 5.0, 1.0, 0.5, 0.25, 0.1, 0.05, 0.01);

    /** A place with so much of the most room about it will do. */
    private static final double ENOUGH = 0.5;

    /** How near to the most room is good enough, in mm. */
    private static final double NEAR = 0.1;

    /** Places are told to so many parts of a unit. */
    private static final double PARTS = 1000;

    private Places() {}

    private static double distance(Polygon2 outline, Vec2 place) {
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < outline.size(); i++) {
        least = Math.min(least, outline.side(i).distance(place));
      }
      return least;
    }
  }
}
