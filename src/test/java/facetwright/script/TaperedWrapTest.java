package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.geom.Polygon2;
import facetwright.net.NamedPanel;
import facetwright.net.PanelRole;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wraps whose columns taper from row to row: tubs, shades, barrels and waists. */
class TaperedWrapTest {
  private static Design run(String lines) throws ScriptException {
    return Facetwright.evaluate(
        "a.js", "design(\"Taper\");\n" + lines + "\nsheet(\"A0\");", Map.of(), Budget.USUAL);
  }

  private static void isSound(Design design) {
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(design.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    NetChecks.overlapFree(design.net());
  }

  private static double facets(Design design) {
    return design.net().panels().stream()
        .filter(p -> p.role() == PanelRole.FACET)
        .mapToDouble(p -> p.outline().area())
        .sum();
  }

  /**
   * Against the right frustum: lateral area n·(a+b)/2·s, where s² = h² + ((a−b)/(2·tan(π/n)))²; any
   * handbook, such as CRC Standard Mathematical Tables, from memory.
   */
  @Property(tries = 25, seed = "20261201")
  void evenColumnsStandAsAFrustum(
      @ForAll @IntRange(min = 3, max = 12) int n,
      @ForAll @DoubleRange(min = 20, max = 45) double foot,
      @ForAll @DoubleRange(min = 20, max = 45) double top,
      @ForAll @DoubleRange(min = 0.3, max = 2) double steep)
      throws Exception {
    double out = (top - foot) / 2 / Math.tan(Math.PI / n);
    double slant = Math.abs(out) + steep * 40;
    Design design =
        run(
            "wrap({ columns: %s, width: [%s, %s], rows: %s, seam: 8 });"
                .formatted(n, foot, top, slant));
    isSound(design);
    assertThat(design.net().pieces()).isEqualTo(1);
    assertThat(design.folded().measures().height())
        .isCloseTo(Math.sqrt(slant * slant - out * out), within(1e-6));
    assertThat(facets(design)).isCloseTo(n * (foot + top) / 2 * slant, within(1e-6));
  }

  /** Two opposite columns of one width, two of another, tapering differently: a hopper. */
  @Property(tries = 15, seed = "20261201")
  void aHopperClosesWithItsFloor(
      @ForAll @DoubleRange(min = 40, max = 60) double wide,
      @ForAll @DoubleRange(min = 30, max = 50) double deep,
      @ForAll @DoubleRange(min = 0, max = 25) double widens,
      @ForAll @DoubleRange(min = -8, max = 25) double deepens)
      throws Exception {
    double high = 60;
    Design design =
        run(
            """
            wrap({ widths: [[%1$s, %2$s, %1$s, %2$s], [%3$s, %4$s, %3$s, %4$s]], rows: %5$s, seam: 8 })
              .floor({ tab: 6 });
            """
                .formatted(wide, deep, wide + widens, deep + deepens, high));
    isSound(design);
    // The middle of column 1 leans out by half of what the columns beside it widen (Pythagoras).
    double up = Math.sqrt(high * high - deepens * deepens / 4);
    assertThat(design.folded().measures().height()).isCloseTo(up, within(1e-6));
    double other = Math.sqrt(up * up + widens * widens / 4);
    assertThat(facets(design))
        .isCloseTo(
            (2 * wide + widens) * high + (2 * deep + deepens) * other + wide * deep, within(1e-6));
  }

  /** Rows that taper otherwise lie apart and are joined by tabs; what is made is the same. */
  @Property(tries = 12, seed = "20261201")
  void rowsThatTaperOtherwiseStandOnEachOther(
      @ForAll @IntRange(min = 4, max = 9) int n,
      @ForAll @DoubleRange(min = 24, max = 40) double foot,
      @ForAll @DoubleRange(min = 24, max = 40) double waist,
      @ForAll @DoubleRange(min = 24, max = 40) double top)
      throws Exception {
    Design design =
        run(
            "wrap({ columns: %s, width: [%s, %s, %s], rows: [60, 50], seam: 7 });"
                .formatted(n, foot, waist, top));
    isSound(design);
    double tan = 2 * Math.tan(Math.PI / n);
    double low = Math.hypot(60, 0) * Math.cos(Math.asin((waist - foot) / tan / 60));
    double upper = 50 * Math.cos(Math.asin((top - waist) / tan / 50));
    assertThat(design.folded().measures().height()).isCloseTo(low + upper, within(1e-5));
    assertThat(facets(design))
        .isCloseTo(n * ((foot + waist) / 2 * 60 + (waist + top) / 2 * 50), within(1e-6));
  }

  /** Rows of tabs carry on the taper, so that their tabs are as long as the walls' edges. */
  @Test
  void rimTabsFollowAndLieLevel() throws Exception {
    Design shade =
        run("wrap({ columns: 8, width: [30, 18], rows: [12, 60, 12] }).rows(\"rim\").tabs();");
    isSound(shade);
    assertThat(NamedPanel.of(shade.net(), "rim 3 (row 3)").orElseThrow().outline().side(0).length())
        .isCloseTo(18, within(1e-9));
    assertThat(NamedPanel.of(shade.net(), "rim 3 (row 1)").orElseThrow().outline().side(2).length())
        .isCloseTo(30, within(1e-9));
    double out = 6 / Math.tan(Math.PI / 8);
    assertThat(shade.folded().measures().height())
        .isCloseTo(Math.sqrt(60 * 60 - out * out), within(1e-6));
  }

  /** A gable and its fin are no walls: the width said for the top is that of the walls' rim. */
  @Test
  void gablesCarryOnTheTaperAboveTheRim() throws Exception {
    Design tub =
        run(
            """
            const tub = wrap({ columns: 4, width: [60, 72], rows: [84, 44, 12], names: ["wall", "gable", "fin"], seam: 12 });
            tub.columns("even").rows("gable").gusset();
            tub.columns(1).rows("fin").lap(tub.columns(3).rows("fin"));
            tub.floor({ tab: 12 });
            """);
    isSound(tub);
    assertThat(tub.net().pieces()).isEqualTo(1);
    Polygon2 wall = NamedPanel.of(tub.net(), "wall 1").orElseThrow().outline();
    assertThat(wall.side(0).length()).isCloseTo(60, within(1e-9));
    assertThat(wall.side(2).length()).isCloseTo(72, within(1e-9));
    // On at the same slope: 12 mm wider in 84 mm, so 44 / 7 wider in the gable's 44.
    Polygon2 gable = NamedPanel.of(tub.net(), "gable 1").orElseThrow().outline();
    assertThat(gable.side(2).length()).isCloseTo(72 + 44.0 / 7, within(1e-9));
  }

  @Test
  void rowsOfOneTaperLieOnInTheSheet() throws Exception {
    Design one = run("wrap({ columns: 6, width: [30, 45], rows: 90, seam: 10 });");
    Design three = run("wrap({ columns: 6, width: [30, 45], rows: [20, 40, 30], seam: 10 });");
    assertThat(three.net().pieces()).isEqualTo(1);
    assertThat(three.net().scores()).allMatch(s -> s.a().panel() != s.b().panel());
    assertThat(three.folded().measures().height())
        .isCloseTo(one.folded().measures().height(), within(1e-6));
  }

  @Test
  void windowsStandUprightInTheirColumn() throws Exception {
    Design lantern =
        run(
            "wrap({ columns: 8, width: [24, 36], rows: 70 }).columns(\"odd\")"
                + ".window({ width: 12, height: 40 });");
    isSound(lantern);
    for (int column : IntStream.iterate(1, c -> c < 8, c -> c + 2).toArray()) {
      assertThat(NamedPanel.of(lantern.net(), "wall " + column).orElseThrow().openings())
          .hasSize(1);
    }
  }

  /** Over gussets a fin goes all round, at the top or at the foot, of columns that taper or not. */
  @Property(tries = 10, seed = "20261201")
  void aFinGoesOverItsGussets(
      @ForAll @DoubleRange(min = 44, max = 64) double foot,
      @ForAll @DoubleRange(min = 0, max = 14) double more,
      @ForAll @DoubleRange(min = 1.1, max = 1.5) double steep,
      @ForAll boolean isAtTop)
      throws Exception {
    double gable = (foot + more) / 2 * steep;
    String rows = isAtTop ? "[80, %s, 10]" : "[10, %s, 80]";
    String names = isAtTop ? "['wall', 'gable', 'fin']" : "['fin', 'gable', 'wall']";
    String width = isAtTop ? "[%s, %s]" : "[%2$s, %1$s]";
    Design tub =
        run(
            ("const t = wrap({ columns: 4, width: "
                    + width.formatted(foot, foot + more)
                    + ", rows: "
                    + rows.formatted(gable)
                    + ", names: "
                    + names
                    + ", seam: 8 });\n"
                    + "t.columns('even').rows('gable').gusset();\n"
                    + "t.columns(1).rows('fin').lap(t.columns(3).rows('fin'));")
                .replace('\'', '"'));
    isSound(tub);
    // The fin stands upright on its ridge, so that the form is no wider than its widest line.
    assertThat(tub.folded().gap()).isLessThan(0.001);
    assertThat(NamedPanel.of(tub.net(), "left half of fin 2")).isPresent();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "wrap({ columns: 6, width: [30, 40, 50], rows: 60 });"
            + "|columns taper between 2 lines, the foot and the top; widths are given for 3",
        "wrap({ columns: 6, width: [30, 40, 50, 60], rows: [60, 20] });|or 3, the edges of 2 rows",
        "wrap({ widths: [[30, 40, 50], [30, 40, 50, 60]], rows: 60 });|each line needs as many",
        "wrap({ widths: [[30, 30, 30, 30], [30, 200, 30, 200]], rows: 20 });"
            + "|is too low for column 2 to taper so far: make it higher than 85 mm",
        "wrap({ columns: 6, width: [30, 2], rows: [10, 28, 10], seam: 1"
            + " }).rows(\"rim\").tabs();|narrows to nothing",
        "wrap({ columns: 6, width: [30, 20], rows: 60 }).rows(1).hole({ across: 22 });|at most 14"
            + " mm",
        "wrap({ columns: 6, width: [30, 0], rows: 60 });|0 mm is too small",
      })
  void whatCantTaperIsRefused(String said, String told) {
    ScriptException e = catchThrowableOfType(ScriptException.class, () -> run(said));
    assertThat(e).isNotNull().hasMessageContaining(told);
    assertThat(e.line()).isEqualTo(2);
  }
}
