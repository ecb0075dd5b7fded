package facetwright.workbench.papers;

import facetwright.draw.ChartPages;
import facetwright.draw.Drawing;
import facetwright.draw.TemplatePages;
import facetwright.draw.TiledPages;
import facetwright.export.CutsWriter;
import facetwright.export.Exporter;
import facetwright.export.Exporters;
import facetwright.export.GuidesWriter;
import facetwright.export.HandoutWriter;
import facetwright.export.Job;
import facetwright.export.LayoutWriter;
import facetwright.export.Order;
import facetwright.script.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.SequencedMap;

/**
 * One of the papers of a design.
 *
 * @param name what a maker calls it
 * @param what a sentence on what it is good for
 * @param pages to look at; empty where it is only a file
 * @param exporter which writes it
 */
public record Paper(String name, String what, List<Drawing> pages, Exporter exporter) {
  public Paper {
    pages = List.copyOf(pages);
  }

  /** What exporters need to know of a design. */
  static Job job(Design design) {
    return new Job(
        design.title(), design.header().author(), design.unit(), design.laid(), design.folded());
  }

  SequencedMap<String, byte[]> files(Design design) {
    return exporter.files(job(design));
  }

  /** All papers of a design, those with pages first. */
  static List<Paper> of(Design design) {
    List<Paper> papers = new ArrayList<>();
    for (Exporter exporter : Exporters.all().sequencedValues()) {
      if (!exporter.adds(job(design))) {
        continue;
      }
      List<Drawing> pages =
          switch (exporter.format()) {
            case "pdf" -> TemplatePages.of(design.title(), design.unit(), design.laid());
            case "tiles" ->
                TiledPages.of(design.title(), design.laid(), Order.usual(design.unit()).paper());
            case "layout" -> LayoutWriter.pages(job(design));
            case "layers" -> CutsWriter.pages(job(design));
            case "handout" -> HandoutWriter.pages(job(design));
            case "guides" -> GuidesWriter.pages(job(design));
            case "chart" -> ChartPages.of(design.title(), design.unit(), design.laid());
            default -> List.of();
          };
      papers.add(new Paper(name(exporter), what(exporter), pages, exporter));
    }
    return List.copyOf(papers);
  }

  private static String name(Exporter exporter) {
    return switch (exporter.format()) {
      case "pdf" -> "Template";
      case "tiles" -> "Template over pages";
      case "layout" -> "Several from one sheet";
      case "layers" -> "Cutting the layers";
      case "guides" -> "Shopping list and guides";
      case "chart" -> "Score chart";
      case "handout" -> "Handout";
      case "html" -> "Handout as a web page";
      case "svg" -> "Template as SVG";
      case "dxf" -> "Cutting file (DXF)";
      case "fold" -> "Net and folded form (FOLD)";
      case "obj" -> "Folded model (OBJ)";
      case "stl" -> "Folded model (STL)";
      default -> exporter.fileName();
    };
  }

  private static String what(Exporter exporter) {
    return switch (exporter.format()) {
      case "pdf" -> "The net at true size, one page a sheet, with a check ruler.";
      case "tiles" -> "The net at true size over pages that your printer takes, to be joined.";
      case "layout" -> "As many as one sheet gives: how they lie, and the sheet at true size.";
      case "layers" -> "How to cut the decorative layers with a trimmer, cut by cut.";
      case "guides" -> "What to buy, and punch guides and tick strips at true size.";
      case "chart" -> "What to score, mark and cut, step by step, with measures for your ruler.";
      case "handout" -> "All a student needs: materials, chart, pictures, gluing order, template.";
      case "html" -> "The same as one web page, with a folded view that opens and turns.";
      case "svg" -> "The template's pages for a drawing program or a cutting machine.";
      case "dxf" -> "Cuts and scores on layers of their own, for a cutting machine.";
      case "fold" ->
          "The flat net and the folded form, for programs that read the open FOLD format.";
      case "obj", "stl" -> "The folded form in space, for a 3D program.";
      default -> "";
    };
  }
}
