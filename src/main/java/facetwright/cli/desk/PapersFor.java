package facetwright.cli.desk;

import facetwright.export.Exporter;
import facetwright.export.Exporters;
import facetwright.export.Job;
import facetwright.export.file.ExportException;
import facetwright.papers.handout.Judgement;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What papers are for: how many pieces, what the printer takes, and the ruler at hand. */
public final class PapersFor {
  @Option(
      names = {"--count", "--class"},
      paramLabel = "N",
      defaultValue = "1",
      description = "how many pieces, such as one for each of a class (usual: 1)")
  private int makers = 1;

  @Mixin private PrinterOptions printer = new PrinterOptions();

  @Mixin private RulerOption ruler = new RulerOption();

  @Option(
      names = "--pixels",
      paramLabel = "N",
      defaultValue = "" + Order.USUAL_PIXELS,
      description =
          "how many pixels wide pictures are, "
              + Order.LEAST_PIXELS
              + " to "
              + Order.MOST_PIXELS
              + " (usual: "
              + Order.USUAL_PIXELS
              + ")")
  private int pixels = Order.USUAL_PIXELS;

  public Job job(Design made) {
    Order order = printer.order(made.unit()).by(ruler.of(made.unit()));
    return job(made, order.of(makers).wide(pixels));
  }

  public static Job job(Design made, Order order) {
    return new Job(
            made.title(),
            made.header().author(),
            made.laid(),
            made.gluing(),
            order,
            Judgement.of(made.laid(), made.folded(), made.findings()))
        .spoken(made.spoken());
  }

  /** Refuses what can't be, before anything is evaluated. */
  public void check() {
    Trouble.unless("--count", "%s pieces", 1, Order.MOST, makers);
    Trouble.unless(
        "--pixels", "a picture is %s pixels wide", Order.LEAST_PIXELS, Order.MOST_PIXELS, pixels);
    printer.check();
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
      if (asked.isEmpty()
          ? exporter.isUsual() && adds(exporter, job, progress)
          : asked.contains(exporter.format())) {
        files.putAll(
            progress.during("Drawing " + exporter.fileName(job), () -> files(exporter, job)));
      }
    }
    return files;
  }

  private static SequencedMap<String, byte[]> files(Exporter exporter, Job job) {
    try {
      return exporter.files(job);
    } catch (ExportException e) {
      throw new ExportException(e.getMessage() + " The other papers can be made with --only.", e);
    }
  }

  private static boolean adds(Exporter exporter, Job job, Progress progress) {
    return progress.during("Looking what goes on paper", () -> exporter.adds(job));
  }

  /** The formats' names, in the order they are made. */
  public static List<String> formats() {
    return List.copyOf(Exporters.all().sequencedKeySet());
  }
}
