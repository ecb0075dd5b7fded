package facetwright.papers.cutting;

import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Where a cut runs on its sheet.
 *
 * @param number of the cut in the steps; cuts of equal parts made in one go bear one number
 * @param line in mm from the sheet's lower left corner
 */
public record CutPlace(int number, Segment2 line) {

  /** Every cut of a sheet, each before those of its parts. */
  public static List<CutPlace> of(SheetPlan sheet, List<Wanted> wanted) {
    List<CutPlace> places = new ArrayList<>();
    add(places, sheet.whole(), Vec2.ZERO, Cuts.firsts(sheet, wanted));
    return List.copyOf(places);
  }

  private static void add(
      List<CutPlace> places, Part part, Vec2 corner, Map<Part.Cut, Integer> firsts) {
    if (!(part instanceof Part.Cut head)) {
      return;
    }
    int times = Cuts.times(head);
    Part rest = part;
    Vec2 at = corner;
    for (int i = 0; i < times; i++) {
      Part.Cut cut = (Part.Cut) rest;
      boolean isUpright = cut.way() == FromEdge.LEFT;
      Vec2 off = isUpright ? new Vec2(cut.at(), 0) : new Vec2(0, cut.at());
      Vec2 along = isUpright ? new Vec2(0, cut.height()) : new Vec2(cut.width(), 0);
      places.add(
          new CutPlace(firsts.get(head) + i, new Segment2(at.plus(off), at.plus(off).plus(along))));
      add(places, cut.first(), at, firsts);
      at = at.plus(second(cut));
      rest = cut.second();
    }
    add(places, rest, at, firsts);
  }

  /** From the lower left corner of what is cut to that of what lies beyond the cut. */
  public static Vec2 second(Part.Cut cut) {
    return cut.way() == FromEdge.LEFT
        ? new Vec2(cut.width() - cut.second().width(), 0)
        : new Vec2(0, cut.height() - cut.second().height());
  }
}
