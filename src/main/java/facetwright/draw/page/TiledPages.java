package facetwright.draw.page;

import facetwright.draw.Clip;
import facetwright.draw.Drawing;
import facetwright.draw.FillKind;
import facetwright.draw.GlueMarks;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.LineKinds;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.CheckRuler;
import facetwright.draw.picture.Legend;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.SheetSize;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The template at true size over the pages of a printer: a page with the key and a sketch of how
 * the pages lie, then the pages. Each has crop marks at its window, registration marks in the
 * strips that it shares with its neighbours, its name, and a check ruler in both units. Pages with
 * nothing on them are left out.
 */
public final class TiledPages {
  private static final Set<LineKind> SKETCHED =
      EnumSet.of(LineKind.CUT, LineKind.MOUNTAIN, LineKind.VALLEY, LineKind.PERFORATION);

  private static final String ELSEWHERE =
      "So many pages are not part of this handout. They are the paper “Template over pages”"
          + " (template-tiles.pdf); a print shop prints the template on one large sheet"
          + " (template.pdf).";

  private static final double CROP = 4;
  private static final double CROP_GAP = 1;
  private static final double REGISTER = 2.2;
  private static final double ROOM = 2;
  private static final double SMALL = Lettering.pt(Lettering.SMALLEST_PT);
  private static final double LARGE = Lettering.pt(20);
  private static final double SKETCH = 14;

  private final String title;
  private final Laid laid;
  private final int sheet;
  private final Drawing net;
  private final Tiling tiling;
  private final List<Tiling.Tile> used = new ArrayList<>();

  private TiledPages(String title, Laid laid, int sheet, SheetSize page, GlueMarks gluing) {
    this.title = Lettering.printable(title).strip();
    this.laid = laid;
    this.sheet = sheet;
    SheetPart part = SheetPart.of(laid, sheet);
    this.net = NetDrawing.of(part, NetDrawing.TEMPLATE, gluing);
    this.tiling = Tiling.of(page, part.panelBox().grown(ROOM));
    for (Tiling.Tile tile : tiling.tiles()) {
      if (!shown(tile).isEmpty()) {
        used.add(tile);
      }
    }
  }

  /** Whether a laid net needs more than one such page a sheet. */
  public static boolean isLarger(Laid laid, SheetSize page) {
    double slack = 0.5;
    return laid.cards().stream()
        .anyMatch(
            c ->
                Math.min(c.width(), c.height()) > Math.min(page.width(), page.height()) + slack
                    || Math.max(c.width(), c.height())
                        > Math.max(page.width(), page.height()) + slack);
  }

