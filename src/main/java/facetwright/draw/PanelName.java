package facetwright.draw;

import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Panel;
import facetwright.net.Tick;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The name of a panel, written lightly where it fits inside with room around. */
final class PanelName {
  private static final double[] SIZES_PT = {9, Lettering.SMALLEST_PT};
  private static final double ROOM = 1;
  private static final double QUARTER = Math.PI / 2;

  private PanelName() {}

  /** Nothing where the name does not fit level or upright. */
  static Optional<Text> of(Panel panel, List<Tick> ticks) {
    String name = Lettering.printable(panel.name()).strip();
    if (name.isEmpty()) {
      return Optional.empty();
    }
    Polygon region = panel.region();
    double least = Lettering.pt(Lettering.SMALLEST_PT);
    double narrowest = Lettering.width(name, Weight.REGULAR, least);
    if (region.getArea() < narrowest * least) {
      return Optional.empty();
    }
    Coordinate inmost = MaximumInscribedCircle.getCenter(region, 0.2).getCoordinate();
    List<Vec2> places =
        panel.openings().isEmpty()
            ? List.of(panel.outline().centroid(), new Vec2(inmost.x, inmost.y))
            : List.of(new Vec2(inmost.x, inmost.y), panel.outline().centroid());
    for (double pt : SIZES_PT) {
      for (double turn : new double[] {0, QUARTER}) {
        for (Vec2 place : places) {
          Motion2 motion = Motion2.turn(turn).then(Motion2.shift(place));
          double size = Lettering.pt(pt);
          double width = Lettering.width(name, Weight.REGULAR, size);
          double height = size * Lettering.CAP_HEIGHT;
          Polygon2 box =
              motion.apply(
                  Polygon2.rectangle(
                      -width / 2 - ROOM,
                      -height / 2 - size * Lettering.DESCENT - ROOM,
                      width + 2 * ROOM,
                      height + 2 * size * Lettering.DESCENT + 2 * ROOM));
          Geometry area = Planar.polygon(box);
          if (region.covers(area) && ticks.stream().noneMatch(t -> meets(area, t))) {
            return Optional.of(
                new Text(
                        new Vec2(0, -height / 2),
                        size,
                        0,
                        Anchor.MIDDLE,
                        Weight.REGULAR,
                        Ink.GREY,
                        name)
                    .moved(motion));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean meets(Geometry area, Tick tick) {
    Coordinate[] ends = {
      Planar.coordinate(tick.mark().from()), Planar.coordinate(tick.mark().to())
    };
    return area.intersects(Planar.factory().createLineString(ends));
  }
}
