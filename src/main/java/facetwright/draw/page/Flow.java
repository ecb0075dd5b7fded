package facetwright.draw.page;

import facetwright.draw.Drawing;
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
import facetwright.net.sheet.SheetSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Words and pictures set down one column, from page to page. A heading stays with what follows it,
 * a picture with its words; each page ends with what it is and its number.
 */
final class Flow {
  static final double EDGE = 16;
  private static final double FOOT = 17;
  private static final double BODY = Lettering.pt(9.5);
  private static final double HEADING = Lettering.pt(13);
  private static final double TITLE = Lettering.pt(20);
  private static final double SMALL = Lettering.pt(Lettering.SMALLEST_PT);
  private static final double LINE = 1.38;
  private static final double INDENT = 7;
  private static final double BESIDE = 6;

  private final SheetSize page;
  private final String foot;
  private final List<List<Mark>> pages = new ArrayList<>();
  private double y;

  /**
   * @param page what the printer takes
   * @param title of the design
   * @param kind what these pages are, such as "score chart"
   */
  Flow(SheetSize page, String title, String kind) {
    this.page = page;
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
    List<String> lines = Lettering.wrap(text, Weight.BOLD, HEADING, width());
    room(4 + lines.size() * HEADING * LINE + next);
    gap(4);
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
    List<String> lines = Lettering.broken(text, BODY, width() - indent);
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

  /** Words that hang under each other in columns, read column by column. */
  void columns(List<String> items) {
    double widest =
        items.stream()
            .mapToDouble(i -> Lettering.width(i, Weight.REGULAR, SMALL))
            .max()
            .orElse(width());
    int columns = Math.max(1, (int) ((width() + 5) / (widest + 5)));
    double across = (width() + 5) / columns;
    int next = 0;
    while (next < items.size()) {
      room(SMALL * LINE);
      int fit = Math.max(1, (int) (left() / (SMALL * LINE)));
      int rows = Math.min(fit, (items.size() - next + columns - 1) / columns);
      for (int i = 0; i < rows * columns && next + i < items.size(); i++) {
        double base = y - (i % rows + 1) * SMALL * LINE + SMALL * (Lettering.DESCENT + 0.1);
        add(
            text(
                Math.floorDiv(i, rows) * across,
                base,
                Weight.REGULAR,
                SMALL,
                Ink.BLACK,
                items.get(next + i)));
      }
      y -= rows * SMALL * LINE;
      next += rows * columns;
    }
    y -= 0.8;
  }

  void gap(double height) {
    if (y < page.height() - EDGE) {
      y -= height;
    }
  }

  /** Something that is not divided, at the left. */
  void put(Block block) {
    room(block.height());
    y -= block.height();
    place(block, 0);
  }

  /** The same in the middle of the column. */
  void putCentred(Block block) {
    room(block.height());
    y -= block.height();
    place(block, (width() - block.width()) / 2);
  }

  private void place(Block block, double x) {
    block
        .at(new Box2(EDGE + x, y, EDGE + x + block.width(), y + block.height()), false)
        .forEach(this::add);
  }

  /**
   * A picture at the left and words beside it; words that run on far below it stand under it.
   *
   * @param column how much of the width pictures take
   */
  void beside(Block picture, double column, String lead, String words) {
    double x = column + BESIDE;
    List<String> lines = Lettering.broken(words, BODY, width() - x - INDENT);
    double tall = lines.size() * BODY * LINE;
    if (tall > 1.5 * picture.height() + 12) {
      under(picture, lead, words);
      return;
    }
    double height = Math.max(picture.height(), tall);
    room(height);
    double top = y;
    y = top - picture.height();
    place(picture, (column - picture.width()) / 2);
    y = top;
    for (int i = 0; i < lines.size(); i++) {
      if (i == 0) {
        lead(lead, x);
      }
      write(lines.get(i), x + INDENT, Weight.REGULAR, BODY, LINE);
    }
    y = top - height - 3;
  }

  /** A picture in the middle and its words below it. */
  void under(Block picture, String lead, String words) {
    room(picture.height() + 2 + 2 * BODY * LINE);
    putCentred(picture);
    y -= 2;
    item(lead, words);
    y -= 2;
  }

  /** Pictures side by side in columns of one width, their words beneath. */
  void row(List<Block> pictures, List<String> leads, List<String> words, int columns) {
    double wide = (width() - (columns - 1) * BESIDE) / columns;
    double tall = pictures.stream().mapToDouble(Block::height).max().orElse(0);
    List<List<String>> captions =
        words.stream().map(w -> Lettering.broken(w, BODY, wide - INDENT)).toList();
    int most = captions.stream().mapToInt(List::size).max().orElse(0);
    room(tall + 2 + most * BODY * LINE);
    double top = y;
    for (int i = 0; i < pictures.size(); i++) {
      double x = i * (wide + BESIDE);
      y = top - tall;
      place(pictures.get(i), x + (wide - pictures.get(i).width()) / 2);
      y -= 2;
      for (int k = 0; k < captions.get(i).size(); k++) {
        if (k == 0) {
          lead(leads.get(i), x);
        }
        write(captions.get(i).get(k), x + INDENT, Weight.REGULAR, BODY, LINE);
      }
    }
    y = top - tall - 2 - most * BODY * LINE - 3;
  }

  private void write(String line, double x, Weight weight, double size, double leading) {
    y -= size * leading;
    add(text(x, y + size * (Lettering.DESCENT + 0.1), weight, size, Ink.BLACK, line));
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
      String number = String.format(Locale.ROOT, "Page %d of %d", i + 1, pages.size() + more);
      double last = width() - Lettering.width(number, Weight.REGULAR, SMALL);
      String brief = Lettering.wrap(foot, Weight.REGULAR, SMALL, last - 5).getFirst();
      marks.add(text(0, EDGE / 2 + 1, Weight.REGULAR, SMALL, Ink.GREY, brief));
      marks.add(text(last, EDGE / 2 + 1, Weight.REGULAR, SMALL, Ink.GREY, number));
      drawn.add(new Drawing(page.width(), page.height(), marks));
    }
    return List.copyOf(drawn);
  }
}
