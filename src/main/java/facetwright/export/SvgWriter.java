package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.draw.LineKind;
import facetwright.draw.Mark;
import facetwright.geom.Leg;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.pace.Pace;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SequencedMap;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** The template as vector pictures, one file a page, one group a kind of line; units are mm. */
public final class SvgWriter implements Exporter {
  @Override
  public String format() {
    return "svg";
  }

  @Override
  public String ending() {
    return "template.svg";
  }

  @Override
  public String name() {
    return "Template as SVG";
  }

  @Override
  public String use() {
    return "The template's pages for a drawing program.";
  }

  @Override
  public byte[] write(Job job) {
    return files(job).firstEntry().getValue();
  }

  @Override
  public SequencedMap<String, byte[]> files(Job job) {
    return SvgDocument.files(this, job, job.templates(), SvgWriter::write);
  }

  /** Any page as a picture. */
  public static byte[] write(String title, Drawing page) {
    return SvgDocument.of(title, page.width(), page.height(), xml -> layers(xml, page, true));
  }

  /**
   * The picture as an element of a larger document, its groups without names that could clash.
   *
   * @param zoom how much larger than life it is shown
   */
  static void element(XMLStreamWriter xml, String title, Drawing page, double zoom)
      throws XMLStreamException {
    SvgDocument.open(xml, title, page.width(), page.height(), zoom);
    layers(xml, page, false);
    xml.writeCharacters("\n");
    xml.writeEndElement();
  }

  private static void layers(XMLStreamWriter xml, Drawing page, boolean alone)
      throws XMLStreamException {
    for (PageLayers.Layer layer : PageLayers.of(page)) {
      xml.writeCharacters("\n");
      xml.writeStartElement("g");
      if (alone) {
        xml.writeAttribute("id", layer.id());
      }
      style(xml, layer.marks().getFirst(), alone);
      SvgDocument.title(xml, layer.label());
      for (Mark mark : layer.marks()) {
        Pace.step();
        xml.writeCharacters("\n");
        mark(xml, mark, page.height());
      }
      xml.writeCharacters("\n");
      xml.writeEndElement();
    }
  }

  private static void style(XMLStreamWriter xml, Mark first, boolean alone)
      throws XMLStreamException {
    switch (first) {
      case Mark.Stroke s -> pen(xml, s.kind());
      case Mark.Circle c -> pen(xml, c.kind());
      case Mark.Fill f -> {
        xml.writeAttribute("fill", f.kind().ink().hex());
        xml.writeAttribute("fill-rule", "evenodd");
      }
      case Mark.Patch _ -> {
        xml.writeAttribute("fill-rule", "evenodd");
        xml.writeAttribute("stroke-linejoin", "round");
      }
      case Mark.Text _ when alone -> xml.writeAttribute("font-family", "Lato, Carlito, sans-serif");
      // A larger document has a typeface of its own.
      case Mark.Text _ -> {}
    }
  }

  private static void pen(XMLStreamWriter xml, LineKind kind) throws XMLStreamException {
    xml.writeAttribute("fill", "none");
    xml.writeAttribute("stroke", kind.ink().hex());
    xml.writeAttribute("stroke-width", SvgDocument.number(kind.width()));
    xml.writeAttribute("stroke-linejoin", "round");
    if (!kind.dashes().isEmpty()) {
      xml.writeAttribute("stroke-dasharray", dashes(kind));
    }
  }

  static void mark(XMLStreamWriter xml, Mark mark, double height) throws XMLStreamException {
    switch (mark) {
      case Mark.Stroke s -> {
        xml.writeEmptyElement("path");
        xml.writeAttribute("d", path(s, height));
      }
      case Mark.Circle c -> {
        xml.writeEmptyElement("circle");
        xml.writeAttribute("cx", SvgDocument.number(c.centre().x()));
        xml.writeAttribute("cy", SvgDocument.number(height - c.centre().y()));
        xml.writeAttribute("r", SvgDocument.number(c.radius()));
      }
      case Mark.Fill f -> {
        xml.writeEmptyElement("path");
        xml.writeAttribute("d", area(f.rings(), height));
      }
      case Mark.Patch p -> patch(xml, p, height);
      case Mark.Text t -> text(xml, t, height);
    }
  }

