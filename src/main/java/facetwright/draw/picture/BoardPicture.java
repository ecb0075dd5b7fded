package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Circle;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All measures of a piece on one picture, to prop beside the board: those set from an edge of the
 * blank stand along it, each row with a dot at the edge from which it is measured; others where
 * they are.
 *
 * @param block the picture
 * @param isWhole whether every measure found room
 */
public record BoardPicture(Block block, boolean isWhole) {
  /** How far off the blank the line of a row runs: measures of spots have room between. */
  private static final double LINE = 4;

  private static final double FIRST = LINE + 2.2;
  private static final double RANK = Labels.HIGH + 0.9;
  private static final double DOT = 0.6;
  private static final double EDGE = 0.4;

  /** From which edge of the blank a row is measured, and so on which side of it the row stands. */
  private enum From {
    LEFT(true, true),
    RIGHT(true, false),
    BELOW(false, true),
    ABOVE(false, false);

    private final boolean isAcross;

    /** Whether the row stands below the blank, or at its left. */
    private final boolean isLow;

    From(boolean isAcross, boolean isLow) {
      this.isAcross = isAcross;
      this.isLow = isLow;
    }
  }

  /** Measures of one row: what they say by how far along the blank they lie, in mm of it. */
  private record Row(From from, Map<Double, String> at) {}

  /**
   * @param piece index of the piece in the net
   * @param width the most it may take, in mm
   * @param height likewise
   */
  public static BoardPicture of(
      Net net, int piece, PieceChart chart, double width, double height, Telling tell) {
    List<Replay.Dimension> spots = new ArrayList<>();
    List<Row> rows = rows(chart, spots, tell);
    double wide = 0;
    for (Row row : rows) {
      for (String text : row.at.values()) {
        wide = Math.max(wide, row.from.isAcross ? 0 : Labels.wide(text, Weight.BOLD));
      }
    }
    double beside = FIRST + 2 * (wide + 0.9) + EDGE;
    double over = FIRST + 2 * RANK + Labels.HIGH + EDGE;
    double shown =
        Math.min(
            1,
            Math.min((width - 2 * beside) / chart.width(), (height - 2 * over) / chart.height()));
    Box2 blank =
        new Box2(beside, over, beside + chart.width() * shown, over + chart.height() * shown);
    List<Mark> marks = new ArrayList<>();
    Motion2 there = Motion2.shift(new Vec2(beside, over));
    FoldPicture.of(net, piece, chart, chart.width() * shown, chart.height() * shown, tell)
        .marks()
        .forEach(m -> marks.add(m.moved(there)));
    Labels labels = new Labels(new Box2(0, 0, blank.maxX() + beside, blank.maxY() + over), marks);
    boolean isWhole = true;
    for (Row row : rows) {
      labels.take(strip(row.from, blank));
    }
    for (Row row : rows) {
      isWhole &= draw(row, blank, shown, wide + 0.9, labels, marks);
    }
    Vec2 corner = new Vec2(blank.minX(), blank.minY());
    isWhole &=
        new SpotMeasures(p -> p.times(shown).plus(corner), blank, labels, marks, tell).draw(spots);
    return new BoardPicture(new Block(blank.maxX() + beside, blank.maxY() + over, marks), isWhole);
  }

  /** What is set from an edge, row by row; the rest goes to the spots. */
  private static List<Row> rows(PieceChart chart, List<Replay.Dimension> spots, Telling tell) {
    Map<From, Map<Double, String>> rows = new LinkedHashMap<>();
    List<Replay.Frame> frames = Replay.frames(chart.steps());
    for (int i = 0; i < frames.size(); i++) {
      boolean isSet =
          chart.steps().get(i) instanceof Step.FullScores
              || chart.steps().get(i) instanceof Step.ShortScores;
      for (Replay.Dimension d : frames.get(i).dimensions()) {
        if (!isSet) {
          spots.add(d);
          continue;
        }
        Vec2 from = d.from();
        From edge =
            LengthTolerance.FINE.same(from.y(), d.to().y())
                ? from.x() < chart.width() / 2 ? From.LEFT : From.RIGHT
                : from.y() < chart.height() / 2 ? From.BELOW : From.ABOVE;
        double at = edge.isAcross ? d.to().x() : d.to().y();
        rows.computeIfAbsent(edge, _ -> new LinkedHashMap<>())
            .putIfAbsent(Math.round(at * 1000) / 1000.0, d.measure().mark(tell));
      }
    }
    return rows.entrySet().stream().map(e -> new Row(e.getKey(), e.getValue())).toList();
  }