  /**
   * @param title of the design
   * @param page what the printer takes
   * @param gluing what is known of how it is glued
   */
  public static List<Drawing> of(String title, Laid laid, SheetSize page, GlueMarks gluing) {
    List<Drawing> pages = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      TiledPages tiled = new TiledPages(title, laid, i, page, gluing);
      if (!tiled.used.isEmpty()) {
        pages.add(tiled.key(""));
        tiled.used.forEach(t -> pages.add(tiled.page(t)));
      }
    }
    return List.copyOf(pages);
  }

  /** Of each sheet only the page with the key, for who prints the others from elsewhere. */
  public static List<Drawing> keys(String title, Laid laid, SheetSize page, GlueMarks gluing) {
    List<Drawing> pages = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      TiledPages tiled = new TiledPages(title, laid, i, page, gluing);
      if (!tiled.used.isEmpty()) {
        pages.add(tiled.key(ELSEWHERE));
      }
    }
    return List.copyOf(pages);
  }

  private List<Mark> shown(Tiling.Tile tile) {
    return new Clip(tiling.window(tile)).of(net.marks());
  }

  private String name(Tiling.Tile tile) {
    return (laid.sheets() == 1 ? "" : (sheet + 1) + "·") + tile.name();
  }

  private Drawing page(Tiling.Tile tile) {
    Vec2 shift = tiling.shift(tile);
    Box2 window = tiling.window(tile);
    List<Mark> marks = new ArrayList<>();
    shown(tile).forEach(m -> marks.add(m.moved(Motion2.shift(shift))));
    crops(marks, window, shift);
    for (Vec2 place : tiling.registers()) {
      if (window.grown(-REGISTER).holds(point(place), LengthTolerance.FINE)) {
        register(marks, place.plus(shift));
      }
    }
    foot(marks, tile);
    return new Drawing(tiling.page().width(), tiling.page().height(), marks);
  }

  private static Box2 point(Vec2 p) {
    return new Box2(p.x(), p.y(), p.x(), p.y());
  }

  private static void crops(List<Mark> marks, Box2 window, Vec2 shift) {
    for (double x : new double[] {window.minX(), window.maxX()}) {
      for (double y : new double[] {window.minY(), window.maxY()}) {
        Vec2 corner = new Vec2(x, y).plus(shift);
        double outX = x == window.minX() ? -1 : 1;
        double outY = y == window.minY() ? -1 : 1;
        crop(marks, corner, new Vec2(outX, 0));
        crop(marks, corner, new Vec2(0, outY));
      }
    }
  }

  private static void crop(List<Mark> marks, Vec2 corner, Vec2 out) {
    marks.add(
        Stroke.line(
            corner.plus(out.times(CROP_GAP)),
            corner.plus(out.times(CROP_GAP + CROP)),
            LineKind.GUIDE));
  }

  private static void register(List<Mark> marks, Vec2 place) {
    marks.add(new Mark.Circle(place, REGISTER * 0.6, LineKind.GUIDE));
    for (Vec2 arm : List.of(new Vec2(REGISTER, 0), new Vec2(0, REGISTER))) {
      marks.add(Stroke.line(place.minus(arm), place.plus(arm), LineKind.GUIDE));
    }
  }

  private void foot(List<Mark> marks, Tiling.Tile tile) {
    double y = Tiling.MARGIN;
    double left = Tiling.MARGIN + CROP + 2;
    Block ruler = CheckRuler.both(LineKind.GUIDE);
    marks.addAll(ruler.at(new Box2(left, y, left + ruler.width(), y + ruler.height()), false));
    double right = tiling.page().width() - Tiling.MARGIN - CROP - 2;
    double wide = SKETCH * 1.2;
    sketch(marks, new Box2(right - wide, y - 1, right, y - 1 + SKETCH), tile);
    double x = left + ruler.width() + 5;
    marks.add(text(new Vec2(x, y + 6.5), LARGE, Weight.BOLD, name(tile)));
    double room = right - wide - 3 - x;
    String brief = Lettering.wrap(title, Weight.REGULAR, SMALL, room).getFirst();
    marks.add(text(new Vec2(x, y + 2), SMALL, Weight.REGULAR, brief));
  }

  /** Small boxes for the pages, this one filled. */
  private void sketch(List<Mark> marks, Box2 place, Tiling.Tile here) {
    double step = Math.min(place.width() / tiling.columns(), place.height() / tiling.rows());
    for (Tiling.Tile tile : used) {
      double x = place.maxX() - (tiling.columns() - tile.column()) * step;
      double y = place.minY() + (tiling.rows() - 1 - tile.row()) * step;
      Polygon2 box = Polygon2.rectangle(x, y, step, step);
      if (tile.equals(here)) {
        marks.add(new Mark.Fill(List.of(box), FillKind.LAYER));
      }
      marks.add(Stroke.around(box, LineKind.GUIDE));
    }
  }

  private static Text text(Vec2 at, double size, Weight weight, String content) {
    return new Text(at, size, 0, Anchor.START, weight, Ink.BLACK, content);
  }

  /**
   * @param more a sentence more on where the pages are, or none
   */
  private Drawing key(String more) {
    double width = tiling.page().width();
    double height = tiling.page().height();
    double edge = 15;
    List<Mark> marks = new ArrayList<>();
    Block head = Block.text(title, words(more), width - 2 * edge);
    double y = height - edge - head.height();
    marks.addAll(head.at(new Box2(edge, y, edge + head.width(), y + head.height()), false));
    Block ruler = CheckRuler.both(LineKind.GUIDE);
    marks.addAll(
        ruler.at(new Box2(edge, edge, edge + ruler.width(), edge + ruler.height()), false));
    Block legend = Legend.of(LineKinds.used(net.marks()), width > 230 ? 3 : 2);
    double foot = edge + ruler.height() + 6;
    marks.addAll(
        legend.at(new Box2(edge, foot, edge + legend.width(), foot + legend.height()), false));
    double low = foot + legend.height() + 8;
    overview(marks, new Box2(edge, low, width - edge, y - 8));
    return new Drawing(width, height, marks);
  }

  private List<String> words(String more) {
    String sheets =
        laid.sheets() == 1 ? "" : "Sheet " + (sheet + 1) + " of " + laid.sheets() + ". ";
    List<String> words = new ArrayList<>();
    words.add(
        sheets
            + "The template at true size over "
            + used.size()
            + (used.size() == 1 ? " page of " : " pages of ")
            + tiling.page().name()
            + (used.size() == 1 ? "" : ", which lie together as below")
            + ". Outside faces up. Print at 100 %, without fitting to the page, and lay a ruler on"
            + " the check ruler of each page.");
    if (used.size() > 1) {
      words.add(
          "Trim the left and the top edge of a page along its crop marks where it has a neighbour"
              + " there. Lay it on the neighbour so that the round marks cover each other (hold"
              + " both against the light), and tape or glue the shared strip of "
              + (int) Tiling.OVERLAP
              + " mm. Join the pages of a row first, then the rows.");
    }
    if (!more.isEmpty()) {
      words.add(more);
    }
    words.add(TemplatePages.CAUTION);
    return words;
  }

  /** The net made small, with the pages over it. */
  private void overview(List<Mark> marks, Box2 place) {
    Box2 all = used.stream().map(tiling::window).reduce(Box2::union).orElseThrow();
    double scale =
        Math.min(1, Math.min(place.width() / all.width(), place.height() / all.height()));
    Vec2 shift = place.centre().minus(all.centre().times(scale));
    for (Mark mark : net.marks()) {
      Pace.step();
      if (mark instanceof Stroke s && SKETCHED.contains(s.kind())) {
        List<Vec2> points = s.points().stream().map(p -> p.times(scale).plus(shift)).toList();
        // Small, dashes would not read: a score is a thin line.
        marks.add(
            new Stroke(
                points, s.closed(), s.kind() == LineKind.CUT ? LineKind.CUT : LineKind.TICK));
      }
    }
    double pitch = (tiling.width() - Tiling.OVERLAP) * scale;
    double widest =
        used.stream()
            .mapToDouble(t -> Lettering.width(name(t), Weight.BOLD, LARGE))
            .max()
            .orElse(pitch);
    double size = LARGE * Math.min(1, 0.8 * pitch / widest);
    for (Tiling.Tile tile : used) {
      Box2 w = tiling.window(tile);
      Vec2 low = new Vec2(w.minX(), w.minY()).times(scale).plus(shift);
      marks.add(
          Stroke.around(
              Polygon2.rectangle(low.x(), low.y(), w.width() * scale, w.height() * scale),
              LineKind.SHEET));
      marks.add(
          new Text(
              new Vec2(w.minX(), w.maxY())
                  .times(scale)
                  .plus(shift)
                  .plus(new Vec2(size * 0.3, -size)),
              size,
              0,
              Anchor.START,
              Weight.BOLD,
              Ink.GREY,
              name(tile)));
    }
  }
}
