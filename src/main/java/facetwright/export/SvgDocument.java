package facetwright.export;

import facetwright.words.Decimals;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** The frame of an SVG picture in mm, and its numbers. */
final class SvgDocument {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private SvgDocument() {}

  static XMLStreamWriter begin(OutputStream out) throws XMLStreamException {
    XMLStreamWriter xml =
        XMLOutputFactory.newDefaultFactory()
            .createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
    xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
    xml.writeCharacters("\n");
    return xml;
  }

  /** Ends a picture that is the whole document. */
  static void end(XMLStreamWriter xml) throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeEndElement();
    xml.writeCharacters("\n");
    xml.writeEndDocument();
    xml.close();
  }

  /** Begins a picture of so many mm. */
  static void open(XMLStreamWriter xml, String title, double width, double height, double zoom)
      throws XMLStreamException {
    xml.writeStartElement("svg");
    xml.writeDefaultNamespace(NAMESPACE);
    xml.writeAttribute("version", "1.1");
    xml.writeAttribute("width", number(width * zoom) + "mm");
    xml.writeAttribute("height", number(height * zoom) + "mm");
    xml.writeAttribute("viewBox", "0 0 " + number(width) + " " + number(height));
    title(xml, Xml.clean(title));
  }

  static void title(XMLStreamWriter xml, String title) throws XMLStreamException {
    xml.writeCharacters("\n");
    xml.writeStartElement("title");
    xml.writeCharacters(title);
    xml.writeEndElement();
  }

  static String number(double value) {
    return Decimals.places(value, 5);
  }
}
