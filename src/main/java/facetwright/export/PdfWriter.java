package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.Ink;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.geom.Leg;
import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec2;
import facetwright.language.Language;
import facetwright.pace.Pace;
import facetwright.papers.order.Named;
import java.awt.Color;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/**
 * The template as a document of true-size pages. Each kind of line is a layer that a viewer can
 * hide; the file asks the printer not to scale.
 */
public final class PdfWriter implements Exporter {
  /** In place of the time, from which the file's mark of identity is usually made. */
  private static final long FIXED_ID = 1;

  @Override
  public String format() {
    return "pdf";
  }

  @Override
  public String ending() {
    return Named.TEMPLATE;
  }

  @Override
  public String name() {
    return "Template";
  }

  @Override
  public String use() {
    return "The net at true size, one page a sheet, with a check ruler.";
  }

  @Override
  public List<Drawing> pages(Job job) {
    return job.templates();
  }

  /** Any pages as a document in a language. */
  public static byte[] write(String title, String author, Language language, List<Drawing> pages) {
    try (PDDocument document = new PDDocument()) {
      document.setVersion(1.7f);
      document.setDocumentId(FIXED_ID);
      document.getDocumentInformation().setTitle(title);
      if (!author.isBlank()) {
        document.getDocumentInformation().setAuthor(author);
      }
      document.getDocumentInformation().setCreator("Facetwright");
      document.getDocumentCatalog().setLanguage(language.tag());
      PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
      preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
      preferences.setDisplayDocTitle(true);
      document.getDocumentCatalog().setViewerPreferences(preferences);
      new Pages(document).add(pages);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The pages of one document with what they share. */
  private static final class Pages {
    private final PDDocument document;
    private final PDOptionalContentProperties properties = new PDOptionalContentProperties();
    private final Map<String, PDOptionalContentGroup> groups = new LinkedHashMap<>();
    private final Map<Mark.Weight, PDFont> fonts = new EnumMap<>(Mark.Weight.class);

    Pages(PDDocument document) {
      this.document = document;
    }

    void add(List<Drawing> pages) throws IOException {
      for (Drawing page : pages) {
        add(page);
      }
      bookmarks(pages);
      document.getDocumentCatalog().setOCProperties(properties);
    }

    /** Every heading, by which a viewer leads to its page. */
    private void bookmarks(List<Drawing> pages) {
      PDDocumentOutline outline = new PDDocumentOutline();
      for (int i = 0; i < pages.size(); i++) {
        for (Drawing.Heading heading : pages.get(i).headings()) {
          PDPageXYZDestination there = new PDPageXYZDestination();
          there.setPage(document.getPage(i));
          there.setTop((int) Math.ceil(heading.top() * Lettering.POINTS_PER_MM));
          PDOutlineItem item = new PDOutlineItem();
          item.setTitle(heading.text());
          item.setDestination(there);
          outline.addLast(item);
        }
      }
      if (outline.hasChildren()) {
        document.getDocumentCatalog().setDocumentOutline(outline);
      }
    }

    private void add(Drawing drawing) throws IOException {
      PDPage page =
          new PDPage(
              new PDRectangle(
                  (float) (drawing.width() * Lettering.POINTS_PER_MM),
                  (float) (drawing.height() * Lettering.POINTS_PER_MM)));
      document.addPage(page);
      try (PDPageContentStream out = new PDPageContentStream(document, page)) {
        out.transform(
            Matrix.getScaleInstance(
                (float) Lettering.POINTS_PER_MM, (float) Lettering.POINTS_PER_MM));
        out.setLineCapStyle(0);
        out.setLineJoinStyle(1);
        for (PageLayers.Layer layer : PageLayers.of(drawing)) {
          out.beginMarkedContent(COSName.OC, group(layer.label()));
          for (Mark mark : layer.marks()) {
            Pace.step();
            draw(out, mark);
          }
          out.endMarkedContent();
        }
      }
    }

    private PDOptionalContentGroup group(String label) {
      return groups.computeIfAbsent(
          label,
          name -> {
            PDOptionalContentGroup group = new PDOptionalContentGroup(name);
            properties.addGroup(group);
            return group;
          });
    }

    private void draw(PDPageContentStream out, Mark mark) throws IOException {
      switch (mark) {
        case Mark.Stroke s -> {
          pen(out, s.kind());
          path(out, s);
          if (s.closed()) {
            out.closePath();
          }
          out.stroke();
        }
        case Mark.Circle c -> {
          pen(out, c.kind());
          out.moveTo((float) (c.centre().x() + c.radius()), (float) c.centre().y());
          arc(out, c.centre(), new Vec2(c.radius(), 0), 2 * Math.PI);
          out.closePath();
          out.stroke();
        }
        case Mark.Fill f -> area(out, f.rings(), f.kind().ink());
        case Mark.Patch p -> {
          area(out, p.rings(), p.ink());
          for (Mark.Stroke edge : p.edges()) {
            draw(out, edge);
          }
        }
        case Mark.Text t -> text(out, t);
      }
    }

    private void area(PDPageContentStream out, List<Polygon2> rings, Ink ink) throws IOException {
      out.setNonStrokingColor(colour(ink));
      for (Polygon2 ring : rings) {
        path(out, ring.corners());
        out.closePath();
      }
      out.fillEvenOdd();
    }

    private void text(PDPageContentStream out, Mark.Text t) throws IOException {
      String content = Lettering.printable(t.content());
      Vec2 start = t.at().minus(Vec2.polar(t.back(), Math.toRadians(t.angle())));
      out.beginText();
      out.setNonStrokingColor(colour(t.ink()));
      out.setFont(font(t.weight()), (float) t.size());
      out.setTextMatrix(
          Matrix.getRotateInstance(
              Math.toRadians(t.angle()), (float) start.x(), (float) start.y()));
      out.showText(content);
      out.endText();
    }

    private PDFont font(Mark.Weight weight) throws IOException {
      PDFont font = fonts.get(weight);
      if (font == null) {
        font =
            PDType0Font.load(
                document,
                new ByteArrayInputStream(Lettering.file(weight)),
                /* embedSubset= */ true);
        fonts.put(weight, font);
      }
      return font;
    }

    private static void pen(PDPageContentStream out, LineKind kind) throws IOException {
      out.setStrokingColor(colour(kind.ink()));
      out.setLineWidth((float) kind.width());
      float[] dashes = new float[kind.dashes().size()];
      for (int i = 0; i < dashes.length; i++) {
        dashes[i] = kind.dashes().get(i).floatValue();
      }
      out.setLineDashPattern(dashes, 0);
    }

    private static void path(PDPageContentStream out, List<Vec2> points) throws IOException {
      out.moveTo((float) points.getFirst().x(), (float) points.getFirst().y());
      for (Vec2 p : points.subList(1, points.size())) {
        out.lineTo((float) p.x(), (float) p.y());
      }
    }

    private static void path(PDPageContentStream out, Mark.Stroke stroke) throws IOException {
      if (stroke.arcs().isEmpty()) {
        path(out, stroke.points());
        return;
      }
      List<Leg> legs = stroke.legs();
      Vec2 start = legs.getFirst().from();
      out.moveTo((float) start.x(), (float) start.y());
      for (Leg leg : legs) {
        if (leg.isStraight()) {
          out.lineTo((float) leg.to().x(), (float) leg.to().y());
        } else {
          arc(out, leg.centre(), leg.from().minus(leg.centre()), leg.turn());
        }
      }
    }

    /**
     * On from a place on a circle, by cubic curves of an eighth of it at most: arms of 4/3 tan(turn
     * / 4) of the radius (from memory), off by less than 0.0005 % of it.
     */
    private static void arc(PDPageContentStream out, Vec2 centre, Vec2 from, double turn)
        throws IOException {
      int curves = (int) Math.ceil(Math.abs(turn) / (Math.PI / 4) - RoundOff.PART);
      double step = turn / curves;
      double arm = 4.0 / 3 * Math.tan(step / 4);
      for (int i = 0; i < curves; i++) {
        Vec2 u = Motion2.turn(i * step).apply(from);
        Vec2 v = Motion2.turn((i + 1) * step).apply(from);
        Vec2 a = centre.plus(u).plus(u.left().times(arm));
        Vec2 b = centre.plus(v).minus(v.left().times(arm));
        Vec2 end = centre.plus(v);
        out.curveTo(
            (float) a.x(),
            (float) a.y(),
            (float) b.x(),
            (float) b.y(),
            (float) end.x(),
            (float) end.y());
      }
    }

    private static Color colour(Ink ink) {
      return new Color(ink.rgb());
    }
  }
}
