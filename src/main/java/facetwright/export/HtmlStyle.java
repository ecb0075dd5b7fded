package facetwright.export;

import facetwright.draw.Drawing;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.net.sheet.SheetSize;
import facetwright.words.Decimals;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Objects;

/** How the handout's page looks: its typefaces, its style, and the pages it prints on. */
final class HtmlStyle {
  private HtmlStyle() {}

  /** The whole style sheet. */
  static String of(Job job, List<Drawing> templates) {
    return typefaces() + resource("handout.css") + sheetSizes(job, templates);
  }

  /** Words are set as on paper, whatever the reader's machine has. */
  private static String typefaces() {
    StringBuilder css = new StringBuilder();
    for (Mark.Weight weight : Mark.Weight.values()) {
      css.append("@font-face { font-family: \"Facetwright Sans\"; font-weight: ")
          .append(weight == Mark.Weight.BOLD ? "bold" : "normal")
          .append("; src: url(data:font/ttf;base64,")
          .append(Base64.getEncoder().encodeToString(Lettering.file(weight)))
          .append("); }\n");
    }
    return css.toString();
  }

  /** Words print on the printer's page, each template on a page of its own size. */
  private static String sheetSizes(Job job, List<Drawing> templates) {
    SheetSize printed = job.order().page();
    StringBuilder css = new StringBuilder("@page { size: " + mm(printed.width()) + " ");
    css.append(mm(printed.height())).append("; margin: 15mm; }\n");
    for (int i = 0; i < templates.size(); i++) {
      Drawing page = templates.get(i);
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

  /** A file that comes with the program. */
  static String resource(String name) {
    try (InputStream in = HtmlStyle.class.getResourceAsStream(name)) {
      Objects.requireNonNull(in, () -> name + " is missing from the program");
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
