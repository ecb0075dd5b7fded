package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.FreeSpace;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.LineKinds;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.draw.SheetPart;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.CheckRuler;
import facetwright.draw.picture.Legend;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.net.sheet.Laid;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.Set;
import java.util.function.Function;

/**
 * What is told of the pages of a template over several: how they lie, how they are joined, and what
 * the lines mean; on a page of its own, or where a page has room for it.
 *
 * @param tell the reader
 * @param template how the net is shown
 * @param used the pages there are
 * @param name what a page is called
 */
record TileKey(
    String title,
    Telling tell,
    Laid laid,
    int sheet,
    Template template,
    Drawing net,
    Tiling tiling,
    List<Tiling.Tile> used,
    Function<Tiling.Tile, String> name) {
  private static final Set<LineKind> SKETCHED =
      EnumSet.of(LineKind.CUT, LineKind.MOUNTAIN, LineKind.VALLEY, LineKind.PERFORATION);

  private static final double ROOM = 2;
  private static final double LARGE = Lettering.pt(20);

  /** So many pages need no page with a key. */
  private static final int FEW = 4;

  private static final List<Double> WIDTHS = List.of(120.0, 90.0, 65.0, 170.0, 50.0);

  /**
   * The key where a page has room for it; few pages need no larger sketch than that at their foot.
   *
   * @param drawn the pages, the first first
   */
  Map<Tiling.Tile, List<Mark>> onTile(SequencedMap<Tiling.Tile, Drawing> drawn) {
    if (used.size() > FEW) {
      return Map.of();
    }
    SheetPart part = SheetPart.of(laid, sheet);
    for (Map.Entry<Tiling.Tile, Drawing> each : drawn.entrySet()) {
      Tiling.Tile tile = each.getKey();
      Drawing page = each.getValue();
      FreeSpace free = new FreeSpace(page.width(), page.height());
      free.take(new Box2(0, 0, page.width(), Tiling.MARGIN + Tiling.FOOT), 0);
      Motion2 there = Motion2.shift(tiling.shift(tile));
      part.panels()
          .forEach(
              p ->
                  free.take(
                      there.apply(template.onPage(part, laid.net().panels().get(p).outline())),
                      ROOM));
      page.marks().forEach(m -> FreePlaces.take(free, m, ROOM));
      List<Mark> marks = new ArrayList<>();
      List<Block> words =
          WIDTHS.stream().map(w -> Block.text(title, words("foot", ""), w)).toList();
      if (FreePlaces.place(free, marks, words, FreeSpace.Corner.TOP_LEFT)
          && FreePlaces.place(
              free,
              marks,
              Legend.inColumns(LineKinds.used(net.marks()), tell),
              FreeSpace.Corner.TOP_LEFT)) {
        return Map.of(tile, marks);
      }
    }
    return Map.of();
  }

  /**
   * @param more a sentence more on where the pages are, or none
   */
  Drawing page(String more) {
    double width = tiling.page().width();
    double height = tiling.page().height();
    double edge = 15;
    List<Mark> marks = new ArrayList<>();
    Block head = Block.text(title, words("below", more), width - 2 * edge);
    double y = height - edge - head.height();
    marks.addAll(head.at(new Box2(edge, y, edge + head.width(), y + head.height()), false));
    Block ruler = CheckRuler.both(LineKind.GUIDE);
    marks.addAll(
        ruler.at(new Box2(edge, edge, edge + ruler.width(), edge + ruler.height()), false));
    Block legend =
        Legend.within(LineKinds.used(net.marks()), width > 230 ? 3 : 2, width - 2 * edge, tell);
    double foot = edge + ruler.height() + 6;
    marks.addAll(
        legend.at(new Box2(edge, foot, edge + legend.width(), foot + legend.height()), false));
    double low = foot + legend.height() + 8;
    overview(marks, new Box2(edge, low, width - edge, y - 8));
    return new Drawing(width, height, marks);
  }

  /**
   * @param where the sketch is: "below", or at the "foot" of the page
   */
  private List<String> words(String where, String more) {
    List<String> words = new ArrayList<>();
    words.add(
        tell.say(
            "template.tiled",
            "sheets",
            laid.sheets(),
            "sheet",
            sheet + 1,
            "pages",
            used.size(),
            "format",
            tiling.page().name(),
            "where",
            where,
            "faces",
            template.faces(tell)));
    if (used.size() > 1) {
      words.add(tell.say("template.join", "strip", (int) Tiling.OVERLAP));
    }
    if (!more.isEmpty()) {
      words.add(more);
    }
    words.add(tell.say("template.caution"));
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
                points, s.closed(), s.kind() == LineKind.CUT ? LineKind.CUT : LineKind.DONE));
      }
    }
    double pitch = (tiling.width() - Tiling.OVERLAP) * scale;
    double widest =
        used.stream()
            .mapToDouble(t -> Lettering.width(name.apply(t), Weight.BOLD, LARGE))
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
              name.apply(tile)));
    }
  }
}
