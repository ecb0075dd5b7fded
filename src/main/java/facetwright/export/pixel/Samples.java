package facetwright.export.pixel;

import facetwright.draw.Ink;
import facetwright.pace.Pace;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Areas as pixels on a transparent ground. Each pixel is the mean of 8 × 8 samples, each of which
 * shows the topmost area at its middle: where two areas touch, nothing shines through between them.
 * It needs no display, and gives the same pixels on every machine.
 */
final class Samples {
  /** Samples along a side of a pixel. */
  static final int FINE = 8;

  /** How far a chord may lie from its arc, in samples. */
  private static final double FLATNESS = 0.25;

  /** So many samples are held at a time at most, but for a single row of pixels. */
  private static final int HELD = 1 << 21;

  private static final int OPAQUE = 0xFF000000;

  private final int width;
  private final int height;
  private final List<Area> areas = new ArrayList<>();
  private final int rows;
  private final int[] samples;

  /** The pixels in which a span of samples ends; any other has one colour in each of its lines. */
  private final boolean[] mixed;

  private int first;
  private int end;

  /**
   * What is covered, in samples from the upper left corner.
   *
   * @param sides of its outline: x and y where each starts and ends
   * @param evenOdd whether what is enclosed twice is outside
   */
  @SuppressWarnings("ArrayRecordComponent") // Never compared, and millions of numbers.
  private record Area(double[] sides, int top, int bottom, boolean evenOdd, int colour) {}

  /**
   * @param width in pixels
   * @param height in pixels
   */
  Samples(int width, int height) {
    this.width = width;
    this.height = height;
    this.rows = Math.clamp(HELD / ((long) width * FINE * FINE), 1, height);
    this.samples = new int[rows * width * FINE * FINE];
    this.mixed = new boolean[rows * width];
  }

  /** An area on top, given in samples; curves are taken for chords. */
  void add(Shape shape, boolean evenOdd, Ink ink) {
    Outline outline = new Outline();
    double[] c = new double[6];
    for (PathIterator i = shape.getPathIterator(null, FLATNESS); !i.isDone(); i.next()) {
      switch (i.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> outline.begin(c[0], c[1]);
        case PathIterator.SEG_LINETO -> outline.line(c[0], c[1]);
        default -> outline.close();
      }
    }
    outline.close();
    double[] sides = outline.sides();
    if (sides.length > 0) {
      int top = Integer.MAX_VALUE;
      int bottom = Integer.MIN_VALUE;
      for (int i = 1; i < sides.length; i += 2) {
        top = Math.min(top, line(sides[i]));
        bottom = Math.max(bottom, line(sides[i]));
      }
      areas.add(new Area(sides, top, bottom, evenOdd, OPAQUE | ink.rgb()));
    }
  }

  /** A row of pixels from the top, as red, green, blue and opacity; rows are asked for in order. */
  byte[] row(int row) {
    if (row < first || row >= end) {
      first = row;
      end = Math.min(row + rows, height);
      Arrays.fill(samples, 0);
      Arrays.fill(mixed, false);
      areas.forEach(this::fill);
    }
    byte[] pixels = new byte[width * PngFile.CHANNELS];
    for (int x = 0; x < width; x++) {
      mean(x, row - first, pixels);
    }
    return pixels;
  }

  private void mean(int x, int row, byte[] pixels) {
    int stride = width * FINE;
    int corner = row * FINE * stride + x * FINE;
    int across = mixed[row * width + x] ? FINE : 1;
    int covered = 0;
    int red = 0;
    int green = 0;
    int blue = 0;
    for (int line = corner; line < corner + FINE * stride; line += stride) {
      for (int i = line; i < line + across; i++) {
        int sample = samples[i];
        covered += sample >>> 31;
        red += sample >> 16 & 0xFF;
        green += sample >> 8 & 0xFF;
        blue += sample & 0xFF;
      }
    }
    if (covered > 0) {
      int half = covered / 2;
      int all = FINE * across;
      int at = x * PngFile.CHANNELS;
      pixels[at] = (byte) ((red + half) / covered);
      pixels[at + 1] = (byte) ((green + half) / covered);
      pixels[at + 2] = (byte) ((blue + half) / covered);
      pixels[at + 3] = (byte) ((255 * covered + all / 2) / all);
    }
  }

  /** The sides of an outline, without the level ones, which no line of samples crosses. */
  private static final class Outline {
    private double[] sides = new double[64];
    private int size;
    private double startX;
    private double startY;
    private double x;
    private double y;

    void begin(double toX, double toY) {
      close();
      startX = toX;
      startY = toY;
      x = toX;
      y = toY;
    }

    void line(double toX, double toY) {
      if (y != toY) {
        if (size == sides.length) {
          sides = Arrays.copyOf(sides, 2 * size);
        }
        sides[size++] = x;
        sides[size++] = y;
        sides[size++] = toX;
        sides[size++] = toY;
      }
      x = toX;
      y = toY;
    }

    void close() {
      line(startX, startY);
    }

    double[] sides() {
      return Arrays.copyOf(sides, size);
    }
  }

  /** The first line, or column, of samples whose middle lies at this place or after it. */
  private static int line(double place) {
    return (int) Math.ceil(place - 0.5);
  }

  /** Gives the area's colour to the samples of the rows that are held. */
  private void fill(Area area) {
    int from = Math.max(area.top, first * FINE);
    int to = Math.min(area.bottom, end * FINE);
    if (from >= to) {
      return;
    }
    Pace.step();
    int[] ends = new int[to - from];
    double[] sides = area.sides;
    for (int i = 0; i < sides.length; i += 4) {
      int last = Math.min(to, line(Math.max(sides[i + 1], sides[i + 3])));
      for (int y = Math.max(from, line(Math.min(sides[i + 1], sides[i + 3]))); y < last; y++) {
        ends[y - from]++;
      }
    }
    Arrays.parallelPrefix(ends, Integer::sum);
    int[] crossings = new int[ends[ends.length - 1]];
    for (int i = 0; i < sides.length; i += 4) {
      double slope = (sides[i + 2] - sides[i]) / (sides[i + 3] - sides[i + 1]);
      int down = sides[i + 3] > sides[i + 1] ? 1 : 0;
      int last = Math.min(to, line(Math.max(sides[i + 1], sides[i + 3])));
      for (int y = Math.max(from, line(Math.min(sides[i + 1], sides[i + 3]))); y < last; y++) {
        double x = sides[i] + (y + 0.5 - sides[i + 1]) * slope;
        crossings[--ends[y - from]] = Math.clamp(line(x), 0, width * FINE) << 1 | down;
      }
    }
    for (int y = from; y < to; y++) {
      int start = ends[y - from];
      int stop = y + 1 < to ? ends[y + 1 - from] : crossings.length;
      Arrays.sort(crossings, start, stop);
      spans(area, crossings, start, stop, y - first * FINE);
    }
  }

  /** Between crossings of one line of samples, what is inside. */
  private void spans(Area area, int[] crossings, int start, int stop, int line) {
    int left = line * width * FINE;
    int pixels = line / FINE * width;
    int turns = 0;
    for (int i = start; i + 1 < stop; i++) {
      turns += (crossings[i] & 1) == 1 ? 1 : -1;
      int from = crossings[i] >> 1;
      int to = crossings[i + 1] >> 1;
      if (from < to && (area.evenOdd ? (turns & 1) != 0 : turns != 0)) {
        Arrays.fill(samples, left + from, left + to, area.colour);
        mixed[pixels + from / FINE] = true;
        mixed[pixels + (to - 1) / FINE] = true;
      }
    }
  }
}
