package facetwright.draw;

import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Fill;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Unit;
import facetwright.geom.Vec2;
import facetwright.net.SheetSize;
import facetwright.net.SheetSizes;
import facetwright.papers.cutting.Part;
import facetwright.papers.cutting.SheetPlan;
import facetwright.papers.cutting.Way;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How layers are cut: for each sheet its picture, not to scale, and its numbered cuts. */
public final class CutPages {
  private static final double EDGE = 15;
  private static final double GAP = 6;

  private final SheetSize page;
  private final WorksText words;
  private final String title;

  private CutPages(String title, Unit unit) {
    this.page = SheetSizes.named(unit == Unit.INCH ? "Letter" : "A4");
    this.words = new WorksText(unit);
    this.title = Lettering.printable(title).strip();
  }

  /**
   * @param title of the design
   * @param unit lengths are told in it; the pages are A4 or Letter by it
   * @return a page for each sheet that is cut in a way of its own; none where there are no layers
   */
  public static List<Drawing> of(String title, Unit unit, Works works) {
    CutPages pages = new CutPages(title, unit);
    List<Drawing> all = new ArrayList<>();
    for (LayerPlan plan : works.plans()) {
      for (SheetPlan sheet : plan.plan().sheets()) {
        all.addAll(pages.sheet(works, plan, sheet));
      }
    }
    return List.copyOf(all);
  }

  private List<Drawing> sheet(Works works, LayerPlan plan, SheetPlan sheet) {
    List<String> head = new ArrayList<>();
    head.add(words.summary(plan));
    head.addAll(words.groups(plan));
    words.lost(works).ifPresent(head::add);
    head.add(WorksText.CAUTION);
    head.add(words.sheet(sheet) + " the picture is not to scale; what is shaded is waste.");
    double width = page.width() - 2 * EDGE;
    List<Mark> marks = new ArrayList<>();
    Block top = Block.text(title + ": cutting the layers", head, width);
    double y = page.height() - EDGE - top.height();
    marks.addAll(top.at(place(y, top), false));
    double room = Math.min(y - EDGE - 2 * GAP, 0.45 * page.height());
    double scale = Math.min(width / sheet.paper().width(), room / sheet.paper().height());
    y -= GAP + scale * sheet.paper().height();
    picture(marks, sheet.whole(), new Vec2(EDGE, y), scale, plan);
    List<Drawing> pages = new ArrayList<>();
    y -= GAP;
    for (String line : words.steps(sheet, plan)) {
      Block step = Block.text("", List.of(line), width);
      if (y - step.height() < EDGE) {
        pages.add(new Drawing(page.width(), page.height(), marks));
        marks = new ArrayList<>();
        y = page.height() - EDGE;
      }
      y -= step.height() + 1;
      marks.addAll(step.at(place(y, step), false));
    }
    pages.add(new Drawing(page.width(), page.height(), marks));
    return pages;
  }

  private static Box2 place(double y, Block block) {
    return new Box2(EDGE, y, EDGE + block.width(), y + block.height());
  }

  private static void picture(List<Mark> marks, Part part, Vec2 at, double scale, LayerPlan plan) {
    Polygon2 box =
        Polygon2.rectangle(
            at.x(),
            at.y(),
            Math.max(0.01, scale * part.width()),
            Math.max(0.01, scale * part.height()));
    switch (part) {
      case Part.Waste _ -> marks.add(new Fill(List.of(box), FillKind.GLUE));
      case Part.Piece piece -> {
        marks.add(new Fill(List.of(box), FillKind.CARD));
        label(plan.plan().wanted().get(piece.kind()).name(), box.box()).ifPresent(marks::add);
        plan.strips().stream()
            .filter(s -> s.name().equals(plan.plan().wanted().get(piece.kind()).name()))
            .findFirst()
            .ifPresent(s -> zigzag(marks, s.strip().points(), piece, at, scale));
      }
      case Part.Cut cut -> {
        double beyond =
            cut.way() == Way.LEFT
                ? cut.width() - cut.second().width()
                : cut.height() - cut.second().height();
        Vec2 second =
            cut.way() == Way.LEFT ? new Vec2(scale * beyond, 0) : new Vec2(0, scale * beyond);
        picture(marks, cut.first(), at, scale, plan);
        picture(marks, cut.second(), at.plus(second), scale, plan);
      }
    }
    marks.add(Stroke.around(box, LineKind.CUT));
  }

  private static void zigzag(
      List<Mark> marks, List<Vec2> points, Part.Piece piece, Vec2 at, double scale) {
    for (int i = 1; i < points.size(); i++) {
      marks.add(
          Stroke.line(
              on(points.get(i - 1), piece, at, scale),
              on(points.get(i), piece, at, scale),
              LineKind.LAYER));
    }
  }

  /** A quarter turn to the left carries the strip's lower left corner to the lower right. */
  private static Vec2 on(Vec2 p, Part.Piece piece, Vec2 at, double scale) {
    Vec2 lying = piece.turned() ? new Vec2(piece.width() - p.y(), p.x()) : p;
    return at.plus(lying.times(scale));
  }

  /** The name in the middle, upright where it fits only so; none where it fits neither way. */
  private static Optional<Mark> label(String name, Box2 box) {
    double size = Lettering.pt(Lettering.SMALLEST_PT);
    double width = Lettering.width(name, Weight.REGULAR, size) + 1;
    double height = size * Lettering.CAP_HEIGHT;
    boolean level = width < box.width() && height + 1 < box.height();
    if (!level && !(width < box.height() && height + 1 < box.width())) {
      return Optional.empty();
    }
    Vec2 middle = box.centre();
    Vec2 at = level ? middle.minus(new Vec2(0, height / 2)) : middle.plus(new Vec2(height / 2, 0));
    return Optional.of(
        new Text(at, size, level ? 0 : 90, Anchor.MIDDLE, Weight.REGULAR, Ink.BLACK, name));
  }
}
