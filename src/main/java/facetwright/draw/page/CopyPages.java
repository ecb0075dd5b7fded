package facetwright.draw.page;

import facetwright.check.finding.Mm;
import facetwright.draw.Drawing;
import facetwright.draw.FillKind;
import facetwright.draw.GlueMarks;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.Scaling;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.copies.CopyPlan;
import facetwright.papers.copies.Parting;
import facetwright.papers.copies.PartingText;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * As many copies of a net as one sheet gives: a page with their picture and where each lies, then
 * the sheet at true size.
 */
public final class CopyPages {
  private static final double EDGE = ComparingPages.EDGE;
  private static final double GAP = ComparingPages.GAP;
  private static final double MOST_HIGH = 0.6;
  private static final int MOST_TOLD = 36;

  private CopyPages() {}

  /**
   * Draws the pages.
   *
   * @param title of the design
   * @param laid the net that was planned
   * @param gluing what is known of how it is glued
   */
  public static List<Drawing> of(
      String title, Order order, Laid laid, CopyPlan plan, GlueMarks gluing) {
    GlueMarks marks = gluing.of(plan.count(), laid.net().panels().size());
    if (plan.count() == 0) {
      return List.of(page(title, order, laid, plan, marks));
    }
    List<Drawing> pages = new ArrayList<>(List.of(page(title, order, laid, plan, marks)));
    pages.addAll(
        TemplatePages.of(title, order.telling(), plan.laid(laid.net()), Template.outside(marks)));
    return List.copyOf(pages);
  }

  private static Drawing page(
      String title, Order order, Laid laid, CopyPlan plan, GlueMarks gluing) {
    SheetSize page = order.page();
    double width = page.width() - 2 * EDGE;
    List<Mark> marks = new ArrayList<>();
    Parting parting = plan.parting(laid.net(), order.ruler());
    Block head =
        Block.text(
            order
                .telling()
                .say(
                    "cuts.copies",
                    "design",
                    Lettering.printable(title).strip(),
                    "count",
                    plan.count(),
                    "most",
                    String.valueOf(plan.isMost())),
            words(order, laid, plan, parting),
            width);
    double y = page.height() - EDGE - head.height();
    marks.addAll(head.at(place(y, head), false));
    if (plan.count() == 0) {
      return new Drawing(page.width(), page.height(), marks);
    }
    double scale =
        Math.min(width / plan.stock().width(), MOST_HIGH * page.height() / plan.stock().height());
    y -= GAP + scale * plan.stock().height();
    Vec2 corner = new Vec2((page.width() - scale * plan.stock().width()) / 2, y);
    picture(marks, laid.net(), plan, parting, gluing, corner, scale);
    y -= GAP;
    Block told = Block.text("", List.of(places(order, laid.net(), plan)), width);
    if (told.height() <= y - EDGE) {
      marks.addAll(told.at(place(y - told.height(), told), false));
    }
    return new Drawing(page.width(), page.height(), marks);
  }

  private static Box2 place(double y, Block block) {
    return new Box2(EDGE, y, EDGE + block.width(), y + block.height());
  }

  private static List<String> words(Order order, Laid laid, CopyPlan plan, Parting parting) {
    Telling tell = order.telling();
    List<String> words = new ArrayList<>();
    if (plan.count() == 0) {
      words.add(
          tell.say(
              "cuts.no-copies",
              "fits",
              String.valueOf(laid.fits()),
              "sheets",
              laid.sheets(),
              "stock",
              plan.stock().name()));
      return words;
    }
    double gap = plan.room().gap();
    double edge = plan.toEdge(laid.net());
    boolean isNearer = plan.count() > 1 && !plan.room().equals(laid.kept());
    words.add(
        tell.say(
            "cuts.sheet",
            "stock",
            plan.stock().name(),
            "width",
            length(plan.stock().width(), tell),
            "height",
            length(plan.stock().height(), tell),
            "count",
            plan.count(),
            "most",
            String.valueOf(plan.isMost()),
            "between",
            plan.count() == 1 ? "none" : gap > 0 ? "some" : "nothing",
            "gap",
            length(gap, tell),
            "reach",
            String.valueOf(edge < LengthTolerance.FINE.mm()),
            "edge",
            length(edge, tell),
            // Why there is less room than there should be.
            "nearer",
            String.valueOf(isNearer),
            "kept",
            length(laid.kept().gap(), tell),
            "margin",
            length(laid.kept().margin(), tell)));
    words.add(tell.say("cuts.apart", "trimmer", String.valueOf(!parting.steps().isEmpty())));
    words.addAll(new PartingText(parting, order).lines());
    return words;
  }

