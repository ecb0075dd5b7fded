package facetwright.draw;

import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.Optional;

/**
 * Where on a page nothing lies yet. The page is divided into cells of 1 mm; a cell is taken as soon
 * as anything comes within the clearance of any part of it, so free really is free, while up to 1
 * mm of room beside a mark may go unused.
 */
public final class FreeSpace {
  private static final double HALF_DIAGONAL = Math.sqrt(0.5);

  private final int columns;
  private final int rows;
  private final boolean[] taken;
  private int[] sums;

  /** A corner of the page near which something is wanted. */
  public enum Corner {
    TOP_LEFT(0, 1),
    TOP_RIGHT(1, 1),
    BOTTOM_LEFT(0, 0),
    BOTTOM_RIGHT(1, 0);

    private final int right;
    private final int top;

    Corner(int right, int top) {
      this.right = right;
      this.top = top;
    }
  }

  public FreeSpace(double width, double height) {
    columns = (int) Math.floor(width);
    rows = (int) Math.floor(height);
    taken = new boolean[columns * rows];
  }

  /** Takes what a panel covers and the clearance around it. */
  public void take(Polygon2 outline, double clearance) {
    line(outline, clearance);
    Box2 box = outline.box();
    for (int y = Math.max(0, (int) box.minY()); y < Math.min(rows, box.maxY()); y++) {
      for (int x = Math.max(0, (int) box.minX()); x < Math.min(columns, box.maxX()); x++) {
        if (!taken[y * columns + x] && inside(outline, x + 0.5, y + 0.5)) {
          taken[y * columns + x] = true;
        }
      }
    }
    sums = null;
  }

  /** Takes the sides alone and the clearance around them, not what they enclose. */
  public void line(Polygon2 outline, double clearance) {
    for (int i = 0; i < outline.size(); i++) {
      line(outline.side(i), clearance);
    }
  }

  private void line(Segment2 side, double clearance) {
    double reach = clearance + HALF_DIAGONAL;
    Box2 box =
        new Box2(
                Math.min(side.from().x(), side.to().x()),
                Math.min(side.from().y(), side.to().y()),
                Math.max(side.from().x(), side.to().x()),
                Math.max(side.from().y(), side.to().y()))
            .grown(reach);
    for (int y = Math.max(0, (int) box.minY()); y < Math.min(rows, box.maxY()); y++) {
      for (int x = Math.max(0, (int) box.minX()); x < Math.min(columns, box.maxX()); x++) {
        if (side.distance(new Vec2(x + 0.5, y + 0.5)) <= reach) {
          taken[y * columns + x] = true;
        }
      }
    }
    sums = null;
  }

  public void take(Box2 box, double clearance) {
    Box2 grown = box.grown(clearance);
    for (int y = Math.max(0, (int) grown.minY()); y < Math.min(rows, grown.maxY()); y++) {
      for (int x = Math.max(0, (int) grown.minX()); x < Math.min(columns, grown.maxX()); x++) {
        taken[y * columns + x] = true;
      }
    }
    sums = null;
  }

  /**
   * The free place of this size nearest to a corner of the page.
   *
   * @param margin kept free along the edge of the page
   */
  public Optional<Box2> find(double width, double height, double margin, Corner corner) {
    if (sums == null) {
      sums = sums();
    }
    int edge = (int) Math.ceil(margin);
    int wide = (int) Math.ceil(width);
    int high = (int) Math.ceil(height);
    Box2 best = null;
    int least = Integer.MAX_VALUE;
    for (int y = edge; y + high + edge <= rows; y++) {
      for (int x = edge; x + wide + edge <= columns; x++) {
        int dx = corner.right == 0 ? x : columns - x - wide;
        int dy = corner.top == 0 ? y : rows - y - high;
        if (dx + dy < least && free(x, y, wide, high)) {
          least = dx + dy;
          best = new Box2(x, y, x + width, y + height);
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private boolean free(int x, int y, int wide, int high) {
    int row = columns + 1;
    return sums[(y + high) * row + x + wide]
            - sums[y * row + x + wide]
            - sums[(y + high) * row + x]
            + sums[y * row + x]
        == 0;
  }

  private int[] sums() {
    int row = columns + 1;
    int[] all = new int[row * (rows + 1)];
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < columns; x++) {
        all[(y + 1) * row + x + 1] =
            all[y * row + x + 1]
                + all[(y + 1) * row + x]
                - all[y * row + x]
                + (taken[y * columns + x] ? 1 : 0);
      }
    }
    return all;
  }

  /** Counts the sides crossed by a ray to the right. */
  private static boolean inside(Polygon2 outline, double x, double y) {
    boolean in = false;
    for (int i = 0; i < outline.size(); i++) {
      Vec2 a = outline.corner(i);
      Vec2 b = outline.corner(i + 1);
      if ((a.y() > y) != (b.y() > y)
          && x < a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y())) {
        in = !in;
      }
    }
    return in;
  }
}
