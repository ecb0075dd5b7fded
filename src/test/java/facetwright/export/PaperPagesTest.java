package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.page.RingPages;
import facetwright.papers.order.Order;
import facetwright.papers.ring.RingPlan;
import facetwright.papers.ring.Rings;
import facetwright.papers.ring.Spacer;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every page of every paper, read back from its file. */
class PaperPagesTest {
  private static final Set<String> PDF =
      Set.of("pdf", "tiles", "layout", "layers", "guides", "handout", "chart");

  private static final Pattern FOOT = Pattern.compile("Page \\d+ of \\d+");

  /** What a printer leaves white at least, in mm; common practice, no source. */
  private static final double WHITE = 4;

  private static Job job(String name, int copies) throws Exception {
    Design d = LibraryDesigns.design(name);
    return Jobs.of(
        d.title(), d.header().author(), d.laid(), d.folded(), Order.usual(d.unit()).of(copies));
  }

  /**
   * Where a foot numbers a page, it counts all pages of its paper. No letter is smaller than 8 pt
   * or hangs into the white edge, and wherever a check ruler stands its scales are 100 mm and 4 in
   * long, an inch being 25.4 mm (international yard and pound, 1959), to 0.2 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "harbour-lantern, 1",
    "harbour-lantern, 24",
    "supper-tray, 1",
    "hex-favour-box, 24",
    "beacon-dodecahedron, 1",
    "boathouse, 1",
    "gull-bauble, 8",
    "twisted-tower, 1"
  })
  void lettersAreLegibleAndRulersTrue(String name, int copies) throws Exception {
    Job job = job(name, copies);
    int rulers = 0;
    int feet = 0;
    for (Exporter exporter : Exporters.all().sequencedValues()) {
      if (!PDF.contains(exporter.format()) || !exporter.adds(job)) {
        continue;
      }
      List<PdfReading.Page> pages = PdfReading.of(exporter.write(job));
      assertThat(pages).isNotEmpty();
      for (PdfReading.Page page : pages) {
        String where = exporter.ending() + " page " + (pages.indexOf(page) + 1);
        Matcher foot = FOOT.matcher(page.words());
        if (foot.find()) {
          String last = "Page " + (pages.indexOf(page) + 1) + " of " + pages.size();
          assertThat(foot.group()).as(where).isEqualTo(last);
          feet++;
        }
        for (PdfReading.Letter letter : page.letters()) {
          assertThat(letter.size()).as(where).isGreaterThanOrEqualTo(8 - 0.01);
          assertThat(letter.x()).as(where).isBetween(WHITE, page.width() - WHITE);
          assertThat(letter.y()).as(where).isBetween(WHITE, page.height() - WHITE);
        }
        if (page.words().contains("100 mm") && page.words().contains("4 in")) {
          rulers++;
          assertThat(has(page, 100)).as(where + ", 100 mm").isTrue();
          assertThat(has(page, 4 * 25.4)).as(where + ", 4 in").isTrue();
        }
      }
      if (Set.of("pdf", "tiles", "handout").contains(exporter.format())) {
        assertThat(pages.getLast().words()).as(exporter.ending()).contains("100 mm", "4 in");
      }
    }
    assertThat(rulers).isGreaterThanOrEqualTo(2);
    assertThat(feet).isPositive();
  }

  /** A ring's spacer is cut out of its page: it is as long as the words say, to 0.2 mm. */
  @Test
  void theSpacerOfARingIsTrue() throws Exception {
    Job job = job("harbour-lantern", 8);
    RingPlan plan = Rings.of(job.laid().net(), job.form()).plans(8).getFirst();
    Spacer spacer = plan.seating().spacer().orElseThrow();
    // Two sides of its length, the outer end between them, and a part to glue.
    assertThat(spacer.strip()).isCloseTo(3 * spacer.length() + spacer.outer(), within(1e-9));
    List<PdfReading.Page> pages =
        PdfReading.of(
            PdfWriter.write(
                job.title(),
                job.author(),
                job.order().language(),
                RingPages.of(
                    job.title(),
                    job.order(),
                    job.laid().net(),
                    job.form().poses(),
                    plan,
                    List.of(),
                    List.of("How."),
                    List.of("What."))));
    assertThat(
            pages.stream().flatMap(p -> p.letters().stream()).mapToDouble(PdfReading.Letter::size))
        .allMatch(size -> size >= 8 - 0.01);
    PdfReading.Page last = pages.getLast();
    assertThat(has(last, 100) && has(last, 4 * 25.4)).isTrue();
    assertThat(has(last, spacer.strip())).isTrue();
    assertThat(has(last, spacer.height())).isTrue();
  }

  /** The title of a handout is set in 20 pt: so it is found, or sizes are measured wrongly. */
  @Test
  void sizesAreMeasuredAsTheyAreSet() throws Exception {
    byte[] pdf = new HandoutWriter().write(job("supper-tray", 1));
    assertThat(PdfReading.of(pdf).getFirst().letters().getFirst())
        .satisfies(
            l -> {
              assertThat(l.text()).isEqualTo("S");
              assertThat(l.size()).isCloseTo(20, within(0.01));
            });
  }

  private static boolean has(PdfReading.Page page, double length) {
    return page.lines().stream()
        .anyMatch(l -> l.isStraightOnPage() && Math.abs(l.length() - length) <= 0.2);
  }
}
