package facetwright.papers.cutting;

import facetwright.geom.LengthTolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * Walks a plan cut by cut and lists what is wrong with it: a cut that does not go edge to edge
 * through its part, parts that do not add up, a piece that is not the size wanted or is turned
 * against the pattern, pieces that lie on each other or over the edge, and counts. It knows nothing
 * of how plans are found. It does not ask whether a better plan exists.
 */
public final class Verify {
  private static final LengthTolerance SAME = LengthTolerance.FINE;

  private final CutPlan plan;
  private final List<String> wrong = new ArrayList<>();
  private final List<Placed> placed = new ArrayList<>();

  private record Placed(double x, double y, Part.Piece piece) {}

  private Verify(CutPlan plan) {
    this.plan = plan;
  }

  /**
   * What is wrong where at most the counts are wanted, as from one sheet; empty for a good plan.
   */
  public static List<String> atMost(CutPlan plan) {
    return new Verify(plan).walk(false);
  }

  /** What is wrong where exactly the counts are wanted; empty for a good plan. */
  public static List<String> exactly(CutPlan plan) {
    return new Verify(plan).walk(true);
  }

  private List<String> walk(boolean exactly) {
    for (SheetPlan sheet : plan.sheets()) {
      placed.clear();
      same("the sheet's width", sheet.whole().width(), sheet.paper().width());
      same("the sheet's height", sheet.whole().height(), sheet.paper().height());
      if (sheet.copies() < 1) {
        wrong.add("a sheet is cut " + sheet.copies() + " times");
      }
      part(sheet.whole(), 0, 0);
      apart(sheet.paper());
    }
    int[] pieces = plan.pieces();
    for (int k = 0; k < pieces.length; k++) {
      int count = plan.wanted().get(k).count();
      if (exactly ? pieces[k] != count : pieces[k] > count) {
        wrong.add(plan.wanted().get(k).name() + ": " + pieces[k] + " pieces, wanted " + count);
      }
    }
    return List.copyOf(wrong);
  }

  private void part(Part part, double x, double y) {
    switch (part) {
      case Part.Waste _ -> {}
      case Part.Piece piece -> {
        placed.add(new Placed(x, y, piece));
        Wanted want = plan.wanted().get(piece.kind());
        if (piece.turned() && !want.mayTurn()) {
          wrong.add(want.name() + " is turned against its pattern");
        }
        same(
            want.name() + "'s width", piece.width(), piece.turned() ? want.height() : want.width());
        same(
            want.name() + "'s height",
            piece.height(),
            piece.turned() ? want.width() : want.height());
      }
      case Part.Cut cut -> {
        boolean left = cut.way() == FromEdge.LEFT;
        double long1 = left ? cut.width() : cut.height();
        double beyond = Math.max(0, long1 - cut.at() - plan.kerf());
        if (!(cut.at() > 0 && cut.at() < long1)) {
          wrong.add("a cut at " + cut.at() + " mm misses its part of " + long1 + " mm");
        }
        same("the first part's length", along(cut.first(), left), cut.at());
        same("the second part's length", along(cut.second(), left), beyond);
        same("the first part's edge", along(cut.first(), !left), along(cut, !left));
        same("the second part's edge", along(cut.second(), !left), along(cut, !left));
        double step = cut.at() + plan.kerf();
        part(cut.first(), x, y);
        part(cut.second(), left ? x + step : x, left ? y : y + step);
      }
    }
  }

  private static double along(Part part, boolean left) {
    return left ? part.width() : part.height();
  }

  /** The pieces as they lie on the sheet, whatever the cuts say. */
  private void apart(Paper paper) {
    double slack = 1e-3;
    for (int a = 0; a < placed.size(); a++) {
      Placed one = placed.get(a);
      if (one.x + one.piece.width() > paper.width() + slack
          || one.y + one.piece.height() > paper.height() + slack) {
        wrong.add("a piece reaches over the edge of the sheet");
      }
      for (Placed other : placed.subList(0, a)) {
        if (one.x + slack < other.x + other.piece.width()
            && other.x + slack < one.x + one.piece.width()
            && one.y + slack < other.y + other.piece.height()
            && other.y + slack < one.y + one.piece.height()) {
          wrong.add("two pieces lie on each other");
        }
      }
    }
  }

  private void same(String what, double is, double ought) {
    if (!SAME.same(is, ought)) {
      wrong.add(what + " is " + is + " mm and ought to be " + ought + " mm");
    }
  }
}
