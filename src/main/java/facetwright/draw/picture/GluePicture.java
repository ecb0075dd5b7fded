package facetwright.draw.picture;

import facetwright.draw.FillKind;
import facetwright.draw.GlueMarks;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Circle;
import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.fold.making.Bond;
import facetwright.fold.making.Gluing;
import facetwright.fold.making.Numbers;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Panel;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The flat net with the numbers of what is glued: ringed on a tab or on what lies under, without a
 * ring where it goes.
 */
final class GluePicture {
  private static final double SIZE = Lettering.pt(Lettering.SMALLEST_PT);
  private static final double HIGH = SIZE * Lettering.CAP_HEIGHT;
  private static final double RING = 2.3;
  private static final double[] ALONG = {0.5, 0.35, 0.65, 0.2, 0.8};

  /** Between a ring and the edge of its tab, in mm. */
  private static final double CLEAR = 0.2;

  /** Round the net, for numbers that stand beside it, in mm. */
  private static final double MARGIN = 5;

  /** No number stands farther from its tab, in mm. */
  private static final double FAR = 60;

  private static final int AROUND = 16;

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
  static Block of(
      SheetPart part, FoldedForm form, List<Gluing.Stage> turns, double width, double height) {
    double room = 2 * MARGIN;
    Scaling.Fit fit = Scaling.Fit.of(part.panelBox(), width - room, height - room);
    Net net = part.laid().net();
    GluePicture picture = new GluePicture(net, part, fit);
    // Glued areas are tinted only: a hatch would run through the numbers.
    fit.of(NetDrawing.of(part, CONTENT, GlueMarks.of(net, form, turns)).marks()).stream()
        .filter(m -> !(m instanceof Mark.Stroke s && s.kind() == LineKind.GLUE))
        .forEach(picture.marks::add);
    Numbers numbers = Numbers.of(net, turns);
    // What has room on its tab first, so that what stands beside its tab goes round it.
    List<Bond> later = new ArrayList<>();
    for (Bond bond : numbers.bonds()) {
      if (!picture.under(bond, String.valueOf(numbers.of(bond)), true)) {
        later.add(bond);
      }
    }
    numbers.bonds().forEach(b -> picture.over(b, String.valueOf(numbers.of(b))));
    later.forEach(b -> picture.under(b, String.valueOf(numbers.of(b)), false));
    return Scaling.told(picture.framed(), fit.scale());
  }

  /** All that is drawn, its lower left corner the origin. */
  private Block framed() {
    Box2 box = taken.stream().reduce(new Box2(0, 0, fit.width(), fit.height()), Box2::union);
    Motion2 shift = Motion2.shift(new Vec2(-box.minX(), -box.minY()));
    return new Block(box.width(), box.height(), marks.stream().map(m -> m.moved(shift)).toList());
  }

  private Vec2 at(Vec2 place) {
    return fit.at(place.plus(shift));
  }

  /**
   * Writes a number where the glue goes.
   *
   * @param within whether it is written only if it has room there, else beside it
   * @return whether nothing is left to be written
   */
  private boolean under(Bond bond, String number, boolean within) {
    return switch (bond) {
      case Bond.Closing(int tab) -> ringed(tab, number, within);
      case Bond.Joined(int join) ->
          switch (net.joins().get(join)) {
            case Join.Lap l -> ringed(l.under(), number, within);
            case Join.Seam s when s.tab() == Join.Seam.NO_TAB -> {
              beside(s.a(), number);
              yield true;
            }
            case Join.Seam s -> ringed(s.tab(), number, within);
          };
    };
  }

  private void over(Bond bond, String number) {
    if (bond instanceof Bond.Joined(int join)) {
      switch (net.joins().get(join)) {
        case Join.Lap l -> within(l.over(), number);
        case Join.Seam s -> beside(s.b(), number);
      }
    }
  }

  private boolean ringed(int panel, String number, boolean within) {
    if (!panels.contains(panel)) {
      return true;
    }
    Panel at = net.panels().get(panel);
    Polygon2 outline = new Polygon2(at.outline().corners().stream().map(this::at).toList());
    List<Polygon2> holes =
        at.openings().stream()
            .map(o -> new Polygon2(o.outline().corners().stream().map(this::at).toList()))
            .toList();
    Vec2 inmost = Planar.inmost(outline, holes, 0.1);
    Vec2 centre = outline.centroid();
    for (Vec2 place : List.of(centre, inmost)) {
      if (isClear(place, outline, holes) && isFree(around(place, 2 * RING, 2 * RING))) {
        ring(place, number);
        return true;
      }
    }
    if (within) {
      return false;
    }
    Vec2 place = near(inmost, 2 * RING, 2 * RING);
    Vec2 toward = inmost.minus(place);
    if (toward.length() > RING) {
      marks.add(Stroke.line(place.plus(toward.unit().times(RING)), inmost, LineKind.GUIDE));
    }
    ring(place, number);
    return true;
  }

  private static boolean isClear(Vec2 place, Polygon2 outline, List<Polygon2> holes) {
    return outline.contains(place)
        && Stream.concat(Stream.of(outline), holes.stream())
            .flatMap(o -> IntStream.range(0, o.size()).mapToObj(o::side))
            .allMatch(s -> s.distance(place) > RING + CLEAR)
        && holes.stream().noneMatch(h -> h.contains(place));
  }

  private void ring(Vec2 middle, String number) {
    marks.add(new Fill(List.of(Polygon2.regular(middle, 24, RING, 0)), FillKind.CARD));
    marks.add(new Circle(middle, RING, LineKind.GUIDE));
    taken.add(around(middle, 2 * RING, 2 * RING));
    write(middle, number, Weight.BOLD);
  }

  /** The nearest place where nothing is written yet. */
  private Vec2 near(Vec2 middle, double wide, double high) {
    for (double away = RING + CLEAR; away < FAR; away += RING / 2) {
      for (int i = 0; i < AROUND; i++) {
        Vec2 place = middle.plus(Vec2.polar(away, 2 * Math.PI * i / AROUND));
        if (isFree(around(place, wide, high))) {
          return place;
        }
      }
    }
    return middle;
  }

  private boolean isFree(Box2 box) {
    return taken.stream().noneMatch(box::meets);
  }

  /** Inside the panel, by its side. */
  private void beside(EdgeRef side, String number) {
    if (!panels.contains(side.panel())) {
      return;
    }
    Segment2 flat = net.segment(side);
    Vec2 from = at(flat.from());
    Vec2 to = at(flat.to());
    List<Vec2> places = new ArrayList<>();
    for (double row : new double[] {1, 2.4, 3.8}) {
      Vec2 in = flat.direction().left().times(row * (HIGH / 2 + 1.6));
      for (double part : ALONG) {
        places.add(from.toward(to, part).plus(in));
      }
    }
    free(places, number);
  }

  private void within(int panel, String number) {
    if (!panels.contains(panel)) {
      return;
    }
    free(List.of(at(net.panels().get(panel).outline().centroid())), number);
  }

  /** At the first place where nothing is written yet, or else near the first. */
  private void free(List<Vec2> places, String number) {
    double wide = Lettering.width(number, Weight.REGULAR, SIZE) + 0.4;
    Vec2 best =
        places.stream()
            .filter(p -> isFree(around(p, wide, HIGH + 0.4)))
            .findFirst()
            .orElseGet(() -> near(places.getFirst(), wide, HIGH + 0.4));
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
