package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.making.Bond;
import facetwright.fold.making.Gluing;
import facetwright.fold.making.Step;
import facetwright.measure.Unit;
import facetwright.net.fitting.Extra;
import facetwright.papers.handout.Handout;
import facetwright.papers.handout.Judgement;
import facetwright.papers.handout.Picture;
import facetwright.papers.handout.Section;
import facetwright.papers.materials.Need;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes in comes before what would close over it, whichever way a piece is made. */
class FittingsTest {
  private static final String LANTERN =
      """
      const body = wrap({ columns: 8, width: 28, rows: [28, 60, 60, 28], seam: 12 });
      body.columns("even").rows("rim").remove();
      body.columns("even").rows("wall").gusset();
      body.columns("odd").rows("rim").tabs({ hole: 3 });
      """;

  private static final String BLANK_BOX =
      """
      const box = blank({ width: 210, height: 150 });
      for (const x of [50, 100, 150, 200]) box.score({ from: "left", at: x, fold: 90 });
      for (const y of [50, 100]) box.score({ from: "bottom", at: y, fold: 90 });
      for (const x of [75, 125, 175, 205]) for (const y of [25, 125]) box.waste([x, y]);
      box.role([205, 75], "tab").lap([205, 75], [25, 75]);
      """;

  private static Design made(String lines) throws ScriptException {
    return Facetwright.evaluate("d.js", "design(\"D\");\n" + lines, Map.of(), Budget.USUAL);
  }

  private static List<Step> steps(Design d) {
    return d.gluing().steps();
  }

  private static int at(Design d, Class<? extends Extra> kind) {
    List<Step> steps = steps(d);
    return IntStream.range(0, steps.size())
        .filter(
            i ->
                steps.get(i) instanceof Step.Fit(int f)
                    && kind.isInstance(d.net().fittings().all().get(f).thing()))
        .findFirst()
        .orElseThrow();
  }

  private static int glued(Design d, int from) {
    return (int) steps(d).stream().skip(from).filter(Step.Glue.class::isInstance).count();
  }

  private static List<String> told(Design d, int pieces) {
    Works works = Works.of(d.laid(), d.gluing(), d.unit(), List.of(), pieces);
    Handout handout =
        Handout.of(
            d.title(),
            "",
            Order.usual(d.unit()).of(pieces),
            d.laid(),
            d.gluing(),
            Judgement.of(d.laid(), d.folded(), d.findings()),
            works);
    return handout.sections().stream()
        .flatMap(
            s ->
                switch (s) {
                  case Section.Ordered o -> o.lines().stream();
                  case Section.Steps steps -> steps.pictures().stream().map(Picture::words);
                  case Section.Facts f -> f.lines().stream();
                  case Section.Pictures _ -> Stream.<String>empty();
                })
        .toList();
  }

