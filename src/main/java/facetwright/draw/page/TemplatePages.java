package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.FreeSpace;
import facetwright.draw.FreeSpace.Corner;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.LineKinds;
import facetwright.draw.Mark;
import facetwright.draw.SheetPart;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.CheckRuler;
import facetwright.draw.picture.Legend;
import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.language.Telling;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * The true-size pages of a template: one page a sheet, as large as the sheet. Title, legend,
 * caution and check ruler stand where no panel lies. What finds no room on any sheet stands on one
 * more page at the end; the check ruler then lies inside a panel, drawn lightly.
 */
public final class TemplatePages {
  private static final double CLEARANCE = 1;

  private final String title;
  private final Telling tell;
  private final Laid laid;
  private final Template template;
  private final List<Drawing> nets;
  private final List<LineKind> kinds;
  private final List<String> missing = new ArrayList<>();

  private TemplatePages(String title, Telling tell, Laid laid, Template template) {
    this.template = template;
    this.title = Lettering.title(title);
    this.tell = tell;
    this.laid = laid;
    this.nets =
        IntStream.range(0, laid.sheets())
            .mapToObj(i -> template.net(SheetPart.of(laid, i)))
            .toList();
    this.kinds = LineKinds.used(nets.stream().flatMap(n -> n.marks().stream()).toList());
  }

  /**
   * @param title of the design
   * @param tell the reader; the sheet's size is given in the reader's unit
   * @param template how the net is shown
   * @return a page for each sheet, and one more where a sheet has no room for its words
   */
  public static List<Drawing> of(String title, Telling tell, Laid laid, Template template) {
    TemplatePages pages = new TemplatePages(title, tell, laid, template);
    List<Drawing> all = new ArrayList<>();
    for (int i = 0; i < laid.sheets(); i++) {
      all.add(pages.sheet(i));
    }
    if (!pages.missing.isEmpty()) {
      all.add(pages.key());
    }
    return List.copyOf(all);
  }

  private Drawing sheet(int index) {
    SheetPart part = SheetPart.of(laid, index);
    Drawing page = nets.get(index);
    FreeSpace free = new FreeSpace(page.width(), page.height());
    Net net = laid.net();
    for (int p : part.panels()) {
      free.take(template.onPage(part, net.panels().get(p).outline()), CLEARANCE);
    }
    if (part.over()) {
      Box2 sheet = laid.sheet(index);
      free.line(
          template.onPage(
              part, Polygon2.rectangle(sheet.minX(), sheet.minY(), sheet.width(), sheet.height())),
          CLEARANCE);
    }
    net.ticks().stream()
        .filter(t -> part.has(t.mark().middle()))
        .forEach(
            t ->
                free.take(
                    template.onPage(part, List.of(t.mark().from(), t.mark().to())), CLEARANCE));
    List<Mark> words = new ArrayList<>();
    List<Block> rulers = rulers(free, words);
    if (!rulers.isEmpty()) {
      missing.add(tell.say("template.full", "sheet", index + 1));
      rulers.forEach(r -> rulerOnPanel(page, part, words, r));
    }
    List<String> left = new ArrayList<>();
    if (!FreePlaces.place(free, words, heading(index, part.over()), Corner.TOP_LEFT)) {
      left.add("title");
    }
    if (!FreePlaces.place(free, words, Legend.inColumns(kinds, tell), Corner.BOTTOM_RIGHT)) {
      left.add("legend");
    }
    if (!FreePlaces.place(free, words, cautions(), Corner.BOTTOM_LEFT)) {
      left.add("caution");
    }
    if (!left.isEmpty()) {
      missing.add(
          tell.say(
              "template.no-room",
              "sheet",
              index + 1,
              "parts",
              tell.listed(left.stream().map(p -> tell.say("template.part", "part", p)).toList())));
    }
    return page.with(words);
  }

