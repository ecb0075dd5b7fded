package facetwright.draw.picture;

import facetwright.draw.FoldedDrawing;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.draw.Viewpoint;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.papers.facets.FacetLine;
import facetwright.papers.facets.FacetList;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Facets pictured with their numbers, on the made form and on the net. */
public final class FacetPicture {
  private static final double NUMBER = Lettering.pt(10);
  private static final double SMALL = Lettering.pt(Lettering.SMALLEST_PT);

  /** Of the room about the middle of a facet, so much is for its number. */
  private static final double FILLED = 0.9;

  private FacetPicture() {}

  /**
   * The made form with the numbers of the facets that are seen.
   *
   * @param numbered gains the numbers that are there
   */
  public static Block made(
      FoldedDrawing form,
      FacetList facets,
      Viewpoint from,
      double wide,
      double tall,
      Set<Integer> numbered,
      Telling tell) {
    Scaling.Fit fit = Scaling.Fit.of(form.bounds(from), wide, tall);
    List<Mark.Patch> patches = form.seen(from);
    List<Mark> marks = new ArrayList<>(fit.of(patches));
    for (FacetLine line : facets.all()) {
      place(form, patches, line.panel(), from, fit.scale(), LengthTolerance.UNSEEN.mm())
          .ifPresent(
              at -> {
                marks.add(FacetNumber.of(line.number(), NUMBER, fit.at(at)));
                numbered.add(line.number());
              });
    }
    return Scaling.told(new Block(fit.width(), fit.height(), marks), fit.scale(), tell);
  }

  /** Where the number of a facet has room in the largest patch of it that nothing hides. */
  private static Optional<Vec2> place(
      FoldedDrawing form,
      List<Mark.Patch> patches,
      int panel,
      Viewpoint from,
      double scale,
      double near) {
    if (!form.isOutsideSeen(panel, from)) {
      return Optional.empty();
    }
    Vec2 best = null;
    double most = 0;
    for (int i = 0; i < patches.size(); i++) {
      Mark.Patch patch = patches.get(i);
      if (patch.part() != panel || patch.rings().isEmpty()) {
        continue;
      }
      Polygon2 ring = patch.rings().getFirst();
      List<Polygon2> holes = patch.rings().subList(1, patch.rings().size());
      Vec2 at = Planar.inmost(ring, holes, Math.max(near, 0.2 / scale));
      double room = room(ring, holes, at) * scale;
      if (room > most && isFree(patches.subList(i + 1, patches.size()), panel, at)) {
        best = at;
        most = room;
      }
    }
    return most * FILLED < NUMBER / 2 ? Optional.empty() : Optional.of(best);
  }

  private static boolean isFree(List<Mark.Patch> nearer, int panel, Vec2 at) {
    return nearer.stream()
        .filter(p -> p.part() != panel)
        .noneMatch(p -> p.rings().stream().filter(r -> r.contains(at)).count() % 2 == 1);
  }

  private static double room(Polygon2 outline, List<Polygon2> holes, Vec2 at) {
    List<Polygon2> all = new ArrayList<>(holes);
    all.add(outline);
    double least = Double.POSITIVE_INFINITY;
    for (Polygon2 ring : all) {
      for (int i = 0; i < ring.size(); i++) {
        least = Math.min(least, ring.side(i).distance(at));
      }
    }
    return least;
  }

  /** A sheet of the net with the numbers of its facets, and their words where there is room. */
  public static Block net(
      SheetPart part, FacetList facets, double wide, double tall, Telling tell) {
    Net net = part.laid().net();
    Scaling.Fit fit = Scaling.Fit.of(part.panelBox(), wide, tall);
    List<Mark> marks =
        new ArrayList<>(fit.of(NetDrawing.of(part, EnumSet.of(NetDrawing.Content.CARD)).marks()));
    Motion2 onPage = Motion2.shift(part.shift());
    Set<Integer> here = new HashSet<>(part.panels());
    for (FacetLine line : facets.all()) {
      if (here.contains(line.panel())) {
        Polygon2 outline = onPage.apply(net.panels().get(line.panel()).outline());
        List<Polygon2> openings =
            net.panels().get(line.panel()).openings().stream()
                .map(Opening::outline)
                .map(onPage::apply)
                .toList();
        marks.addAll(written(line, outline, openings, fit));
      }
    }
    return Scaling.told(new Block(fit.width(), fit.height(), marks), fit.scale(), tell);
  }

  private static List<Mark> written(
      FacetLine line, Polygon2 outline, List<Polygon2> openings, Scaling.Fit fit) {
    double near = Math.max(LengthTolerance.UNSEEN.mm(), 0.2 / fit.scale());
    Vec2 whole = Planar.inmost(outline, List.of(), near);
    Vec2 clear = Planar.inmost(outline, openings, near);
    // Card is better to write on than a window; but of a facet that is all window the middle is.
    boolean isOnCard = room(outline, openings, clear) * fit.scale() * FILLED >= NUMBER / 2;
    Vec2 middle = fit.at(isOnCard ? clear : whole);
    double room = (isOnCard ? room(outline, openings, clear) : room(outline, List.of(), whole));
    String words = Lettering.printable(line.name());
    double half = Lettering.width(words, Mark.Weight.REGULAR, SMALL) / 2;
    boolean isBoth = Math.hypot(half, NUMBER + SMALL / 2) <= room * fit.scale();
    if (!isBoth) {
      return List.of(FacetNumber.of(line.number(), NUMBER, middle));
    }
    return List.of(
        FacetNumber.of(line.number(), NUMBER, middle.plus(new Vec2(0, SMALL / 2))),
        new Mark.Text(
            middle.plus(new Vec2(0, -SMALL * 1.1)),
            SMALL,
            0,
            Mark.Anchor.MIDDLE,
            Mark.Weight.REGULAR,
            Ink.BLACK,
            words));
  }
}
