package facetwright.papers.order;

import facetwright.language.Language;
import facetwright.language.Phrases;
import facetwright.language.Telling;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.CommonSheets;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.chart.Measure;
import java.util.Objects;

/**
 * What the papers of a design are for.
 *
 * @param copies how many pieces are to be made, 1 to {@link #MOST}
 * @param page what the printer takes
 * @param ruler the maker's: what is set is told by it
 * @param unit what is only read, such as a finished size, is told in it
 * @param language what a learner reads them in
 * @param pixels width of a picture in pixels, {@link #LEAST_PIXELS} to {@link #MOST_PIXELS}
 */
public record Order(
    int copies, SheetSize page, Ruler ruler, Unit unit, Language language, int pixels) {
  /** More than a school has pupils. */
  public static final int MOST = 10_000;

  /** In fewer pixels no form is made out. */
  public static final int LEAST_PIXELS = 100;

  /** As much as the widest sheet, 1 m of it, has at 250 to the inch. */
  public static final int MOST_PIXELS = 10_000;

  /** Wide enough for a web page. */
  public static final int USUAL_PIXELS = 1200;

  /** The check ruler and the words beside it need so much of a page, in mm. */
  private static final double NARROWEST = 200;

  /**
   * @throws IllegalArgumentException when the number of copies or of pixels is out of range
   */
  public Order {
    Objects.requireNonNull(page);
    Objects.requireNonNull(ruler);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(language);
    if (copies < 1 || copies > MOST) {
      throw new IllegalArgumentException("1 to " + MOST + " copies can be made, not " + copies);
    }
    if (pixels < LEAST_PIXELS || pixels > MOST_PIXELS) {
      throw new IllegalArgumentException(
          "pictures are " + LEAST_PIXELS + " to " + MOST_PIXELS + " pixels wide, not " + pixels);
    }
  }

  /**
   * One piece in English, on A4 by a ruler of 0.5 mm, or for designs in inches on Letter by 1/16
   * in.
   */
  public static Order usual(Unit unit) {
    return new Order(
        1, CommonSheets.page(unit), Ruler.usual(unit), unit, Language.ENGLISH, USUAL_PIXELS);
  }

  /** Why smaller pages than are offered are none, with the least that is. */
  public static String leastPage(Unit unit) {
    return "each page carries a check ruler and its words, which need "
        + new Length(NARROWEST).text(unit)
        + " each way";
  }

  /** Whether there is room on such a page for all that stands on one. */
  public static boolean isPage(SheetSize size) {
    return Math.min(size.width(), size.height()) >= NARROWEST;
  }

  /** The same for so many pieces. */
  public Order of(int pieces) {
    return new Order(pieces, page, ruler, unit, language, pixels);
  }

  /** The same on such pages. */
  public Order on(SheetSize other) {
    return new Order(copies, other, ruler, unit, language, pixels);
  }

  /** The same for a maker with such a ruler. */
  public Order by(Ruler other) {
    return new Order(copies, page, other, unit, language, pixels);
  }

  /** The same for a reader of that language. */
  public Order in(Language other) {
    return new Order(copies, page, ruler, unit, other, pixels);
  }

  /** How its reader is told. */
  public Telling telling() {
    return new Telling(Phrases.of(language), unit, ruler);
  }

  /** The same with pictures so many pixels wide. */
  public Order wide(int other) {
    return new Order(copies, page, ruler, unit, language, other);
  }

  /**
   * A measure that is set, in words: what the ruler reads; off its marks what it should be, the
   * nearest mark, and by how much that misses.
   *
   * @param mm in mm
   */
  public String measure(double mm) {
    return Measure.of(mm, ruler).set(telling());
  }
}
