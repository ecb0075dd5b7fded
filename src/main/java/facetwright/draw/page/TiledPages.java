package facetwright.draw.page;

import facetwright.draw.Clip;
import facetwright.draw.Drawing;
import facetwright.draw.FillKind;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.draw.SheetPart;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.CheckRuler;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.order.Named;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.stream.IntStream;

/**
 * The template at true size over the pages of a printer: a page with the key and a sketch of how
 * the pages lie, then the pages. Each has crop marks at its window, registration marks in the
 * strips that it shares with its neighbours, its name, and a check ruler in both units. Pages with
 * nothing on them are left out.
 */
public final class TiledPages {
  private static final double ROOM = 2;
  private static final double SMALL = Lettering.pt(Lettering.SMALLEST_PT);
  private static final double LARGE = Lettering.pt(20);
  private static final double SKETCH = 14;

  private final String title;
  private final Telling tell;
  private final Laid laid;
  private final int sheet;
  private final Template template;
  private final Drawing net;
  private final Tiling tiling;
  private final List<Tiling.Tile> used = new ArrayList<>();

  private TiledPages(
      String title, Telling tell, Laid laid, int sheet, SheetSize page, Template template) {
    this.tell = tell;
    this.title = Lettering.printable(title).strip();
    this.laid = laid;
    this.sheet = sheet;
    SheetPart part = SheetPart.of(laid, sheet);
    this.template = template;
    this.net = template.net(part);
    this.tiling = Tiling.of(page, template.panelBox(part).grown(ROOM));
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
   * Every sheet over pages, each with a page for the key before them.
   *
   * @param title of the design
   * @param tell the reader
   * @param page what the printer takes
   * @param template how the net is shown
   */
  public static List<Drawing> of(
      String title, Telling tell, Laid laid, SheetSize page, Template template) {
    List<Drawing> pages = new ArrayList<>();
    for (TiledPages tiled : sheets(title, tell, laid, page, template)) {
      pages.add(tiled.key().page(""));
      tiled.used.forEach(t -> pages.add(tiled.page(t)));
    }
    return List.copyOf(pages);
  }

  /**
   * The same on as few pages as go: where every piece finds room on one, whole pieces without a
   * key; and of few pages the key on one that has room for it.
   *
   * @param tell the reader
   */
  public static List<Drawing> few(
      String title, Telling tell, Laid laid, SheetSize page, Template template) {
    Optional<Laid> whole = OnPages.of(laid, page);
    if (whole.isPresent()) {
      return TemplatePages.of(title, tell, whole.get(), template);
    }
    List<Drawing> pages = new ArrayList<>();
    for (TiledPages tiled : sheets(title, tell, laid, page, template)) {
      SequencedMap<Tiling.Tile, Drawing> drawn = new LinkedHashMap<>();
      tiled.used.forEach(t -> drawn.put(t, tiled.page(t)));
      Map<Tiling.Tile, List<Mark>> key = tiled.key().onTile(drawn);
      if (key.isEmpty()) {
        pages.add(tiled.key().page(""));
      }
      drawn.forEach((t, drawing) -> pages.add(drawing.with(key.getOrDefault(t, List.of()))));
    }
    return List.copyOf(pages);
  }

  /** Of each sheet only the page with the key, for who prints the others from elsewhere. */
  public static List<Drawing> keys(
      String title, Telling tell, Laid laid, SheetSize page, Template template) {
    List<Drawing> pages = new ArrayList<>();
    for (TiledPages tiled : sheets(title, tell, laid, page, template)) {
      pages.add(tiled.key().page(elsewhere(new Named(title), tell)));
    }
    return List.copyOf(pages);
  }

  /** The sheets that have anything on them. */
  private static List<TiledPages> sheets(
      String title, Telling tell, Laid laid, SheetSize page, Template template) {
    return IntStream.range(0, laid.sheets())
        .mapToObj(i -> new TiledPages(title, tell, laid, i, page, template))
        .filter(tiled -> !tiled.used.isEmpty())
        .toList();
  }

  private static String elsewhere(Named named, Telling tell) {
    return tell.say(
        "template.elsewhere",
        "tiles",
        named.file(Named.TILES),
        "template",
        named.file(Named.TEMPLATE));
  }

  private TileKey key() {
    return new TileKey(title, tell, laid, sheet, template, net, tiling, used, this::name);
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
    JoinMarks.crops(marks, window, shift);
    for (Vec2 place : tiling.registers()) {
      if (window.grown(-JoinMarks.REGISTER).holds(point(place), LengthTolerance.FINE)) {
        JoinMarks.register(marks, place.plus(shift));
      }
    }
    foot(marks, tile);
    return new Drawing(tiling.page().width(), tiling.page().height(), marks);
  }

  private static Box2 point(Vec2 p) {
    return new Box2(p.x(), p.y(), p.x(), p.y());
  }

  private void foot(List<Mark> marks, Tiling.Tile tile) {
    double y = Tiling.MARGIN;
    double left = Tiling.MARGIN + JoinMarks.CROP + 2;
    Block ruler = CheckRuler.both(LineKind.GUIDE);
    marks.addAll(ruler.at(new Box2(left, y, left + ruler.width(), y + ruler.height()), false));
    double right = tiling.page().width() - Tiling.MARGIN - JoinMarks.CROP - 2;
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
}
