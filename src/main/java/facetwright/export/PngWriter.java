package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.FillKind;
import facetwright.draw.FoldedDrawing;
import facetwright.draw.Ink;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.draw.NetDrawing;
import facetwright.draw.SheetPart;
import facetwright.draw.Viewpoint;
import facetwright.export.file.ExportException;
import facetwright.export.pixel.PngFile;
import facetwright.export.pixel.Raster;
import facetwright.geom.Box2;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Tick;
import facetwright.papers.order.Order;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.SequencedMap;
import java.util.function.BiFunction;

/**
 * A picture on a transparent ground, as wide as is ordered. The file says how large a pixel is for
 * the net to be at true size, or the edges of a form that are seen at their full length. Lines and
 * type are as wide as life, but in a small picture as wide as can be made out.
 */
final class PngWriter implements Exporter {
  /** So many pixels few programs like to open: a picture twice as high as wide, and the widest. */
  private static final long MOST = 2L * Order.MOST_PIXELS * Order.MOST_PIXELS;

  private static final Ink WHITE = new Ink(0xFFFFFF);

  private final String format;
  private final String ending;
  private final String name;
  private final BiFunction<PngWriter, Job, List<byte[]>> pictures;

  private PngWriter(
      String format,
      String ending,
      String name,
      BiFunction<PngWriter, Job, List<byte[]>> pictures) {
    this.format = format;
    this.ending = ending;
    this.name = name;
    this.pictures = pictures;
  }

  /** Of the net, a file a sheet, outside up. */
  static PngWriter ofNet() {
    return new PngWriter("net-png", "net.png", "Picture of the net", PngWriter::nets);
  }

  /** Of the folded form; where its fold angles are not all known, as far as it folds. */
  static PngWriter ofForm() {
    return new PngWriter(
        "folded-png", "folded.png", "Picture of the folded form", PngWriter::folded);
  }

  @Override
  public String format() {
    return format;
  }

  @Override
  public String ending() {
    return ending;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String use() {
    return "On a transparent ground (PNG), for a web page or a leaflet.";
  }

  @Override
  public boolean isPicture() {
    return true;
  }

  @Override
  public byte[] write(Job job) {
    return pictures.apply(this, job).getFirst();
  }

  @Override
  public SequencedMap<String, byte[]> files(Job job) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    for (byte[] picture : pictures.apply(this, job)) {
      int number = files.size() + 1;
      files.put(job.named().file(ending, number), picture);
    }
    return files;
  }

  private List<byte[]> nets(Job job) {
    List<byte[]> all = new ArrayList<>();
    for (int i = 0; i < job.laid().sheets(); i++) {
      SheetPart part = SheetPart.of(job.laid(), i);
      String title = job.laid().sheets() == 1 ? title(job) : SvgDocument.sheet(this, job, i + 1);
      Frame frame = frame(box(part), job.order().pixels());
      List<Mark> marks =
          NetDrawing.of(part, EnumSet.allOf(NetDrawing.Content.class), frame.zoom()).marks();
      all.add(frame.png(title, marks.stream().filter(PngWriter::isOfTheNet).toList()));
    }
    return all;
  }

  private List<byte[]> folded(Job job) {
    FoldedDrawing drawing =
        new FoldedDrawing(job.laid().net(), job.form().whole(), /* withLayers= */ true);
    Frame frame = frame(drawing.bounds(Viewpoint.USUAL), job.order().pixels());
    return List.of(frame.png(title(job), drawing.seen(Viewpoint.USUAL)));
  }

  /** A page as a picture on a white ground, so many pixels wide. */
  static byte[] page(String title, Drawing page, int pixels) {
    Polygon2 ground = Polygon2.rectangle(0, 0, page.width(), page.height());
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Patch(List.of(ground), WHITE, List.of(), 0));
    marks.addAll(page.marks());
    return Frame.of(ground.box(), pixels).png(title, marks);
  }

  /** Round the panels and the ticks of a sheet, on its page. */
  private static Box2 box(SheetPart part) {
    Motion2 shift = Motion2.shift(part.shift());
    return part.laid().net().ticks().stream()
        .map(Tick::mark)
        .filter(mark -> part.has(mark.middle()))
        .map(mark -> Box2.around(List.of(shift.apply(mark.from()), shift.apply(mark.to()))))
        .reduce(part.panelBox(), Box2::union);
  }

  /** The edge of a sheet is none of the net; and what is cut away is seen through. */
  private static boolean isOfTheNet(Mark mark) {
    return switch (mark) {
      case Mark.Stroke s -> s.kind() != LineKind.SHEET;
      case Mark.Fill f -> f.kind() != FillKind.WINDOW;
      case Mark.Circle _, Mark.Patch _, Mark.Text _ -> true;
    };
  }

  private Frame frame(Box2 box, int width) {
    Frame frame = Frame.of(box, width);
    long size = (long) frame.width * frame.height;
    if (size > MOST) {
      long most = (long) (width * Math.sqrt((double) MOST / size));
      throw new ExportException(
          String.format(
              Locale.ROOT,
              "%s: %d pixels wide, it would be %d high, which is too much for one picture. Ask for"
                  + " %d pixels or fewer.",
              name,
              frame.width,
              frame.height,
              most));
    }
    return frame;
  }

  /**
   * Where in a picture its marks lie.
   *
   * @param width in pixels
   * @param height in pixels
   * @param perMetre pixels to a metre at true size
   * @param pen pixels to a mm of a line's width, and of type
   * @param corner what lies in the lower left corner
   */
  private record Frame(int width, int height, int perMetre, double pen, Vec2 corner) {
    /** Round what is shown, for half the width of a line, in mm of the pen. */
    private static final double ROOM = 1;

    /** The thinnest line is half a pixel wide, type of 8 pt 11 pixels high. */
    private static final double FINEST_PEN = 4;

    /** What is smaller is drawn as if it were printed so wide, in mm: lines would be too bold. */
    private static final double NARROW = 75;

    /** What is seen from its edge is given so much, in mm. */
    private static final double LEAST = 1;

    static Frame of(Box2 box, int width) {
      double wide = Math.max(box.width(), LEAST);
      double pen = Math.max(FINEST_PEN, width / Math.max(NARROW, wide + 2 * ROOM));
      double scale = (width - 2 * ROOM * pen) / wide;
      // A whole number of pixels to a metre, so that the file can tell it exactly.
      int perMetre = (int) Math.floor(scale * 1000);
      int height = (int) Math.ceil(box.height() * perMetre / 1000 + 2 * ROOM * pen);
      Vec2 half = new Vec2(width, height).times(500.0 / perMetre);
      return new Frame(width, height, perMetre, pen, box.centre().minus(half));
    }

    double scale() {
      return perMetre / 1000.0;
    }

    /** How much larger than life it is seen beside lines and type. */
    double zoom() {
      return scale() / pen;
    }

    byte[] png(String title, List<? extends Mark> marks) {
      Raster raster = new Raster(width, height, scale(), pen, corner);
      raster.paint(marks);
      return PngFile.of(title, width, height, perMetre, raster::row);
    }
  }
}
