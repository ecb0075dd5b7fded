package facetwright.net.blank;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.words.SaidTwice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds scores drawn along others from end to end that are folded otherwise: the later counts. */
final class Redrawn {
  /** Lines whose directions and distances from the corner are alike to so many parts of a mm. */
  private static final double PARTS = 100;

  private Redrawn() {}

  static void tell(List<Line> lines, SaidTwice twice) {
    Map<List<Long>, List<Line>> along = new HashMap<>();
    for (Line line : lines.reversed()) {
      if (line.isCut()) {
        continue;
      }
      List<Line> later = along.computeIfAbsent(key(line), _ -> new ArrayList<>());
      later.stream()
          .filter(l -> l.kind() != line.kind() || !l.folds().equals(line.folds()))
          .filter(l -> covers(l, line.at().from()) && covers(l, line.at().to()))
          .findFirst()
          .ifPresent(l -> twice.replaced("score", "", line.site(), l.site()));
      later.add(line);
    }
  }

  private static boolean covers(Line line, Vec2 point) {
    return line.at().distance(point) <= LengthTolerance.FINE.mm();
  }

  /** Alike for lines that lie along each other. */
  private static List<Long> key(Line line) {
    Vec2 way = line.at().direction();
    boolean isBack = way.x() < -1 / PARTS || (way.x() < 1 / PARTS && way.y() < 0);
    Vec2 along = isBack ? way.times(-1) : way;
    return List.of(
        Math.round(along.x() * PARTS),
        Math.round(along.y() * PARTS),
        Math.round(along.cross(line.at().from()) * PARTS));
  }
}
