package facetwright.export;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What a reader of the format finds on the pages of a document. */
final class PdfReading {
  private static final double POINT = 25.4 / 72;

  private PdfReading() {}

  /** A letter: its size in points, and its place in mm from the page's upper left corner. */
  record Letter(String text, double size, double x, double y, double width) {}

  /** A straight stroke, its ends in mm. */
  record Line(double x1, double y1, double x2, double y2) {
    double length() {
      return Math.hypot(x2 - x1, y2 - y1);
    }

    boolean isStraightOnPage() {
      return Math.abs(x2 - x1) < 1e-3 || Math.abs(y2 - y1) < 1e-3;
    }
  }

  /** One page. */
  record Page(double width, double height, String words, List<Letter> letters, List<Line> lines) {}

  static List<Page> of(byte[] pdf) throws IOException {
    List<Page> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        PDPage page = document.getPage(i);
        Letters letters = new Letters();
        letters.setStartPage(i + 1);
        letters.setEndPage(i + 1);
        String words = letters.getText(document);
        Strokes strokes = new Strokes(page);
        strokes.processPage(page);
        pages.add(
            new Page(
                page.getMediaBox().getWidth() * POINT,
                page.getMediaBox().getHeight() * POINT,
                words,
                letters.found,
                strokes.found));
      }
    }
    return pages;
  }

  private static final class Letters extends PDFTextStripper {
    private final List<Letter> found = new ArrayList<>();

    @Override
    protected void processTextPosition(TextPosition at) {
      // The matrix takes one unit of the type's height to points on the page.
      double size = Math.hypot(at.getTextMatrix().getShearY(), at.getTextMatrix().getScaleY());
      found.add(
          new Letter(
              at.getUnicode(), size, at.getX() * POINT, at.getY() * POINT, at.getWidth() * POINT));
      super.processTextPosition(at);
    }
  }

  private static final class Strokes extends PDFGraphicsStreamEngine {
    private final List<Line> found = new ArrayList<>();
    private final List<Line> path = new ArrayList<>();
    private Point2D at = new Point2D.Double();
    private Point2D start = new Point2D.Double();

    Strokes(PDPage page) {
      super(page);
    }

    @Override
    public void moveTo(float x, float y) {
      at = new Point2D.Double(x, y);
      start = at;
    }

    @Override
    public void lineTo(float x, float y) {
      Point2D to = new Point2D.Double(x, y);
      path.add(
          new Line(at.getX() * POINT, at.getY() * POINT, to.getX() * POINT, to.getY() * POINT));
      at = to;
    }

    @Override
    public void closePath() {
      lineTo((float) start.getX(), (float) start.getY());
    }

    @Override
    public void strokePath() {
      found.addAll(path);
      path.clear();
    }

    @Override
    public void endPath() {
      path.clear();
    }

    @Override
    public void fillPath(int rule) {
      path.clear();
    }

    @Override
    public void fillAndStrokePath(int rule) {
      strokePath();
    }

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

    @Override
    public void curveTo(float a, float b, float c, float d, float x, float y) {
      at = new Point2D.Double(x, y);
    }

    @Override
    public Point2D getCurrentPoint() {
      return at;
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int rule) {}

    @Override
    public void shadingFill(COSName name) {}
  }
}