  /** Where the line of a row runs, to be kept free of words. */
  private static Box2 strip(From from, Box2 blank) {
    double near = LINE - DOT;
    double far = LINE + DOT;
    return switch (from) {
      case LEFT ->
          new Box2(blank.minX() - DOT, blank.minY() - far, blank.maxX(), blank.minY() - near);
      case RIGHT ->
          new Box2(blank.minX(), blank.maxY() + near, blank.maxX() + DOT, blank.maxY() + far);
      case BELOW ->
          new Box2(blank.minX() - far, blank.minY() - DOT, blank.minX() - near, blank.maxY());
      case ABOVE ->
          new Box2(blank.maxX() + near, blank.minY(), blank.maxX() + far, blank.maxY() + DOT);
    };
  }

  private static boolean draw(
      Row row, Box2 blank, double scale, double wide, Labels labels, List<Mark> marks) {
    boolean isAcross = row.from.isAcross;
    List<Double> places = row.at.keySet().stream().sorted(Comparator.naturalOrder()).toList();
    List<Double> lengths =
        places.stream()
            .map(p -> isAcross ? Labels.wide(row.at.get(p), Weight.BOLD) : Labels.HIGH)
            .toList();
    double extent = isAcross ? blank.width() : blank.height();
    Ranks ranks = Ranks.of(places.stream().map(p -> p * scale).toList(), lengths, extent);
    boolean isLow = row.from.isLow;
    double side =
        isAcross ? (isLow ? blank.minY() : blank.maxY()) : (isLow ? blank.minX() : blank.maxX());
    double out = isLow ? -1 : 1;
    double zero = isLow ? 0 : extent;
    double last = scale * (isLow ? places.getLast() : places.getFirst());
    Vec2 begin = place(isAcross, blank, zero, side + out * LINE);
    marks.add(new Circle(begin, DOT, LineKind.CUT));
    marks.add(Stroke.line(begin, place(isAcross, blank, last, side + out * LINE), LineKind.GUIDE));
    boolean isWhole = true;
    for (int i = 0; i < places.size(); i++) {
      double along = places.get(i) * scale;
      marks.add(
          Stroke.line(
              place(isAcross, blank, along, side),
              place(isAcross, blank, along, side + out * (LINE + 0.8)),
              LineKind.GUIDE));
      int rank = ranks.of().get(i);
      double off = isAcross ? FIRST + rank * RANK : FIRST + rank * wide + (wide - 0.9) / 2;
      Vec2 middle = place(isAcross, blank, ranks.at().get(i), side + out * off);
      isWhole &= labels.level(row.at.get(places.get(i)), middle, Weight.BOLD, Ink.BLACK);
      if (rank > 0) {
        double near = isAcross ? off - Labels.HIGH / 2 - 0.3 : off - (wide - 0.9) / 2 - 0.4;
        marks.add(
            Stroke.line(
                place(isAcross, blank, along, side + out * (LINE + 0.8)),
                place(isAcross, blank, ranks.at().get(i), side + out * near),
                LineKind.DONE));
      }
    }
    return isWhole;
  }

  private static Vec2 place(boolean isAcross, Box2 blank, double along, double across) {
    return isAcross
        ? new Vec2(blank.minX() + along, across)
        : new Vec2(across, blank.minY() + along);
  }
}
