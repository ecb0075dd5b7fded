package facetwright.draw.picture;

import facetwright.draw.Areas;
import facetwright.draw.FillKind;
import facetwright.draw.Ink;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.fold.making.Action;
import facetwright.fold.making.Faces;
import facetwright.fold.making.Numbers;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.language.Telling;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.fitting.Extra;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A piece as it lies before an action: what moves with its glue hatched and a ringed number, where
 * it goes with the same number without a ring, and an arrow for the way. Glue on a face that is
 * turned away is dotted, what is hidden has its outline dotted over what hides it.
 */
final class MidwayPicture {
  /** Round the piece, for numbers and arrows, in mm. */
  private static final double MARGIN = 4.5;

  private static final double HATCH = 1.2;

  /** What an arrow that turns the piece takes beside it, in mm. */
  private static final double TURNING = 13;

  /** How far from its place the ringed number of what moves first may stand, and of others. */
  private static final double FARTHEST = 18;

  private static final double NEAR = 6;

  /** How far a number stands from its edge, in mm. */
  private static final double IN = 3;

  /** Of what shows less of itself the outline is drawn over what hides it, as part of its area. */
  private static final double HIDDEN = 0.12;

  /** No more gussets have an arrow each. */
  private static final int GUSSETS = 2;

  private final Scene scene;
  private final Net net;
  private final Viewpoint from;
  private final Scaling.Fit fit;
  private final List<Mark.Patch> patches;
  private final List<Mark> marks = new ArrayList<>();
  private final Labels labels;
  private final Numbers numbers;
  private final double width;
  private final double height;
  private final Vec2 middle;

  private MidwayPicture(
      Scene scene,
      List<Mark.Patch> patches,
      Viewpoint from,
      Viewpoint before,
      Numbers numbers,
      double width,
      double height) {
    this.scene = scene;
    this.net = scene.drawing().net();
    this.from = from;
    this.numbers = numbers;
    this.patches = patches;
    double wide = from.isTurnedFrom(before) ? width - TURNING : width;
    this.fit = Scaling.Fit.of(scene.drawing().bounds(from), wide - 2 * MARGIN, height - 2 * MARGIN);
    this.width = fit.width() + 2 * MARGIN;
    this.height = fit.height() + 2 * MARGIN;
    this.labels = new Labels(new Box2(0, 0, this.width, this.height), marks);
    this.middle = at(scene.middle());
  }

  /**
   * @param patches of the scene as seen
   * @param before from where the scene before was seen: where it is not the same, an arrow turns
   *     the piece
   * @param thing what that goes in, where one does
   */
  static Block of(
      Scene scene,
      List<Mark.Patch> patches,
      Viewpoint from,
      Viewpoint before,
      Optional<Extra> thing,
      Numbers numbers,
      double width,
      double height,
      Telling tell) {
    MidwayPicture picture = new MidwayPicture(scene, patches, from, before, numbers, width, height);
    picture.draw(before, thing);
    return Scaling.told(picture.trimmed(), picture.fit.scale(), tell);
  }

  /** Without the margin that nothing stands in. */
  private Block trimmed() {
    Box2 box = new Box2(MARGIN, MARGIN, width - MARGIN, height - MARGIN);
    for (Mark mark : marks) {
      box =
          switch (mark) {
            case Mark.Stroke s -> box.union(Box2.around(s.points()).grown(0.4));
            case Mark.Patch p when p.part() == Labels.NO_PART ->
                p.edges().stream()
                    .map(e -> Box2.around(e.points()))
                    .reduce(p.rings().getFirst().box(), Box2::union)
                    .grown(0.4)
                    .union(box);
            case Mark.Text t ->
                box.union(
                    new Box2(
                        t.at().x() - t.back(),
                        t.at().y(),
                        t.at().x() - t.back() + t.width(),
                        t.at().y() + Labels.HIGH));
            default -> box;
          };
    }
    Motion2 shift = Motion2.shift(new Vec2(-box.minX(), -box.minY()));
    return new Block(box.width(), box.height(), marks.stream().map(m -> m.moved(shift)).toList());
  }

  private void draw(Viewpoint before, Optional<Extra> thing) {
    Optional<Scene.Move> first = scene.moves().stream().findFirst();
    for (Mark mark : fit.of(patches)) {
      Mark.Patch patch = (Mark.Patch) mark.moved(Motion2.shift(new Vec2(MARGIN, MARGIN)));
      marks.add(first.map(m -> marked(patch, m)).orElse(patch));
    }
    turned(before);
    first.ifPresent(this::move);
    scene.moves().stream().skip(1).forEach(m -> number(m, false));
    if (scene.action().orElse(null) instanceof Action.Pinched(List<Integer> gussets, boolean _)) {
      pinch(gussets);
    }
    thing.ifPresent(this::fitted);
  }

  private Vec2 at(Vec3 place) {
    return fit.at(from.seen(place)).plus(new Vec2(MARGIN, MARGIN));
  }

