package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Placing;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the blank lies on the picture of a step, and what stands round it: names of lines below and
 * at the right, measures of new ones above, where a board's ruler is.
 *
 * @param index of the step
 * @param tell whose reader it is for
 * @param placing how the blank lies
 * @param quarters how it was turned to the left since the step before, 0 to 3
 * @param scale how large it is beside life
 * @param blank where it lies, in mm of the picture
 * @param wide of the picture, in mm
 * @param high of the picture, in mm
 */
record BlankFrame(
    PieceChart chart,
    int index,
    Telling tell,
    Placing placing,
    int quarters,
    boolean isOnBoard,
    double scale,
    Box2 blank,
    double wide,
    double high,
    Row below,
    Row right,
    Row above) {
  /** Between the blank and a stop, in mm. */
  static final double STOP = 1;

  /** Round all, in mm. */
  static final double EDGE = 0.4;

  private static final double RANK = Labels.HIGH + 0.9;
  private static final double FIRST = 1.2;
  private static final double ARROW = 3.4;
  private static final double DIMENSION = 4.2;

  /** Labels along one side. */
  record Row(List<String> texts, List<Vec2> places, Ranks ranks, double rank) {
    static final Row NONE = new Row(List.of(), List.of(), Ranks.of(List.of(), List.of(), 0), 0);

    double deep() {
      return texts.isEmpty() ? 0 : FIRST + ranks.count() * rank;
    }
  }

  boolean isTurned() {
    return quarters != 0;
  }

  private static Placing placing(Step step) {
    return switch (step) {
      case Step.FullScores s -> s.placing();
      case Step.ShortScores s -> s.placing();
      case Step.Trim _,
          Step.SpotScores _,
          Step.Points _,
          Step.Punch _,
          Step.Windows _,
          Step.Slits _,
          Step.CutAway _ ->
          Placing.FIRST;
    };
  }

  static BlankFrame of(
      PieceChart chart,
      List<Replay.Frame> frames,
      int index,
      double width,
      double height,
      Telling tell) {
    Step step = chart.steps().get(index);
    Placing placing = placing(step);
    Placing before = index == 0 ? placing : placing(chart.steps().get(index - 1));
    boolean isLevel = placing.scoresDown();
    double wide = isLevel ? chart.width() : chart.height();
    double high = isLevel ? chart.height() : chart.width();
    boolean isOnBoard = step instanceof Step.FullScores || step instanceof Step.ShortScores;
    List<Replay.Tag> tags =
        frames.subList(0, index + 1).stream()
            .flatMap(f -> f.tags().stream())
            .filter(Replay.Tag::isLine)
            .toList();
    BlankFrame found = null;
    double scale = Math.min(width / wide, height / high);
    // How much stands round it hangs on how large it is, and the other way about.
    for (int i = 0; i < 3; i++) {
      found =
          new BlankFrame(
              chart,
              index,
              tell,
              placing,
              Math.floorMod(placing.quarters() - before.quarters(), 4),
              isOnBoard,
              scale,
              new Box2(0, 0, wide * scale, high * scale),
              0,
              0,
              names(chart, placing, tags, true, scale),
              names(chart, placing, tags, false, scale),
              isOnBoard ? measures(chart, placing, frames.get(index), scale, tell) : Row.NONE);
      Box2 round = found.round(step);
      scale =
          Scaling.shown(
              Math.min(
                  (width - round.minX() - round.maxX()) / wide,
                  (height - round.minY() - round.maxY()) / high));
      found = found.in(round, scale, wide, high);
    }
    return found;
  }

  /** How much stands at the left, below, at the right and above. */
  private Box2 round(Step step) {
    double apart = isMeasured(step) ? DIMENSION - FIRST : 0;
    double left = isOnBoard ? STOP + 2 + Labels.HIGH : isTurned() ? 2 * ARROW + 1 : DIMENSION;
    double low = Math.max(below.deep() + apart, isTurned() ? 2 * ARROW + 1 : DIMENSION);
    double top = isOnBoard ? STOP + above.deep() + FIRST + Labels.HIGH : DIMENSION;
    return new Box2(
        left + EDGE,
        low + EDGE,
        Math.max(right.deep() + apart, isOnBoard ? 1 : DIMENSION) + EDGE,
        top + EDGE);
  }

  private BlankFrame in(Box2 round, double newScale, double wide, double high) {
    Box2 lies =
        new Box2(
            round.minX(),
            round.minY(),
            round.minX() + wide * newScale,
            round.minY() + high * newScale);
    return new BlankFrame(
        chart,
        index,
        tell,
        placing,
        quarters,
        isOnBoard,
        newScale,
        lies,
        lies.maxX() + round.maxX(),
        lies.maxY() + round.maxY(),
        below,
        right,
        above);
  }

  /** Whether measures stand beside the blank, between it and the names of lines. */
  private static boolean isMeasured(Step step) {
    return step.isCut() || step instanceof Step.SpotScores;
  }

  private static Row names(
      PieceChart chart, Placing placing, List<Replay.Tag> tags, boolean isBelow, double scale) {
    List<String> texts = new ArrayList<>();
    List<Vec2> places = new ArrayList<>();
    List<Double> at = new ArrayList<>();
    List<Double> lengths = new ArrayList<>();
    double widest = 0;
    for (Replay.Tag tag : tags) {
      if ((tag.isUpright() == placing.scoresDown()) != isBelow) {
        continue;
      }
      Vec2 place = placing.onBoard(tag.at(), chart.width(), chart.height());
      double wide = Labels.wide(tag.text(), Weight.BOLD);
      widest = Math.max(widest, wide);
      texts.add(tag.text());
      places.add(tag.at());
      at.add((isBelow ? place.x() : place.y()) * scale);
      lengths.add(isBelow ? wide : Labels.HIGH);
    }
    boolean isAcross = isBelow == placing.scoresDown();
    double extent = scale * (isAcross ? chart.width() : chart.height());
    return new Row(texts, places, Ranks.of(at, lengths, extent), isBelow ? RANK : widest + 0.9);
  }

  private static Row measures(
      PieceChart chart, Placing placing, Replay.Frame frame, double scale, Telling tell) {
    List<String> texts = new ArrayList<>();
    List<Vec2> places = new ArrayList<>();
    List<Double> at = new ArrayList<>();
    List<Double> lengths = new ArrayList<>();
    for (Replay.Dimension d : frame.dimensions()) {
      String text = d.measure().mark(tell);
      Vec2 place = placing.onBoard(d.to(), chart.width(), chart.height());
      texts.add(text);
      places.add(d.to());
      at.add(place.x() * scale);
      lengths.add(Labels.wide(text, Weight.BOLD));
    }
    double extent = scale * (placing.scoresDown() ? chart.width() : chart.height());
    return new Row(texts, places, Ranks.of(at, lengths, extent), RANK);
  }

  /** Where a place of the blank lies on the picture. */
  Vec2 at(Vec2 place) {
    return placing
        .onBoard(place, chart.width(), chart.height())
        .times(scale)
        .plus(new Vec2(blank.minX(), blank.minY()));
  }

  /** How the blank is turned, beside its lower left corner. */
  List<Mark> arrow() {
    return TurnArrow.of(new Vec2(EDGE + ARROW, EDGE + ARROW), ARROW - 0.4, quarters);
  }

  /** The names of all lines there are; false where some find no room. */
  boolean names(Labels labels, List<Mark> marks) {
    boolean isWhole = true;
    double out = isMeasured(chart.steps().get(index)) ? DIMENSION - FIRST : 0;
    double foot = blank.minY() - out;
    for (int i = 0; i < below.texts.size(); i++) {
      int rank = below.ranks.of().get(i);
      double x = blank.minX() + below.ranks.at().get(i);
      double y = foot - FIRST - rank * RANK - Labels.HIGH / 2;
      Vec2 line = new Vec2(at(below.places.get(i)).x(), foot);
      isWhole &= label(labels, marks, below.texts.get(i), new Vec2(x, y), rank, line);
    }
    double side = blank.maxX() + out;
    for (int i = 0; i < right.texts.size(); i++) {
      int rank = right.ranks.of().get(i);
      double y = blank.minY() + right.ranks.at().get(i);
      double x = side + FIRST + rank * right.rank + (right.rank - 0.9) / 2;
      boolean isSet = labels.level(right.texts.get(i), new Vec2(x, y), Weight.BOLD, Ink.BLACK);
      if (isSet && rank > 0) {
        double near = x - Labels.wide(right.texts.get(i), Weight.BOLD) / 2 - 0.4;
        Vec2 line = new Vec2(side + 0.4, at(right.places.get(i)).y());
        marks.add(Stroke.line(line, new Vec2(near, y), LineKind.DONE));
      }
      isWhole &= isSet;
    }
    return isWhole;
  }

  /** The measures of the new lines above the stop; false where some find no room. */
  boolean measures(Labels labels, List<Mark> marks) {
    boolean isWhole = true;
    double stop = blank.maxY() + STOP;
    for (int i = 0; i < above.texts.size() && isWhole; i++) {
      int rank = above.ranks.of().get(i);
      double y = stop + FIRST + rank * RANK + Labels.HIGH / 2;
      double x = blank.minX() + above.ranks.at().get(i);
      Vec2 line = new Vec2(at(above.places.get(i)).x(), stop);
      isWhole = label(labels, marks, above.texts.get(i), new Vec2(x, y), rank, line);
    }
    return isWhole;
  }

  private static boolean label(
      Labels labels, List<Mark> marks, String text, Vec2 middle, int rank, Vec2 line) {
    boolean isSet = labels.level(text, middle, Weight.BOLD, Ink.BLACK);
    if (isSet && rank > 0) {
      double way = Math.signum(middle.y() - line.y());
      double near = middle.y() - way * (Labels.HIGH / 2 + 0.4);
      marks.add(
          Stroke.line(
              line.plus(new Vec2(0, way * 0.4)), new Vec2(middle.x(), near), LineKind.DONE));
    }
    return isSet;
  }

  /** How large the blank is, below it and at its right; false where that finds no room. */
  boolean size(Labels labels, List<Mark> marks, Step.Trim trim) {
    double low = blank.minY() - DIMENSION / 2;
    double beside = blank.maxX() + DIMENSION / 2;
    String width = trim.width().mark(tell);
    String height = trim.height().mark(tell);
    Span.draw(marks, new Vec2(blank.minX(), low), new Vec2(blank.maxX(), low), gap(width));
    Span.draw(marks, new Vec2(beside, blank.minY()), new Vec2(beside, blank.maxY()), gap(height));
    boolean isTold = labels.level(width, new Vec2(blank.centre().x(), low), Weight.BOLD, Ink.BLACK);
    Vec2 side = new Vec2(beside, blank.centre().y());
    return labels.upright(height, side, Weight.BOLD, Ink.BLACK) && isTold;
  }

  private static double gap(String words) {
    return Labels.wide(words, Weight.BOLD) + 2;
  }
}
