package facetwright.draw.picture;

import facetwright.draw.Areas;
import facetwright.draw.FillKind;
import facetwright.draw.Ink;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Circle;
import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.pace.Pace;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Placing;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.Side;
import facetwright.papers.chart.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The blank as it lies in one step: what was done before thin, what is to do strong, its measures
 * where the ruler shows them. At the stops of a board stands which edge lies there; an arrow turns
 * the blank where it lay otherwise before.
 */
public final class StepPicture {
  /** What is cut away in this step is hatched so far apart, in mm. */
  private static final double HATCH = 1.8;

  private final PieceChart chart;
  private final List<Replay.Frame> frames;
  private final int index;
  private final Telling tell;
  private final BlankFrame frame;
  private final List<Mark> marks = new ArrayList<>();
  private final Labels labels;

  /**
   * A picture of a step.
   *
   * @param isWhole whether every measure of the step and every name it needs stands on it
   */
  public record Shown(Block block, boolean isWhole) {}

  private StepPicture(
      PieceChart chart,
      List<Replay.Frame> frames,
      int index,
      double width,
      double height,
      Telling tell) {
    this.tell = tell;
    this.chart = chart;
    this.frames = frames;
    this.index = index;
    this.frame = BlankFrame.of(chart, frames, index, width, height, tell);
    this.labels = new Labels(new Box2(0, 0, frame.wide(), frame.high()), marks);
  }

  /**
   * @param frames of the whole chart, see {@link Replay#frames}
   * @param index of the step
   * @param width the most it may take, in mm
   * @param height likewise
   */
  public static Block of(
      PieceChart chart,
      List<Replay.Frame> frames,
      int index,
      double width,
      double height,
      Telling tell) {
    return shown(chart, frames, index, width, height, true, tell).block();
  }

  /**
   * The same, and whether it tells all.
   *
   * @param isNumbered whether points bear their numbers; none for who has pricked them
   */
  static Shown shown(
      PieceChart chart,
      List<Replay.Frame> frames,
      int index,
      double width,
      double height,
      boolean isNumbered,
      Telling tell) {
    StepPicture picture = new StepPicture(chart, frames, index, width, height, tell);
    boolean isWhole = picture.draw(isNumbered);
    BlankFrame frame = picture.frame;
    return new Shown(
        Scaling.told(new Block(frame.wide(), frame.high(), picture.marks), frame.scale(), tell),
        isWhole);
  }

  private Polygon2 at(Polygon2 area) {
    return Polygon2.ofEitherSense(area.corners().stream().map(frame::at).toList());
  }

  private void line(Segment2 s, LineKind kind) {
    marks.add(Stroke.line(frame.at(s.from()), frame.at(s.to()), kind));
  }

  private boolean draw(boolean isNumbered) {
    Step step = chart.steps().get(index);
    drawBlank();
    if (frame.isTurned()) {
      marks.addAll(frame.arrow());
    }
    if (frame.isOnBoard()) {
      stops();
    } else if (step instanceof Step.Trim && chart.isForBoard()) {
      pencilled();
    }
    boolean isWhole = frame.names(labels, marks);
    isWhole &=
        switch (step) {
          case Step.Trim t -> frame.size(labels, marks, t);
          case Step.FullScores _, Step.ShortScores _ -> frame.measures(labels, marks);
          case Step.Points _ -> true;
          case Step.SpotScores _, Step.Punch _, Step.Windows _, Step.Slits _, Step.CutAway _ ->
              !chart.isForBoard()
                  || new SpotMeasures(frame::at, frame.blank(), labels, marks, tell)
                      .draw(frames.get(index).dimensions());
        };
    if (isNumbered) {
      Set<Integer> needed = step.numbers();
      for (Replay.Frame f : frames.subList(0, index + 1)) {
        for (Replay.Tag tag : f.tags()) {
          if (!tag.isLine() && needed.contains(Integer.valueOf(tag.text()))) {
            marks.add(new Circle(frame.at(tag.at()), 0.35, LineKind.NOW));
            isWhole &= labels.near(tag.text(), frame.at(tag.at()), Weight.REGULAR, false);
          }
        }
      }
    }
    return isWhole;
  }

