package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.picture.Block;
import facetwright.draw.picture.HandoutPictures;
import facetwright.draw.picture.Turnable;
import facetwright.language.Telling;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import facetwright.papers.order.Named;
import java.io.ByteArrayOutputStream;
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
final class HtmlWriter implements Exporter {
  /** So wide, in mm, a picture and its words of 8 pt are legible on the narrowest telephone. */
  private static final double PICTURE = 74;

  private static final double TALL = 56;

  /** Shown larger by so much, words of 8 pt are 12 pixels of a web page high. */
  private static final double ZOOM = 1.15;

  private static final double VIEW = 150;

  @Override
  public String format() {
    return "html";
  }

  @Override
  public String ending() {
    return "handout.html";
  }

  @Override
  public String name() {
    return "Handout as a web page";
  }

  @Override
  public String use() {
    return "The same for a screen, with a folded view that opens and turns.";
  }

  @Override
  public String paper(Job job) {
    return Named.paper("handout", reader(job));
  }

  @Override
  public byte[] write(Job job) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory()
              .createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
      new Page(xml, title(job), job.handout(), job).write();
      xml.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    return out.toByteArray();
  }

  /** One page being written. */
  private static final class Page {
    private static final String[] NONE = {};
    private final XMLStreamWriter xml;
    private final String told;
    private final HandoutContent content;
    private final Job job;
    private final Telling tell;
    private int number = 1;

    Page(XMLStreamWriter xml, String told, HandoutContent content, Job job) {
      this.xml = xml;
      this.told = Xml.clean(told);
      this.content = content;
      this.job = job;
      this.tell = job.order().telling();
    }

    void write() throws XMLStreamException {
      String title = Xml.clean(content.handout().title());
      xml.writeDTD("<!DOCTYPE html>");
      open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", job.order().language().tag());
      open("head");
      empty("meta", "charset", "utf-8");
      empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
      element("title", told);
      element("style", HtmlStyle.of(job, content.templates()));
      close();
      open("body");
      open("main");
      element("h1", title);
      if (!content.handout().author().isBlank()) {
        element("p", tell.say("handout.author", "author", Xml.clean(content.handout().author())));
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
      element("h2", Xml.words(section.heading()));
      switch (section) {
        case Section.Facts facts -> {
          if (facts.picture().isPresent()) {
            open("figure", "class", "made");
            picture(facts.picture().get(), PICTURE, PICTURE);
            close();
          }
          list("ul", facts.lines());
        }
        case Section.Ordered ordered -> list("ol", ordered.lines());
        case Section.Steps steps -> {
          for (String note : steps.notes()) {
            element("p", Xml.words(note));
          }
          figures("chart", steps.pictures());
        }
        case Section.Pictures shown -> figures("steps", shown.pictures());
      }
      number += section.count();
      close();
    }

    private void figures(String kind, List<Picture> pictures) throws XMLStreamException {
      open("ol", "class", kind);
      int step = number;
      for (Picture picture : pictures) {
        open("li");
        open("figure");
        HandoutPictures.Told told = content.pictures().told(picture, PICTURE, TALL);
        picture(picture.alt(), told.block());
        open("figcaption");
        element("b", step++ + ".");
        List<String> lines = told.words().lines().toList();
        for (int i = 0; i < lines.size(); i++) {
          if (i > 0) {
            xml.writeEmptyElement("br");
          }
          xml.writeCharacters(" " + Xml.words(lines.get(i)));
        }
        close();
        close();
        close();
      }
      close();
    }

    private void picture(Picture picture, double width, double height) throws XMLStreamException {
      picture(picture.alt(), content.pictures().block(picture, width, height));
    }

    private void picture(String alt, Block block) throws XMLStreamException {
      Drawing drawing = new Drawing(block.width(), block.height(), block.marks());
      SvgWriter.element(xml, alt, drawing, ZOOM);
    }

    private void list(String kind, List<String> lines) throws XMLStreamException {
      open(kind, kind.equals("ol") ? new String[] {"start", String.valueOf(number)} : NONE);
      for (String line : lines) {
        element("li", Xml.words(line));
      }
      close();
    }

    private void view() throws XMLStreamException {
      Picture made = new Picture.Folded(1, "", tell.say("handout.alt-made"));
      open("section", "class", "view");
      element("h2", tell.say("handout.view-heading"));
      open(
          "div",
          "id",
          "view",
          "role",
          "img",
          "aria-label",
          made.alt(),
          "data-told",
          tell.say("handout.view-alt", "percent", "#"));
      SvgWriter.element(xml, made.alt(), content.pictures().of(made, VIEW, VIEW), 1);
      close();
      open("div", "id", "controls", "hidden", "hidden");
      open("label", "for", "open");
      xml.writeCharacters(tell.say("handout.view-slider") + " ");
      empty(
          "input", "id", "open", "type", "range", "min", "0", "max", "100", "step", "1", "value",
          "100");
      close();
      element("p", tell.say("handout.view-drag"));
      close();
      close();
      open("script");
      xml.writeCharacters("//");
      xml.writeCData(
          "\nconst folded = "
              + TurnableJson.of(Turnable.of(job.laid().net(), content.pictures()))
              + ";\n"
              + HtmlStyle.resource("handout.js")
              + "\n//");
      close();
    }

    private void templates() throws XMLStreamException {
      for (int i = 0; i < content.templates().size(); i++) {
        open("section", "class", "sheet sheet" + i);
        element(
            "h2",
            tell.say("handout.template-page", "page", i + 1, "pages", content.templates().size()));
        element("p", tell.say("handout.template-small"));
        SvgWriter.element(
            xml, tell.say("handout.template-alt", "page", i + 1), content.templates().get(i), 1);
        close();
      }
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
}
