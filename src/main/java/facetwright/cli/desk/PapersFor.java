package facetwright.cli.desk;

import facetwright.export.Exporter;
import facetwright.export.Exporters;
import facetwright.export.Job;
import facetwright.export.Order;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.script.design.Design;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import picocli.CommandLine.Option;

/** What papers are for: how many pieces, and what the printer takes. */
public final class PapersFor {
  /** The check ruler and the words beside it need so much, in mm. */
  private static final double NARROWEST = 200;

  @Option(
      names = {"--count", "--class"},
      paramLabel = "N",
      defaultValue = "1",
      description = "how many pieces, such as one for each of a class (usual: 1)")
  private int makers = 1;

  @Option(
      names = "--paper",
      paramLabel = "A4|Letter|…",
      description =
          "what the printer takes (usual: A4, or Letter for designs in inches); larger sheets are"
              + " printed over several pages")
  private String paper = "";

  @Option(
      names = "--ruler",
      paramLabel = "1/16in|0.5mm",
      description =
          "the ruler you own, for chart, guides and handout (usual: 1/16 in for designs in inches,"
              + " else 0.5 mm)")
  private String ruler = "";

  public Job job(Design made, int pieces) {
    return new Job(
        made.title(),
        made.header().author(),
        made.unit(),
        made.laid(),
        made.folded(),
        order(made, pieces));
  }

  public Job job(Design made) {
    return job(made, makers);
  }

  /** Refuses what can't be, before anything is evaluated. */
  public void check() {
    if (makers < 1 || makers > Order.MOST) {
      throw new Trouble.WrongCall("--count: 1 to " + Order.MOST + " pieces, not " + makers + ".");
    }
    if (!paper.isEmpty()) {
      SheetSize size = size();
      if (Math.min(size.width(), size.height()) < NARROWEST) {
        throw new Trouble.WrongCall(
            "--paper: "
                + size.name()
                + " is too small for the check ruler on each page. Take A4, Letter or larger.");
      }
    }
  }

  private Order order(Design made, int pieces) {
    Order usual = Order.usual(made.unit());
    return new Order(
        pieces, paper.isEmpty() ? usual.paper() : size(), Rulers.asked(ruler, made.unit()));
  }

  private SheetSize size() {
    try {
      return SheetSizes.named(paper);
    } catch (IllegalArgumentException e) {
      throw new Trouble.WrongCall("--paper: " + e.getMessage());
    }
  }

  /**
   * The files by name.
   *
   * @param asked formats to make even where they add nothing; empty for all that add something
   */
  public static SequencedMap<String, byte[]> files(
      Job job, Collection<String> asked, Progress progress) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    for (Exporter exporter : Exporters.all().sequencedValues()) {
      if (asked.isEmpty() ? adds(exporter, job, progress) : asked.contains(exporter.format())) {
        files.putAll(progress.during("Drawing " + exporter.fileName(), () -> exporter.files(job)));
      }
    }
    return files;
  }

  private static boolean adds(Exporter exporter, Job job, Progress progress) {
    return progress.during("Looking what goes on paper", () -> exporter.adds(job));
  }

  /** The formats' names, in the order they are made. */
  public static List<String> formats() {
    return List.copyOf(Exporters.all().sequencedKeySet());
  }
}
