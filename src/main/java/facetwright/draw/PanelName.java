package facetwright.draw;

import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Motion2;
import facetwright.geom.PartingSides;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.Tick;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The name of a panel, written lightly where it fits inside with room around. */
final class PanelName {
  private static final double[] SIZES_PT = {9, Lettering.SMALLEST_PT};
  private static final double ROOM = 1;

  /** How much less than the most room is as good, in mm. */
  private static final double NEAR = 0.2;

  private static final double QUARTER = Math.PI / 2;

  private final Panel panel;
  private final double zoom;
  private final List<Tick> ticks;
  private final String name;
  private final Polygon region;
  private final boolean convex;
  private final List<Polygon2> openings;
  private Vec2 inmost;

  private PanelName(Panel panel, List<Tick> ticks, String name, double zoom) {
    this.panel = panel;
    this.zoom = zoom;
    this.ticks = ticks;
    this.name = name;
    this.region = panel.region();
    this.convex = panel.outline().isConvex();
    this.openings = panel.openings().stream().map(Opening::outline).toList();
  }

  /**
   * Nothing where the name does not fit level or upright.
   *
   * @param zoom how much larger than life it will be seen; its type is so much smaller
   */
  static Optional<Text> of(Panel panel, List<Tick> ticks, double zoom) {
    String name = Lettering.printable(panel.name()).strip();
    return name.isEmpty() ? Optional.empty() : new PanelName(panel, ticks, name, zoom).written();
  }

  private Optional<Text> written() {
    double least = Lettering.pt(Lettering.SMALLEST_PT) / zoom;
    double narrowest = Lettering.width(name, Weight.REGULAR, least);
    if (region.getArea() < narrowest * least) {
      return Optional.empty();
    }
    for (double pt : SIZES_PT) {
      double size = Lettering.pt(pt) / zoom;
      for (double turn : new double[] {0, QUARTER}) {
        for (boolean middle : new boolean[] {isWhole(), !isWhole()}) {
          Vec2 place = middle ? panel.outline().centroid() : inmost();
          Motion2 motion = Motion2.turn(turn).then(Motion2.shift(place));
          if (holds(motion.apply(box(size)))) {
            return Optional.of(text(size).moved(motion));
          }
        }
      }
    }
    return Optional.empty();
  }

  private boolean isWhole() {
    return openings.isEmpty();
  }

  /** The place with the most room about it, found where it is needed only. */
  private Vec2 inmost() {
    if (inmost == null) {
      inmost = Planar.inmost(panel.outline(), openings, NEAR);
    }
    return inmost;
  }

  private Text text(double size) {
    Vec2 foot = new Vec2(0, -size * Lettering.CAP_HEIGHT / 2);
    return new Text(foot, size, 0, Anchor.MIDDLE, Weight.REGULAR, Ink.GREY, name);
  }

  /** What the name takes, with some room about it, its middle at the origin. */
  private Polygon2 box(double size) {
    double width = Lettering.width(name, Weight.REGULAR, size);
    double height = size * Lettering.CAP_HEIGHT;
    double room = ROOM / zoom;
    return Polygon2.rectangle(
        -width / 2 - room,
        -height / 2 - size * Lettering.DESCENT - room,
        width + 2 * room,
        height + 2 * size * Lettering.DESCENT + 2 * room);
  }

  private boolean holds(Polygon2 box) {
    Geometry area = Planar.polygon(box);
    return isInside(box, area) && ticks.stream().noneMatch(t -> meets(area, t));
  }

  private boolean isInside(Polygon2 box, Geometry area) {
    return convex
        ? PartingSides.isInConvex(box, panel.outline())
            && openings.stream().noneMatch(cut -> PartingSides.meet(box, cut))
        : region.covers(area);
  }

  private static boolean meets(Geometry area, Tick tick) {
    Coordinate[] ends = {
      Planar.coordinate(tick.mark().from()), Planar.coordinate(tick.mark().to())
    };
    return area.intersects(Planar.factory().createLineString(ends));
  }
}
