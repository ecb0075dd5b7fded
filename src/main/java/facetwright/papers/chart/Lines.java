package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Sets of straight lines: what matters is where they run, not how they are divided. */
final class Lines {
  /** Lines that are compared in one step of work. */
  private static final int AT_ONCE = 16;

  private static final double FINE = LengthTolerance.FINE.mm();

  private Lines() {}

  private record Span(double from, double to) {}

  /** Lines along one carrier. */
  private record Carrier(Vec2 origin, Vec2 along, List<Span> spans) {
    boolean carries(Segment2 s) {
      return Math.abs(along.cross(s.from().minus(origin))) <= FINE
          && Math.abs(along.cross(s.to().minus(origin))) <= FINE;
    }

    void add(Segment2 s) {
      double a = along.dot(s.from().minus(origin));
      double b = along.dot(s.to().minus(origin));
      spans.add(new Span(Math.min(a, b), Math.max(a, b)));
    }
  }

  /** The same places, in as few segments as possible. */
  static List<Segment2> joined(List<Segment2> lines) {
    List<Carrier> carriers = new ArrayList<>();
    List<Segment2> longestFirst =
        lines.stream()
            .filter(s -> s.length() > FINE)
            .sorted(Comparator.comparingDouble(s -> -s.length()))
            .toList();
    for (Segment2 s : longestFirst) {
      Pace.step(1 + carriers.size() / AT_ONCE);
      carriers.stream()
          .filter(c -> c.carries(s))
          .findFirst()
          .orElseGet(
              () -> {
                Carrier fresh = new Carrier(s.from(), s.direction(), new ArrayList<>());
                carriers.add(fresh);
                return fresh;
              })
          .add(s);
    }
    List<Segment2> joined = new ArrayList<>();
    for (Carrier c : carriers) {
      for (Span span : joinedSpans(c.spans())) {
        joined.add(
            new Segment2(
                c.origin().plus(c.along().times(span.from())),
                c.origin().plus(c.along().times(span.to()))));
      }
    }
    return joined;
  }

  private static List<Span> joinedSpans(List<Span> spans) {
    List<Span> joined = new ArrayList<>();
    for (Span s : spans.stream().sorted(Comparator.comparingDouble(Span::from)).toList()) {
      if (!joined.isEmpty() && s.from() <= joined.getLast().to() + FINE) {
        Span last = joined.removeLast();
        joined.add(new Span(last.from(), Math.max(last.to(), s.to())));
      } else {
        joined.add(s);
      }
    }
    return joined;
  }

  /** What of the lines lies on none of the others. */
  static List<Segment2> without(List<Segment2> lines, List<Segment2> others) {
    List<Segment2> left = new ArrayList<>(lines);
    for (Segment2 other : others) {
      Pace.step(1 + left.size() / AT_ONCE);
      List<Segment2> next = new ArrayList<>();
      left.forEach(s -> next.addAll(without(s, other)));
      left = next;
    }
    return left;
  }

  private static List<Segment2> without(Segment2 s, Segment2 other) {
    double length = s.length();
    Vec2 along = s.direction();
    Vec2 a = other.from().minus(s.from());
    Vec2 b = other.to().minus(s.from());
    if (Math.abs(along.cross(a)) > FINE || Math.abs(along.cross(b)) > FINE) {
      return List.of(s);
    }
    double from = Math.min(along.dot(a), along.dot(b));
    double to = Math.max(along.dot(a), along.dot(b));
    if (to <= FINE || from >= length - FINE) {
      return List.of(s);
    }
    List<Segment2> left = new ArrayList<>();
    if (from > FINE) {
      left.add(new Segment2(s.from(), s.from().toward(s.to(), from / length)));
    }
    if (to < length - FINE) {
      left.add(new Segment2(s.from().toward(s.to(), to / length), s.to()));
    }
    return left;
  }

  /** The line divided wherever one of the others crosses, touches or leaves it. */
  static List<Segment2> divided(Segment2 line, List<Segment2> others) {
    Pace.step(1 + others.size() / AT_ONCE);
    double length = line.length();
    Vec2 along = line.direction();
    List<Double> at = new ArrayList<>(List.of(0.0, length));
    for (Segment2 o : others) {
      Vec2 a = o.from().minus(line.from());
      Vec2 b = o.to().minus(line.from());
      double sideA = along.cross(a);
      double sideB = along.cross(b);
      if (Math.abs(sideA) <= FINE) {
        at.add(along.dot(a));
      }
      if (Math.abs(sideB) <= FINE) {
        at.add(along.dot(b));
      }
      if (sideA * sideB < 0) {
        at.add(along.dot(a.toward(b, sideA / (sideA - sideB))));
      }
    }
    List<Segment2> parts = new ArrayList<>();
    double last = 0;
    for (double t : at.stream().filter(t -> t > 0 && t <= length).sorted().toList()) {
      if (t - last > 2 * FINE) {
        parts.add(
            new Segment2(
                line.from().toward(line.to(), last / length),
                line.from().toward(line.to(), t / length)));
        last = t;
      }
    }
    return parts;
  }

  static boolean isOn(Vec2 place, List<Segment2> lines) {
    return lines.stream().anyMatch(s -> s.distance(place) <= FINE);
  }
}
