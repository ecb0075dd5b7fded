package facetwright.papers.copies;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.net.sheet.Stock;
import facetwright.papers.cutting.FromEdge;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Cuts from edge to edge that part a sheet between what lies on it, as a trimmer makes them. Each
 * is measured from the edge of what is cut, which for all but the first is a fresh one, and lies on
 * a mark of the ruler where one comes between.
 *
 * @param steps in the order in which they are made; none where no straight cut comes between
 * @param together what no straight cut parts: numbers of what lies there, group by group
 */
public record Parting(List<Step> steps, List<List<Integer>> together) {
  /** Two that come so near touch. */
  private static final LengthTolerance SLACK = LengthTolerance.FINE;

  public Parting {
    steps = List.copyOf(steps);
    together = List.copyOf(together);
  }

  /**
   * Cuts at the same measures, of one part or of several that are alike.
   *
   * @param way the edge from which it is measured
   * @param at for each cut that follows another its measure, in mm
   * @param parts what is cut
   */
  public record Step(FromEdge way, List<Double> at, List<Divided> parts) {
    public Step {
      at = List.copyOf(at);
      parts = List.copyOf(parts);
    }
  }

  /**
   * A part of the sheet, and into what it is cut.
   *
   * @param box where it lies on the sheet, in mm
   * @param into numbers of what lies on each of its parts, from the edge on
   */
  public record Divided(Box2 box, List<List<Integer>> into) {
    public Divided {
      into = List.copyOf(into);
    }
  }

  /** A part of the sheet with what lies on it. */
  private record Lying(Box2 box, List<Integer> items) {}

  /** A run of cuts that follow each other. */
  private record Run(FromEdge way, List<Double> at, List<Lying> into) {}

  /**
   * Plans the cuts.
   *
   * @param stock the sheet as it lies
   * @param boxes round what lies on it, by number
   * @param ruler by whose marks they are made
   */
  public static Parting of(Stock stock, List<Box2> boxes, Ruler ruler) {
    List<List<Integer>> together = new ArrayList<>();
    Map<List<Object>, Step> steps = new LinkedHashMap<>();
    Deque<Lying> waiting = new ArrayDeque<>();
    waiting.add(
        new Lying(
            new Box2(0, 0, stock.width(), stock.height()),
            IntStream.range(0, boxes.size()).boxed().toList()));
    int depth = 0;
    while (!waiting.isEmpty()) {
      // What one round leaves is cut on in the next, so that equal parts are cut in one go.
      List<Lying> round = List.copyOf(waiting);
      waiting.clear();
      for (Lying part : round) {
        Run up = run(part, FromEdge.BOTTOM, boxes, ruler);
        Run across = run(part, FromEdge.LEFT, boxes, ruler);
        Run best = across.at.size() > up.at.size() ? across : up;
        if (!best.at.isEmpty()) {
          Divided divided = new Divided(part.box, best.into.stream().map(Lying::items).toList());
          steps.merge(
              List.of(depth, best.way, best.at),
              new Step(best.way, best.at, List.of(divided)),
              Parting::both);
          waiting.addAll(best.into);
        } else if (part.items.size() > 1) {
          together.add(part.items);
        }
      }
      depth++;
    }
    return new Parting(List.copyOf(steps.values()), together);
  }

  private static Step both(Step a, Step b) {
    List<Divided> parts = new ArrayList<>(a.parts);
    parts.addAll(b.parts);
    return new Step(a.way, a.at, parts);
  }

  private static Run run(Lying part, FromEdge way, List<Box2> boxes, Ruler ruler) {
    boolean isUp = way == FromEdge.BOTTOM;
    ToDoubleFunction<Box2> start = isUp ? Box2::minY : Box2::minX;
    ToDoubleFunction<Box2> end = isUp ? Box2::maxY : Box2::maxX;
    List<Integer> sorted =
        part.items.stream()
            .sorted(Comparator.comparingDouble(i -> start.applyAsDouble(boxes.get(i))))
            .toList();
    List<Double> at = new ArrayList<>();
    List<Lying> into = new ArrayList<>();
    double edge = start.applyAsDouble(part.box);
    List<Integer> group = new ArrayList<>();
    double reach = Double.NEGATIVE_INFINITY;
    for (int item : sorted) {
      double next = start.applyAsDouble(boxes.get(item));
      if (!group.isEmpty() && next >= reach - SLACK.mm()) {
        OptionalDouble last =
            at.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(at.getLast());
        double measure = between(reach - edge, next - edge, last, ruler);
        into.add(lying(part.box, isUp, edge, edge + measure, group));
        at.add(measure);
        edge += measure;
        group = new ArrayList<>();
      }
      group.add(item);
      reach = Math.max(reach, end.applyAsDouble(boxes.get(item)));
    }
    into.add(lying(part.box, isUp, edge, end.applyAsDouble(part.box), group));
    return new Run(way, at, into);
  }

  /**
   * As far as the cut before where that does, else on the plainest mark near the middle, else on
   * any mark that lies between.
   */
  private static double between(double from, double to, OptionalDouble last, Ruler ruler) {
    double middle = (from + to) / 2;
    if (last.isPresent() && isBetween(last.getAsDouble(), from, to)) {
      return last.getAsDouble();
    }
    double near = (to - from) / 4;
    double mark =
        Ruler.common(ruler.unit()).stream()
            .sorted(Comparator.comparingDouble(Parting::division).reversed())
            .map(coarse -> coarse.read(new Length(middle)).length())
            .filter(m -> Math.abs(m.mm() - middle) <= near)
            .filter(m -> Math.abs(ruler.read(m).errorMm()) <= SLACK.mm())
            .mapToDouble(Length::mm)
            .findFirst()
            .orElseGet(() -> ruler.read(new Length(middle)).length().mm());
    return isBetween(mark, from, to) ? mark : middle;
  }

  private static double division(Ruler ruler) {
    return ruler.unit().mm() * ruler.each() / ruler.parts();
  }

  private static boolean isBetween(double at, double from, double to) {
    return at >= from - SLACK.mm() && at <= to + SLACK.mm();
  }

  private static Lying lying(Box2 of, boolean isUp, double from, double to, List<Integer> items) {
    Box2 box =
        isUp ? new Box2(of.minX(), from, of.maxX(), to) : new Box2(from, of.minY(), to, of.maxY());
    return new Lying(box, items.stream().sorted().toList());
  }

  /** Where the blade runs, cut by cut. */
  public List<Segment2> lines() {
    List<Segment2> lines = new ArrayList<>();
    for (Step step : steps) {
      for (Divided part : step.parts) {
        double along = 0;
        for (double at : step.at) {
          along += at;
          lines.add(line(part.box, step.way, along));
        }
      }
    }
    return lines;
  }

  private static Segment2 line(Box2 box, FromEdge way, double along) {
    return way == FromEdge.BOTTOM
        ? new Segment2(
            new Vec2(box.minX(), box.minY() + along), new Vec2(box.maxX(), box.minY() + along))
        : new Segment2(
            new Vec2(box.minX() + along, box.minY()), new Vec2(box.minX() + along, box.maxY()));
  }
}
