package facetwright.draw;

import facetwright.geom.Planar;
import facetwright.net.Layer;
import facetwright.net.Net;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.awt.ShapeReader;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What shows on the outside of panels beside the card itself: decorative layers, and labels, which
 * lie on all else.
 */
final class Inlays {
  /** Round letters are drawn straight to so much of their size. */
  private static final double FLATNESS = 0.01;

  private final Map<Integer, List<Inlay>> byPanel = new TreeMap<>();

  /** What an area of a panel shows. */
  enum Kind {
    LAYER,
    /** A label of paper, which has an edge. */
    PAPER,
    WORDS
  }

  /**
   * @param area in the plane of the net; one part, except of words
   */
  record Inlay(Geometry area, Kind kind) {
    /** What of it lies on a part of its panel, each to be one patch. */
    List<Inlay> within(Polygon part) {
      Geometry seen = part.covers(area) ? area : area.intersection(part);
      List<Polygon> parts = new ArrayList<>();
      for (int i = 0; i < seen.getNumGeometries(); i++) {
        if (seen.getGeometryN(i) instanceof Polygon p && p.getArea() > 0) {
          parts.add(p);
        }
      }
      if (kind == Kind.WORDS && !parts.isEmpty()) {
        return List.of(new Inlay(all(parts), kind));
      }
      return parts.stream().map(p -> new Inlay(p, kind)).toList();
    }
  }

  Inlays(Net net) {
    for (Layer layer : net.layers()) {
      add(layer.panel(), new Inlay(Areas.layer(net, layer), Kind.LAYER));
    }
    for (LabelSetting label : LabelSetting.all(net)) {
      if (label.label().asked().cut()) {
        add(label.label().panel(), new Inlay(Planar.polygon(label.outline()), Kind.PAPER));
      }
      List<Polygon> letters = new ArrayList<>();
      label.lines().forEach(line -> letters(line, letters));
      if (!letters.isEmpty()) {
        add(label.label().panel(), new Inlay(all(letters), Kind.WORDS));
      }
    }
  }

  private void add(int panel, Inlay inlay) {
    byPanel.computeIfAbsent(panel, _ -> new ArrayList<>()).add(inlay);
  }

  /** What lies on a panel, from the lowest to the highest. */
  List<Inlay> on(int panel) {
    return byPanel.getOrDefault(panel, List.of());
  }

  private static void letters(Mark.Text line, List<Polygon> letters) {
    Path2D outline = Lettering.outline(line.content(), line.weight());
    outline.transform(AffineTransform.getTranslateInstance(-line.back() / line.size(), 0));
    AffineTransform place = AffineTransform.getTranslateInstance(line.at().x(), line.at().y());
    place.rotate(Math.toRadians(line.angle()));
    place.scale(line.size(), line.size());
    outline.transform(place);
    // Which way a face's outlines run is its own: what an odd number of them encloses is ink.
    Geometry read = Planar.factory().createPolygon();
    for (Object ring :
        ShapeReader.toCoordinates(outline.getPathIterator(null, FLATNESS * line.size()))) {
      Coordinate[] corners = (Coordinate[]) ring;
      if (corners.length > 3) {
        read = read.symDifference(Planar.factory().createPolygon(corners).buffer(0));
      }
    }
    for (int i = 0; i < read.getNumGeometries(); i++) {
      if (read.getGeometryN(i) instanceof Polygon letter && letter.getArea() > 0) {
        letters.add(letter);
      }
    }
  }

  private static Geometry all(List<Polygon> parts) {
    return Planar.factory().createMultiPolygon(parts.toArray(Polygon[]::new));
  }
}
