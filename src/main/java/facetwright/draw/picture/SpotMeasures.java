package facetwright.draw.picture;

import facetwright.draw.Mark;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.papers.chart.Replay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Measures between lines of a blank and what is cut, punched or scored beside them: each different
 * one stands once, at a place where it finds room.
 */
final class SpotMeasures {
  private static final double OUT = 1.4;
  private static final double ON_EDGE = 0.05;

  private final UnaryOperator<Vec2> at;
  private final Box2 blank;
  private final Labels labels;
  private final List<Mark> marks;
  private final Telling tell;

  /**
   * @param at where a place of the blank lies on the picture
   * @param blank where it lies itself
   */
  SpotMeasures(UnaryOperator<Vec2> at, Box2 blank, Labels labels, List<Mark> marks, Telling tell) {
    this.tell = tell;
    this.at = at;
    this.blank = blank;
    this.labels = labels;
    this.marks = marks;
  }

  /** What is told of a measure once: how long it is, and which way it runs. */
  private record Kind(String text, boolean isAcross) {}

  /** Whether all of them find room. */
  boolean draw(List<Replay.Dimension> dimensions) {
    Map<Kind, List<Replay.Dimension>> kinds = new LinkedHashMap<>();
    for (Replay.Dimension d : dimensions) {
      boolean isAcross = d.from().y() == d.to().y();
      kinds
          .computeIfAbsent(new Kind(d.measure().mark(tell), isAcross), _ -> new ArrayList<>())
          .add(d);
    }
    boolean isWhole = true;
    for (Map.Entry<Kind, List<Replay.Dimension>> kind : kinds.entrySet()) {
      isWhole &=
          kind.getValue().stream()
              .sorted(Comparator.comparing(d -> !isOutside(d)))
              .anyMatch(d -> draw(kind.getKey().text(), d));
    }
    return isWhole;
  }

  private boolean draw(String text, Replay.Dimension d) {
    Vec2 out = outward(d);
    Vec2 from = at.apply(d.from()).plus(out);
    Vec2 to = at.apply(d.to()).plus(out);
    boolean isInside = !isOutside(d);
    Optional<Box2> off = isInside ? Optional.empty() : Optional.of(blank);
    if (from.distance(to) == 0
        || !labels.near(text, from.toward(to, 0.5), Weight.BOLD, isInside, off)) {
      return false;
    }
    Span.draw(marks, from, to, 0);
    return true;
  }

  /** Whether it is measured outside the blank, where it covers nothing. */
  private boolean isOutside(Replay.Dimension d) {
    return outward(d).length() > 0;
  }

  /** What lies along an edge of the blank is measured beside it. */
  private Vec2 outward(Replay.Dimension d) {
    Vec2 from = at.apply(d.from());
    Vec2 to = at.apply(d.to());
    for (Vec2 way : List.of(new Vec2(0, 1), new Vec2(0, -1), new Vec2(-1, 0), new Vec2(1, 0))) {
      double edge =
          way.x() > 0
              ? blank.maxX()
              : way.x() < 0 ? blank.minX() : way.y() > 0 ? blank.maxY() : blank.minY();
      if (way.x() != 0
          ? Math.abs(from.x() - edge) < ON_EDGE && Math.abs(to.x() - edge) < ON_EDGE
          : Math.abs(from.y() - edge) < ON_EDGE && Math.abs(to.y() - edge) < ON_EDGE) {
        return way.times(OUT);
      }
    }
    return Vec2.ZERO;
  }
}
