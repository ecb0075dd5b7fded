package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.Drawing.Heading;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.draw.picture.Block;
import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.net.sheet.SheetSize;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;

/**
 * Words and pictures set down one column, from page to page. A heading stays with what follows it,
 * a picture with its words; each page ends with what it is and its number.
 */
final class Flow {
  static final double EDGE = 14;
  private static final double FOOT = 15;
  static final double BODY = Lettering.pt(9);
  static final double HEADING = Lettering.pt(13);
  private static final double TITLE = Lettering.pt(20);
  static final double SMALL = Lettering.pt(Lettering.SMALLEST_PT);
  static final double LINE = 1.38;
  static final double INDENT = 7;
  static final double BESIDE = 6;

  private final SheetSize page;
  private final String foot;
  private final Telling tell;
  private final List<List<Mark>> pages = new ArrayList<>();
  private final List<List<Heading>> headings = new ArrayList<>();
  private double y;
  private double asideFoot;
  private double asideWidth;
  private int asidePage;

  /**
   * @param page what the printer takes
   * @param title of the design
   * @param kind what these pages are, such as "score chart"
   * @param tell the reader
   */
  Flow(SheetSize page, String title, String kind, Telling tell) {
    this.page = page;
    this.tell = tell;
    String brief = Lettering.title(title);
    this.foot = brief.isEmpty() ? kind : brief + " · " + kind;
    turn();
  }

  /** Of the column, in mm. */
  double width() {
    return page.width() - 2 * EDGE;
  }

  /** Of the column on one page, in mm. */
  double height() {
    return page.height() - EDGE - FOOT;
  }

  /** What is left of this page below what stands on it, in mm. */
  double left() {
    return y - FOOT;
  }

  /** The title of the whole, a line of words under it, and a rule. */
  void title(String title, String under) {
    headings.getLast().add(new Heading(Lettering.title(title), y));
    for (String line : Lettering.wrap(Lettering.title(title), Weight.BOLD, TITLE, width())) {
      write(line, 0, Weight.BOLD, TITLE, 1.2);
    }
    if (!under.isBlank()) {
      words(under);
    }
    y -= 1;
    add(Stroke.line(new Vec2(EDGE, y), new Vec2(page.width() - EDGE, y), LineKind.DONE));
    y -= 1.5;
  }

  /**
   * @param next how much of what follows has to stand on the same page, in mm
   */
  void heading(String text, double next) {
    List<String> lines = Lettering.wrap(text, Weight.BOLD, HEADING, column());
    room(4 + lines.size() * HEADING * LINE + next);
    gap(4);
    headings.getLast().add(new Heading(text, y));
    lines.forEach(l -> write(l, 0, Weight.BOLD, HEADING, LINE));
    y -= 0.8;
  }

  /** A heading that a few lines of words follow. */
  void heading(String text) {
    heading(text, 3 * BODY * LINE);
  }

  void words(String text) {
    item("", text, 0);
  }

  /** How much of the page such words take, in mm. */
  double heightOf(String text) {
    return Lettering.broken(text, BODY, width()).size() * BODY * LINE + 0.8;
  }

  /** Words that hang beside what leads them, a number or a dash. */
  void item(String lead, String text) {
    item(lead, text, INDENT);
  }

  private void item(String lead, String text, double indent) {
    List<String> lines = Lettering.broken(text, BODY, column() - indent);
    room(Math.min(lines.size(), 3) * BODY * LINE);
    for (int i = 0; i < lines.size(); i++) {
      // Of a long text no single line goes over to the next page.
      room((lines.size() - i == 2 ? 2 : 1) * BODY * LINE);
      if (i == 0 && !lead.isEmpty()) {
        lead(lead, 0);
      }
      write(lines.get(i), indent, Weight.REGULAR, BODY, LINE);
    }
    y -= 0.8;
  }

  /** Before the line that is written next. */
  private void lead(String lead, double x) {
    double base = y - BODY * LINE + BODY * (Lettering.DESCENT + 0.1);
    add(text(x, base, Weight.BOLD, BODY, Ink.BLACK, lead));
  }

