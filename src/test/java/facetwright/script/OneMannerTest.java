package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.Mend;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One idea is said in one way, and a near miss is answered with the word that was meant. */
class OneMannerTest {
  private static final String WRAP =
      "const w = wrap({ columns: 6, width: 30, rows: [14, 50, 14] });\n";

  private static Design made(String lines) throws ScriptException {
    return Facetwright.evaluate("d.js", "design(\"D\");\n" + lines, Map.of(), Budget.USUAL);
  }

  private static ScriptException refused(String lines) {
    ScriptException why = catchThrowableOfType(ScriptException.class, () -> made(lines));
    assertThat(why).as(lines).isNotNull();
    return why;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "box({ width: 40, depth: 40, height: 30 }).hole(\"top\", { @: 5"
            + " }).unfold();|diameter|across",
        "box({ width: 40, depth: 40, height: 30 }).layer(\"top\", { @: \"blue\" }).unfold();"
            + "|colour|paper",
        "panel(\"a\", { width: 60, height: 40 }).window({ @: 6 });|frame|border",
        "panel(\"a\", { width: 60, height: 40 }).hole({ across: 5, @: [0, 9] });|centre|at",
        "blank({ width: 90, height: 60 }).score({ from: \"left\", at: 40, @: 90 });|angle|fold",
        "prism({ sides: 6, side: 30, height: 40 }).unfold({ @: 8 });|depth|tab",
        "prism({ sides: 6, side: 30, @: 40 }).unfold();|tall|height",
        "prism({ @: 6, side: 30, height: 40 }).unfold();|count|sides",
        "dial(\"a\", 3, { @: 1 }); panel(\"a\", { width: 60, height: 40 });|min|from",
        "sheet(\"A4\", { @: 0.3 }); panel(\"a\", { width: 60, height: 40 });|thickness|caliper",
        "sheet(\"A4\", { @: 240 }); panel(\"a\", { width: 60, height: 40 });|gsm|weight",
        "wrap({ columns: 6, width: 30, rows: [50], @: 9 });|overlap|seam",
      })
  void cousinsOfOptionsAreNamed(String line, String cousin, String meant) throws ScriptException {
    ScriptException why = refused(line.replace("@", cousin));
    assertThat(why.getMessage()).contains("has no option \"" + cousin + "\"");
    assertThat(why.remedy()).contains("Did you mean \"" + meant + "\"?");
    assertThat(why.line()).isEqualTo(2);
    assertThat(why.mends()).containsExactly(new Mend.Word(cousin, meant));
    made(line.replace("@", meant));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "w.columns(2).rows(2).remove();|w.columns([2]).rows([2]).remove();",
        "wrap({ columns: 4, width: 20, rows: 30, names: \"wall\" });"
            + "|wrap({ columns: 4, width: 20, rows: [30], names: [\"wall\"] });",
        "prism({ sides: 6, side: 20, height: 30 }).open(\"top\").unfold();"
            + "|prism({ sides: 6, side: 20, height: 30 }).open([\"top\"]).unfold();",
      })
  void oneStandsForAListOfOne(String one, String list) throws ScriptException {
    assertThat(made(WRAP + one).net().panels().toString())
        .isEqualTo(made(WRAP + list).net().panels().toString());
  }

  @Test
  void whatIsNeitherOneNorAListIsRefusedByItsOwnRange() {
    assertThat(refused(WRAP + "w.columns(0).remove();").getMessage()).contains("0 is too small");
    assertThat(refused(WRAP + "w.columns(2.5).remove();").getMessage())
        .contains("2.5 is not a whole number");
  }

  @Test
  void ownChecksAreErrorsAtTheirLineAndTheNetStays() throws ScriptException {
    Design design =
        made(
            """
            const tall = dial("tall", 90, { from: 40, to: 160 });
            must(tall < 100, "Never told.");
            for (const wide of [10, 20, 30])
              must(tall <= 2 *
                   wide, "Make it wider.");
            box({ width: 30, depth: 30, height: tall }).unfold();
            """);
    List<Finding> found = design.findings().stream().filter(f -> f.rule().equals("must")).toList();
    assertThat(found).hasSize(1);
    Finding only = found.getFirst();
    assertThat(only.severity()).isEqualTo(Finding.Severity.ERROR);
    assertThat(only.message()).isEqualTo("What must hold does not: tall <= 2 * wide.");
    assertThat(only.fix()).isEqualTo("Make it wider.");
    assertThat(only.site().line()).isEqualTo(5);
    assertThat(design.net().panels()).hasSizeGreaterThan(6);
    assertThat(refused("must(3, \"x\"); panel(\"a\", { width: 9, height: 9 });").getMessage())
        .isEqualTo("must: condition: 3 is neither true nor false");
  }

  /** The word of a group of facets means them still when they were raised, parted or stacked on. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "prism({ sides: 6, side: 30, height: 40 })|side|6",
        "prism({ sides: 6, side: 30, height: 40 }).raise(\"side 2\", 5)|side|9",
        "prism({ sides: 6, side: 30, height: 40 }).raise(\"side\", 5)|side|24",
        "prism({ sides: 6, side: 30, height: 40 }).raise(\"side\", 5)|side 2|4",
        "prism({ sides: 12, side: 30, height: 40 }).raise(\"side\", 5)|side 1|4",
        "prism({ sides: 6, side: 30, height: 40 }).raise(\"top\", 5)|top|6",
        "prism({ sides: 6, side: 30, height: 40 }).twist(15)|side|12",
        "prism({ sides: 6, side: 30, height: 40 }).twist(15).raise(\"side\", 4)|side|36",
        "prism({ sides: 4, side: 40, height: 35 }).stack(pyramid({ sides: 4, side: 40, height: 25"
            + " }))|side|8",
        "prism({ sides: 4, side: 40, height: 35 }).stack(pyramid({ sides: 4, side: 40, height: 25"
            + " }))|side 1|1",
        "prism({ sides: 4, side: 40, height: 35 }).stack(pyramid({ sides: 4, side: 40, height: 25"
            + " }))|side 1 (2)|1",
        "prism({ sides: 6, side: 30, height: 40 }).cut({ at: [0, 0, 30], away: [1, 0, 2] })|side|6",
        "prism({ sides: 6, side: 30, height: 40 }).chamferCorners(5)|side|6",
        "prism({ sides: 6, side: 30, height: 40 }).chamferCorners(5)|corner|12",
        "bipyramid({ sides: 5, side: 30, height: 80 })|row 1|5",
        "bipyramid({ sides: 12, side: 12, height: 60 }).raise(\"row 2\", 1)|row 2|36",
        "prism({ sides: 6, side: 30, height: 40 }).scale(0.5).raise(\"corner\", 2)|corner|0",
      })
  void wordsOfFacetsLiveOn(String form, String word, int many) throws ScriptException {
    String lines = "const f = " + form + ";\nf.layer(\"" + word + "\").unfold({ tabs: false });";
    if (many == 0) {
      assertThat(refused(lines).getMessage()).contains("no facet is called \"" + word + "\"");
      return;
    }
    assertThat(made(lines).net().layers()).hasSize(many);
  }

  /** The same window or hole in the same place, said on each kind of thing in the same way. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "window(@{ width: 10, height: 6 })",
        "window(@{ sides: 6, across: 9 })",
        "window(@{ corners: [[-4, -4], [4, -4], [0, 5]] })",
        "window(@{ outline: star({ points: 5, across: 12, inner: 0.4 }) })",
        "hole(@{ across: 5 })",
      })
  void windowsAndHolesAreSaidAlike(String word) throws ScriptException {
    String at = word.replace("@", "").replaceFirst(" }\\)$", ", at: [7, 3] })");
    String on = word.replace("@", "[7, 3], ");
    String panel = "panel(\"a\", { width: 60, height: 40 }).";
    String blank = "blank({ width: 60, height: 40 }).";
    String cells = "wrap({ columns: 4, width: 60, rows: 40, seam: 0 }).columns(1).rows(1).";
    String form = "box({ width: 60, depth: 60, height: 40 }).";
    assertThat(opening(panel + at)).isEqualTo(opening(panel + on));
    assertThat(opening(cells + at)).isEqualTo(opening(cells + on));
    String onBlank = word.replace("@", "[37, 23], ");
    String inBlank = at.replace("[7, 3]", "[37, 23]");
    assertThat(opening(blank + onBlank)).isEqualTo(opening(blank + inBlank));
    assertThat(opening(blank + onBlank)).isEqualTo(opening(panel + at));
    assertThat(opening(form + at.replaceFirst("\\(", "(\"side 1\", ") + ".unfold()"))
        .isEqualTo(opening(panel + at));
  }

  /** How much is cut out of the first panel that has an opening, in mm², to a thousandth. */
  private static double opening(String line) throws ScriptException {
    double all =
        made(line.replace("(\"side 1\", [", "([")).net().panels().stream()
            .mapToDouble(p -> p.outline().area() - p.region().getArea())
            .sum();
    assertThat(all).isPositive();
    return Math.round(all * 1000) / 1000.0;
  }

  @Test
  void aBorderOnABlankIsThatOfThePanelAtThePoint() throws ScriptException {
    String blank = "blank({ width: 90, height: 60 }).score({ from: \"left\", at: 30, fold: 90 })";
    assertThat(opening(blank + ".window([60, 30], { border: 10 });")).isEqualTo(1600);
    assertThat(opening(blank + ".window([15, 30], { border: 10 });")).isEqualTo(400);
    ScriptException why = refused(blank + "\n.window([15, 30], { border: 15 });");
    assertThat(why.getMessage()).contains("must be under");
    assertThat(why.line()).isEqualTo(3);
    assertThat(refused(blank + ".window({ border: 5 });").remedy()).contains(".window([40, 30]");
    assertThat(refused(blank + ".hole({ across: 5 });").remedy()).contains(".hole([40, 42]");
    assertThat(refused(blank + ".window([[1, 1], [9, 1], [5, 9]], { border: 5 });").getMessage())
        .contains("a shape already");
  }

  @Test
  void rimsAreToldApartByWord() throws ScriptException {
    assertThat(panels(WRAP + "w.rows(\"upper rim\").remove();"))
        .isEqualTo(panels(WRAP + "w.rows([3]).remove();"));
    assertThat(panels(WRAP + "w.rows(\"lower rim\").tabs();"))
        .isEqualTo(panels(WRAP + "w.rows([1]).tabs();"));
    assertThat(refused(WRAP + "w.rows(\"upper wall\").remove();").getMessage())
        .contains("there is one row called \"wall\" only");
    assertThat(refused(WRAP + "w.rows(\"uper rim\").remove();").getMessage()).contains("no row is");
  }

  /** Without where in the script they were made. */
  private static String panels(String lines) throws ScriptException {
    return made(lines).net().panels().toString().replaceAll("Site\\[[^]]*]", "");
  }

  @Test
  void facetsAreCalledAsTheMakerSays() throws ScriptException {
    String box = "box({ width: 60, depth: 60, height: 40 })";
    assertThat(made(box + ".name(\"side 2\", \"front\").layer(\"front\").unfold();").net().panels())
        .anyMatch(p -> p.name().equals("front"));
    assertThat(made(box + ".name(\"side\", \"wall\").layer(\"wall\").unfold();").net().layers())
        .hasSize(4);
    ScriptException why = refused(box + "\n.name(\"side 2\", \"top\").unfold();");
    assertThat(why.getMessage()).contains("another facet is called \"top\" already");
    assertThat(why.line()).isEqualTo(3);
    assertThat(refused(box + ".name(\"top\", \"all\").unfold();").getMessage())
        .contains("means every facet");
    assertThat(refused(box + ".name(\"sode 2\", \"front\").unfold();").remedy()).contains("side 2");
  }

  @Test
  void foldsBetweenPanelsOverruleTheirLine() throws ScriptException {
    String card =
        "const c = blank({ width: 90, height: 60 }).score({ from: \"left\", at: 30, fold: 90 })"
            + ".score({ from: \"bottom\", at: 30, fold: 0 });\n";
    var scores =
        made(card + "c.fold([15, 15], [60, 15], { fold: 20, sense: \"valley\" });").net().scores();
    assertThat(scores).hasSize(4);
    assertThat(scores.toString().split("VALLEY", -1)).hasSize(2);
    ScriptException why = refused(card + "c.fold([15, 15], [60, 45], { fold: 20 });");
    assertThat(why.getMessage()).contains("no score runs between");
    assertThat(why.line()).isEqualTo(3);
    assertThat(refused(card + "c.fold([15, 15], [60, 15]);").getMessage()).contains("how it is");
  }
}
