package facetwright.draw.picture;

import facetwright.draw.FoldedDrawing;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.net.Net;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A piece as it lies in its ring, the facet that meets its neighbour marked with a number. */
public final class MeetingPicture {
  private static final Ink MARKED = new Ink(0xE3A77F);
  private static final double SIZE = Lettering.pt(13);

  private MeetingPicture() {}

  /**
   * The piece from one side.
   *
   * @param poses where its panels lie in the ring
   * @param meeting the panels of the facet that meets
   * @param from where that facet is seen from
   */
  public static Block of(
      Net piece,
      List<Motion3> poses,
      List<Integer> meeting,
      int number,
      Viewpoint from,
      double wide,
      double tall,
      Telling tell) {
    FoldedDrawing drawing = new FoldedDrawing(piece, poses, false);
    List<Mark> marks = new ArrayList<>();
    for (Mark.Patch patch : drawing.seen(from)) {
      boolean isIn = meeting.contains(patch.part());
      marks.add(isIn ? new Mark.Patch(patch.rings(), MARKED, patch.edges(), patch.part()) : patch);
    }
    Scaling.Fit fit = Scaling.Fit.of(drawing.bounds(from), wide, tall);
    List<Mark> all = new ArrayList<>(fit.of(marks));
    meeting.stream()
        .max(Comparator.comparingDouble(p -> piece.panels().get(p).outline().area()))
        .map(p -> middle(drawing.outline(p, from)))
        .ifPresent(at -> all.add(FacetNumber.of(number, SIZE, fit.at(at))));
    return Scaling.told(new Block(fit.width(), fit.height(), all), fit.scale(), tell);
  }

  private static Vec2 middle(List<Vec2> outline) {
    return Polygon2.wide(outline)
        .map(Polygon2::centroid)
        .orElseGet(
            () -> outline.stream().reduce(Vec2.ZERO, Vec2::plus).times(1.0 / outline.size()));
  }
}