  /** The four tabs of the foot are closed, the four of the head are not. */
  @Test
  void theLanternsRibbonAndLightGoInBeforeTheTopIsClosed() throws Exception {
    Design d = made(LANTERN + "body.ribbon({ length: 300, through: \"row 4\" }).light();");
    assertThat(d.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    List<Step> steps = steps(d);
    List<Bond> after =
        Gluing.numbered(Step.stages(steps.subList(at(d, Extra.Light.class), steps.size())));
    assertThat(after)
        .hasSize(4)
        .allMatch(
            b ->
                b instanceof Bond.Closing(int tab)
                    && d.net().panels().get(tab).name().endsWith("(row 4)"));
    assertThat(at(d, Extra.Ribbon.class)).isLessThan(at(d, Extra.Light.class));
    assertThat(told(d, 1))
        .anyMatch(l -> l.startsWith("Before you go on, thread the ribbon, 300 mm long"))
        .anyMatch(l -> l.startsWith("Before you go on, put the battery tea light in"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "prism({ sides: 6, side: 40, height: 90 }).unfold({ tab: 8 }).light();",
        "box({ width: 60, depth: 60, height: 60 }).unfold().light();",
        "bipyramid({ sides: 8, radius: 40, height: 120 }).unfold({ tab: 5 })"
            + ".light({ across: 20, height: 15 });",
        "antiprism({ sides: 6, side: 40, height: 60 }).unfold().light();",
        "box({ width: 60, depth: 60, height: 60 }).unfold({ part: \"a\" }).light();"
            + " box({ width: 30, depth: 30, height: 30 }).unfold({ part: \"b\" });",
      })
  void beforeALastStageThatClosesIt(String lines) throws Exception {
    Design d = made(lines);
    assertThat(d.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    assertThat(glued(d, at(d, Extra.Light.class))).isPositive();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "box({ width: 60, depth: 60, height: 60 }).open(\"top\").unfold().light();",
        "prism({ sides: 6, side: 40, height: 60 }).window(\"base\", { border: 6"
            + " }).unfold().light();",
        "wrap({ columns: 6, width: 40, rows: [70], seam: 8 }).light();",
        BLANK_BOX + "box.light();",
      })
  void lastWhereItStaysOpen(String lines) throws Exception {
    Design d = made(lines);
    assertThat(d.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    assertThat(glued(d, at(d, Extra.Light.class))).isZero();
    assertThat(glued(d, 0)).isPositive();
  }

  @Test
  void notesStandWhereTheyAreWanted() throws Exception {
    Design d =
        made(
            LANTERN
                + "body.note(\"A\", { before: \"rim 7\" }).note(\"B\").note(\"C\", { at: \"last\""
                + " }).note(\"D\", { after: \"seam flap\" });");
    List<String> lines = told(d, 1);
    int first = lines.indexOf("B.");
    assertThat(lines.get(first + 1)).startsWith("Glue tab 1 under edge 1.");
    assertThat(lines.subList(first + 2, first + 4)).containsExactly("A.", "D.");
    assertThat(lines.get(first + 4)).startsWith("Push the gussets in");
    assertThat(lines.get(first + 5)).startsWith("Fold tab 3 in over the opening");
    assertThat(lines).containsSubsequence("C.", "Made.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "body.light({ across: 80 });|no-room",
        "body.light({ height: 200 });|no-room",
        "body.light({ at: \"last\" });|no-way-in",
        "body.filling(\"sand\", { volume: \"2000 ml\" });|too-full",
        "body.filling(\"sand\", { across: 50, after: \"rim 7\" });|no-way-in",
        "body.note(\"x\", { before: \"wall 2 (row 2)\" });|no-moment",
      })
  void whatCannotBeIsFound(String line, String rule) throws Exception {
    assertThat(made(LANTERN + line).findings())
        .filteredOn(f -> f.rule().equals(rule))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.site().line()).isEqualTo(6);
              assertThat(f.fix()).isNotBlank();
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "body.light(\"a candle\");|only lights that run on a battery",
        "body.light({ at: \"last\", before: \"rim\" });|one moment, and 2 are named",
        "body.ribbon({ length: 100, through: \"seam flap\" });|no hole to thread",
        "body.ribbon({ length: 100, through: \"rum\" });|no panel is called \"rum\"",
        "body.ribbon({ width: 10 });|length",
        "body.filling(\"sand\", { volume: \"much\" });|is no volume",
        "body.note(\"\");|is not text",
      })
  void whatMakesNoSenseIsRefused(String line, String words) {
    ScriptException why = catchThrowableOfType(ScriptException.class, () -> made(LANTERN + line));
    assertThat(why).as(line).isNotNull();
    assertThat(why.getMessage()).contains(words);
    assertThat(why.line()).isEqualTo(6);
  }

  /** Four lamps of one net, two of another: nothing is lost, and all is bought. */
  @Test
  void whatIsMadeSeveralTimesTakesAsMuch() throws Exception {
    Design d =
        made(
            "box({ width: 60, depth: 60, height: 60 }).unfold({ part: \"a\", count: 4 }).light();"
                + " box({ width: 70, depth: 70, height: 50 }).unfold({ part: \"b\", count: 2 })"
                + ".light().ribbon({ length: 500, tie: \"round it\" });");
    assertThat(d.net().fittings().all()).hasSize(8);
    List<Need> needs = Works.of(d.laid(), d.gluing(), Unit.MM, List.of(), 24).materials().needs();
    assertThat(needs.stream().filter(n -> n.key().equals("light")).toList())
        .singleElement()
        .satisfies(n -> assertThat(n.amount()).isEqualTo(24 * 6));
    assertThat(needs.stream().filter(n -> n.key().equals("ribbon")).toList())
        .singleElement()
        .satisfies(n -> assertThat(n.amount()).isCloseTo(24.0, within(1e-9)));
    assertThat(told(d, 24).stream().filter(l -> l.contains("tea light in")).count()).isEqualTo(2);
  }

  @Test
  void cautionsAreThoseThatApply() throws Exception {
    String box = "box({ width: 60, depth: 60, height: 60 }).open(\"top\").unfold()";
    assertThat(told(made(box + ".light();"), 1))
        .anyMatch(l -> l.contains("Battery lights only"))
        .noneMatch(l -> l.contains("food"));
    assertThat(told(made(box + ".filling(\"sweets\");"), 1))
        .noneMatch(l -> l.contains("Battery lights only"))
        .anyMatch(l -> l.contains("food"));
    assertThat(told(made(box + ".ribbon({ length: 90, tie: \"round it\" });"), 1))
        .noneMatch(l -> l.contains("food") || l.contains("Battery"))
        .anyMatch(l -> l.contains("away from infants"));
  }
}