  /** An area outlined all round in one kind of line is one path, another has one more a kind. */
  private static void patch(XMLStreamWriter xml, Mark.Patch patch, double height)
      throws XMLStreamException {
    Map<LineKind, List<Mark.Stroke>> edges =
        patch.edges().stream()
            .collect(
                Collectors.groupingBy(
                    Mark.Stroke::kind, () -> new EnumMap<>(LineKind.class), Collectors.toList()));
    boolean isOutlined =
        edges.size() == 1
            && patch.edges().size() == patch.rings().size()
            && patch.edges().stream().allMatch(Mark.Stroke::closed);
    xml.writeEmptyElement("path");
    xml.writeAttribute("d", area(patch.rings(), height));
    xml.writeAttribute("fill", patch.ink().hex());
    for (Map.Entry<LineKind, List<Mark.Stroke>> edge : edges.entrySet()) {
      if (!isOutlined) {
        xml.writeEmptyElement("path");
        xml.writeAttribute(
            "d",
            edge.getValue().stream().map(s -> path(s, height)).collect(Collectors.joining(" ")));
        xml.writeAttribute("fill", "none");
      }
      xml.writeAttribute("stroke", edge.getKey().ink().hex());
      xml.writeAttribute("stroke-width", SvgDocument.number(edge.getKey().width()));
      if (!edge.getKey().dashes().isEmpty()) {
        xml.writeAttribute("stroke-dasharray", dashes(edge.getKey()));
      }
    }
  }

  private static String dashes(LineKind kind) {
    return kind.dashes().stream().map(SvgDocument::number).collect(Collectors.joining(" "));
  }

  private static String area(List<Polygon2> rings, double height) {
    return rings.stream()
        .map(Polygon2::corners)
        .map(c -> path(c, true, height))
        .collect(Collectors.joining(" "));
  }

  private static void text(XMLStreamWriter xml, Mark.Text t, double height)
      throws XMLStreamException {
    String x = SvgDocument.number(t.at().x());
    String y = SvgDocument.number(height - t.at().y());
    xml.writeStartElement("text");
    xml.writeAttribute("x", x);
    xml.writeAttribute("y", y);
    xml.writeAttribute("font-size", SvgDocument.number(t.size()));
    xml.writeAttribute("fill", t.ink().hex());
    if (t.weight() == Mark.Weight.BOLD) {
      xml.writeAttribute("font-weight", "bold");
    }
    switch (t.anchor()) {
      case START -> {}
      case MIDDLE -> xml.writeAttribute("text-anchor", "middle");
      case END -> xml.writeAttribute("text-anchor", "end");
    }
    // Another typeface may stand in for ours: it has to keep to the width that was measured.
    xml.writeAttribute("textLength", SvgDocument.number(t.width()));
    xml.writeAttribute("lengthAdjust", "spacingAndGlyphs");
    if (t.angle() != 0) {
      xml.writeAttribute(
          "transform", "rotate(" + SvgDocument.number(-t.angle()) + " " + x + " " + y + ")");
    }
    xml.writeCharacters(Lettering.printable(t.content()));
    xml.writeEndElement();
  }

  /** Arcs as elliptical arcs (SVG 1.1, 8.3.8); y runs down there, so that left turns sweep by 0. */
  private static String path(Mark.Stroke stroke, double height) {
    if (stroke.arcs().isEmpty()) {
      return path(stroke.points(), stroke.closed(), height);
    }
    List<Leg> legs = stroke.legs();
    StringBuilder path = new StringBuilder("M" + place(legs.getFirst().from(), height));
    for (Leg leg : legs) {
      String radius = SvgDocument.number(leg.radius());
      path.append(
          leg.isStraight()
              ? " L"
              : " A%s,%s 0 %d,%d "
                  .formatted(
                      radius,
                      radius,
                      Math.abs(leg.turn()) > Math.PI ? 1 : 0,
                      leg.turn() > 0 ? 0 : 1));
      path.append(place(leg.to(), height));
    }
    return path + (stroke.closed() ? " Z" : "");
  }

  private static String place(Vec2 p, double height) {
    return SvgDocument.number(p.x()) + "," + SvgDocument.number(height - p.y());
  }

  private static String path(List<Vec2> points, boolean closed, double height) {
    return points.stream()
        .map(p -> place(p, height))
        .collect(Collectors.joining(" L", "M", closed ? " Z" : ""));
  }
}
