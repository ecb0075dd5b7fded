package facetwright.workbench.papers;

import facetwright.export.Exporter;
import facetwright.export.Exporters;
import facetwright.export.Job;
import facetwright.papers.handout.Judgement;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import java.util.List;

/**
 * One of the papers of a design.
 *
 * @param name what a maker calls it
 * @param exporter which writes it
 */
record Paper(String name, Exporter exporter) {

  /** What exporters need to know of a design, for an order. */
  static Job job(Design design, Order order) {
    return new Job(
            design.title(),
            design.header().author(),
            design.laid(),
            design.gluing(),
            order,
            Judgement.of(design.laid(), design.folded(), design.findings()))
        .spoken(design.spoken());
  }

  /** All papers of a job. */
  static List<Paper> of(Job job) {
    return Exporters.all().sequencedValues().stream()
        .filter(e -> e.adds(job))
        .map(e -> new Paper(e.name(job), e))
        .toList();
  }

  /** What it is good for, in a sentence. */
  String what() {
    return exporter.use();
  }
}
