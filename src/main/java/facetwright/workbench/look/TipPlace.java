package facetwright.workbench.look;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Rectangle2D;

/** Where a tooltip stands, so that it covers neither what it tells of nor what one types in. */
final class TipPlace {
  private static final double GAP = 6;

  private TipPlace() {}

  /**
   * Where it goes.
   *
   * @param told what it tells of
   * @param free what it must not cover
   * @return the first place on the screen that covers nothing of that; else below, as far as it
   *     goes
   */
  static Rectangle2D of(
      Rectangle2D told, List<Rectangle2D> free, double width, double height, Rectangle2D screen) {
    double x = clamp(told.getMinX(), screen.getMinX(), screen.getMaxX() - width);
    double y = clamp(told.getMinY(), screen.getMinY(), screen.getMaxY() - height);
    List<Rectangle2D> places = new ArrayList<>();
    places.add(new Rectangle2D(x, told.getMaxY() + GAP, width, height));
    places.add(new Rectangle2D(x, told.getMinY() - GAP - height, width, height));
    for (Rectangle2D other : free) {
      places.add(new Rectangle2D(x, other.getMaxY() + GAP, width, height));
      places.add(new Rectangle2D(x, other.getMinY() - GAP - height, width, height));
      places.add(new Rectangle2D(other.getMaxX() + GAP, y, width, height));
      places.add(new Rectangle2D(other.getMinX() - GAP - width, y, width, height));
    }
    return places.stream()
        .filter(screen::contains)
        .filter(r -> free.stream().noneMatch(r::intersects))
        .findFirst()
        .orElse(places.getFirst());
  }

  private static double clamp(double value, double from, double to) {
    return Math.max(from, Math.min(value, to));
  }
}
