package facetwright.draw.picture;

import facetwright.draw.Drawing;
import facetwright.draw.FoldedDrawing;
import facetwright.draw.GlueMarks;
import facetwright.draw.Mark;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.draw.Viewpoint;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Box2;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.language.Telling;
import facetwright.net.NetMerge;
import facetwright.net.Parts;
import facetwright.net.sheet.Laid;
import facetwright.papers.chart.ChartNotes;
import facetwright.papers.chart.PieceChart;
import facetwright.papers.chart.Replay;
import facetwright.papers.chart.ScoreChart;
import facetwright.papers.chart.Step;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Making;
import facetwright.papers.handout.Picture;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The pictures of a handout, each about as large as a given size at most. */
public final class HandoutPictures {
  private static final Set<NetDrawing.Content> INSIDE =
      EnumSet.of(NetDrawing.Content.CARD, NetDrawing.Content.LAYERS);

  private static final Set<NetDrawing.Content> LAYERED =
      Set.of(NetDrawing.Content.CARD, NetDrawing.Content.LAYERS, NetDrawing.Content.LABELS);

  /** The bare blank needs no more than this part of the height. */
  private static final double LOW = 0.7;

  /** What the arrow takes that turns a piece over, in mm. */
  private static final double OVER = 6;

  private static final double OVER_WIDE = 14;

  private final Laid laid;
  private final FoldedForm form;
  private final Telling tell;
  private final ScoreChart chart;
  private final GlueOrder gluing;
  private final Map<Integer, List<Replay.Frame>> frames = new HashMap<>();
  private final Map<Shown, FoldedDrawing> drawings = new HashMap<>();
  private final List<Making> makings;
  private FoldPath path;
  private MidwayPictures midway;

  /** A part, or all, part of the way. */
  private record Shown(double t, int part) {}

  /**
   * @param handout of the same net
   * @param tell its reader
   */
  public HandoutPictures(Laid laid, Handout handout, Telling tell) {
    this.tell = tell;
    this.laid = laid;
    this.form = handout.gluing().form();
    this.chart = handout.chart();
    this.gluing = handout.gluing();
    this.makings = handout.makings();
  }

  /** How their reader is told. */
  public Telling telling() {
    return tell;
  }

  /** With an arrow above it that turns it over. */
  private static Block over(Block picture) {
    List<Mark> marks = new ArrayList<>(picture.marks());
    Vec2 foot = new Vec2(picture.width() / 2, picture.height() + 1);
    marks.addAll(TurnArrow.over(foot, Math.min(OVER_WIDE, picture.width() / 2), OVER - 2));
    return new Block(picture.width(), picture.height() + OVER, marks);
  }

  /** Where the panels are part of the way, 0 flat to 1 made. */
  List<Motion3> poses(double t) {
    if (t == 1) {
      return form.whole();
    }
    return path().at(t);
  }

  private FoldPath path() {
    if (path == null) {
      path = FoldPath.to(laid.net(), form).orElseGet(() -> Folding.path(laid));
    }
    return path;
  }

  private FoldedDrawing drawing(Shown shown) {
    if (shown.part == Picture.Folded.ALL) {
      return new FoldedDrawing(laid.net(), poses(shown.t), true);
    }
    Parts.Part part = laid.net().parts().all().get(shown.part);
    List<Motion3> poses = poses(shown.t);
    return new FoldedDrawing(
        NetMerge.only(laid.net(), part.panels(), part.stance()),
        part.panels().stream().map(poses::get).toList(),
        true);
  }

  MidwayPictures midway() {
    if (midway == null) {
      midway = new MidwayPictures(laid.net(), path(), makings, GlueMarks.of(gluing), tell);
    }
    return midway;
  }

  /** About this wide and high at most, in mm; what is small is larger than life, and says so. */
  public Drawing of(Picture picture, double width, double height) {
    Block block = block(picture, width, height);
    return new Drawing(block.width(), block.height(), block.marks());
  }

  public Block block(Picture picture, double width, double height) {
    return told(picture, width, height).block();
  }

  /**
   * A picture with its words.
   *
   * @param words what stands by it: with every measure, where the picture has no room for them
   * @param isWhole whether the picture bears every measure
   */
  public record Told(Block block, String words, boolean isWhole) {}

  /** The picture, about so large, with the words that it needs at that size. */
  public Told told(Picture picture, double width, double height) {
    if (!(picture instanceof Picture.Scored s)) {
      String words = picture instanceof Picture.Midway m ? midway().words(m) : picture.words();
      return new Told(other(picture, width, height), words, true);
    }
    PieceChart piece = chart.pieces().get(s.piece());
    boolean isBare = piece.steps().get(s.step()) instanceof Step.Trim;
    StepPicture.Shown shown =
        StepPicture.shown(
            piece,
            frames.computeIfAbsent(s.piece(), _ -> Replay.frames(piece.steps())),
            s.step(),
            width,
            isBare ? LOW * height : height,
            /* isNumbered= */ false,
            tell);
    boolean isWhole = shown.isWhole() || s.words().equals(s.full().text());
    String words = isWhole ? s.words() : s.full().text();
    if (!isWhole) {
      words += " " + String.join(" ", ChartNotes.toRead(List.of(s.full()), tell));
    }
    return new Told(shown.block(), words, shown.isWhole());
  }

  private Block other(Picture picture, double width, double height) {
    return switch (picture) {
      case Picture.Scored s -> throw new IllegalArgumentException(s.alt());
      case Picture.Senses s ->
          FoldPicture.of(laid.net(), s.piece(), chart.pieces().get(s.piece()), width, height, tell);
      case Picture.Layered l -> {
        SheetPart part = SheetPart.of(laid, l.sheet());
        yield Scaling.fitted(
            NetDrawing.of(part, LAYERED).marks(), part.panelBox(), width, height, tell);
      }
      case Picture.Backed b -> {
        SheetPart part = SheetPart.of(laid, b.sheet());
        Drawing inside = NetDrawing.of(part, INSIDE).turnedOver();
        yield over(
            Scaling.fitted(
                inside.marks(), part.turnedOver(part.panelBox()), width, height - OVER, tell));
      }
      case Picture.Midway m -> midway().block(m, width, height);
      case Picture.Folded folded -> {
        FoldedDrawing drawing =
            drawings.computeIfAbsent(new Shown(folded.t(), folded.part()), this::drawing);
        Box2 box = drawing.bounds(Viewpoint.USUAL);
        yield Scaling.fitted(drawing.seen(Viewpoint.USUAL), box, width, height, tell);
      }
    };
  }
}
