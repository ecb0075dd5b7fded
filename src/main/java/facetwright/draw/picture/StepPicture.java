package facetwright.draw.picture;

import facetwright.draw.FillKind;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Circle;
import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.pace.Pace;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Placing;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The blank as it lies in one step: what was done before thin, what is to do strong. */
public final class StepPicture {
  private static final double SIZE = Lettering.pt(Lettering.SMALLEST_PT);

  /** Room round the blank for stops and names. */
  private static final double BORDER = 6;

  private final PieceChart chart;
  private final Placing placing;
  private final double scale;
  private final boolean isNumbered;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Box2> taken = new ArrayList<>();

  private StepPicture(PieceChart chart, Placing placing, double scale, boolean isNumbered) {
    this.chart = chart;
    this.placing = placing;
    this.scale = scale;
    this.isNumbered = isNumbered;
  }

  /**
   * @param frames of the whole chart, see {@link Replay#frames}
   * @param index of the step
   * @param width the most it may take, in mm
   * @param height likewise
   */
  public static Block of(
      PieceChart chart, List<Replay.Frame> frames, int index, double width, double height) {
    return of(chart, frames, index, width, height, true);
  }

  /** The same without numbers of points, for who has pricked them through the template. */
  static Block plain(
      PieceChart chart, List<Replay.Frame> frames, int index, double width, double height) {
    return of(chart, frames, index, width, height, false);
  }

  private static Block of(
      PieceChart chart,
      List<Replay.Frame> frames,
      int index,
      double width,
      double height,
      boolean isNumbered) {
    Step step = chart.steps().get(index);
    Placing placing =
        switch (step) {
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
    boolean isLevel = placing.scoresDown();
    double wide = isLevel ? chart.width() : chart.height();
    double high = isLevel ? chart.height() : chart.width();
    double scale =
        Scaling.shown(Math.min((width - 2 * BORDER) / wide, (height - 2 * BORDER) / high));
    StepPicture picture = new StepPicture(chart, placing, scale, isNumbered);
    picture.draw(
        frames, index, step instanceof Step.FullScores || step instanceof Step.ShortScores);
    return Scaling.told(
        new Block(wide * scale + 2 * BORDER, high * scale + 2 * BORDER, picture.marks), scale);
  }

  private Vec2 at(Vec2 place) {
    return placing
        .onBoard(place, chart.width(), chart.height())
        .times(scale)
        .plus(new Vec2(BORDER, BORDER));
  }

  private Polygon2 at(Polygon2 area) {
    return Polygon2.ofEitherSense(area.corners().stream().map(this::at).toList());
  }

  private void line(Segment2 s, LineKind kind) {
    marks.add(Stroke.line(at(s.from()), at(s.to()), kind));
  }

  private void draw(List<Replay.Frame> frames, int index, boolean isOnBoard) {
    Polygon2 blank = Polygon2.rectangle(0, 0, chart.width(), chart.height());
    marks.add(new Fill(List.of(at(blank)), FillKind.CARD));
    for (Replay.Frame f : frames.subList(0, index + 1)) {
      f.waste().forEach(w -> marks.add(new Fill(List.of(at(w)), FillKind.WASTE)));
      f.windows().forEach(w -> marks.add(new Fill(List.of(at(w)), FillKind.WINDOW)));
    }
    for (int i = 0; i <= index; i++) {
      Pace.step();
      Replay.Frame f = frames.get(i);
      LineKind kind = i == index ? LineKind.NOW : LineKind.DONE;
      f.scores().forEach(s -> line(s, kind));
      f.cuts().forEach(s -> line(s, kind));
      f.windows().forEach(w -> marks.add(Stroke.around(at(w), kind)));
      f.waste().forEach(w -> wasteSides(w, kind));
      f.holes().forEach(h -> marks.add(new Circle(at(h.centre()), h.diameter() / 2 * scale, kind)));
    }
    marks.add(Stroke.around(at(blank), index == 0 ? LineKind.NOW : LineKind.CUT));
    if (isOnBoard) {
      stops();
    }
    for (Replay.Frame f : frames.subList(0, index + 1)) {
      f.tags().stream().filter(Replay.Tag::isLine).forEach(this::lineName);
    }
    Set<Integer> needed = isNumbered ? chart.steps().get(index).numbers() : Set.of();
    for (Replay.Frame f : frames.subList(0, index + 1)) {
      f.tags().stream()
          .filter(t -> !t.isLine() && needed.contains(Integer.valueOf(t.text())))
          .forEach(this::pointName);
    }
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

  /** The board's stops along the top and the left of the blank. */
  private void stops() {
    boolean isLevel = placing.scoresDown();
    double right = BORDER + (isLevel ? chart.width() : chart.height()) * scale;
    double top = BORDER + (isLevel ? chart.height() : chart.width()) * scale;
    double beside = BORDER - 1;
    marks.add(
        new Stroke(
            List.of(new Vec2(beside, BORDER), new Vec2(beside, top + 1), new Vec2(right, top + 1)),
            false,
            LineKind.NOW));
  }

  /** Below or beside the blank, away from the stops. */
  private void lineName(Replay.Tag tag) {
    Vec2 one = at(tag.at());
    boolean isUpright = tag.isUpright() == placing.scoresDown();
    double capital = SIZE * Lettering.CAP_HEIGHT;
    double wide = Lettering.width(tag.text(), Weight.BOLD, SIZE);
    double right = BORDER + (placing.scoresDown() ? chart.width() : chart.height()) * scale + 1;
    Vec2 place =
        isUpright
            ? new Vec2(one.x() - wide / 2, BORDER - 1 - capital)
            : new Vec2(right, one.y() - capital / 2);
    write(tag.text(), place, wide, capital, Weight.BOLD);
  }

  private void pointName(Replay.Tag tag) {
    Vec2 p = at(tag.at());
    marks.add(new Circle(p, 0.35, LineKind.NOW));
    double capital = SIZE * Lettering.CAP_HEIGHT;
    double wide = Lettering.width(tag.text(), Weight.REGULAR, SIZE);
    for (double d : new double[] {0.8, 2.2}) {
      for (Vec2 place :
          List.of(
              new Vec2(p.x() + d, p.y() + d),
              new Vec2(p.x() - d - wide, p.y() + d),
              new Vec2(p.x() + d, p.y() - d - capital),
              new Vec2(p.x() - d - wide, p.y() - d - capital),
              new Vec2(p.x() - wide / 2, p.y() + d),
              new Vec2(p.x() - wide / 2, p.y() - d - capital))) {
        if (write(tag.text(), place, wide, capital, Weight.REGULAR)) {
          return;
        }
      }
    }
  }

  /** Writes where nothing is written yet. */
  private boolean write(String text, Vec2 place, double wide, double high, Weight weight) {
    Box2 box = new Box2(place.x(), place.y(), place.x() + wide, place.y() + high).grown(0.25);
    if (taken.stream().anyMatch(box::meets)) {
      return false;
    }
    taken.add(box);
    marks.add(new Text(place, SIZE, 0, Anchor.START, weight, Ink.BLACK, text));
    return true;
  }
}
