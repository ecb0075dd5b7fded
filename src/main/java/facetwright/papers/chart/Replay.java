package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Follows the steps of a chart on a bare blank, as a maker would, and knows nothing but them.
 * Coordinates are in mm from the blank's lower left corner as it lies first.
 */
public final class Replay {
  private final boolean isByRuler;
  private final Map<String, Double> lines = new HashMap<>();
  private final Map<Integer, Vec2> points = new HashMap<>();
  final List<Segment2> pressed = new ArrayList<>();
  final List<Segment2> perforated = new ArrayList<>();
  final List<Segment2> inner = new ArrayList<>();
  final List<Polygon2> gone = new ArrayList<>();
  final List<Polygon2> windows = new ArrayList<>();
  final List<Hole> holes = new ArrayList<>();
  private final List<Tag> tags = new ArrayList<>();
  private final List<Vec2> told = new ArrayList<>();
  private final List<Dimension> dimensions = new ArrayList<>();
  private boolean isPlain;
  double width;
  double height;

  /** A punched hole. */
  public record Hole(Vec2 centre, double diameter) {}

  private Replay(boolean isByRuler) {
    this.isByRuler = isByRuler;
  }

  /**
   * Where what the steps tell comes to lie by the ruler.
   *
   * @param across from where an upright line or edge should be to where it comes to lie
   * @param down the same of level ones
   * @param points the same of points told one by one
   */
  record Shifts(
      NavigableMap<Double, Double> across,
      NavigableMap<Double, Double> down,
      Map<Vec2, Vec2> points) {}

  /**
   * What lies on the table when all steps are done.
   *
   * @param isByRuler whether measures are set on the ruler's nearest marks, or as they should be
   * @throws IllegalArgumentException when a step names a line or point that is not there yet
   */
  static Replay done(List<Step> steps, boolean isByRuler) {
    Replay replay = new Replay(isByRuler);
    steps.forEach(replay::follow);
    return replay;
  }

  /** How all shifts when measures are set on the ruler's nearest marks. */
  static Shifts shifts(List<Step> steps) {
    Replay meant = done(steps, false);
    Replay set = done(steps, true);
    NavigableMap<Double, Double> across = new TreeMap<>(Map.of(0.0, 0.0, meant.width, set.width));
    NavigableMap<Double, Double> down = new TreeMap<>(Map.of(0.0, 0.0, meant.height, set.height));
    for (int i = 0; i < meant.tags.size(); i++) {
      Tag tag = meant.tags.get(i);
      if (tag.isLine()) {
        double at = meant.lines.get(tag.text());
        (tag.isUpright() ? across : down).putIfAbsent(at, set.lines.get(tag.text()));
      }
    }
    Map<Vec2, Vec2> points = new LinkedHashMap<>();
    for (int i = 0; i < meant.told.size(); i++) {
      points.putIfAbsent(meant.told.get(i), set.told.get(i));
    }
    return new Shifts(across, down, points);
  }

  private double mm(Measure measure) {
    return isByRuler ? measure.asRead() : measure.mm();
  }

  /** A name on the blank: of a line that runs down or across it, or of a point. */
  public record Tag(String text, boolean isLine, boolean isUpright, Vec2 at) {}

  /**
   * A measure on the blank.
   *
   * @param from where the ruler's 0 lies
   * @param to what is measured: a place, or for a line its end at the blank's edge
   */
  public record Dimension(Vec2 from, Vec2 to, Measure measure) {}

  /**
   * What one step adds.
   *
   * @param dimensions what is measured in it
   * @param isPlain whether all that is not measured lies on an edge or a line, or in the middle
   *     between two neighbours
   */
  public record Frame(
      List<Segment2> scores,
      List<Segment2> cuts,
      List<Polygon2> waste,
      List<Polygon2> windows,
      List<Hole> holes,
      List<Tag> tags,
      List<Dimension> dimensions,
      boolean isPlain) {
    public Frame {
      scores = List.copyOf(scores);
      cuts = List.copyOf(cuts);
      waste = List.copyOf(waste);
      windows = List.copyOf(windows);
      holes = List.copyOf(holes);
      tags = List.copyOf(tags);
      dimensions = List.copyOf(dimensions);
    }
  }

  /** What each step adds, in order, all set as it should be. */
  public static List<Frame> frames(List<Step> steps) {
    Replay replay = new Replay(false);
    List<Frame> frames = new ArrayList<>();
    for (Step step : steps) {
      int pressedBefore = replay.pressed.size();
      int perforatedBefore = replay.perforated.size();
      int cutsBefore = replay.inner.size();
      int wasteBefore = replay.gone.size();
      int windowsBefore = replay.windows.size();
      int holesBefore = replay.holes.size();
      int tagsBefore = replay.tags.size();
      replay.dimensions.clear();
      replay.isPlain = true;
      replay.follow(step);
      List<Segment2> scores = new ArrayList<>(later(replay.pressed, pressedBefore));
      scores.addAll(later(replay.perforated, perforatedBefore));
      frames.add(
          new Frame(
              scores,
              later(replay.inner, cutsBefore),
              later(replay.gone, wasteBefore),
              later(replay.windows, windowsBefore),
              later(replay.holes, holesBefore),
              later(replay.tags, tagsBefore),
              replay.dimensions,
              replay.isPlain));
    }
    return frames;
  }

  private static <T> List<T> later(List<T> all, int before) {
    return all.subList(before, all.size());
  }

