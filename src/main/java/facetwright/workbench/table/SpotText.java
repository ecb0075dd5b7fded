package facetwright.workbench.table;

import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What lies under the pointer, in words, in the unit of the design and in the other. */
final class SpotText {
  private static final int MOST_SIDES = 6;

  private SpotText() {}

  static String about(Net net, Spot spot, Unit unit) {
    return switch (spot) {
      case Spot.Bare _ -> "";
      case Spot.OnPanel(int p) -> panel(net.panels().get(p), unit);
      case Spot.OnScore(int s) -> score(net, net.scores().get(s), unit);
      case Spot.OnCut(EdgeRef side) ->
          "Cut edge of "
              + net.panels().get(side.panel()).name()
              + ", "
              + both(net.segment(side).length(), unit)
              + " long";
    };
  }

  /** Where a place is, measured from a sheet's lower left corner. */
  static String from(Box2 sheet, Vec2 place, Unit unit) {
    return "From the corner: "
        + both(place.x() - sheet.minX(), unit)
        + " across, "
        + both(place.y() - sheet.minY(), unit)
        + " up";
  }

  private static String panel(Panel panel, Unit unit) {
    Polygon2 outline = panel.outline();
    String sides =
        outline.size() > MOST_SIDES
            ? outline.size() + " sides"
            : "sides "
                + IntStream.range(0, outline.size())
                    .mapToObj(i -> text(outline.side(i).length(), unit))
                    .collect(Collectors.joining(", "));
    String role =
        panel.role() == PanelRole.FACET
            ? ""
            : " (" + panel.role().name().toLowerCase(Locale.ROOT) + ")";
    return capital(panel.name()) + role + ": " + sides;
  }

  private static String score(Net net, Score score, Unit unit) {
    String sense = score.sense() == Sense.MOUNTAIN ? "Mountain" : "Valley";
    String angle =
        switch (score.angle()) {
          case FoldAngle.Known(double degrees, _) ->
              String.format(Locale.ROOT, ", folds by %.1f°", degrees);
          case FoldAngle.ToSolve _ -> "";
        };
    return sense
        + " score between "
        + net.panels().get(score.a().panel()).name()
        + " and "
        + net.panels().get(score.b().panel()).name()
        + ", "
        + both(net.segment(score.a()).length(), unit)
        + " long"
        + angle;
  }

  private static String capital(String name) {
    return name.isEmpty() ? "Panel" : Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }

  /** A length as the maker's ruler reads it, and in brackets as the other ruler does. */
  static String both(double mm, Unit unit) {
    return text(mm, unit) + " (" + text(mm, unit.counterpart()) + ")";
  }

  static String text(double mm, Unit unit) {
    return new Length(mm).read(unit);
  }
}
