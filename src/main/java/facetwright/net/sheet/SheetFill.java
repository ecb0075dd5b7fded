package facetwright.net.sheet;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;

/** One sheet being filled with pieces. */
final class SheetFill {
  /** What leaves the sheet, or lies higher, by no more does not. */
  private static final LengthTolerance SLACK = LengthTolerance.FINE;

  private static final int GRID = 24;
  private static final int GRID_ENOUGH = 40;
  private static final int SLIDES = 24;

  private final double left;
  private final double width;
  private final double height;
  private final double gap;
  private final List<Placed> placed = new ArrayList<>();

  /** A piece where it lies. Its shape is made ready when the next one comes near it. */
  private static final class Placed {
    private final Spot spot;
    private final Envelope box;
    private PreparedGeometry shape;

    Placed(Spot spot) {
      this.spot = spot;
      this.box =
          new Envelope(spot.x, spot.x + spot.piece.width(), spot.y, spot.y + spot.piece.height());
    }

    boolean meets(Geometry other) {
      if (shape == null) {
        shape = PreparedGeometryFactory.prepare(shifted(spot.piece.outline(), spot.x, spot.y));
      }
      return shape.intersects(other);
    }
  }

  /** Where a turned piece goes: its lower left corner. */
  record Spot(PieceShape.Turned piece, double x, double y) {
    Motion2 motion(double right) {
      return piece.motion().then(Motion2.shift(new Vec2(x + right, y)));
    }
  }

  SheetFill(Stock stock, double margin, double gap) {
    this.left = margin;
    this.width = stock.width() - 2 * margin;
    this.height = stock.height() - 2 * margin;
    this.gap = gap;
  }

  /** The lowest place found for the piece in one of its directions, or null when there is none. */
  Spot place(List<PieceShape.Turned> turns) {
    Spot best = null;
    for (PieceShape.Turned turn : turns) {
      Spot spot = lowest(turn);
      if (spot != null && (best == null || top(spot) < top(best) - SLACK.mm())) {
        best = spot;
      }
    }
    return best == null ? null : keep(best);
  }

  /** Puts a piece that fits nowhere at the sheet's corner. */
  Spot force(PieceShape.Turned turn) {
    return keep(new Spot(turn, left, left));
  }

  /** The shift, in whole millimetres, that brings what lies on the sheet to its middle. */
  Vec2 toMiddle() {
    Envelope all = new Envelope();
    placed.forEach(p -> all.expandToInclude(p.box));
    double x = Math.floor((left + width + left - all.getMinX() - all.getMaxX()) / 2);
    double y = Math.floor((left + height + left - all.getMinY() - all.getMaxY()) / 2);
    return new Vec2(Math.max(0, x), Math.max(0, y));
  }

  private static double top(Spot spot) {
    return spot.y + spot.piece.height();
  }

  private Spot keep(Spot spot) {
    placed.add(new Placed(spot));
    return spot;
  }

  private Spot lowest(PieceShape.Turned turn) {
    double freeX = width - turn.width();
    double freeY = height - turn.height();
    if (freeX < -SLACK.mm() || freeY < -SLACK.mm()) {
      return null;
    }
    TreeSet<Double> xs = new TreeSet<>(List.of(0.0));
    TreeSet<Double> ys = new TreeSet<>(List.of(0.0));
    for (Placed p : placed) {
      xs.add(p.box.getMinX() - left);
      xs.add(p.box.getMaxX() - left + gap);
      ys.add(p.box.getMaxY() - left + gap);
    }
    if (!placed.isEmpty() && placed.size() < GRID_ENOUGH) {
      for (int i = 1; i <= GRID; i++) {
        xs.add(Math.max(0, freeX) * i / GRID);
        ys.add(Math.max(0, freeY) * i / GRID);
      }
    }
    for (double y : ys.headSet(freeY + SLACK.mm(), true)) {
      for (double x : xs.headSet(freeX + SLACK.mm(), true)) {
        if (isFree(turn, left + x, left + y)) {
          return slid(new Spot(turn, left + x, left + y));
        }
      }
    }
    return null;
  }

  /** Moved down and then left as far as halving steps find it free. */
  private Spot slid(Spot spot) {
    double y = spot.y;
    double step = y - left;
    for (int i = 0; i < SLIDES && step > SLACK.mm(); i++) {
      if (y - step >= left && isFree(spot.piece, spot.x, y - step)) {
        y -= step;
      } else {
        step /= 2;
      }
    }
    double x = spot.x;
    step = x - left;
    for (int i = 0; i < SLIDES && step > SLACK.mm(); i++) {
      if (x - step >= left && isFree(spot.piece, x - step, y)) {
        x -= step;
      } else {
        step /= 2;
      }
    }
    return new Spot(spot.piece, x, y);
  }

  private boolean isFree(PieceShape.Turned turn, double x, double y) {
    if (placed.isEmpty()) {
      return true;
    }
    Geometry at = null;
    for (Placed p : placed) {
      if (p.box.getMaxX() + gap <= x
          || p.box.getMinX() >= x + turn.width() + gap
          || p.box.getMaxY() + gap <= y
          || p.box.getMinY() >= y + turn.height() + gap) {
        continue;
      }
      at = at == null ? shifted(turn.reach(gap), x, y) : at;
      if (p.meets(at)) {
        return false;
      }
    }
    return true;
  }

  private static Geometry shifted(Geometry g, double x, double y) {
    return AffineTransformation.translationInstance(x, y).transform(g);
  }
}
