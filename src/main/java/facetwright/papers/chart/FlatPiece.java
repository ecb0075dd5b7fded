package facetwright.papers.chart;

import facetwright.geom.AngleTolerance;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.Score;
import facetwright.net.Slit;
import java.util.ArrayList;
import java.util.List;

/**
 * One piece of a net on its blank.
 *
 * @param name of its first panel
 * @param toBlank from where the net lies to the blank
 * @param width of the blank, in mm
 * @param height of the blank, in mm
 * @param panels outlines of its panels
 * @param pressed pressed scores, joined
 * @param perforated perforated scores, joined
 * @param cuts sides that are cut, joined, with those on the edge of the blank and those of windows
 * @param windows what is cut out within the card, slots among it
 * @param slots those of them that tongues go through
 * @param lines the single cuts that tongues go through, as they are among the cuts
 */
record FlatPiece(
    String name,
    Motion2 toBlank,
    double width,
    double height,
    List<Polygon2> panels,
    List<Segment2> pressed,
    List<Segment2> perforated,
    List<Segment2> cuts,
    List<Polygon2> windows,
    List<Polygon2> slots,
    List<Segment2> lines,
    List<Opening.Hole> holes) {
  private static final double FINE = LengthTolerance.FINE.mm();

  /** Directions nearer than this are one. */
  private static final AngleTolerance SAME_WAY = new AngleTolerance(1e-7);

  /**
   * The piece turned so that most of its scores run along the blank's sides, the long one level.
   */
  static FlatPiece of(Net net, int piece) {
    int[] pieceOf = net.pieceOfPanel();
    List<Segment2> scores =
        net.scores().stream()
            .filter(s -> pieceOf[s.a().panel()] == piece)
            .map(s -> net.segment(s.a()))
            .toList();
    Motion2 turn = Motion2.turn(-direction(scores));
    Box2 box = box(net, pieceOf, piece, turn);
    if (box.height() > box.width() + FINE) {
      turn = turn.then(Motion2.turn(Math.PI / 2));
      box = box(net, pieceOf, piece, turn);
    }
    return of(
        net, pieceOf, piece, turn.then(Motion2.shift(new Vec2(-box.minX(), -box.minY()))), box);
  }

  /** The same, its blank turned end for end. */
  FlatPiece turned(Net net, int piece) {
    Motion2 motion =
        toBlank.then(Motion2.turn(Math.PI)).then(Motion2.shift(new Vec2(width, height)));
    return of(net, net.pieceOfPanel(), piece, motion, new Box2(0, 0, width, height));
  }

  private static Box2 box(Net net, int[] pieceOf, int piece, Motion2 turn) {
    List<Vec2> corners = new ArrayList<>();
    for (int p = 0; p < pieceOf.length; p++) {
      if (pieceOf[p] == piece) {
        corners.addAll(turn.apply(net.panels().get(p).outline()).corners());
      }
    }
    return Box2.around(corners);
  }

  /** The direction, within a quarter turn, along or across which the most length of scores runs. */
  private static double direction(List<Segment2> scores) {
    double best = 0;
    double most = 0;
    for (Segment2 candidate : scores) {
      double way = way(candidate);
      double length =
          scores.stream()
              .filter(
                  s ->
                      Math.abs(Math.IEEEremainder(way(s) - way, Math.PI / 2)) <= SAME_WAY.radians())
              .mapToDouble(Segment2::length)
              .sum();
      boolean level = Math.abs(way) <= SAME_WAY.radians();
      if (length > most * (1 + RoundOff.PART) || (level && length >= most * (1 - RoundOff.PART))) {
        most = Math.max(most, length);
        best = level ? 0 : way;
      }
    }
    return best;
  }

  private static double way(Segment2 s) {
    Vec2 d = s.to().minus(s.from());
    return Math.IEEEremainder(Math.atan2(d.y(), d.x()), Math.PI / 2);
  }

  private static FlatPiece of(Net net, int[] pieceOf, int piece, Motion2 m, Box2 box) {
    List<Segment2> pressed = new ArrayList<>();
    List<Segment2> perforated = new ArrayList<>();
    for (Score s : net.scores()) {
      if (pieceOf[s.a().panel()] == piece) {
        (s.perforated() ? perforated : pressed).add(moved(net, s.a(), m));
      }
    }
    List<Segment2> cuts = new ArrayList<>();
    net.boundary().stream()
        .filter(e -> pieceOf[e.panel()] == piece)
        .forEach(e -> cuts.add(moved(net, e, m)));
    for (Slit s : net.slits()) {
      for (EdgeRef e : List.of(s.a(), s.b())) {
        if (pieceOf[e.panel()] == piece) {
          cuts.add(moved(net, e, m));
        }
      }
    }
    List<Polygon2> panels = new ArrayList<>();
    List<Polygon2> windows = new ArrayList<>();
    List<Polygon2> slots = new ArrayList<>();
    List<Segment2> lines = new ArrayList<>();
    List<Opening.Hole> holes = new ArrayList<>();
    String name = "";
    for (int p = 0; p < pieceOf.length; p++) {
      if (pieceOf[p] != piece) {
        continue;
      }
      Panel panel = net.panels().get(p);
      name = panels.isEmpty() ? panel.name() : name;
      panels.add(m.apply(panel.outline()));
      for (Opening o : panel.openings()) {
        switch (o) {
          case Opening.Hole h -> holes.add(h.moved(m));
          case Opening.Slot s when s.isLine() -> lines.add(s.moved(m).line());
          case Opening.Slot s -> slots.add(m.apply(s.outline()));
          case Opening.Window w -> windows.add(m.apply(w.outline()));
        }
      }
    }
    windows.addAll(slots);
    for (Polygon2 w : windows) {
      for (int i = 0; i < w.size(); i++) {
        cuts.add(w.side(i));
      }
    }
    cuts.addAll(lines);
    return new FlatPiece(
        name,
        m,
        box.width(),
        box.height(),
        panels,
        Lines.joined(pressed),
        Lines.joined(perforated),
        Lines.joined(cuts),
        windows,
        slots,
        lines,
        holes);
  }

  private static Segment2 moved(Net net, EdgeRef side, Motion2 m) {
    Segment2 s = net.segment(side);
    return new Segment2(m.apply(s.from()), m.apply(s.to()));
  }

  /** The edges of the blank. */
  List<Segment2> edges() {
    Polygon2 blank = Polygon2.rectangle(0, 0, width, height);
    return List.of(blank.side(0), blank.side(1), blank.side(2), blank.side(3));
  }

  List<Segment2> scores(boolean isPerforated) {
    return isPerforated ? perforated : pressed;
  }

  static boolean isUpright(Segment2 s) {
    return Math.abs(s.from().x() - s.to().x()) <= FINE;
  }

  static boolean isLevel(Segment2 s) {
    return Math.abs(s.from().y() - s.to().y()) <= FINE;
  }

  /** The part of the length of all scores that runs along the blank's sides, 0 to 1. */
  double parallelPart() {
    double all = 0;
    double parallel = 0;
    for (List<Segment2> scores : List.of(pressed, perforated)) {
      for (Segment2 s : scores) {
        all += s.length();
        parallel += isUpright(s) || isLevel(s) ? s.length() : 0;
      }
    }
    return all == 0 ? 1 : parallel / all;
  }
}
