package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Location;

/**
 * A line down or across the blank that may be scored without a stop: over scores, and over what is
 * cut or falls away, where a groove does no harm.
 *
 * @param isUpright whether it runs down the blank
 * @param at where it lies: x of an upright line, y of a level one
 * @param from least coordinate along it from which it has to be scored
 * @param to greatest coordinate along it to which it has to be scored
 * @param free least coordinate from which it may be scored
 * @param freeTo greatest coordinate to which it may be scored
 */
record Run(
    boolean isUpright,
    double at,
    double from,
    double to,
    double free,
    double freeTo,
    boolean isPerforated) {
  private static final double FINE = LengthTolerance.FINE.mm();

  boolean isFull(FlatPiece piece) {
    return free <= FINE && freeTo >= (isUpright ? piece.height() : piece.width()) - FINE;
  }

  /** All runs of a kind of score, upright ones first, from left to right and from top to bottom. */
  static List<Run> of(FlatPiece piece, boolean isPerforated) {
    List<Run> runs = new ArrayList<>();
    for (boolean upright : new boolean[] {true, false}) {
      List<Double> places = new ArrayList<>();
      for (Segment2 s : piece.scores(isPerforated)) {
        if (upright ? FlatPiece.isUpright(s) : FlatPiece.isLevel(s)) {
          double at = upright ? s.from().x() : s.from().y();
          if (places.stream().noneMatch(p -> Math.abs(p - at) <= FINE)) {
            places.add(at);
          }
        }
      }
      places.sort(upright ? (a, b) -> Double.compare(a, b) : (a, b) -> Double.compare(b, a));
      places.forEach(at -> add(runs, piece, upright, at, isPerforated));
    }
    return runs;
  }

  private static void add(
      List<Run> runs, FlatPiece piece, boolean upright, double at, boolean isPerforated) {
    Segment2 whole =
        upright
            ? new Segment2(new Vec2(at, 0), new Vec2(at, piece.height()))
            : new Segment2(new Vec2(0, at), new Vec2(piece.width(), at));
    List<Segment2> lines = new ArrayList<>(piece.pressed());
    lines.addAll(piece.perforated());
    lines.addAll(piece.cuts());
    double free = Double.NaN;
    double from = Double.NaN;
    double to = Double.NaN;
    double last = 0;
    for (Segment2 part : Lines.divided(whole, lines)) {
      Vec2 middle = part.middle();
      boolean wanted = Lines.isOn(middle, piece.scores(isPerforated));
      boolean allowed = wanted || isFree(piece, middle);
      double begin = along(part.from(), upright);
      double end = along(part.to(), upright);
      if (!allowed) {
        if (!Double.isNaN(from)) {
          runs.add(new Run(upright, at, from, to, free, last, isPerforated));
        }
        free = Double.NaN;
        from = Double.NaN;
      } else {
        free = Double.isNaN(free) ? begin : free;
        if (wanted) {
          from = Double.isNaN(from) ? begin : from;
          to = end;
        }
      }
      last = end;
    }
    if (!Double.isNaN(from)) {
      runs.add(new Run(upright, at, from, to, free, last, isPerforated));
    }
  }

  private static double along(Vec2 place, boolean upright) {
    return upright ? place.y() : place.x();
  }

  /** Whether nothing is spoilt by a groove here: it is cut, or no card stays. */
  private static boolean isFree(FlatPiece piece, Vec2 place) {
    if (Lines.isOn(place, piece.pressed()) || Lines.isOn(place, piece.perforated())) {
      return false;
    }
    return Lines.isOn(place, piece.cuts())
        || piece.panels().stream().noneMatch(p -> holds(p, place))
        || piece.windows().stream().anyMatch(w -> holds(w, place));
  }

  static boolean holds(Polygon2 outline, Vec2 place) {
    return SimplePointInAreaLocator.locate(Planar.coordinate(place), Planar.polygon(outline))
        != Location.EXTERIOR;
  }
}
