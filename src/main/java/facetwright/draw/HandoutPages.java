package facetwright.draw;

import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Vec2;
import facetwright.net.SheetSize;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import java.util.ArrayList;
import java.util.List;

/** A handout on pages of the printer's paper: words in one column, pictures two side by side. */
public final class HandoutPages {
  private static final double EDGE = 18;
  private static final double FOOT = 16;
  private static final double GAP = 4;
  private static final double BODY = Lettering.pt(10);
  private static final double HEADING = Lettering.pt(13);
  private static final double TITLE = Lettering.pt(22);
  private static final double INDENT = 6;
  private static final double PICTURE_HEIGHT = 62;

  private final Handout handout;
  private final HandoutPictures pictures;
  private final SheetSize paper;
  private final double width;
  private final List<List<Mark>> pages = new ArrayList<>();
  private double y;

  private HandoutPages(Handout handout, HandoutPictures pictures, SheetSize paper) {
    this.handout = handout;
    this.pictures = pictures;
    this.paper = paper;
    this.width = paper.width() - 2 * EDGE;
    turnPage();
  }

  /** The pages, without the templates. */
  public static List<Drawing> of(Handout handout, HandoutPictures pictures, SheetSize paper) {
    return new HandoutPages(handout, pictures, paper).draw();
  }

  private List<Drawing> draw() {
    lines(Lettering.printable(handout.title()).strip(), Weight.BOLD, TITLE, 0, "");
    if (!handout.author().isBlank()) {
      lines("by " + handout.author(), Weight.REGULAR, BODY, 0, "");
    }
    for (Section section : handout.sections()) {
      section(section);
    }
    List<Drawing> drawn = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      List<Mark> marks = pages.get(i);
      String number = "Page " + (i + 1) + " of " + pages.size();
      double size = Lettering.pt(Lettering.SMALLEST_PT);
      marks.add(
          new Text(
              new Vec2(paper.width() - EDGE, FOOT / 2),
              size,
              0,
              Anchor.END,
              Weight.REGULAR,
              Ink.GREY,
              number));
      drawn.add(new Drawing(paper.width(), paper.height(), marks));
    }
    return List.copyOf(drawn);
  }

  private void turnPage() {
    pages.add(new ArrayList<>());
    y = paper.height() - EDGE;
  }

  /** Starts a new page where this much does not fit any more. */
  private void room(double height) {
    if (y - height < FOOT) {
      turnPage();
    }
  }

  private void section(Section section) {
    // A heading stays with what follows it.
    double next = section instanceof Section.Pictures ? PICTURE_HEIGHT : 3 * BODY * Block.LINE;
    room(GAP + HEADING * Block.LINE + next);
    y -= GAP;
    lines(section.heading(), Weight.BOLD, HEADING, 0, "");
    switch (section) {
      case Section.Facts facts -> {
        for (String line : facts.lines()) {
          lines(line, Weight.REGULAR, BODY, INDENT, "–");
        }
      }
      case Section.Ordered ordered -> {
        for (int i = 0; i < ordered.lines().size(); i++) {
          lines(ordered.lines().get(i), Weight.REGULAR, BODY, INDENT + 2, (i + 1) + ".");
        }
      }
      case Section.Pictures shown -> {
        for (int i = 0; i < shown.pictures().size(); i += 2) {
          row(shown.pictures().subList(i, Math.min(i + 2, shown.pictures().size())), i);
        }
      }
    }
  }

  private void lines(String text, Weight weight, double size, double indent, String lead) {
    List<String> lines = Lettering.wrap(text, weight, size, width - indent);
    room(Math.min(lines.size(), 3) * size * Block.LINE);
    boolean first = true;
    for (String line : lines) {
      room(size * Block.LINE);
      y -= size * Block.LINE;
      double base = y + size * (Lettering.DESCENT + 0.1);
      if (first && !lead.isEmpty()) {
        add(text(new Vec2(EDGE, base), weight, size, lead));
      }
      add(text(new Vec2(EDGE + indent, base), weight, size, line));
      first = false;
    }
    y -= 0.9;
  }

  private void add(Mark mark) {
    pages.getLast().add(mark);
  }

  private static Text text(Vec2 at, Weight weight, double size, String content) {
    return new Text(at, size, 0, Anchor.START, weight, Ink.BLACK, content);
  }

  /** One or two pictures side by side, their words beneath. */
  private void row(List<Picture> row, int before) {
    double wide = (width - GAP) / 2;
    List<Drawing> drawn = row.stream().map(p -> pictures.of(p, wide, PICTURE_HEIGHT)).toList();
    List<Block> words = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      words.add(Block.text("", List.of((before + i + 1) + ". " + row.get(i).words()), wide));
    }
    double tall = drawn.stream().mapToDouble(Drawing::height).max().orElse(0);
    double below = words.stream().mapToDouble(Block::height).max().orElse(0);
    room(tall + below + GAP);
    y -= 1;
    for (int i = 0; i < row.size(); i++) {
      double x = EDGE + i * (wide + GAP);
      Drawing picture = drawn.get(i);
      Vec2 shift = new Vec2(x + (wide - picture.width()) / 2, y - tall);
      picture.moved(Motion2.shift(shift)).marks().forEach(this::add);
      Block caption = words.get(i);
      double foot = y - tall - 1.5 - caption.height();
      caption
          .at(new Box2(x, foot, x + caption.width(), foot + caption.height()), false)
          .forEach(this::add);
    }
    y -= tall + below + GAP;
  }
}
