package facetwright.papers.chart;

import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import java.util.ArrayList;
import java.util.List;

/** What lies on the table when all steps of a chart are done and all is cut. */
record Followed(
    double width,
    double height,
    List<Segment2> pressed,
    List<Segment2> perforated,
    List<Segment2> cuts,
    List<Polygon2> waste,
    List<Replay.Hole> holes) {

  /**
   * Does the steps.
   *
   * @param isByRuler whether measures are set on the ruler's nearest marks, or as they should be
   */
  static Followed of(List<Step> steps, boolean isByRuler) {
    Replay done = Replay.done(steps, isByRuler);
    Polygon2 blank = Polygon2.rectangle(0, 0, done.width, done.height);
    List<Segment2> edges = List.of(blank.side(0), blank.side(1), blank.side(2), blank.side(3));
    List<Segment2> aroundWaste = Waste.sides(done.gone);
    List<Segment2> cuts = new ArrayList<>(Lines.without(edges, aroundWaste));
    cuts.addAll(Lines.without(aroundWaste, edges));
    cuts.addAll(done.inner);
    cuts.addAll(Waste.sides(done.windows));
    List<Segment2> joined = Lines.joined(cuts);
    return new Followed(
        done.width,
        done.height,
        left(done, done.pressed, joined),
        left(done, done.perforated, joined),
        joined,
        done.gone,
        done.holes);
  }

  /** What of the scores is still there when all is cut. */
  private static List<Segment2> left(Replay done, List<Segment2> scores, List<Segment2> cuts) {
    List<Segment2> left = new ArrayList<>();
    for (Segment2 s : Lines.without(Lines.joined(scores), cuts)) {
      for (Segment2 part : Lines.divided(s, cuts)) {
        boolean isGone =
            done.gone.stream().anyMatch(g -> Run.holds(g, part.middle()))
                || done.windows.stream().anyMatch(w -> Run.holds(w, part.middle()));
        if (!isGone) {
          left.add(part);
        }
      }
    }
    return Lines.joined(left);
  }
}