  /** What moves, with its glue and a stronger outline; the side it meets stronger, too. */
  private Mark.Patch marked(Mark.Patch patch, Scene.Move move) {
    List<Mark.Stroke> edges = new ArrayList<>(patch.edges());
    Ink ink = patch.ink();
    if (patch.part() == scene.local(move.panel())) {
      edges.replaceAll(e -> new Mark.Stroke(e.points(), e.closed(), LineKind.CUT));
      if (move.face() != Faces.Face.NONE) {
        boolean isSeen = Views.isGlueSeen(scene, move, from);
        ink = isSeen ? FillKind.GLUE.ink() : ink;
        LineKind kind = isSeen ? LineKind.GLUE : LineKind.GLUE_INSIDE;
        for (Mark line : Areas.hatch(patch.rings(), isSeen ? HATCH : 2 * HATCH, kind)) {
          edges.add((Mark.Stroke) line);
        }
      }
    }
    return new Mark.Patch(patch.rings(), ink, edges, patch.part());
  }

  private void move(Scene.Move move) {
    if (scene.share(move.panel(), from) < HIDDEN) {
      marks.add(
          Labels.over(List.of(new Mark.Stroke(outline(move.panel()), true, LineKind.GLUE_INSIDE))));
    }
    arrow(WayArrow.bow(middleOf(move.panel()), at(move.goal()), middle));
    number(move, true);
  }

  private List<Vec2> outline(int panel) {
    return net.panels().get(scene.local(panel)).outline().corners().stream()
        .map(c -> at(scene.at(panel, c)))
        .toList();
  }

  private Vec2 middleOf(int panel) {
    return at(scene.middle(panel));
  }

  private void arrow(List<Vec2> points) {
    marks.add(WayArrow.of(points));
    WayArrow.places(points).forEach(labels::take);
  }

  /** Of the first both numbers, of the others that on what moves where it shows. */
  private void number(Scene.Move move, boolean isFirst) {
    String number = String.valueOf(numbers.of(move.bond()));
    if (isFirst || scene.share(move.panel(), from) > HIDDEN) {
      Polygon2 shown = Polygon2.ofEitherSense(outline(move.panel()));
      labels.ringed(
          number, shown, Planar.inmost(shown, List.of(), 0.2), middle, isFirst ? FARTHEST : NEAR);
    }
    if (isFirst && move.host().isPresent() && scene.local(move.host().get()) >= 0) {
      labels.plain(number, onHost(move, move.host().get()));
    }
  }

  /** By the side that is met, or in the middle. */
  private Vec2 onHost(Scene.Move move, int host) {
    Panel panel = net.panels().get(scene.local(host));
    List<Polygon2> holes = panel.openings().stream().map(Opening::outline).toList();
    Vec2 inmost = Planar.inmost(panel.outline(), holes, 0.5);
    Vec2 inner = at(scene.at(host, inmost));
    if (move.side().isEmpty()) {
      return inner;
    }
    EdgeRef side = move.side().get();
    Segment2 flat = panel.outline().side(side.edge());
    Vec2 edge = at(scene.at(host, flat.middle()));
    double away = edge.distance(inner);
    return away < IN ? inner : edge.toward(inner, IN / away);
  }

  /** From outside onto the gussets that show most. */
  private void pinch(List<Integer> gussets) {
    gussets.stream()
        .filter(p -> scene.share(p, from) > HIDDEN)
        .sorted(Comparator.comparingDouble(p -> -scene.share(p, from)))
        .limit(GUSSETS)
        .map(this::middleOf)
        .forEach(
            goal -> {
              Vec2 out = goal.minus(middle);
              Vec2 back = new Vec2(out.x(), out.y() / 2);
              Vec2 way = back.length() < 1 ? new Vec2(0, -1) : back.unit();
              arrow(List.of(goal.plus(way.times(WayArrow.SHORT)), goal));
            });
  }

  private void fitted(Extra thing) {
    Things things = new Things(scene, this::at, fit.scale());
    switch (thing) {
      case Extra.Note _ -> {}
      case Extra.Ribbon ribbon -> marks.addAll(things.ribbon(ribbon, height - MARGIN / 2));
      case Extra.Light light -> goesIn(things, light.across(), light.height());
      case Extra.Filling filling -> {
        double across = filling.hasSize() ? filling.across() : Things.USUAL;
        goesIn(things, across, across);
      }
    }
  }

  private void goesIn(Things things, double across, double tall) {
    marks.add(things.round(across, tall, width / 3, height / 3));
    arrow(things.way());
  }

  /** An arrow at the left where the piece is turned since the scene before. */
  private void turned(Viewpoint before) {
    Vec2 at = new Vec2(MARGIN - TURNING / 2, height / 2);
    if (from.isOver() != before.isOver()) {
      marks.addAll(TurnArrow.over(at, TURNING - 4, 4));
    } else if (from.isTurnedFrom(before)) {
      marks.addAll(TurnArrow.round(at, TURNING - 3, 4));
    }
  }
}