  /** Puts both scales together, or else apart; gives back, drawn lightly, what found no room. */
  private static List<Block> rulers(FreeSpace free, List<Mark> words) {
    LineKind dark = LineKind.GUIDE;
    LineKind light = LineKind.TICK;
    if (FreePlaces.place(free, words, List.of(CheckRuler.both(dark)), Corner.BOTTOM_LEFT)) {
      return List.of();
    }
    boolean mm = FreePlaces.place(free, words, List.of(CheckRuler.mm(dark)), Corner.BOTTOM_LEFT);
    boolean inches =
        FreePlaces.place(free, words, List.of(CheckRuler.inches(dark)), Corner.BOTTOM_LEFT);
    if (mm && inches) {
      return List.of();
    }
    return List.of(
        mm ? CheckRuler.inches(light) : inches ? CheckRuler.mm(light) : CheckRuler.both(light));
  }

  /** The last resort: where it crosses no line, and failing that in the middle of the page. */
  private void rulerOnPanel(Drawing page, SheetPart part, List<Mark> words, Block ruler) {
    FreeSpace between = new FreeSpace(page.width(), page.height());
    for (int p : part.panels()) {
      between.line(template.onPage(part, laid.net().panels().get(p).outline()), 0.5);
      laid.net()
          .panels()
          .get(p)
          .openings()
          .forEach(o -> between.take(template.onPage(part, o.outline()), CLEARANCE));
    }
    page.marks().forEach(m -> FreePlaces.take(between, m, CLEARANCE));
    if (!FreePlaces.place(between, words, List.of(ruler), Corner.BOTTOM_LEFT)) {
      boolean upright = page.height() > page.width();
      double width = upright ? ruler.height() : ruler.width();
      double height = upright ? ruler.width() : ruler.height();
      double x = (page.width() - width) / 2;
      double y = (page.height() - height) / 2;
      words.addAll(ruler.at(new Box2(x, y, x + width, y + height), upright));
    }
  }

  private List<Block> heading(int index, boolean over) {
    List<String> lines = new ArrayList<>();
    lines.add(template.faces(tell));
    lines.add(
        tell.say(
            "template.true-size",
            "sheets",
            laid.sheets(),
            "sheet",
            index + 1,
            "over",
            String.valueOf(over),
            "size",
            size(index)));
    lines.add(CheckRuler.print(tell));
    return widths(title, lines);
  }

  /** Common practice, no source. */
  private List<Block> cautions() {
    return widths("", List.of(tell.say("template.caution")));
  }

  private static List<Block> widths(String heading, List<String> lines) {
    return List.of(
        Block.text(heading, lines, 90),
        Block.text(heading, lines, 60),
        Block.text(heading, lines, 130),
        Block.text(heading, lines, 190),
        Block.text(heading, lines, 260),
        Block.text(heading, lines, 40));
  }

  /** A sheet's name and size, and where there are several cards which of them it is. */
  private String size(int index) {
    Stock card = laid.cards().get(index);
    double width = card.width();
    double height = card.height();
    String name = Lettering.printable(card.name()).strip();
    return (name.isEmpty() ? "" : name + ", ")
        + number(width)
        + " × "
        + number(height)
        + " "
        + tell.unit().symbol()
        + (laid.kinds().size() == 1 ? "" : ", " + tell.figures(Lettering.printable(card.text())));
  }

  private String number(double mm) {
    Ruler.Reading reading = Ruler.atAGlance(tell.unit()).read(new Length(mm));
    if (reading.exact(LengthTolerance.UNSEEN)) {
      return tell.figures(reading.number());
    }
    Unit unit = tell.unit();
    return tell.figures(
        String.format(Locale.ROOT, "%." + (unit.places() - 1) + "f", new Length(mm).in(unit)));
  }

  private Drawing key() {
    Drawing page = new Drawing(laid.stock().width(), laid.stock().height(), List.of());
    FreeSpace free = new FreeSpace(page.width(), page.height());
    List<Mark> words = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    lines.add(tell.say("template.key", "faces", template.faces(tell), "size", size(0)));
    lines.addAll(missing);
    lines.add(CheckRuler.print(tell));
    FreePlaces.place(free, words, widths(title, lines), Corner.TOP_LEFT);
    FreePlaces.place(free, words, Legend.inColumns(kinds, tell), Corner.TOP_LEFT);
    FreePlaces.place(free, words, cautions(), Corner.TOP_LEFT);
    rulers(free, words);
    return page.with(words);
  }
}
