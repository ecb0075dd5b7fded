package facetwright.draw;

import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Circle;
import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.fold.making.Bond;
import facetwright.fold.making.Numbers;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The numbers of gluing on a template at true size: ringed on what is glued, without a ring where
 * it goes.
 */
final class GlueNumbers {
  private static final double SIZE = Lettering.pt(Lettering.SMALLEST_PT);
  private static final double HIGH = SIZE * Lettering.CAP_HEIGHT;
  private static final double RING = 2.3;
  private static final double WITHIN = 0.1;
  private static final double FROM_SIDE = 3;
  private static final double NEAREST = 5;
  private static final double FARTHEST = 24;
  private static final int WAYS = 16;
  private static final double[] ALONG = {0.5, 0.35, 0.65, 0.2, 0.8};

  private final Net net;
  private final Set<Integer> panels;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Box2> taken = new ArrayList<>();
  private final Box2 bounds;

  private GlueNumbers(Net net, Set<Integer> panels, List<? extends Mark> written) {
    this.net = net;
    this.panels = panels;
    this.bounds =
        panels.stream()
            .map(p -> net.panels().get(p).outline().box())
            .reduce(Box2::union)
            .orElse(new Box2(0, 0, 0, 0));
    for (Mark mark : written) {
      if (mark instanceof Text t) {
        double half = t.width() / 2;
        taken.add(around(t.at(), 2 * half + 2 * HIGH, 2 * half + 2 * HIGH));
      }
    }
  }

  /**
   * @param panels those that are shown
   * @param written the names of panels, which they keep clear of where they can
   */
  static List<Mark> of(
      Net net, Set<Integer> panels, Numbers numbers, List<? extends Mark> written) {
    GlueNumbers made = new GlueNumbers(net, panels, written);
    for (Bond bond : numbers.bonds()) {
      made.under(bond, String.valueOf(numbers.of(bond)));
    }
    for (Bond bond : numbers.bonds()) {
      made.over(bond, String.valueOf(numbers.of(bond)));
    }
    return List.copyOf(made.marks);
  }

  private void under(Bond bond, String number) {
    switch (bond) {
      case Bond.Closing(int tab) -> ringed(tab, number);
      case Bond.Joined(int join) -> {
        switch (net.joins().get(join)) {
          case Join.Lap l -> ringed(l.under(), number);
          case Join.Seam s when s.tab() == Join.Seam.NO_TAB -> beside(s.a(), number);
          case Join.Seam s -> ringed(s.tab(), number);
        }
      }
    }
  }

  private void over(Bond bond, String number) {
    if (bond instanceof Bond.Joined(int join)) {
      switch (net.joins().get(join)) {
        case Join.Lap l -> {
          Polygon2 outline = net.panels().get(l.over()).outline();
          IntStream.range(0, outline.size())
              .boxed()
              .max(Comparator.comparingDouble(i -> outline.side(i).length()))
              .ifPresent(i -> beside(new EdgeRef(l.over(), i), number));
        }
        case Join.Seam s -> beside(s.b(), number);
      }
    }
  }

  private void ringed(int panel, String number) {
    if (!panels.contains(panel)) {
      return;
    }
    Panel at = net.panels().get(panel);
    List<Polygon2> holes = at.openings().stream().map(Opening::outline).toList();
    Vec2 middle = Planar.inmost(at.outline(), holes, WITHIN);
    Vec2 place = place(middle, List.of(middle), 2 * RING, 2 * RING);
    if (place == null) {
      return;
    }
    lead(place, middle, RING);
    marks.add(new Fill(List.of(Polygon2.regular(place, 24, RING, 0)), FillKind.CARD));
    marks.add(new Circle(place, RING, LineKind.GLUE));
    taken.add(around(place, 2 * RING, 2 * RING));
    write(place, number, Weight.BOLD);
  }

  /**
   * The first of these places that is free, or else one as near as there is beside the net, from
   * which a line leads; null where there is none.
   */
  private Vec2 place(Vec2 middle, List<Vec2> places, double wide, double high) {
    for (Vec2 p : places) {
      if (isFree(around(p, wide, high))) {
        return p;
      }
    }
    for (double away = NEAREST; away <= FARTHEST; away += RING) {
      for (int i = 0; i < WAYS; i++) {
        Vec2 p = middle.plus(Vec2.polar(away, 2 * Math.PI * i / WAYS));
        Box2 box = around(p, wide, high);
        if (bounds.holds(box, LengthTolerance.FINE) && isFree(box) && isBesideNet(p)) {
          return p;
        }
      }
    }
    return null;
  }

  private boolean isBesideNet(Vec2 place) {
    return panels.stream()
        .map(p -> net.panels().get(p).outline())
        .noneMatch(
            o ->
                IntStream.range(0, o.size()).anyMatch(i -> o.side(i).distance(place) < RING)
                    || o.contains(place));
  }

  /** From what stands apart to what it is of. */
  private void lead(Vec2 from, Vec2 to, double clear) {
    double far = from.distance(to);
    if (far > clear) {
      marks.add(Stroke.line(from.toward(to, clear / far), to, LineKind.GLUE));
    }
  }

  private void beside(EdgeRef side, String number) {
    if (!panels.contains(side.panel())) {
      return;
    }
    Segment2 flat = net.segment(side);
    Vec2 in = flat.direction().left().times(FROM_SIDE);
    double wide = Lettering.width(number, Weight.REGULAR, SIZE);
    List<Vec2> places = new ArrayList<>();
    for (double part : ALONG) {
      places.add(flat.from().toward(flat.to(), part).plus(in));
    }
    // Where a net is too small for its numbers they stand beside it, or in the picture of the
    // gluing alone.
    Vec2 place = place(flat.middle(), places, wide, HIGH);
    if (place != null) {
      taken.add(around(place, wide, HIGH));
      if (!places.contains(place)) {
        lead(place, flat.middle(), HIGH);
      }
      write(place, number, Weight.REGULAR);
    }
  }

  private boolean isFree(Box2 place) {
    return taken.stream().noneMatch(place::meets);
  }

  private void write(Vec2 middle, String number, Weight weight) {
    Vec2 foot = middle.minus(new Vec2(0, HIGH / 2));
    marks.add(new Text(foot, SIZE, 0, Anchor.MIDDLE, weight, Ink.BLACK, number));
  }

  private static Box2 around(Vec2 middle, double wide, double high) {
    return new Box2(
        middle.x() - wide / 2, middle.y() - high / 2, middle.x() + wide / 2, middle.y() + high / 2);
  }
}
