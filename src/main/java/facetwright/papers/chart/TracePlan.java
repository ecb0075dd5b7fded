package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A piece that is drawn point by point, each measured from the left and from the top. */
final class TracePlan {
  private final FlatPiece piece;
  private final BlankSoFar marks;
  private final List<Vec2> points = new ArrayList<>();

  private TracePlan(FlatPiece piece, BlankSoFar marks) {
    this.piece = piece;
    this.marks = marks;
  }

  /** The steps that mark the points and score between them. */
  static List<Step> of(FlatPiece piece, BlankSoFar marks, List<Vec2> numbered) {
    return new TracePlan(piece, marks).plan(numbered);
  }

  /** The points to number, row by row from the top, each row from the left. */
  static List<Vec2> points(FlatPiece piece) {
    List<Vec2> all = new ArrayList<>();
    for (List<Segment2> scores : List.of(piece.pressed(), piece.perforated())) {
      for (Segment2 s : scores) {
        all.add(s.from());
        all.add(s.to());
      }
    }
    all.addAll(CutSteps.corners(piece));
    List<Vec2> once = new ArrayList<>();
    for (Vec2 p : all) {
      Pace.step(1 + once.size() / 16);
      if (once.stream().noneMatch(q -> LengthTolerance.FINE.same(p, q))) {
        once.add(p);
      }
    }
    once.sort(
        Comparator.comparingDouble((Vec2 p) -> -Math.rint(p.y() * 100))
            .thenComparingDouble(Vec2::x));
    return once;
  }

  /** The number of the point at a place. */
  static Spot numbered(List<Vec2> points, Vec2 place) {
    Pace.step(1 + points.size() / 16);
    for (int i = 0; i < points.size(); i++) {
      if (LengthTolerance.FINE.same(points.get(i), place)) {
        return new Spot.Numbered(i + 1);
      }
    }
    throw new IllegalArgumentException("no point at " + place);
  }

  private List<Step> plan(List<Vec2> numbered) {
    points.addAll(numbered);
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step.Points(
            1,
            numbered.stream()
                .map(p -> new Spot.At(from(Side.LEFT, p.x()), from(Side.TOP, p.y())))
                .toList()));
    for (boolean perforated : new boolean[] {false, true}) {
      List<Step.Path> lines =
          piece.scores(perforated).stream()
              .map(s -> new Step.Path(numbered(points, s.from()), numbered(points, s.to())))
              .toList();
      if (!lines.isEmpty()) {
        steps.add(new Step.SpotScores(lines, perforated));
      }
    }
    return steps;
  }

  private Guide from(Side side, double at) {
    double mm = marks.distance(side, at);
    double extent = side.isUpright() ? piece.width() : piece.height();
    if (mm <= LengthTolerance.FINE.mm()) {
      return new Guide.Edge(side);
    }
    if (mm >= extent - LengthTolerance.FINE.mm()) {
      return new Guide.Edge(side == Side.LEFT ? Side.RIGHT : Side.BOTTOM);
    }
    Side toward = side == Side.LEFT ? Side.RIGHT : Side.BOTTOM;
    return new Guide.Measured(marks.measure(mm), new Guide.Edge(side), toward);
  }
}
