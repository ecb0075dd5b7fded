package facetwright.check.cut;

import facetwright.check.finding.Finding;
import facetwright.check.finding.Place;
import facetwright.check.finding.Rule;
import facetwright.check.finding.Subject;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.PieceOutline;
import facetwright.net.sheet.Room;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * Pieces that lie nearer to the sheet's edge, or to each other, than they would on a larger sheet.
 * Told once, of the nearest.
 */
public final class NearEdgeRule implements Rule {
  public static final String NAME = "near-edge";

  @Override
  public List<Finding> find(Subject subject) {
    Laid laid = subject.laid();
    if (!laid.fits() || laid.kept().equals(laid.wanted())) {
      return List.of();
    }
    Room wanted = laid.wanted();
    List<Message> near = new ArrayList<>();
    double edge = toEdge(laid);
    if (edge < wanted.margin() - LengthTolerance.FINE.mm()) {
      near.add(
          Message.of(
              "as near as %s to the edge of the %s sheet", Value.rough(edge), laid.stock().name()));
    }
    double apart = apart(laid);
    if (apart < wanted.gap() - LengthTolerance.FINE.mm()) {
      near.add(Message.of("as near as %s to each other", Value.rough(apart)));
    }
    if (near.isEmpty()) {
      return List.of();
    }
    SheetMends mends = new SheetMends(laid, wanted);
    return List.of(
        new Finding(
            NAME,
            Finding.Severity.NOTE,
            Message.of(
                "%s %s; with more room it would be %s.",
                subject.net().pieces() == 1 ? "The net lies" : "Pieces lie",
                Message.join(" and ", near),
                Value.length(Math.max(wanted.margin(), wanted.gap()))),
            mends.fix(),
            new Place.WholeNet(),
            Site.NONE,
            mends.mends()));
  }

  /** How far the nearest panel keeps from the edges of its sheet, in mm. */
  private static double toEdge(Laid laid) {
    return laid.net().boxOfPiece().stream()
        .mapToDouble(box -> inside(laid.sheet(laid.sheetAt(box.centre())), box))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static double inside(Box2 sheet, Box2 box) {
    return Math.max(
        0,
        Math.min(
            Math.min(box.minX() - sheet.minX(), sheet.maxX() - box.maxX()),
            Math.min(box.minY() - sheet.minY(), sheet.maxY() - box.maxY())));
  }

  /** How far the nearest two pieces keep from each other, in mm. */
  private static double apart(Laid laid) {
    List<Geometry> outlines = PieceOutline.all(laid.net());
    double least = Double.POSITIVE_INFINITY;
    for (int a = 0; a < outlines.size(); a++) {
      for (int b = 0; b < a; b++) {
        least = Math.min(least, outlines.get(a).distance(outlines.get(b)));
      }
    }
    return least;
  }
}
