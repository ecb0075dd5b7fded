package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.measure.Ruler;
import java.util.ArrayList;
import java.util.List;

/** The scores of a piece in the order in which a maker does them on a board. */
final class BoardPlan {
  private static final double FINE = LengthTolerance.FINE.mm();

  private final FlatPiece piece;
  private final Ruler ruler;
  private final BlankSoFar marks;
  private final List<Double> uprights = new ArrayList<>();
  private final List<Double> levels = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();

  private BoardPlan(FlatPiece piece, Ruler ruler, BlankSoFar marks) {
    this.piece = piece;
    this.ruler = ruler;
    this.marks = marks;
  }

  /** The steps; the marks they leave are in {@code marks}. */
  static List<Step> of(FlatPiece piece, Ruler ruler, BlankSoFar marks) {
    return new BoardPlan(piece, ruler, marks).plan();
  }

  private List<Step> plan() {
    List<Run> all = new ArrayList<>(Run.of(piece, false));
    all.addAll(Run.of(piece, true));
    for (Run run : all) {
      List<Double> places = run.isUpright() ? uprights : levels;
      if (BlankSoFar.indexOf(places, run.at()) < 0) {
        places.add(run.at());
      }
    }
    uprights.sort(Double::compare);
    levels.sort((a, b) -> Double.compare(b, a));
    for (boolean perforated : new boolean[] {false, true}) {
      List<Run> runs = all.stream().filter(r -> r.isPerforated() == perforated).toList();
      full(runs.stream().filter(r -> r.isFull(piece)).toList(), perforated);
      shorts(runs.stream().filter(r -> !r.isFull(piece)).toList());
      slanted(perforated);
    }
    return steps;
  }

  private String label(Run run) {
    return run.isUpright()
        ? BlankSoFar.letters(BlankSoFar.indexOf(uprights, run.at()))
        : String.valueOf(BlankSoFar.indexOf(levels, run.at()) + 1);
  }

  private void full(List<Run> runs, boolean perforated) {
    List<Side> sides = new FullLines(piece, ruler, runs).sides();
    for (Side side : List.of(Side.LEFT, Side.RIGHT, Side.TOP, Side.BOTTOM)) {
      List<Step.Ruled> lines = new ArrayList<>();
      boolean again = true;
      List<Integer> order = new ArrayList<>();
      for (int i = 0; i < runs.size(); i++) {
        if (sides.get(i) == side) {
          order.add(i);
        }
      }
      order.sort(
          (a, b) ->
              Double.compare(
                  marks.distance(side, runs.get(a).at()), marks.distance(side, runs.get(b).at())));
      for (int i : order) {
        Run run = runs.get(i);
        double mm = marks.distance(side, run.at());
        again &= marks.known(mm).isPresent();
        lines.add(new Step.Ruled(label(run), marks.measure(mm)));
      }
      for (int i : order) {
        Run run = runs.get(i);
        double end = run.isUpright() ? piece.height() : piece.width();
        marks.draw(run.isUpright(), label(run), run.at(), 0, end);
      }
      if (!lines.isEmpty()) {
        steps.add(new Step.FullScores(Placing.from(side), lines, perforated, again));
      }
    }
  }

  /** First those between marks that are there, which are marks themselves from then on. */
  private void shorts(List<Run> runs) {
    List<Run> left = new ArrayList<>(runs);
    List<Stopped> done = new ArrayList<>();
    while (!left.isEmpty()) {
      Run next =
          left.stream()
              .filter(r -> stop(r, true) != null && stop(r, false) != null)
              .findFirst()
              .orElse(left.getFirst());
      left.remove(next);
      done.add(scored(next));
    }
    for (Stopped s : done) {
      add(s);
    }
  }

  private record Stopped(
      Placing placing, Step.Ruled line, Guide from, Guide to, boolean perforated) {}

  /** Where there is a mark for a run to start or stop at; null where there is none. */
  private Double stop(Run r, boolean isStart) {
    return isStart
        ? marks.nearestMark(!r.isUpright(), r.free(), r.from(), r.from(), r.at()).orElse(null)
        : marks.nearestMark(!r.isUpright(), r.to(), r.freeTo(), r.to(), r.at()).orElse(null);
  }

  private Stopped scored(Run r) {
    Double start = stop(r, true);
    Double end = stop(r, false);
    double from = start == null ? r.from() : start;
    double to = end == null ? r.to() : end;
    Side side = marks.side(r.isUpright(), r.at());
    Step.Ruled line = new Step.Ruled(label(r), marks.measure(marks.distance(side, r.at())));
    Guide low = marks.guide(!r.isUpright(), from, r.at());
    Guide high = marks.guide(!r.isUpright(), to, r.at());
    marks.draw(r.isUpright(), label(r), r.at(), from, to);
    // Down the blank one reads from top to bottom, across it from left to right.
    return r.isUpright()
        ? new Stopped(Placing.from(side), line, high, low, r.isPerforated())
        : new Stopped(Placing.from(side), line, low, high, r.isPerforated());
  }

  /** Into the last step if it is scored alike. */
  private void add(Stopped s) {
    if (!steps.isEmpty()
        && steps.getLast() instanceof Step.ShortScores last
        && last.placing() == s.placing
        && last.from().equals(s.from)
        && last.to().equals(s.to)
        && last.isPerforated() == s.perforated) {
      List<Step.Ruled> lines = new ArrayList<>(last.lines());
      lines.add(s.line);
      steps.removeLast();
      steps.add(new Step.ShortScores(last.placing(), lines, last.from(), last.to(), s.perforated));
    } else {
      steps.add(new Step.ShortScores(s.placing, List.of(s.line), s.from, s.to, s.perforated));
    }
  }

  private void slanted(boolean perforated) {
    List<Step.Path> lines = new ArrayList<>();
    for (Segment2 s : piece.scores(perforated)) {
      if (!FlatPiece.isUpright(s) && !FlatPiece.isLevel(s) && s.length() > FINE) {
        lines.add(new Step.Path(marks.spot(s.from()), marks.spot(s.to())));
      }
    }
    if (!lines.isEmpty()) {
      steps.add(new Step.SpotScores(lines, perforated));
    }
  }
}