  private static void picture(
      List<Mark> marks,
      Net net,
      CopyPlan plan,
      Parting parting,
      GlueMarks gluing,
      Vec2 corner,
      double scale) {
    SheetPart part = SheetPart.of(plan.laid(net), 0);
    Drawing drawn = NetDrawing.of(part, EnumSet.of(NetDrawing.Content.GLUE), gluing);
    Motion2 there = Motion2.shift(corner);
    Polygon2 sheet = Polygon2.rectangle(0, 0, plan.stock().width(), plan.stock().height());
    List<Polygon2> rings = new ArrayList<>(List.of(sheet));
    rings.addAll(plan.outlines(net));
    List<Mark> all = new ArrayList<>(List.of(new Mark.Fill(rings, FillKind.WASTE)));
    all.addAll(drawn.marks());
    all.add(Stroke.around(sheet, LineKind.SHEET));
    parting.lines().forEach(l -> all.add(Stroke.line(l.from(), l.to(), LineKind.NOW)));
    new Scaling(scale).of(all).forEach(m -> marks.add(m.moved(there)));
    double size = Lettering.pt(13);
    for (int i = 0; i < plan.count(); i++) {
      for (Vec2 middle : middles(net)) {
        Vec2 at = corner.plus(plan.copies().get(i).apply(middle).times(scale));
        marks.add(
            new Text(
                at.minus(new Vec2(0, size * Lettering.CAP_HEIGHT / 2)),
                size,
                0,
                Anchor.MIDDLE,
                Weight.BOLD,
                Ink.BLACK,
                String.valueOf(i + 1)));
      }
    }
  }

  /** The middle of each piece's largest panel, which card surely covers. */
  private static List<Vec2> middles(Net net) {
    int[] piece = net.pieceOfPanel();
    return IntStream.range(0, net.pieces())
        .mapToObj(
            of ->
                IntStream.range(0, piece.length)
                    .filter(p -> piece[p] == of)
                    .mapToObj(p -> net.panels().get(p).outline())
                    .max(Comparator.comparingDouble(Polygon2::area))
                    .orElseThrow()
                    .centroid())
        .toList();
  }

  /** Where each one is laid, by the ruler's marks. */
  private static String places(Order order, Net net, CopyPlan plan) {
    Telling tell = order.telling();
    List<String> each = new ArrayList<>();
    double off = 0;
    boolean isTurned = false;
    List<Box2> boxes = plan.boxes(net);
    for (int i = 0; i < Math.min(MOST_TOLD, plan.count()); i++) {
      Box2 box = boxes.get(i);
      Ruler.Reading across = order.ruler().read(length(box.minX()));
      Ruler.Reading up = order.ruler().read(length(box.minY()));
      off = Math.max(off, Math.max(Math.abs(across.errorMm()), Math.abs(up.errorMm())));
      long degrees = degrees(plan.copies().get(i));
      isTurned |= degrees != 0;
      each.add(
          tell.say(
              "cuts.place",
              "number",
              String.valueOf(i + 1),
              "across",
              tell.figures(across.text()),
              "up",
              tell.figures(up.text()),
              "turned",
              String.valueOf(degrees != 0),
              "degrees",
              String.valueOf(degrees)));
    }
    if (plan.count() > MOST_TOLD) {
      each.add("…");
    }
    return tell.say(
        "cuts.places",
        "exact",
        String.valueOf(off < Mm.LEAST),
        "off",
        tell.length(off),
        "turned",
        String.valueOf(isTurned),
        "places",
        tell.apart(each));
  }

  /** How far it is turned to the left, in whole degrees, 0 to 359. */
  private static long degrees(Motion2 motion) {
    double degrees = Math.toDegrees(Math.atan2(motion.sin(), motion.cos()));
    return Math.floorMod(Math.round(degrees), 360L);
  }

  private static String length(double mm, Telling tell) {
    return tell.read(length(mm).mm());
  }

  /** Without a sign where it is nothing but for rounding. */
  private static Length length(double mm) {
    return new Length(Math.abs(mm) < LengthTolerance.FINE.mm() ? 0 : mm);
  }
}