  /** Words and what leads them where a row stands, below this height. */
  void print(double x, double top, String lead, List<String> lines) {
    double base = top;
    for (int i = 0; i < lines.size(); i++) {
      base -= BODY * LINE;
      double at = base + BODY * (Lettering.DESCENT + 0.1);
      if (i == 0) {
        print(x, at, Weight.BOLD, BODY, lead);
      }
      print(x + INDENT, at, Weight.REGULAR, BODY, lines.get(i));
    }
  }

  void gap(double height) {
    if (y < page.height() - EDGE) {
      y -= height;
    }
  }

  /** Something that is not divided, at the left. */
  void put(Block block) {
    clear();
    room(block.height());
    y -= block.height();
    place(block, 0);
  }

  /** The same in the middle of the column. */
  void putCentred(Block block) {
    clear();
    room(block.height());
    y -= block.height();
    place(block, (width() - block.width()) / 2);
  }

  private void place(Block block, double x) {
    block
        .at(new Box2(EDGE + x, y, EDGE + x + block.width(), y + block.height()), false)
        .forEach(this::add);
  }

  /** A picture at the right of what follows: words keep clear of it. */
  void aside(Block picture) {
    room(picture.height());
    y -= picture.height();
    place(picture, width() - picture.width());
    asideFoot = y - 2;
    y += picture.height();
    asideWidth = picture.width() + BESIDE;
    asidePage = pages.size();
  }

  /** How far words run at this height. */
  private double column() {
    return pages.size() == asidePage && y > asideFoot ? width() - asideWidth : width();
  }

  /** Goes below what stands at the right. */
  void clear() {
    if (pages.size() == asidePage) {
      y = Math.min(y, asideFoot);
    }
  }

  /**
   * Rows of cells fill the page by themselves.
   *
   * @param height of the row
   * @param draw is told where its top is
   */
  void row(double height, DoubleConsumer draw) {
    clear();
    room(height);
    double top = y;
    draw.accept(top);
    y = top - height;
  }

  /** How many pages there are, and how much of the last is used, as part of it. */
  int count() {
    return pages.size();
  }

  double lastPart() {
    return (page.height() - EDGE - y) / height();
  }

  private void write(String line, double x, Weight weight, double size, double leading) {
    y -= size * leading;
    add(text(x, y + size * (Lettering.DESCENT + 0.1), weight, size, Ink.BLACK, line));
  }

  /** Words at a place of the page, their base line told from its foot. */
  void print(double x, double base, Weight weight, double size, String words) {
    add(text(x, base, weight, size, Ink.BLACK, words));
  }

  /** A picture whose foot is at this height of the page. */
  void print(Block block, double x, double foot) {
    double back = y;
    y = foot;
    place(block, x);
    y = back;
  }

  private static Text text(
      double x, double base, Weight weight, double size, Ink ink, String content) {
    return new Text(new Vec2(EDGE + x, base), size, 0, Anchor.START, weight, ink, content);
  }

  private void add(Mark mark) {
    pages.getLast().add(mark);
  }

  /** Begins another page where so much does not fit on this one. */
  void room(double height) {
    if (y - height < FOOT && !pages.getLast().isEmpty()) {
      turn();
    }
  }

  private void turn() {
    pages.add(new ArrayList<>());
    headings.add(new ArrayList<>());
    y = page.height() - EDGE;
  }

  /** The pages with their feet. */
  List<Drawing> pages() {
    return pages(0);
  }

  /**
   * The same where others follow that have no feet.
   *
   * @param more how many, counted with these
   */
  List<Drawing> pages(int more) {
    if (pages.getLast().isEmpty() && pages.size() > 1) {
      pages.removeLast();
    }
    List<Drawing> drawn = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      List<Mark> marks = new ArrayList<>(pages.get(i));
      String number = tell.say("page.number", "page", i + 1, "pages", pages.size() + more);
      double last = width() - Lettering.width(number, Weight.REGULAR, SMALL);
      String brief = Lettering.wrap(foot, Weight.REGULAR, SMALL, last - 5).getFirst();
      marks.add(text(0, EDGE / 2 + 1, Weight.REGULAR, SMALL, Ink.GREY, brief));
      marks.add(text(last, EDGE / 2 + 1, Weight.REGULAR, SMALL, Ink.GREY, number));
      drawn.add(new Drawing(page.width(), page.height(), marks, headings.get(i)));
    }
    return List.copyOf(drawn);
  }
}
