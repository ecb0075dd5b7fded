package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.papers.order.Order;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is ordered holds for every paper: the printer's page, and the maker's ruler. */
class OrderHoldsTest {
  private static final List<SheetSize> PAGES =
      List.of(
          SheetSizes.named("A4"),
          SheetSizes.named("Letter"),
          SheetSizes.named("A3"),
          SheetSizes.named("A5"),
          SheetSizes.named("8x8"),
          SheetSize.custom(200, 500, Unit.MM));

  private static final List<Ruler> RULERS =
      List.of(
          Ruler.HALF_MM,
          Ruler.MM,
          new Ruler(Unit.MM, 1, 5),
          Ruler.SIXTEENTHS,
          Ruler.EIGHTHS,
          Ruler.THIRTY_SECONDS);

  private static final Map<String, Design> DESIGNS = new HashMap<>();

  private static final List<String> NAMES =
      List.of("harbour-lantern", "hex-favour-box", "gull-bauble", "cut-gem");

  /** Every page for every design. */
  static Stream<Arguments> pages() {
    return NAMES.stream().flatMap(name -> PAGES.stream().map(page -> Arguments.of(name, page)));
  }

  /** Every ruler for every design. */
  static Stream<Arguments> rulers() {
    return NAMES.stream().flatMap(name -> RULERS.stream().map(ruler -> Arguments.of(name, ruler)));
  }

  private static Job job(String name, SheetSize page, Ruler ruler) throws Exception {
    Design d = DESIGNS.get(name);
    if (d == null) {
      String source = LibraryDesigns.text(name);
      d = Facetwright.evaluate(name, source, Map.of(), Budget.USUAL);
      DESIGNS.put(name, d);
    }
    return Jobs.of(
        d.title(), "", d.laid(), d.folded(), Order.usual(d.unit()).of(8).on(page).by(ruler));
  }

  private static Stream<Exporter> exporters(Job job) {
    return Exporters.all().values().stream().filter(e -> e.adds(job));
  }

  /** Templates follow their sheet at true size; every other page is the printer's. */
  @ParameterizedTest
  @MethodSource("pages")
  void everyPageIsThePrinters(String name, SheetSize page) throws Exception {
    Job job = job(name, page, Ruler.SIXTEENTHS);
    for (Exporter exporter : exporters(job).filter(e -> e.ending().endsWith(".pdf")).toList()) {
      List<PdfReading.Page> pages = PdfReading.of(exporter.write(job));
      int atTrueSize =
          switch (exporter.format()) {
            case "pdf" -> pages.size();
            case "layout" -> pages.size() - 1;
            case "inside" -> job.isTiled() ? 0 : pages.size();
            // Cards are a quarter of a page, or half.
            case "board-card" -> pages.size();
            case "handout" -> job.isTiled() ? 0 : job.templates().size();
            default -> 0;
          };
      for (int i = 0; i < pages.size() - atTrueSize; i++) {
        PdfReading.Page made = pages.get(i);
        boolean isAcross =
            exporter.format().matches("tiles|inside|handout") && made.width() > made.height();
        String what = exporter.ending() + " page " + (i + 1);
        double wide = isAcross ? Math.max(page.width(), page.height()) : page.width();
        double high = isAcross ? Math.min(page.width(), page.height()) : page.height();
        assertThat(made.width()).as(what).isCloseTo(wide, within(0.01));
        assertThat(made.height()).as(what).isCloseTo(high, within(0.01));
        for (PdfReading.Letter letter : made.letters()) {
          assertThat(letter.x()).as(what + letter).isBetween(0.0, page.width() + page.height());
          assertThat(letter.x() + letter.width()).as(what + letter).isLessThan(made.width());
          assertThat(letter.y()).as(what + letter).isBetween(0.0, made.height());
        }
      }
    }
  }

  private static final String LENGTH = "((?:\\d+ )?\\d+/\\d+|\\d+(?:\\.\\d+)?) (mm|in)\\b";

  private static final Pattern OFF =
      Pattern.compile(
          LENGTH + " \\(" + LENGTH + " is (?:nearest, )?" + LENGTH + " too (much|little)\\)");

  /**
   * Sizes that nobody sets: bought sheets, lights, ribbon, card, the check ruler, the finished
   * ring.
   */
  private static final Pattern READ =
      Pattern.compile(
          "\\d+ × [^,:]{1,30}, \\S+(?: \\d+/\\d+)? (mm|in) × \\S+(?: \\d+/\\d+)? (mm|in)\\b"
              + "|[\\d.]+ mm thick|400 mm for a bow|(?<![\\d/.])(?:100 mm|4 in\\b)(?! is )"
              + "|up to \\S+(?: \\d+/\\d+)? (mm|in) across and \\S+(?: \\d+/\\d+)? (mm|in) tall"
              + "|Ribbon, \\S+(?: \\d+/\\d+)? (mm|in) wide"
              + "|The net is .*? high\\."
              + "|One sheet of .*?high as it lies|Between two of them .*? for the knife"
              + "|, [^,]{1,9} at the edges|At the edges .*? is left|With the usual .*? on it"
              + "|off by up to [\\d.]+ (mm|in)"
              + "|stand open by [\\d.]+ (mm|in)|go round with [\\d.]+ (mm|in)"
              + "|make up [\\d.]+ (mm|in)|The ring of .*? high\\.|[\\d.]+ (mm|in)²");

  private static double mm(String amount, String unit) {
    return Length.parse(amount + " " + unit, Unit.MM).mm();
  }

  private static void isMark(Ruler ruler, double mm, String where) {
    double marks = mm / ruler.divisionMm();
    // Words tell a thousandth of an inch or a hundredth of a millimetre.
    assertThat(marks).as(where).isCloseTo(Math.rint(marks), within(0.013 / ruler.divisionMm()));
  }

  private static String around(String text, MatchResult found) {
    return text.substring(
        Math.max(0, found.start() - 60), Math.min(text.length(), found.end() + 60));
  }

  /** What is set lies on a mark of the ruler, or the words say by how much it does not. */
  @ParameterizedTest
  @MethodSource("rulers")
  void everyMeasureIsOfTheRuler(String name, Ruler ruler) throws Exception {
    Job job = job(name, SheetSizes.named("A4"), ruler);
    int told = 0;
    for (Exporter exporter :
        exporters(job)
            .filter(e -> Set.of("layers", "guides", "ring", "layout").contains(e.format()))
            .toList()) {
      List<PdfReading.Page> pages = PdfReading.of(exporter.write(job));
      String text =
          pages.subList(0, exporter.format().equals("layout") ? 1 : pages.size()).stream()
              .map(PdfReading.Page::words)
              .collect(Collectors.joining(" "))
              .replaceAll("\\s+", " ");
      text = READ.matcher(text).replaceAll("·");
      Matcher off = OFF.matcher(text);
      while (off.find()) {
        String where = exporter.ending() + ": " + around(text, off);
        double is = mm(off.group(1), off.group(2));
        double mark = mm(off.group(3), off.group(4));
        isMark(ruler, mark, where);
        double miss = mm(off.group(5), off.group(6)) * (off.group(7).equals("much") ? 1 : -1);
        assertThat(mark - is).as(where).isCloseTo(miss, within(0.03));
        told++;
      }
      text = off.replaceAll("·");
      Matcher on = Pattern.compile(LENGTH).matcher(text);
      while (on.find()) {
        isMark(ruler, mm(on.group(1), on.group(2)), exporter.ending() + ": " + around(text, on));
        told++;
      }
    }
    assertThat(told).isPositive();
  }
}