  private void drawBlank() {
    Polygon2 blank = Polygon2.rectangle(0, 0, chart.width(), chart.height());
    marks.add(new Fill(List.of(at(blank)), FillKind.CARD));
    for (Replay.Frame f : frames.subList(0, index + 1)) {
      f.waste().forEach(w -> marks.add(new Fill(List.of(at(w)), FillKind.WASTE)));
      f.windows().forEach(w -> marks.add(new Fill(List.of(at(w)), FillKind.WINDOW)));
    }
    for (Polygon2 now : frames.get(index).waste()) {
      marks.addAll(Areas.hatch(List.of(at(now)), HATCH, LineKind.DONE));
    }
    for (int i = 0; i <= index; i++) {
      Pace.step();
      Replay.Frame f = frames.get(i);
      LineKind kind = i == index ? LineKind.NOW : LineKind.DONE;
      f.scores().forEach(s -> line(s, kind));
      f.cuts().forEach(s -> line(s, kind));
      f.windows().forEach(w -> marks.add(Stroke.around(at(w), kind)));
      f.waste().forEach(w -> wasteSides(w, kind));
      for (Replay.Hole h : f.holes()) {
        double radius = h.diameter() / 2 * frame.scale();
        marks.add(new Circle(frame.at(h.centre()), radius, kind));
      }
    }
    marks.add(Stroke.around(at(blank), index == 0 ? LineKind.NOW : LineKind.CUT));
  }

  /** Sides on the edge of the blank are no cuts. */
  private void wasteSides(Polygon2 waste, LineKind kind) {
    for (int i = 0; i < waste.size(); i++) {
      Segment2 side = waste.side(i);
      Vec2 m = side.middle();
      boolean isEdge =
          m.x() < LengthTolerance.FINE.mm()
              || m.y() < LengthTolerance.FINE.mm()
              || m.x() > chart.width() - LengthTolerance.FINE.mm()
              || m.y() > chart.height() - LengthTolerance.FINE.mm();
      if (!isEdge) {
        line(side, kind);
      }
    }
  }

  /** The board's stops along the top and the left of the blank, and which edges lie there. */
  private void stops() {
    Box2 blank = frame.blank();
    double left = blank.minX() - BlankFrame.STOP;
    double top = blank.maxY() + BlankFrame.STOP;
    marks.add(
        new Stroke(
            List.of(new Vec2(left, blank.minY()), new Vec2(left, top), new Vec2(blank.maxX(), top)),
            false,
            LineKind.NOW));
    Placing placing = frame.placing();
    double above = frame.high() - Labels.HIGH / 2 - BlankFrame.EDGE;
    labels.level(
        stop(placing.atTop()), new Vec2(blank.centre().x(), above), Weight.REGULAR, Ink.GREY);
    double beside = left - 1 - Labels.HIGH / 2;
    labels.upright(
        stop(placing.atLeft()), new Vec2(beside, blank.centre().y()), Weight.REGULAR, Ink.GREY);
  }

  private String stop(Side side) {
    return tell.say("chart.stop-edge", "side", side.word());
  }

  private String pencilled(Side side) {
    return tell.say("chart.label-edge", "side", side.word());
  }

  /** What is written on the edges before the first score. */
  private void pencilled() {
    Box2 blank = frame.blank();
    double in = 1 + Labels.HIGH / 2;
    Vec2 middle = blank.centre();
    labels.level(
        pencilled(Side.TOP), new Vec2(middle.x(), blank.maxY() - in), Weight.REGULAR, Ink.GREY);
    labels.level(
        pencilled(Side.BOTTOM), new Vec2(middle.x(), blank.minY() + in), Weight.REGULAR, Ink.GREY);
    labels.upright(
        pencilled(Side.LEFT), new Vec2(blank.minX() + in, middle.y()), Weight.REGULAR, Ink.GREY);
    labels.upright(
        pencilled(Side.RIGHT), new Vec2(blank.maxX() - in, middle.y()), Weight.REGULAR, Ink.GREY);
  }
}
