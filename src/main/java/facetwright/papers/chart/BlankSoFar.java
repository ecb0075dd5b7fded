package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec2;
import facetwright.measure.Ruler;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What is on the blank so far: its edges, lines scored, measures set; and how to tell a place. */
final class BlankSoFar {
  private static final double FINE = LengthTolerance.FINE.mm();

  private final double width;
  private final double height;
  private final Ruler ruler;
  private final List<Drawn> drawn = new ArrayList<>();
  private final List<Double> set = new ArrayList<>();

  private record Drawn(boolean isUpright, String label, double at, double from, double to) {}

  /** A guide, and the coordinate that it tells. */
  private record Known(Guide guide, double at) {}

  BlankSoFar(double width, double height, Ruler ruler) {
    this.width = width;
    this.height = height;
    this.ruler = ruler;
  }

  /** A line is scored; it serves as a mark from now on. */
  void draw(boolean isUpright, String label, double at, double from, double to) {
    drawn.add(new Drawn(isUpright, label, at, from, to));
  }

  /** The measure of this length, which the maker sets from now on. */
  Measure measure(double mm) {
    double known = known(mm).orElse(mm);
    if (known(mm).isEmpty()) {
      set.add(mm);
    }
    return Measure.of(known, ruler);
  }

  Optional<Double> known(double mm) {
    return set.stream().filter(m -> Math.abs(m - mm) <= FINE).findFirst();
  }

  /** All measures set so far, in the order in which they were first set. */
  List<Double> set() {
    return List.copyOf(set);
  }

  Spot.At spot(Vec2 place) {
    return new Spot.At(guide(true, place.x(), place.y()), guide(false, place.y(), place.x()));
  }

  /**
   * How to tell a coordinate.
   *
   * @param isAcross whether it is x, told by edges and lines that run down the blank
   * @param at the coordinate
   * @param other the other coordinate of the place
   */
  Guide guide(boolean isAcross, double at, double other) {
    return mark(isAcross, at, other).orElseGet(() -> measured(isAcross, at, other));
  }

  /** The edge, the line or the middle between two of them that tells it, if there is one. */
  Optional<Guide> mark(boolean isAcross, double at, double other) {
    List<Known> here = here(isAcross, other);
    for (Known k : here) {
      if (Math.abs(k.at - at) <= FINE) {
        return Optional.of(k.guide);
      }
    }
    for (int i = 0; i + 1 < here.size(); i++) {
      if (Math.abs((here.get(i).at + here.get(i + 1).at) / 2 - at) <= FINE) {
        return Optional.of(new Guide.Halfway(here.get(i).guide, here.get(i + 1).guide));
      }
    }
    return Optional.empty();
  }

  /** The edge or line nearest to a coordinate among those within these bounds. */
  Optional<Double> nearestMark(
      boolean isAcross, double from, double to, double nearTo, double other) {
    double extent = isAcross ? width : height;
    if (from <= FINE && Math.abs(nearTo - from) > Math.abs(nearTo - to)) {
      return Optional.of(0.0);
    }
    if (to >= extent - FINE && Math.abs(nearTo - to) > Math.abs(nearTo - from)) {
      return Optional.of(extent);
    }
    return here(isAcross, other).stream()
        .map(Known::at)
        .filter(a -> a >= from - FINE && a <= to + FINE)
        .min((a, b) -> Double.compare(Math.abs(a - nearTo), Math.abs(b - nearTo)));
  }

  private List<Known> here(boolean isAcross, double other) {
    Pace.step(1 + drawn.size() / 8);
    Side low = isAcross ? Side.LEFT : Side.BOTTOM;
    Side high = isAcross ? Side.RIGHT : Side.TOP;
    Stream<Known> edges =
        Stream.of(
            new Known(new Guide.Edge(low), 0),
            new Known(new Guide.Edge(high), isAcross ? width : height));
    Stream<Known> lines =
        drawn.stream()
            .filter(d -> d.isUpright == isAcross)
            .filter(d -> other >= d.from - FINE && other <= d.to + FINE)
            .map(d -> new Known(new Guide.Line(d.label), d.at));
    return Stream.concat(edges, lines).sorted((a, b) -> Double.compare(a.at, b.at)).toList();
  }

  /** By a measure from an edge or a line nearby: one that is set already, or else a short one. */
  private Guide measured(boolean isAcross, double at, double other) {
    Known from =
        here(isAcross, other).stream()
            .min((a, b) -> Double.compare(cost(a.at, at, isAcross), cost(b.at, at, isAcross)))
            .orElseThrow();
    Side low = isAcross ? Side.LEFT : Side.BOTTOM;
    Side high = isAcross ? Side.RIGHT : Side.TOP;
    return new Guide.Measured(
        measure(Math.abs(at - from.at)), from.guide, at > from.at ? high : low);
  }

  /** The edge from which a coordinate is better measured. */
  Side side(boolean isAcross, double at) {
    List<Side> sides = isAcross ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.TOP, Side.BOTTOM);
    return sides.stream()
        .min(
            (a, b) ->
                Double.compare(
                    cost(a.coordinate(0, isAcross ? width : height), at, isAcross),
                    cost(b.coordinate(0, isAcross ? width : height), at, isAcross)))
        .orElseThrow();
  }

  private double cost(double from, double at, boolean isAcross) {
    double mm = Math.abs(at - from);
    boolean isOn = Measure.of(mm, ruler).isOnRuler();
    double extent = isAcross ? width : height;
    double part = Math.rint(mm / extent * 1e6) / 1e6;
    return (known(mm).isPresent() ? 0 : 4) + (isOn ? 0 : 2) + part;
  }

  double distance(Side side, double at) {
    return side.coordinate(at, side.isUpright() ? width : height);
  }

  /** The letters of a line that is the index-th from the left: A, B, …, Z, AA, … */
  static String letters(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letters(index / 26 - 1) + last;
  }

  /** Where a value stands in a list, to within the fine tolerance. */
  static int indexOf(List<Double> values, double value) {
    return IntStream.range(0, values.size())
        .filter(i -> Math.abs(values.get(i) - value) <= FINE)
        .findFirst()
        .orElse(-1);
  }
}
