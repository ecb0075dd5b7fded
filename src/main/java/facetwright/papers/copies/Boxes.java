package facetwright.papers.copies;

import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import facetwright.net.sheet.Stock;
import facetwright.papers.cutting.Effort;
import facetwright.papers.cutting.FromEdge;
import facetwright.papers.cutting.OneSheet;
import facetwright.papers.cutting.Paper;
import facetwright.papers.cutting.Part;
import facetwright.papers.cutting.Wanted;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** Copies in the boxes round them, as a trimmer cuts these from a sheet edge to edge. */
final class Boxes {
  private final Blank upright;
  private final Blank lying;
  private final List<Motion2> motions = new ArrayList<>();

  private Boxes(Geometry shape) {
    this.upright = Blank.of(shape, 0, 0);
    this.lying = Blank.of(shape, Math.PI / 2, 0);
  }

  static List<Motion2> motions(
      Geometry shape, Stock stock, double width, double height, double gap) {
    Boxes boxes = new Boxes(shape);
    Blank one = boxes.upright;
    boolean mayTurn = stock.grain() == Stock.Grain.UNKNOWN;
    boolean fits = one.width() <= width && one.height() <= height;
    if (!fits && !(mayTurn && one.height() <= width && one.width() <= height)) {
      return List.of();
    }
    Wanted wanted = Wanted.of("net", one.width(), one.height(), Wanted.UNLIMITED, mayTurn);
    Paper paper = new Paper(stock.name(), width, height);
    Part whole =
        OneSheet.plan(paper, List.of(wanted), gap, Effort.USUAL).sheets().getFirst().whole();
    boxes.add(whole, Vec2.ZERO);
    return boxes.motions;
  }

  private void add(Part part, Vec2 at) {
    switch (part) {
      case Part.Waste _ -> {}
      case Part.Piece piece -> {
        Blank blank = piece.turned() ? lying : upright;
        motions.add(blank.motion().then(Motion2.shift(at)));
      }
      case Part.Cut cut -> {
        Vec2 beyond =
            cut.way() == FromEdge.LEFT
                ? new Vec2(cut.width() - cut.second().width(), 0)
                : new Vec2(0, cut.height() - cut.second().height());
        add(cut.first(), at);
        add(cut.second(), at.plus(beyond));
      }
    }
  }
}
