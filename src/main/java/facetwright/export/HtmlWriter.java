package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.Turnable;
import facetwright.geom.Decimals;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * The handout as one web page that needs nothing else: words, pictures, a folded view that opens
 * and turns, and the templates, which print at true size. Without script the view is a still
 * picture. It is well-formed XML, too.
 */
public final class HtmlWriter implements Exporter {
  private static final double PICTURE = 80;
  private static final double VIEW = 150;

  @Override
  public String format() {
    return "html";
  }

  @Override
  public String fileName() {
    return "handout.html";
  }

  @Override
  public byte[] write(Job job) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory()
              .createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
      new Page(xml, HandoutContent.of(job), job).write();
      xml.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    return out.toByteArray();
  }

  /** One page being written. */
  private static final class Page {
    private final XMLStreamWriter xml;
    private final HandoutContent content;
    private final Job job;

    Page(XMLStreamWriter xml, HandoutContent content, Job job) {
      this.xml = xml;
      this.content = content;
      this.job = job;
    }

    void write() throws XMLStreamException {
      String title = Xml.clean(content.handout().title());
      xml.writeDTD("<!DOCTYPE html>");
      open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
      open("head");
      empty("meta", "charset", "utf-8");
      empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
      element("title", title.isBlank() ? "Handout" : title);
      element("style", resource("handout.css") + sheetSizes());
      close();
      open("body");
      open("main");
      element("h1", title);
      if (!content.handout().author().isBlank()) {
        element("p", "by " + Xml.clean(content.handout().author()));
      }
      for (Section section : content.handout().sections()) {
        section(section);
      }
      if (job.isSolved()) {
        view();
      }
      close();
      templates();
      close();
      close();
    }

    private void section(Section section) throws XMLStreamException {
      open("section");
      element("h2", section.heading());
      switch (section) {
        case Section.Facts facts -> list("ul", facts.lines());
        case Section.Ordered ordered -> list("ol", ordered.lines());
        case Section.Pictures shown -> {
          open("ol", "class", "steps");
          for (Picture picture : shown.pictures()) {
            open("li");
            open("figure");
            SvgWriter.element(
                xml, picture.alt(), content.pictures().of(picture, PICTURE, PICTURE), false);
            element("figcaption", Xml.clean(picture.words()));
            close();
            close();
          }
          close();
        }
      }
      close();
    }

    private void list(String kind, List<String> lines) throws XMLStreamException {
      open(kind);
      for (String line : lines) {
        element("li", Xml.clean(line));
      }
      close();
    }

    private void view() throws XMLStreamException {
      Picture made = new Picture.Folded(1, "", "The finished piece.");
      open("section", "class", "view");
      element("h2", "Open it and turn it");
      open("div", "id", "view", "role", "img", "aria-label", "The finished piece.");
      SvgWriter.element(xml, made.alt(), content.pictures().of(made, VIEW, VIEW), false);
      close();
      open("div", "id", "controls", "hidden", "hidden");
      open("label", "for", "open");
      xml.writeCharacters("From flat to made ");
      empty(
          "input", "id", "open", "type", "range", "min", "0", "max", "100", "step", "1", "value",
          "100");
      close();
      element("p", "Drag the picture to turn it, or press the arrow keys on it.");
      close();
      close();
      open("script");
      xml.writeCharacters("//");
      xml.writeCData(
          "\nconst folded = "
              + TurnableJson.of(Turnable.of(job.laid().net(), content.pictures()))
              + ";\n"
              + resource("handout.js")
              + "\n//");
      close();
    }

    private void templates() throws XMLStreamException {
      for (int i = 0; i < content.templates().size(); i++) {
        open("section", "class", "sheet sheet" + i);
        element("h2", "Template, page " + (i + 1) + " of " + content.templates().size());
        SvgWriter.element(
            xml,
            "Template, page " + (i + 1) + ", at true size when printed.",
            content.templates().get(i),
            false);
        close();
      }
    }

    /** Each template prints on a page of its own size. */
    private String sheetSizes() {
      StringBuilder css = new StringBuilder();
      for (int i = 0; i < content.templates().size(); i++) {
        Drawing page = content.templates().get(i);
        String size = mm(page.width()) + " " + mm(page.height());
        css.append("@page sheet").append(i).append(" { size: ").append(size);
        css.append("; margin: 0; }\n@media print { .sheet").append(i).append(" { page: sheet");
        css.append(i).append("; height: ").append(mm(page.height() - 0.3)).append("; } }\n");
      }
      return css.toString();
    }

    private static String mm(double length) {
      return Decimals.places(length, 2) + "mm";
    }

    private void open(String name, String... attributes) throws XMLStreamException {
      xml.writeCharacters("\n");
      xml.writeStartElement(name);
      attributes(attributes);
    }

    private void close() throws XMLStreamException {
      xml.writeEndElement();
    }

    private void empty(String name, String... attributes) throws XMLStreamException {
      xml.writeEmptyElement(name);
      attributes(attributes);
    }

    private void attributes(String... attributes) throws XMLStreamException {
      for (int i = 0; i < attributes.length; i += 2) {
        xml.writeAttribute(attributes[i], attributes[i + 1]);
      }
    }

    private void element(String name, String text) throws XMLStreamException {
      open(name);
      xml.writeCharacters(text);
      close();
    }
  }

  private static String resource(String name) {
    try (InputStream in = HtmlWriter.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