  private void follow(Step step) {
    Pace.step();
    switch (step) {
      case Step.Trim t -> {
        width = mm(t.width());
        height = mm(t.height());
      }
      case Step.FullScores s -> {
        for (Step.Ruled line : s.lines()) {
          boolean down = s.placing().scoresDown();
          score(s.placing(), line, 0, down ? height : width, s.isPerforated());
        }
      }
      case Step.ShortScores s -> {
        double from = coordinate(s.from(), !s.placing().scoresDown());
        double to = coordinate(s.to(), !s.placing().scoresDown());
        s.lines().forEach(line -> score(s.placing(), line, from, to, s.isPerforated()));
      }
      case Step.SpotScores s ->
          s.lines().forEach(p -> add(s.isPerforated() ? perforated : pressed, p));
      case Step.Points p -> {
        for (int i = 0; i < p.at().size(); i++) {
          Vec2 at = place(p.at().get(i));
          points.put(p.first() + i, at);
          tags.add(new Tag(String.valueOf(p.first() + i), false, false, at));
        }
      }
      case Step.Punch p ->
          p.centres().forEach(c -> holes.add(new Hole(place(c), p.diameter().mm())));
      case Step.Windows w -> w.outlines().forEach(o -> outline(o).ifPresent(windows::add));
      case Step.Slits s -> s.cuts().forEach(p -> add(inner, p));
      case Step.CutAway c -> c.areas().forEach(a -> outline(a).ifPresent(gone::add));
    }
  }

  private void score(
      Placing placing, Step.Ruled line, double from, double to, boolean isPerforated) {
    boolean down = placing.scoresDown();
    double at = placing.atLeft().coordinate(mm(line.measure()), down ? width : height);
    Vec2 edge = down ? new Vec2(at, 0) : new Vec2(0, at);
    double start = placing.atLeft().coordinate(0, down ? width : height);
    Vec2 stop = down ? new Vec2(start, 0) : new Vec2(0, start);
    dimensions.add(new Dimension(stop, edge, line.measure()));
    if (lines.putIfAbsent(line.label(), at) == null) {
      tags.add(new Tag(line.label(), true, down, edge));
    }
    (isPerforated ? perforated : pressed)
        .add(
            down
                ? new Segment2(new Vec2(at, from), new Vec2(at, to))
                : new Segment2(new Vec2(from, at), new Vec2(to, at)));
  }

  private double coordinate(Guide guide, boolean isAcross) {
    double extent = isAcross ? width : height;
    return switch (guide) {
      case Guide.Edge(Side side) -> side.coordinate(0, extent);
      case Guide.Line(String label) -> {
        Double at = lines.get(label);
        if (at == null) {
          throw new IllegalArgumentException("there is no line " + label + " yet");
        }
        yield at;
      }
      case Guide.Halfway(Guide one, Guide other) ->
          (coordinate(one, isAcross) + coordinate(other, isAcross)) / 2;
      case Guide.Measured(Measure measure, Guide from, Side toward) ->
          coordinate(from, isAcross)
              + (toward == Side.RIGHT || toward == Side.TOP ? mm(measure) : -mm(measure));
    };
  }

  private Vec2 place(Spot spot) {
    return switch (spot) {
      case Spot.At(Guide across, Guide down) -> {
        Vec2 at = new Vec2(coordinate(across, true), coordinate(down, false));
        told.add(at);
        measured(across, true, at);
        measured(down, false, at);
        yield at;
      }
      case Spot.Numbered(int number) -> {
        Vec2 at = points.get(number);
        if (at == null) {
          throw new IllegalArgumentException("there is no point " + number + " yet");
        }
        isPlain = false;
        yield at;
      }
      case Spot.Bow _, Spot.Circle _ -> throw new IllegalArgumentException("an arc is no place");
    };
  }

  private void measured(Guide guide, boolean isAcross, Vec2 at) {
    switch (guide) {
      case Guide.Measured(Measure measure, Guide from, Side _) -> {
        double start = coordinate(from, isAcross);
        Vec2 zero = isAcross ? new Vec2(start, at.y()) : new Vec2(at.x(), start);
        dimensions.add(new Dimension(zero, at, measure));
      }
      case Guide.Halfway(Guide one, Guide other) -> {
        double low = Math.min(coordinate(one, isAcross), coordinate(other, isAcross));
        double high = Math.max(coordinate(one, isAcross), coordinate(other, isAcross));
        double fine = LengthTolerance.FINE.mm();
        isPlain &=
            tags.stream()
                .filter(t -> t.isLine() && t.isUpright() == isAcross)
                .mapToDouble(t -> isAcross ? t.at().x() : t.at().y())
                .noneMatch(x -> x > low + fine && x < high - fine);
      }
      case Guide.Edge _, Guide.Line _ -> {}
    }
  }

  /** Between two spots that a coarse ruler puts on one another there is nothing to draw. */
  private void add(List<Segment2> lines, Step.Path path) {
    Segment2 line = new Segment2(place(path.from()), place(path.to()));
    if (line.length() > LengthTolerance.FINE.mm()) {
      lines.add(line);
    }
  }

  /** Nothing where a coarse ruler puts the corners on one line. */
  private Optional<Polygon2> outline(List<Spot> corners) {
    isPlain &= corners.stream().allMatch(Spot.At.class::isInstance);
    List<Vec2> ring =
        new ToldOutline(this::place, this::mm).corners(corners).stream().distinct().toList();
    try {
      return Optional.of(Polygon2.ofEitherSense(ring));
    } catch (IllegalArgumentException _) {
      return Optional.empty();
    }
  }
}
