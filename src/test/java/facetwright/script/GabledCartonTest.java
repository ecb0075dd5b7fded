package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.form.NetChecks;
import facetwright.net.FoldAngle;
import facetwright.net.NamedPanel;
import facetwright.net.Sense;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A carton with gables, a fin and a floor, said as a wrap; floors and laps of wraps. */
class GabledCartonTest {
  private static final String CARTON =
      """
      design("Gabled carton");
      const tub = wrap({ %s, rows: [%s, %s, 12], names: ["wall", "gable", "fin"], seam: 10 });
      tub.columns("even").rows("gable").gusset();
      tub.columns("even").rows("fin").remove();
      tub.columns(1).rows("fin").lap(tub.columns(3).rows("fin"));
      tub.floor({ tab: 10 });
      sheet("A2");
      """;

  private static Design run(String script) throws ScriptException {
    return Facetwright.evaluate("a.js", script, Map.of(), Budget.USUAL);
  }

  private static void isSound(Design design) {
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(design.findings()).noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    NetChecks.overlapFree(design.net());
  }

  /** Two spoken sentences; at most eighteen lines. */
  @Test
  void aCartonIsSaidInFewLines() throws Exception {
    String script = CARTON.formatted("columns: 4, width: 63.5", 76.2, 44.45);
    assertThat(script.lines().count()).isLessThanOrEqualTo(18);
    isSound(run(script));
  }

  /** The fin turns back by as much as the gable leans in: its sine is half the depth over it. */
  @Property(tries = 12, seed = "20261130")
  void theFinStandsUprightOnItsRidge(
      @ForAll @DoubleRange(min = 50, max = 80) double width,
      @ForAll @DoubleRange(min = 0.6, max = 0.95) double part,
      @ForAll @DoubleRange(min = 1.15, max = 1.6) double steep)
      throws Exception {
    // The pinched sides reach in from both ends by half their width each, so they are the narrower.
    double depth = width * part;
    double gable = depth / 2 * steep;
    Design carton =
        run(
            CARTON.formatted(
                "widths: [%s, %s, %s, %s]".formatted(width, depth, width, depth), 60, gable));
    isSound(carton);
    double lean = Math.toDegrees(Math.asin(depth / 2 / gable));
    assertThat(carton.net().scores())
        .anySatisfy(
            s -> {
              assertThat(s.sense()).isEqualTo(Sense.VALLEY);
              assertThat(s.angle()).isInstanceOf(FoldAngle.Known.class);
              assertThat(((FoldAngle.Known) s.angle()).degrees()).isCloseTo(lean, within(1e-9));
            });
  }

  /** As large as the polygon that the columns stand round, whatever column it hangs on. */
  @Property(tries = 12, seed = "20261130")
  void aFloorClosesTheFoot(
      @ForAll @IntRange(min = 3, max = 10) int columns,
      @ForAll @IntRange(min = 1, max = 10) int column,
      @ForAll @DoubleRange(min = 24, max = 50) double width)
      throws Exception {
    Design tub =
        run(
            """
            design("Tub");
            wrap({ columns: %s, width: %s, rows: [60] }).floor({ tab: 5, column: %s });
            sheet("A1");
            """
                .formatted(columns, width, 1 + (column - 1) % columns));
    isSound(tub);
    // Of a regular polygon, n·w²/(4·tan(π/n)): elementary.
    assertThat(NamedPanel.of(tub.net(), "floor").orElseThrow().outline().area())
        .isCloseTo(columns * width * width / 4 / Math.tan(Math.PI / columns), within(1e-6));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "t.floor({ tab: 20 })|can't be 20 mm deep: give less than 15 mm",
        "t.floor({ column: 7 })|column",
        "t.floor().floor()|has a floor already",
        "t.columns(1).rows('rim').remove(); t.floor()|column 1 has none in the lowest row",
        "t.columns(1).lap(t.columns([2, 3]))|3 cells can't lie under 6",
        "t.columns(1).rows('wall').lap(t.columns(1).rows('wall'))|can't lie under itself",
        "t.rows(3).columns(1).remove(); t.rows(3).columns(1).lap(t.rows(3).columns(2))|is cut away",
      })
  void whatMakesNoSenseIsRefusedAtItsLine(String said, String told) {
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                run(
                    "design(\"a\");\n"
                        + "const t = wrap({ columns: 6, width: 30, rows: [20, 50, 20] });\n"
                        + said.replace('\'', '"')
                        + ";"));
    assertThat(e).isNotNull().hasMessageContaining(told);
    assertThat(e.line()).isEqualTo(3);
  }
}
