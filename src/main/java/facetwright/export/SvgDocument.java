package facetwright.export;

import facetwright.words.Decimals;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.function.BiFunction;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** The frame of an SVG picture in mm, and its numbers. */
final class SvgDocument {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private SvgDocument() {}

  /** What stands in a picture. */
  @FunctionalInterface
  interface Body {
    void write(XMLStreamWriter xml) throws XMLStreamException;
  }

  /** A whole document of so many mm. */
  static byte[] of(String title, double width, double height, Body body) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory()
              .createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
      xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
      xml.writeCharacters("\n");
      open(xml, title, width, height, 1);
      body.write(xml);
      xml.writeCharacters("\n");
      xml.writeEndElement();
      xml.writeCharacters("\n");
      xml.writeEndDocument();
      xml.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    return out.toByteArray();
  }

  /**
   * A file for each of some pages, by name; of several each says which it is.
   *
   * @param draw makes a document of a title and a page
   */
  static <T> SequencedMap<String, byte[]> files(
      Exporter of, Job job, List<T> pages, BiFunction<String, T, byte[]> draw) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    for (T page : pages) {
      int number = files.size() + 1;
      String title = pages.size() == 1 ? of.title(job) : sheet(of, job, number);
      files.put(job.named().file(of.ending(), number), draw.apply(title, page));
    }
    return files;
  }

  /** What the file of one sheet of several says it is. */
  static String sheet(Exporter of, Job job, int number) {
    return of.reader(job).say("page.sheet", "title", of.title(job), "sheet", number);
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
