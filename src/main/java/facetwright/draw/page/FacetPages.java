package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.FoldedDrawing;
import facetwright.draw.SheetPart;
import facetwright.draw.Viewpoint;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.FacetPicture;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.language.Telling;
import facetwright.net.sheet.Laid;
import facetwright.papers.facets.FacetLine;
import facetwright.papers.facets.FacetList;
import facetwright.papers.facets.FacetText;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The facets of a design on pages: numbered on the made form and on the net, and listed. */
public final class FacetPages {
  private static final double TALL = 80;

  /** With less left of the page the net stands on the next, in mm. */
  private static final double NET = 110;

  /** The heading above the net and what stands about it, in mm. */
  private static final double HEAD = 18;

  /** Right behind and below of the usual view: what the one hides of a bulging form it shows. */
  private static final Viewpoint BEHIND =
      new Viewpoint(Viewpoint.USUAL.turn() + Math.PI, -Viewpoint.USUAL.tilt());

  private FacetPages() {}

  /**
   * @param laid the net on its sheets
   * @param folded the same net made
   * @param facets its facets
   */
  public static List<Drawing> of(
      String title, Order order, Laid laid, FoldedForm folded, FacetList facets) {
    Flow flow = new Flow(order.page(), title, "facets", order.telling());
    flow.title(title, "Its facets, their numbers, and the words that they answer to.");
    if (folded.closure() != Closure.NOT_SOLVED) {
      made(flow, new FoldedDrawing(laid.net(), folded.whole(), false), facets, order.telling());
    }
    for (int s = 0; s < laid.sheets(); s++) {
      SheetPart part = SheetPart.of(laid, s);
      double room = flow.left() - HEAD;
      Block net =
          FacetPicture.net(
              part,
              facets,
              flow.width(),
              room < NET ? flow.height() - 2 * HEAD : room,
              order.telling());
      flow.heading(laid.sheets() == 1 ? "The net" : "The net, sheet " + (s + 1), net.height() + 4);
      flow.putCentred(net);
    }
    flow.heading("Each facet");
    PointColumns.set(flow, facets.all().stream().map(f -> line(f, order)).toList());
    if (!facets.groups().isEmpty()) {
      flow.heading("Words for several" + (FacetText.isOfParts(facets) ? ", in each part" : ""));
      List<String> groups = new ArrayList<>();
      facets.groups().forEach((w, n) -> groups.add(w + ": " + FacetText.numbers(n)));
      PointColumns.set(flow, groups);
    }
    return flow.pages();
  }

  private static void made(Flow flow, FoldedDrawing form, FacetList facets, Telling tell) {
    double wide = (flow.width() - 6) / 2;
    Set<Integer> numbered = new TreeSet<>();
    Grid.row(
        flow,
        List.of(
            FacetPicture.made(form, facets, Viewpoint.USUAL, wide, TALL, numbered, tell),
            FacetPicture.made(form, facets, BEHIND, wide, TALL, numbered, tell)),
        List.of("", ""),
        List.of("From the front and above.", "From behind and below."),
        2);
    List<Integer> missing =
        facets.all().stream().map(FacetLine::number).filter(n -> !numbered.contains(n)).toList();
    if (!missing.isEmpty()) {
      flow.words(
          "Too small or hidden here, see them on the net: " + FacetText.numbers(missing) + ".");
    }
  }

  private static String line(FacetLine f, Order order) {
    String own = FacetText.own(f);
    boolean isSaid = own.equals('"' + f.name() + '"');
    return f.number()
        + "  "
        + (isSaid ? own : f.name() + ", in the script " + own)
        + "; "
        + FacetText.brief(f, order.unit());
  }
}
