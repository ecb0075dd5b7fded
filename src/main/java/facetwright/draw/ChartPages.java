package facetwright.draw;

import facetwright.draw.Mark.Anchor;
import facetwright.draw.Mark.Text;
import facetwright.draw.Mark.Weight;
import facetwright.geom.Box2;
import facetwright.geom.Ruler;
import facetwright.geom.Unit;
import facetwright.geom.Vec2;
import facetwright.net.Laid;
import facetwright.net.Net;
import facetwright.net.SheetSize;
import facetwright.net.SheetSizes;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.papers.chart.StepWords;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The pages of a score chart: what to know, then each step with its picture. */
public final class ChartPages {
  private static final double EDGE = 15;
  private static final double PICTURE = 84;
  private static final double LOW = 58;
  private static final double BESIDE = 6;
  private static final double BETWEEN = 4;
  private static final double SIZE = Lettering.pt(9.5);
  private static final double LARGE = Lettering.pt(15);
  private static final double LINE = SIZE * 1.35;

  private final SheetSize paper;
  private final double width;
  private final List<Drawing> pages = new ArrayList<>();
  private List<Mark> marks = new ArrayList<>();
  private double y;

  private ChartPages(SheetSize paper) {
    this.paper = paper;
    this.width = paper.width() - 2 * EDGE;
    this.y = paper.height() - EDGE;
  }

  /** By the ruler usual for the design's unit. */
  public static List<Drawing> of(String title, Unit unit, Laid laid) {
    return of(title, unit, laid, ScoreChart.usualRuler(unit));
  }

  /**
   * @param title of the design
   * @param unit Letter pages for inches, A4 for others
   * @param ruler the maker's
   */
  public static List<Drawing> of(String title, Unit unit, Laid laid, Ruler ruler) {
    ScoreChart chart = ScoreChart.of(laid.net(), ruler);
    ChartPages pages = new ChartPages(SheetSizes.named(unit == Unit.INCH ? "Letter" : "A4"));
    pages.heading(title, chart, ruler);
    for (int i = 0; i < chart.pieces().size(); i++) {
      pages.piece(laid.net(), i, chart);
    }
    pages.lines(ChartNotes.cautions(), "Caution: ");
    pages.turn();
    return List.copyOf(pages.pages);
  }

  private void heading(String title, ScoreChart chart, Ruler ruler) {
    String printable = Lettering.printable(title).strip();
    String shown = printable.length() <= 100 ? printable : printable.substring(0, 98) + "…";
    for (String line : Lettering.wrap(shown, Weight.BOLD, LARGE, width)) {
      write(line, EDGE, LARGE, Weight.BOLD, LARGE * 1.3);
    }
    int n = chart.distinctMeasures();
    String pieces = chart.pieces().size() == 1 ? "" : chart.pieces().size() + " pieces. ";
    lines(
        List.of(
            "Score chart. "
                + pieces
                + "Ruler: "
                + ChartNotes.name(ruler)
                + ". The scores take "
                + n
                + " different measure"
                + (n == 1 ? "." : "s.")),
        "");
  }

  private void piece(Net net, int index, ScoreChart all) {
    PieceChart chart = all.pieces().get(index);
    if (all.pieces().size() > 1) {
      y -= BETWEEN;
      room(30);
      write(
          "Piece " + (index + 1) + ", with " + chart.name(),
          EDGE,
          SIZE * 1.2,
          Weight.BOLD,
          LINE * 1.3);
    }
    lines(ChartNotes.of(chart), "");
    y -= BETWEEN;
    List<Replay.Frame> frames = Replay.frames(chart.steps());
    List<String> words = StepWords.of(chart);
    for (int i = 0; i < words.size(); i++) {
      Step step = chart.steps().get(i);
      boolean isLarge = step instanceof Step.Points;
      Block picture =
          StepPicture.of(
              chart,
              frames,
              i,
              isLarge ? width : PICTURE,
              isLarge ? 150 : step instanceof Step.Trim ? LOW * 0.7 : LOW);
      step(i + 1 + ". " + words.get(i), picture, isLarge);
    }
    Block folds = FoldPicture.of(net, index, chart, PICTURE - 12, LOW - 12);
    step(words.size() + 1 + ". " + ChartNotes.folding(), folds, false);
    Block legend = Legend.of(kinds(folds), 1);
    room(legend.height() + BETWEEN);
    y -= legend.height() + BETWEEN;
    put(legend, EDGE, y);
    y -= BETWEEN;
  }

  private static List<LineKind> kinds(Block picture) {
    Set<LineKind> kinds = EnumSet.noneOf(LineKind.class);
    for (Mark m : picture.marks()) {
      if (m instanceof Mark.Stroke s) {
        kinds.add(s.kind());
      }
    }
    return List.copyOf(kinds).reversed();
  }

  /** Picture left, words beside it; where they are long they stand below it and may run on. */
  private void step(String words, Block picture, boolean isLarge) {
    double narrow = width - PICTURE - BESIDE;
    List<String> beside = Lettering.wrap(words, Weight.REGULAR, SIZE, narrow);
    if (!isLarge && beside.size() * LINE <= LOW) {
      double height = Math.max(picture.height(), beside.size() * LINE);
      room(height);
      double top = y;
      for (String line : beside) {
        write(line, EDGE + PICTURE + BESIDE, SIZE, Weight.REGULAR, LINE);
      }
      put(picture, EDGE, top - picture.height());
      y = top - height - BETWEEN;
      return;
    }
    room(picture.height() + 2 * LINE);
    y -= picture.height();
    put(picture, EDGE, y);
    y -= 2;
    lines(List.of(words), "");
    y -= BETWEEN;
  }

  private void lines(List<String> paragraphs, String first) {
    for (int i = 0; i < paragraphs.size(); i++) {
      String text = (i == 0 ? first : "") + paragraphs.get(i);
      for (String line : Lettering.wrap(text, Weight.REGULAR, SIZE, width)) {
        room(LINE);
        write(line, EDGE, SIZE, Weight.REGULAR, LINE);
      }
      y -= 0.8;
    }
  }

  private void write(String line, double x, double size, Weight weight, double down) {
    y -= down;
    marks.add(
        new Text(
            new Vec2(x, y + size * Lettering.DESCENT),
            size,
            0,
            Anchor.START,
            weight,
            Ink.BLACK,
            line));
  }

  private void put(Block block, double x, double bottom) {
    marks.addAll(block.at(new Box2(x, bottom, x + block.width(), bottom + block.height()), false));
  }

  /** Begins another page where so much does not fit on this one. */
  private void room(double height) {
    if (y - height < EDGE && y < paper.height() - EDGE) {
      turn();
    }
  }

  private void turn() {
    if (!marks.isEmpty()) {
      pages.add(new Drawing(paper.width(), paper.height(), marks));
    }
    marks = new ArrayList<>();
    y = paper.height() - EDGE;
  }
}
