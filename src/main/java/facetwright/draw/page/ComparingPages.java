package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.FoldedDrawing;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.draw.Viewpoint;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.Scaling;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.net.Net;
import facetwright.net.sheet.SheetSize;
import java.util.ArrayList;
import java.util.List;

/** Folded forms side by side, all to one scale, with words below each. */
public final class ComparingPages {
  /** What a page that shows one thing beside the other keeps clear at its edge, in mm. */
  static final double EDGE = 15;

  /** And between them. */
  static final double GAP = 6;

  private static final int MOST_ROWS = 4;

  /** Up to so many stand in two columns, more in three. */
  private static final int FEW = 4;

  private final SheetSize page;
  private final int columns;
  private final int rows;

  private ComparingPages(SheetSize page, int forms) {
    this.page = page;
    this.columns = forms <= FEW ? 2 : 3;
    this.rows = Math.clamp((forms + columns - 1) / columns, 2, MOST_ROWS);
  }

  /**
   * One of the forms.
   *
   * @param name stands below it
   * @param words below that, in lines of their own
   * @param poses where each panel stands
   */
  public record Form(String name, List<String> words, Net net, List<Motion3> poses) {
    public Form {
      words = List.copyOf(words);
      poses = List.copyOf(poses);
    }
  }

  /**
   * Draws the pages.
   *
   * @param title of the first page
   * @param page what the printer takes
   */
  public static List<Drawing> of(String title, SheetSize page, List<Form> forms) {
    return new ComparingPages(page, forms.size()).draw(Lettering.printable(title).strip(), forms);
  }

  private List<Drawing> draw(String title, List<Form> forms) {
    double wide = (page.width() - 2 * EDGE - (columns - 1) * GAP) / columns;
    List<Block> words = forms.stream().map(f -> words(f, wide)).toList();
    double told = words.stream().mapToDouble(Block::height).max().orElse(0);
    Block head = Block.text(title, List.of("All are drawn to one scale."), wide * columns + GAP);
    double top = page.height() - EDGE - head.height();
    double high = (top - EDGE) / rows - GAP;
    List<FoldedDrawing> drawings =
        forms.stream().map(f -> new FoldedDrawing(f.net(), f.poses(), true)).toList();
    double scale = scale(drawings, wide, high - told - 1);
    List<Drawing> pages = new ArrayList<>();
    List<Mark> marks = new ArrayList<>(head.at(new Box2(EDGE, top, EDGE + wide, top + 1), false));
    for (int i = 0; i < forms.size(); i++) {
      int place = i % (columns * rows);
      if (i > 0 && place == 0) {
        pages.add(new Drawing(page.width(), page.height(), marks));
        marks = new ArrayList<>();
      }
      double x = EDGE + place % columns * (wide + GAP);
      double y = top - (place / columns + 1) * (high + GAP);
      double foot = y + told - words.get(i).height();
      marks.addAll(words.get(i).at(new Box2(x, foot, x + wide, foot + 1), false));
      picture(marks, drawings.get(i), scale, new Vec2(x + wide / 2, y + told + 1));
    }
    pages.add(new Drawing(page.width(), page.height(), marks));
    return pages;
  }

  private static Block words(Form form, double width) {
    List<String> all = new ArrayList<>(List.of(form.name()));
    all.addAll(form.words());
    return Block.text("", all, width);
  }

  /** The largest scale, true size at most, at which each goes into its place. */
  private static double scale(List<FoldedDrawing> drawings, double width, double height) {
    double scale = 1;
    for (FoldedDrawing drawing : drawings) {
      Box2 box = drawing.bounds(Viewpoint.USUAL);
      scale = Math.min(scale, Math.min(width / box.width(), height / box.height()));
    }
    return scale;
  }

  private static void picture(List<Mark> marks, FoldedDrawing form, double scale, Vec2 foot) {
    Box2 box = form.bounds(Viewpoint.USUAL);
    Vec2 shift = foot.minus(new Vec2(scale * box.centre().x(), scale * box.minY()));
    for (Mark patch : new Scaling(scale).of(form.seen(Viewpoint.USUAL))) {
      marks.add(patch.moved(Motion2.shift(shift)));
    }
  }
}
