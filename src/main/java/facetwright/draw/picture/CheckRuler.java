package facetwright.draw.picture;

import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Stroke;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.measure.Unit;
import java.util.ArrayList;
import java.util.List;

/** A printed ruler that tells whether the printer kept the size: 100 mm and 4 in. */
public final class CheckRuler {
  private static final double SIZE = Lettering.pt(Lettering.SMALLEST_PT);
  private static final double CAPITAL = SIZE * Lettering.CAP_HEIGHT;
  private static final double GAP = 1;
  private static final double SHORT = 1.2;
  private static final double MIDDLING = 2;
  private static final double LONG = 2.8;
  private static final double LEFT = 1.5;

  private CheckRuler() {}

  /** What has to be said beside it. */
  public static String print(Telling tell) {
    return tell.say("page.print");
  }

  /** Both scales back to back: 109 mm wide, 13 mm high. */
  public static Block both(LineKind kind) {
    List<Mark> marks = new ArrayList<>();
    double middle = CAPITAL + GAP + LONG + 0.5;
    mm(marks, new Vec2(LEFT, middle + 0.5), 1, kind, true);
    inches(marks, new Vec2(LEFT, middle - 0.5), -1, kind, true);
    return new Block(LEFT + 4 * Unit.INCH.mm() + 6, 2 * middle, marks);
  }

  /** The 100 mm scale alone, its length written at its end: 118 mm wide, 3 mm high. */
  public static Block mm(LineKind kind) {
    List<Mark> marks = new ArrayList<>();
    mm(marks, new Vec2(0, 0.2), 1, kind, false);
    return new Block(102 + width("100 mm"), LONG + 0.4, marks);
  }

  /** The 4 in scale alone. */
  public static Block inches(LineKind kind) {
    List<Mark> marks = new ArrayList<>();
    inches(marks, new Vec2(0, 0.2), 1, kind, false);
    return new Block(4 * Unit.INCH.mm() + 2 + width("4 in"), LONG + 0.4, marks);
  }

  private static void mm(List<Mark> marks, Vec2 zero, int up, LineKind kind, boolean numbers) {
    marks.add(Stroke.line(zero, zero.plus(new Vec2(100, 0)), kind));
    for (int i = 0; i <= 100; i++) {
      tick(marks, zero, i, up * (i % 10 == 0 ? LONG : i % 5 == 0 ? MIDDLING : SHORT), kind);
      if (numbers && i % 50 == 0) {
        number(marks, zero, i, up, i == 100 ? "100 mm" : String.valueOf(i));
      }
    }
    if (!numbers) {
      marks.add(text(zero.plus(new Vec2(101.5, 0.2)), Anchor.START, "100 mm"));
    }
  }

  private static void inches(List<Mark> marks, Vec2 zero, int up, LineKind kind, boolean numbers) {
    double inch = Unit.INCH.mm();
    marks.add(Stroke.line(zero, zero.plus(new Vec2(4 * inch, 0)), kind));
    for (int i = 0; i <= 32; i++) {
      double high = i % 8 == 0 ? LONG : i % 4 == 0 ? MIDDLING : SHORT;
      tick(marks, zero, i * inch / 8, up * high, kind);
      if (numbers && i % 8 == 0) {
        number(marks, zero, i * inch / 8, up, i == 32 ? "4 in" : String.valueOf(i / 8));
      }
    }
    if (!numbers) {
      marks.add(text(zero.plus(new Vec2(4 * inch + 1.5, 0.2)), Anchor.START, "4 in"));
    }
  }

  private static void tick(List<Mark> marks, Vec2 zero, double x, double high, LineKind kind) {
    Vec2 foot = zero.plus(new Vec2(x, 0));
    marks.add(Stroke.line(foot, foot.plus(new Vec2(0, high)), kind));
  }

  private static void number(List<Mark> marks, Vec2 zero, double x, int up, String number) {
    double y = up > 0 ? LONG + GAP : -LONG - GAP - CAPITAL;
    // The digits stand over their tick, the unit hangs on to their right.
    String digits = number.split(" ")[0];
    marks.add(text(zero.plus(new Vec2(x - width(digits) / 2, y)), Anchor.START, number));
  }

  private static Text text(Vec2 at, Anchor anchor, String content) {
    return new Text(at, SIZE, 0, anchor, Weight.REGULAR, Ink.BLACK, content);
  }

  private static double width(String text) {
    return Lettering.width(text, Weight.REGULAR, SIZE);
  }
}
