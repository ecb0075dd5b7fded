package facetwright.draw;

import facetwright.fold.FoldPath;
import facetwright.fold.FoldedForm;
import facetwright.fold.Folding;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.net.Laid;
import facetwright.papers.handout.Picture;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The pictures of a handout, each no larger than a given size. */
public final class HandoutPictures {
  private static final double ROOM = 1;
  private static final Set<NetDrawing.Content> FLAT =
      EnumSet.of(NetDrawing.Content.CARD, NetDrawing.Content.GLUE, NetDrawing.Content.LAYERS);

  private final Laid laid;
  private final FoldedForm form;
  private FoldPath path;

  /**
   * @param form the folded form of the laid net
   */
  public HandoutPictures(Laid laid, FoldedForm form) {
    this.laid = laid;
    this.form = form;
  }

  /** Where the panels are part of the way, 0 flat to 1 made. */
  List<Motion3> poses(double t) {
    if (t == 1) {
      return form.poses();
    }
    if (path == null) {
      path = Folding.path(laid);
    }
    return path.at(t);
  }

  /** At most this wide and high, in mm, and never larger than life. */
  public Drawing of(Picture picture, double width, double height) {
    return switch (picture) {
      case Picture.Flat flat -> {
        Drawing net = NetDrawing.of(SheetPart.of(laid, flat.sheet()), FLAT);
        Box2 box = new Box2(0, 0, net.width(), net.height());
        yield fitted(net.marks(), box, width, height);
      }
      case Picture.Folded folded -> {
        FoldedDrawing drawing = new FoldedDrawing(laid.net(), poses(folded.t()), true);
        yield fitted(drawing.seen(Viewpoint.USUAL), drawing.bounds(Viewpoint.USUAL), width, height);
      }
    };
  }

  private static Drawing fitted(List<? extends Mark> marks, Box2 box, double width, double height) {
    double scale =
        Math.min(
            1,
            Math.min(
                (width - 2 * ROOM) / Math.max(box.width(), 1e-3),
                (height - 2 * ROOM) / Math.max(box.height(), 1e-3)));
    Vec2 shift = new Vec2(ROOM - box.minX() * scale, ROOM - box.minY() * scale);
    return new Drawing(
            box.width() * scale + 2 * ROOM,
            box.height() * scale + 2 * ROOM,
            new Scaling(scale).of(marks))
        .moved(Motion2.shift(shift));
  }
}
