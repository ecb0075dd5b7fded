package facetwright.workbench.papers;

import facetwright.draw.Drawing;
import facetwright.export.ChartWriter;
import facetwright.export.CutsWriter;
import facetwright.export.Exporter;
import facetwright.export.Exporters;
import facetwright.export.GuidesWriter;
import facetwright.export.HandoutWriter;
import facetwright.export.Job;
import facetwright.export.LayoutWriter;
import facetwright.export.RingWriter;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import java.util.ArrayList;
import java.util.List;

/**
 * One of the papers of a design.
 *
 * @param name what a maker calls it
 * @param what a sentence on what it is good for
 * @param exporter which writes it
 */
record Paper(String name, String what, Exporter exporter) {

  /** What exporters need to know of a design, for an order. */
  static Job job(Design design, Order order) {
    return new Job(design.title(), design.header().author(), design.laid(), design.folded(), order);
  }

  /** All papers of a job, those with pages first. */
  static List<Paper> of(Job job) {
    List<Exporter> exporters = new ArrayList<>();
    exporters.addAll(Exporters.all().sequencedValues());
    exporters.add(1, new RingWriter());
    return exporters.stream()
        .filter(e -> e.adds(job))
        .map(e -> new Paper(name(e, job), what(e), e))
        .toList();
  }

  /**
   * The pages to look at and to print; empty where it is only a file.
   *
   * @throws facetwright.export.file.ExportException when it can't be made of this job
   */
  List<Drawing> pages(Job job) {
    return switch (exporter.format()) {
      case "pdf" -> job.templates();
      case "tiles" -> job.tiles();
      case "layout" -> LayoutWriter.pages(job);
      case "ring" -> RingWriter.pages(job);
      case "layers" -> CutsWriter.pages(job);
      case "guides" -> GuidesWriter.pages(job);
      case "handout" -> HandoutWriter.pages(job);
      case "chart" -> ChartWriter.pages(job);
      default -> List.of();
    };
  }

  private static String name(Exporter exporter, Job job) {
    return switch (exporter.format()) {
      case "pdf" -> "Template";
      case "tiles" -> "Template over pages";
      case "layout" -> "Several from one sheet";
      case "ring" -> "Ring of " + job.order().copies();
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
      case "ring" -> "All pieces side by side in a circle: which facets meet, and what it takes.";
      case "layers" -> "How to cut the decorative layers with a trimmer, cut by cut.";
      case "guides" -> "What to buy, and punch guides and tick strips at true size.";
      case "chart" -> "What to score, mark and cut, step by step, with measures for your ruler.";
      case "handout" -> "Everything a learner needs, in order, with pictures of each step.";
      case "html" -> "The same for a screen, with a folded view that opens and turns.";
      case "svg" -> "The template's pages for a drawing program or a cutting machine.";
      case "dxf" -> "Cuts and scores on layers of their own, for a cutting machine.";
      case "fold" ->
          "The flat net and the folded form, for programs that read the open FOLD format.";
      case "obj", "stl" -> "The folded form in space, for a 3D program.";
      default -> "";
    };
  }
}
