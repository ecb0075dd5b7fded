package facetwright.papers.copies;

import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/**
 * Blanks side by side at an even distance, without end.
 *
 * @param blanks one, or one and the same turned end for end
 * @param at where the lower left corner of each lies the first time
 * @param period after how many mm all comes again
 */
record Row(List<Blank> blanks, List<Vec2> at, double period) {
  private static final int PLACES = 12;

  Row {
    blanks = List.copyOf(blanks);
    at = List.copyOf(at);
  }

  static Row of(Blank blank) {
    return new Row(List.of(blank), List.of(Vec2.ZERO), blank.right(blank, 0));
  }

  /** Rows of two: the second at several heights beside the first. */
  static List<Row> ofTwo(Blank first, Blank second) {
    List<Row> rows = new ArrayList<>();
    for (int i = -PLACES; i <= PLACES; i++) {
      double up = first.height() * i / (PLACES + 1);
      double right = first.right(second, up);
      double period =
          Math.max(
              Math.max(first.right(first, 0), second.right(second, 0)),
              right + second.right(first, -up));
      double low = Math.min(0, up);
      rows.add(
          new Row(
              List.of(first, second),
              List.of(new Vec2(0, -low), new Vec2(right, up - low)),
              period));
    }
    return rows;
  }

  /** How far above this row the same has to begin, shifted by so much to the right. */
  double above(double shift) {
    double worst = 0;
    for (int i = 0; i < blanks.size(); i++) {
      for (int j = 0; j < blanks.size(); j++) {
        Blank lower = blanks.get(i);
        Blank upper = blanks.get(j);
        double aside = at.get(j).x() + shift - at.get(i).x();
        // From where the upper one comes over the reach of the lower one to where it leaves it.
        Envelope reach = lower.reach().getEnvelopeInternal();
        double least = reach.getMinX() - upper.width();
        for (double x = aside - period * Math.floor((aside - least) / period);
            x < reach.getMaxX();
            x += period) {
          worst = Math.max(worst, lower.above(upper, x) + at.get(i).y() - at.get(j).y());
        }
      }
    }
    return worst;
  }
}
