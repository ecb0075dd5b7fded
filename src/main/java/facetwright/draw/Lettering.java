package facetwright.draw;

import facetwright.draw.Mark.Weight;
import facetwright.measure.Unbroken;
import facetwright.measure.Unit;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The typeface of every page and how wide its text runs. Its figures all have one width. It holds
 * Latin, Greek and Cyrillic letters, fractions and dashes; what it lacks is written as "?".
 */
public final class Lettering {
  private static final int LONGEST_TITLE = 100;

  /** Text on paper is never smaller, in points. */
  public static final double SMALLEST_PT = 8;

  /** Height of capitals and figures, as part of the size. */
  public static final double CAP_HEIGHT = 0.72;

  /** How far letters reach below the base line, as part of the size. */
  public static final double DESCENT = 0.213;

  /** Of an inch, as printers count; PostScript and PDF (ISO 32000-1, 8.3.2.3). */
  private static final double POINTS_AN_INCH = 72;

  /** How many points of type and of pages are a millimetre. */
  public static final double POINTS_PER_MM = POINTS_AN_INCH / Unit.INCH.mm();

  private static final double POINT_MM = Unit.INCH.mm() / POINTS_AN_INCH;
  private static final Face REGULAR = Face.load("/fonts/FacetwrightSans-Regular.ttf");
  private static final Face BOLD = Face.load("/fonts/FacetwrightSans-Bold.ttf");

  private Lettering() {}

  private static final class Face {
    private final byte[] file;
    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsPerEm;

    private Face(byte[] file) throws IOException {
      this.file = file;
      this.font = new TTFParser().parse(new RandomAccessReadBuffer(file));
      this.glyphs = font.getUnicodeCmapLookup();
      this.unitsPerEm = font.getUnitsPerEm();
    }

    static Face load(String name) {
      try (InputStream in = Lettering.class.getResourceAsStream(name)) {
        if (in == null) {
          throw new IllegalStateException("the font " + name + " is missing from the program");
        }
        return new Face(in.readAllBytes());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    boolean has(int character) {
      return glyphs.getGlyphId(character) != 0;
    }

    synchronized double advance(int character) {
      try {
        return font.getAdvanceWidth(glyphs.getGlyphId(character)) / unitsPerEm;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    /** Of size 1, from the origin. */
    synchronized Path2D outline(int character) {
      try {
        Path2D path = new Path2D.Double();
        GlyphData glyph = font.getGlyph().getGlyph(glyphs.getGlyphId(character));
        if (glyph != null) {
          path.append(glyph.getPath(), false);
          path.transform(AffineTransform.getScaleInstance(1 / unitsPerEm, 1 / unitsPerEm));
        }
        return path;
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static Face face(Weight weight) {
    return weight == Weight.BOLD ? BOLD : REGULAR;
  }

  /** The TrueType file of this weight. */
  public static byte[] file(Weight weight) {
    return face(weight).file.clone();
  }

  /** A type size given in points (1/72 in), in mm. */
  public static double pt(double points) {
    return points * POINT_MM;
  }

  /** How far the text runs, in mm, at a type size in mm. */
  public static double width(String text, Weight weight, double size) {
    return printable(text).codePoints().mapToDouble(c -> face(weight).advance(c)).sum() * size;
  }

  /** The text as outlines of size 1: its base line starts at the origin and runs along x, y up. */
  public static Path2D outline(String text, Weight weight) {
    Path2D all = new Path2D.Double();
    double x = 0;
    for (int c : printable(text).codePoints().toArray()) {
      Path2D letter = face(weight).outline(c);
      letter.transform(AffineTransform.getTranslateInstance(x, 0));
      all.append(letter, false);
      x += face(weight).advance(c);
    }
    return all;
  }

  /** The text with blanks for control characters and "?" for what the typeface lacks. */
  public static String printable(String text) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .map(c -> Character.isWhitespace(c) || Character.isISOControl(c) ? ' ' : c)
        .map(c -> REGULAR.has(c) && BOLD.has(c) ? c : '?')
        .forEach(out::appendCodePoint);
    return out.toString();
  }

  /**
   * The text broken into lines that run no wider than this, but not within a measure such as "1 3/8
   * in"; a word too wide for a line is broken too.
   */
  public static List<String> wrap(String text, Weight weight, double size, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String unbroken : Unbroken.measures(printable(text).strip()).split(" +")) {
      String word = Unbroken.plain(unbroken);
      String longer = line.isEmpty() ? word : line + " " + word;
      if (width(longer, weight, size) <= width) {
        line = longer;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (width(line, weight, size) > width && line.length() > 1) {
        int keep = line.length() - 1;
        while (keep > 1 && width(line.substring(0, keep), weight, size) > width) {
          keep--;
        }
        lines.add(line.substring(0, keep));
        line = line.substring(keep);
      }
    }
    lines.add(line);
    return List.copyOf(lines);
  }

  /** A title as pages can print it, no longer than a line or two. */
  public static String title(String title) {
    String printable = printable(title).strip();
    return printable.length() <= LONGEST_TITLE
        ? printable
        : printable.substring(0, LONGEST_TITLE - 2).strip() + "…";
  }

  /** Regular words, broken where they say so and where the width asks for it. */
  public static List<String> broken(String text, double size, double width) {
    return text.lines().flatMap(l -> wrap(l, Weight.REGULAR, size, width).stream()).toList();
  }
}
