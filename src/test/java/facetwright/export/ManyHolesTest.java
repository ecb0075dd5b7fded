package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.draw.Mark;
import facetwright.fold.Folding;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import facetwright.net.panel.CardPanel;
import facetwright.net.panel.FlapShape;
import facetwright.net.panel.Hinge;
import facetwright.net.panel.PanelBuild;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.pace.Pace;
import facetwright.papers.order.Order;
import facetwright.words.Site;
import java.util.List;
import java.util.SequencedMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Twice as many holes take about twice the work and twice the room, on every paper. */
class ManyHolesTest {
  private static final Site AT = new Site(3, 1);

  /** Sorting and looking up take a little more than twice for twice as much. */
  private static final double TWICE = 2.3;

  /** A panel with a flap at right angles, so that pictures have outlines of two kinds. */
  private static Job pricked(int holes) {
    PanelBuild build = new PanelBuild();
    CardPanel panel = build.rectangle("sieve", 180, 180, AT);
    panel.attach(
        "flap",
        "top",
        new FlapShape.Tapered(20, 0),
        Hinge.whole(Sense.MOUNTAIN, FoldAngle.degrees(90)),
        AT);
    IntStream.range(0, holes)
        .forEach(
            i -> panel.hole(1.5, new Vec2(i % 23 * 7.5 - 83, Math.floorDiv(i, 23) * 7.5 - 83), AT));
    Laid laid = SheetLayout.lay(build.build(), Papers.A4, new Room(0, SheetLayout.USUAL_GAP));
    return Jobs.of("Sieve", "", laid, Folding.fold(laid), Order.usual(Unit.MM));
  }

  static List<Exporter> exporters() {
    return Exporters.all().values().stream().filter(Exporter::isUsual).toList();
  }

  private static long steps(Supplier<?> work) {
    Pace pace = new Pace();
    Object made = pace.<Object, RuntimeException>of(work::get);
    assertThat(made).isNotNull();
    return pace.steps();
  }

  private static long bytes(SequencedMap<String, byte[]> files) {
    return files.values().stream().mapToLong(f -> f.length).sum();
  }

  @ParameterizedTest
  @MethodSource("exporters")
  void workAndSizeGrowWithTheHoles(Exporter exporter) {
    Job few = pricked(200);
    Job many = pricked(400);
    assertThat(steps(() -> exporter.files(many)))
        .as("steps of %s", exporter.ending())
        .isBetween(1L, (long) (TWICE * steps(() -> exporter.files(few))));
    assertThat(bytes(exporter.files(many)))
        .as("size of %s", exporter.ending())
        .isLessThan((long) (TWICE * bytes(exporter.files(few))));
  }

  /** Five hundred holes: a page of the web that can be sent by mail. */
  @Test
  void pagesStaySmall() {
    Job job = pricked(500);
    assertThat(new HandoutWriter().write(job)).hasSizeLessThan(600_000);
    assertThat(new HtmlWriter().write(job)).hasSizeLessThan(2_000_000);
  }

  /** A guide for each of 500 holes would be 60 pages. */
  @Test
  void guidesArePunchedThroughTheTemplate() {
    assertThat(words(pricked(24))).contains("Punch guide, hole 1.5 mm across");
    assertThat(new GuidesWriter().pages(pricked(500)).size()).isLessThan(4);
    assertThat(words(pricked(500)))
        .contains("different punch guides, more than are worth")
        .doesNotContain("Punch guide, hole");
  }

  private static String words(Job job) {
    return new GuidesWriter()
        .pages(job).stream()
            .flatMap(page -> page.marks().stream())
            .filter(Mark.Text.class::isInstance)
            .map(m -> ((Mark.Text) m).content())
            .collect(Collectors.joining(" "));
  }

  /** What several papers of one job show is drawn for the first of them only. */
  @Test
  void nothingIsDrawnTwice() {
    Job job = pricked(200);
    long alone = steps(() -> new HtmlWriter().write(pricked(200)));
    assertThat(steps(() -> new HandoutWriter().write(job))).isGreaterThan(0);
    assertThat(steps(() -> new HtmlWriter().write(job))).isLessThan(alone / 2);
    assertThat(steps(() -> new ObjWriter().write(job))).isGreaterThan(1000);
    assertThat(steps(() -> new StlWriter().write(job))).isLessThan(10);
  }
}
