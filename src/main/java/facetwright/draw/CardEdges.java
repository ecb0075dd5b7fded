package facetwright.draw;

import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * The sides of one panel and of its openings by where they lie: one with many holes has thousands.
 */
final class CardEdges {
  private final STRtree byPlace = new STRtree();

  /**
   * @param scored the sides along which a net is scored
   */
  CardEdges(Net net, int panel, Set<EdgeRef> scored) {
    Panel card = net.panels().get(panel);
    List<Border> all = new ArrayList<>();
    for (int i = 0; i < card.outline().size(); i++) {
      LineKind kind = scored.contains(new EdgeRef(panel, i)) ? LineKind.FOLDED : LineKind.CUT;
      all.add(new Border(all.size(), card.outline().side(i), kind));
    }
    for (Opening opening : card.openings()) {
      Polygon2 cut = opening.outline();
      for (int i = 0; i < cut.size(); i++) {
        all.add(new Border(all.size(), cut.side(i), LineKind.CUT));
      }
    }
    all.forEach(border -> byPlace.insert(border.about(), border));
  }

  /**
   * Edges of the card that follow each other, in the plane of the net.
   *
   * @param closed whether they go right round, as those of a hole do
   */
  record Line(List<Vec2> points, boolean closed, LineKind kind) {}

  /** A side of a panel or of one of its openings; the one with the lower number goes first. */
  private record Border(int number, Segment2 side, LineKind kind) {
    boolean holds(Vec2 a, Vec2 b) {
      return side.distance(a) < FoldedDrawing.ON_SIDE.mm()
          && side.distance(b) < FoldedDrawing.ON_SIDE.mm();
    }

    Envelope about() {
      Envelope about = new Envelope(Planar.coordinate(side.from()), Planar.coordinate(side.to()));
      about.expandBy(FoldedDrawing.ON_SIDE.mm());
      return about;
    }
  }

  /** Those sides of a part of the panel that are sides of the panel or of an opening. */
  List<Line> of(Polygon part) {
    List<Line> found = new ArrayList<>();
    follow(part.getExteriorRing(), found);
    for (int h = 0; h < part.getNumInteriorRing(); h++) {
      follow(part.getInteriorRingN(h), found);
    }
    return found;
  }

  /** Sides of one kind that follow each other round the ring make one line. */
  private void follow(LineString ring, List<Line> found) {
    List<Vec2> corners = new ArrayList<>();
    for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
      corners.add(place(ring.getCoordinateN(i)));
    }
    int count = corners.size();
    List<Optional<LineKind>> kinds = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      kinds.add(kind(corners.get(i), corners.get((i + 1) % count)));
    }
    int first = 0;
    while (first < count && kinds.get(first).equals(kinds.get((first + count - 1) % count))) {
      first++;
    }
    if (first == count) {
      kinds.stream()
          .findFirst()
          .flatMap(all -> all)
          .ifPresent(all -> found.add(new Line(corners, true, all)));
      return;
    }
    int i = 0;
    while (i < count) {
      Optional<LineKind> kind = kinds.get((first + i) % count);
      List<Vec2> run = new ArrayList<>(List.of(corners.get((first + i) % count)));
      while (i < count && kinds.get((first + i) % count).equals(kind)) {
        i++;
        run.add(corners.get((first + i) % count));
      }
      kind.ifPresent(k -> found.add(new Line(run, false, k)));
    }
  }

  private Optional<LineKind> kind(Vec2 a, Vec2 b) {
    Pace.step();
    List<?> near = byPlace.query(new Envelope(Planar.coordinate(a)));
    return near.stream()
        .map(Border.class::cast)
        .filter(border -> border.holds(a, b))
        .min(Comparator.comparingInt(Border::number))
        .map(Border::kind);
  }

  private static Vec2 place(Coordinate c) {
    return new Vec2(c.x, c.y);
  }
}
