package facetwright.draw.picture;

import facetwright.draw.FillKind;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Circle;
import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.fold.making.Bond;
import facetwright.fold.making.Gluing;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.sheet.Laid;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The flat net with the numbers of what is glued: ringed on a tab or on what lies under, without a
 * ring where it goes.
 */
final class GluePicture {
  private static final double SIZE = Lettering.pt(Lettering.SMALLEST_PT);
  private static final double HIGH = SIZE * Lettering.CAP_HEIGHT;
  private static final double RING = 2.3;
  private static final double[] ALONG = {0.5, 0.35, 0.65, 0.2, 0.8};
  private static final Set<NetDrawing.Content> CONTENT =
      EnumSet.of(NetDrawing.Content.CARD, NetDrawing.Content.GLUE);

  private final Net net;
  private final Set<Integer> panels;
  private final Scaling.Fit fit;
  private final Vec2 shift;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Box2> taken = new ArrayList<>();

  private GluePicture(Net net, SheetPart part, Scaling.Fit fit) {
    this.net = net;
    this.panels = Set.copyOf(part.panels());
    this.fit = fit;
    this.shift = part.shift();
  }

  /** At most so wide and high, in mm. */
  static Block of(Laid laid, int sheet, List<Gluing.Stage> turns, double width, double height) {
    SheetPart part = SheetPart.of(laid, sheet);
    Scaling.Fit fit = Scaling.Fit.of(part.panelBox(), width, height);
    GluePicture picture = new GluePicture(laid.net(), part, fit);
    // Glued areas are tinted only: a hatch would run through the numbers.
    fit.of(NetDrawing.of(part, CONTENT).marks()).stream()
        .filter(m -> !(m instanceof Mark.Stroke s && s.kind() == LineKind.GLUE))
        .forEach(picture.marks::add);
    List<Bond> bonds = Gluing.numbered(turns);
    for (int i = 0; i < bonds.size(); i++) {
      picture.under(bonds.get(i), String.valueOf(i + 1));
    }
    for (int i = 0; i < bonds.size(); i++) {
      picture.over(bonds.get(i), String.valueOf(i + 1));
    }
    return Scaling.told(new Block(fit.width(), fit.height(), picture.marks), fit.scale());
  }

  private Vec2 at(Vec2 place) {
    return fit.at(place.plus(shift));
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
        case Join.Lap l -> within(l.over(), number);
        case Join.Seam s -> beside(s.b(), number);
      }
    }
  }

  private void ringed(int panel, String number) {
    if (!panels.contains(panel)) {
      return;
    }
    Vec2 middle = clear(panel);
    marks.add(new Fill(List.of(Polygon2.regular(middle, 24, RING, 0)), FillKind.CARD));
    marks.add(new Circle(middle, RING, LineKind.GUIDE));
    taken.add(around(middle, 2 * RING, 2 * RING));
    write(middle, number, Weight.BOLD);
  }

  /** The middle of a panel; where a hole is there, beside it. */
  private Vec2 clear(int panel) {
    Panel at = net.panels().get(panel);
    Vec2 middle = at(at.outline().centroid());
    for (Opening opening : at.openings()) {
      Box2 flat = opening.outline().box();
      Vec2 centre = at(flat.centre());
      double away = RING + fit.scale() * flat.width() / 2 + 0.8;
      if (middle.distance(centre) < away) {
        Vec2 side = at(at.outline().side(0).middle());
        Vec2 toward =
            centre.distance(side) < LengthTolerance.FINE.mm()
                ? new Vec2(1, 0)
                : side.minus(centre).unit();
        middle = centre.plus(toward.times(away));
      }
    }
    return middle;
  }

  /** Inside the panel, by its side. */
  private void beside(EdgeRef side, String number) {
    if (!panels.contains(side.panel())) {
      return;
    }
    Segment2 flat = net.segment(side);
    Vec2 from = at(flat.from());
    Vec2 to = at(flat.to());
    Vec2 in = flat.direction().left().times(HIGH / 2 + 1.6);
    List<Vec2> places = new ArrayList<>();
    for (double part : ALONG) {
      places.add(from.toward(to, part).plus(in));
    }
    free(places, number);
  }

  private void within(int panel, String number) {
    if (!panels.contains(panel)) {
      return;
    }
    Vec2 middle = at(net.panels().get(panel).outline().centroid());
    List<Vec2> places = new ArrayList<>(List.of(middle));
    for (double d : new double[] {4, 8, 12}) {
      for (Vec2 way : List.of(new Vec2(d, 0), new Vec2(-d, 0), new Vec2(0, d), new Vec2(0, -d))) {
        places.add(middle.plus(way));
      }
    }
    free(places, number);
  }

  /** At the first place where nothing is written yet, or else at the first. */
  private void free(List<Vec2> places, String number) {
    double wide = Lettering.width(number, Weight.REGULAR, SIZE) + 0.4;
    Vec2 best =
        places.stream()
            .filter(p -> taken.stream().noneMatch(around(p, wide, HIGH + 0.4)::meets))
            .findFirst()
            .orElse(places.getFirst());
    taken.add(around(best, wide, HIGH + 0.4));
    write(best, number, Weight.REGULAR);
  }

  private void write(Vec2 middle, String number, Weight weight) {
    marks.add(
        new Text(
            middle.minus(new Vec2(0, HIGH / 2)),
            SIZE,
            0,
            Anchor.MIDDLE,
            weight,
            Ink.BLACK,
            number));
  }

  private static Box2 around(Vec2 middle, double wide, double high) {
    return new Box2(
        middle.x() - wide / 2, middle.y() - high / 2, middle.x() + wide / 2, middle.y() + high / 2);
  }
}
