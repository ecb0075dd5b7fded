package facetwright.draw.picture;

import facetwright.draw.FillKind;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.papers.cutting.CutPlace;
import facetwright.papers.cutting.Part;
import facetwright.papers.cutting.SheetPlan;
import facetwright.papers.layers.LayerPlan;
import java.util.ArrayList;
import java.util.List;

/** A sheet of paper with its cuts, each with its number, and the names of what they give. */
public final class CutPicture {
  private static final double SIZE = Lettering.pt(Lettering.SMALLEST_PT);
  private static final double HIGH = SIZE * Lettering.CAP_HEIGHT;

  /** Places of a number along its line, the best first. */
  private static final double[] ALONG = {0.5, 0.25, 0.75, 0.12, 0.88, 0.37, 0.63, 0.04, 0.96};

  private final LayerPlan plan;
  private final double scale;
  private final Telling tell;
  private final List<Mark> marks = new ArrayList<>();
  private final List<Box2> taken = new ArrayList<>();

  private CutPicture(LayerPlan plan, double scale, Telling tell) {
    this.tell = tell;
    this.plan = plan;
    this.scale = scale;
  }

  /** At most so wide and high, in mm. */
  public static Block of(
      SheetPlan sheet, LayerPlan plan, double width, double height, Telling tell) {
    double scale = Math.min(width / sheet.paper().width(), height / sheet.paper().height());
    CutPicture picture = new CutPicture(plan, scale, tell);
    picture.part(sheet.whole(), Vec2.ZERO);
    List<CutPlace> cuts = CutPlace.of(sheet, plan.plan().wanted());
    double wide = scale * sheet.paper().width();
    double high = scale * sheet.paper().height();
    picture.marks.add(Stroke.around(Polygon2.rectangle(0, 0, wide, high), LineKind.CUT));
    cuts.forEach(picture::number);
    return new Block(wide, high, picture.marks);
  }

  private void part(Part part, Vec2 at) {
    Polygon2 box =
        Polygon2.rectangle(
            at.x(),
            at.y(),
            Math.max(0.01, scale * part.width()),
            Math.max(0.01, scale * part.height()));
    switch (part) {
      case Part.Waste _ -> marks.add(new Fill(List.of(box), FillKind.WASTE));
      case Part.Piece piece -> {
        marks.add(new Fill(List.of(box), FillKind.CARD));
        String name = plan.plan().wanted().get(piece.kind()).name();
        plan.strips().stream()
            .filter(s -> s.name().equals(name))
            .findFirst()
            .ifPresent(s -> zigzag(s.strip().points(), piece, at));
        label(plan.called(name, tell), box.box());
      }
      case Part.Cut cut -> {
        part(cut.first(), at);
        part(cut.second(), at.plus(CutPlace.second(cut).times(scale)));
      }
    }
  }

  private void zigzag(List<Vec2> points, Part.Piece piece, Vec2 at) {
    for (int i = 1; i < points.size(); i++) {
      marks.add(
          Stroke.line(
              on(points.get(i - 1), piece, at), on(points.get(i), piece, at), LineKind.LAYER));
    }
  }

  /** A quarter turn to the left carries the strip's lower left corner to the lower right. */
  private Vec2 on(Vec2 p, Part.Piece piece, Vec2 at) {
    Vec2 lying = piece.turned() ? new Vec2(piece.width() - p.y(), p.x()) : p;
    return at.plus(lying.times(scale));
  }

  /** The name in the middle, upright where it fits only so; none where it fits neither way. */
  private void label(String name, Box2 box) {
    double width = Lettering.width(name, Weight.REGULAR, SIZE) + 1;
    boolean level = width < box.width() && HIGH + 1 < box.height();
    if (!level && !(width < box.height() && HIGH + 1 < box.width())) {
      return;
    }
    Vec2 middle = box.centre();
    Vec2 at = level ? middle.minus(new Vec2(0, HIGH / 2)) : middle.plus(new Vec2(HIGH / 2, 0));
    marks.add(new Text(at, SIZE, level ? 0 : 90, Anchor.MIDDLE, Weight.REGULAR, Ink.BLACK, name));
    taken.add(around(middle, level ? width : HIGH, level ? HIGH : width));
  }

  /**
   * On the line, which gives way to it; where nothing else is written, if there is such a place.
   */
  private void number(CutPlace cut) {
    String text = String.valueOf(cut.number());
    double wide = Lettering.width(text, Weight.BOLD, SIZE) + 1.2;
    double high = HIGH + 1.2;
    Vec2 from = cut.line().from().times(scale);
    Vec2 to = cut.line().to().times(scale);
    Vec2 best = from.toward(to, ALONG[0]);
    for (double part : ALONG) {
      Vec2 place = from.toward(to, part);
      Box2 box = around(place, wide, high);
      if (taken.stream().noneMatch(box::meets)) {
        best = place;
        break;
      }
    }
    taken.add(around(best, wide, high));
    double half = (Math.abs(to.x() - from.x()) > Math.abs(to.y() - from.y()) ? wide : high) / 2;
    Vec2 along = to.minus(from).unit().times(half);
    stretch(from, best.minus(along), along);
    stretch(best.plus(along), to, along);
    marks.add(
        new Text(
            best.minus(new Vec2(0, HIGH / 2)),
            SIZE,
            0,
            Anchor.MIDDLE,
            Weight.BOLD,
            Ink.BLACK,
            text));
  }

  /** A stretch of a line; nothing where it would run backwards. */
  private void stretch(Vec2 from, Vec2 to, Vec2 along) {
    if (to.minus(from).dot(along) > 0) {
      marks.add(Stroke.line(from, to, LineKind.CUT));
    }
  }

  private static Box2 around(Vec2 middle, double wide, double high) {
    return new Box2(
        middle.x() - wide / 2, middle.y() - high / 2, middle.x() + wide / 2, middle.y() + high / 2);
  }
}
