package facetwright.draw;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Layer;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Areas as a pen sees them: their rings, drawn in by a border, and hatched. */
public final class Areas {
  private static final double MITRE_LIMIT = 20;

  private Areas() {}

  /** All rings of each part, the outer one first. */
  public static List<List<Polygon2>> rings(Geometry geometry) {
    List<List<Polygon2>> parts = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon p && p.getArea() > 0) {
        List<Polygon2> rings = new ArrayList<>(List.of(Planar.outline(p.getExteriorRing())));
        for (int h = 0; h < p.getNumInteriorRing(); h++) {
          rings.add(Planar.outline(p.getInteriorRingN(h)));
        }
        parts.add(rings);
      }
    }
    return parts;
  }

  /** Drawn in by a border of even width, corners kept sharp. */
  static Geometry inset(Geometry area, double border) {
    if (area instanceof Polygon whole && whole.getNumInteriorRing() == 0) {
      Polygon2 outline = Planar.outline(whole.getExteriorRing());
      if (outline.isConvex()) {
        Polygon[] left =
            Planar.inset(outline, border).stream().map(Planar::polygon).toArray(Polygon[]::new);
        return Planar.factory().createMultiPolygon(left);
      }
    }
    BufferParameters sharp =
        new BufferParameters(
            1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE_LIMIT);
    return BufferOp.bufferOp(area, -border, sharp);
  }

  /** The paper of a layer: what its reveal leaves of a panel, as far as that is cut and glued. */
  public static Geometry layer(Net net, Layer layer) {
    Geometry left = inset(net.panels().get(layer.panel()).region(), layer.reveal());
    List<Polygon> wide = new ArrayList<>();
    for (int i = 0; i < left.getNumGeometries(); i++) {
      if (left.getGeometryN(i) instanceof Polygon p && isWide(p)) {
        wide.add(p);
      }
    }
    return wide.size() == left.getNumGeometries()
        ? left
        : Planar.factory().createMultiPolygon(wide.toArray(Polygon[]::new));
  }

  private static boolean isWide(Polygon part) {
    List<Polygon2> rings = rings(part).stream().flatMap(List::stream).toList();
    return !rings.isEmpty() && Layer.isWide(rings.getFirst(), rings.subList(1, rings.size()));
  }

  /** Lines at 45° through what the rings enclose, a fixed distance apart over the whole page. */
  public static List<Mark> hatch(List<Polygon2> rings, double spacing, LineKind kind) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (Polygon2 ring : rings) {
      for (Vec2 p : ring.corners()) {
        least = Math.min(least, across(p));
        most = Math.max(most, across(p));
      }
    }
    List<Mark> lines = new ArrayList<>();
    for (double k = Math.ceil(least / spacing); k * spacing < most; k++) {
      List<Vec2> crossings = crossings(rings, k * spacing);
      for (int i = 0; i + 1 < crossings.size(); i += 2) {
        if (crossings.get(i).distance(crossings.get(i + 1)) > LengthTolerance.FINE.mm()) {
          lines.add(Mark.Stroke.line(crossings.get(i), crossings.get(i + 1), kind));
        }
      }
    }
    return lines;
  }

  private static List<Vec2> crossings(List<Polygon2> rings, double level) {
    List<Vec2> found = new ArrayList<>();
    for (Polygon2 ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        Vec2 a = ring.corner(i);
        Vec2 b = ring.corner(i + 1);
        double da = across(a) - level;
        double db = across(b) - level;
        if ((da < 0) != (db < 0)) {
          found.add(a.toward(b, da / (da - db)));
        }
      }
    }
    found.sort((p, q) -> Double.compare(p.x() + p.y(), q.x() + q.y()));
    return found;
  }

  /** Distance from the line through the origin at 45°. */
  private static double across(Vec2 p) {
    return (p.y() - p.x()) / Math.sqrt(2);
  }
}
