package facetwright.geom;

import java.util.List;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.quadtree.Quadtree;

/** Outlines that keep apart from each other, taken in one by one and found by where they lie. */
public final class Apart {
  private final Quadtree taken = new Quadtree();

  /** Takes an outline in; no where it shares a place with one taken in before. */
  public boolean takes(Polygon outline) {
    List<?> near = taken.query(outline.getEnvelopeInternal());
    if (near.stream().map(Polygon.class::cast).anyMatch(outline::intersects)) {
      return false;
    }
    taken.insert(outline.getEnvelopeInternal(), outline);
    return true;
  }
}
