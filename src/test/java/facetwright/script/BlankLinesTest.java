package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
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

/**
 * Lines of a blank drawn once, right across, with what they are told by stretch, panel or region.
 */
class BlankLinesTest {
  private static Design run(String lines) throws ScriptException {
    return Facetwright.evaluate(
        "a.js", "design(\"Lines\");\n" + lines + "\nsheet(\"A0\");", Map.of(), Budget.USUAL);
  }

  /**
   * A sheet folded up along upright lines and then across: at each crossing three of one sense and
   * one of the other (Maekawa's theorem), which holds where the cross line takes turns.
   */
  @Property(tries = 12, seed = "20261201")
  void aMapFoldsFlatWhereItsCrossLinesTakeTurns(
      @ForAll @IntRange(min = 2, max = 5) int across,
      @ForAll @IntRange(min = 2, max = 5) int up,
      @ForAll @DoubleRange(min = 20, max = 40) double wide,
      @ForAll @DoubleRange(min = 20, max = 40) double high)
      throws Exception {
    Design map =
        run(
            """
            const [n, m, w, h] = [%s, %s, %s, %s];
            const map = blank({ width: n * w, height: m * h });
            const two = ["mountain", "valley"];
            for (let i = 1; i < n; i++) map.score({ from: "left", at: i * w, fold: 180, sense: two[i %% 2] });
            for (let i = 1; i < m; i++) {
              map.score({ from: "bottom", at: i * h, fold: 180, sense: i %% 2 ? two : [two[1], two[0]] });
            }
            """
                .formatted(across, up, wide, high));
    assertThat(map.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(map.net().panels()).hasSize(across * up);
    assertThat(map.net().scores()).hasSize((across - 1) * up + (up - 1) * across);
    assertThat(map.folded().measures().height()).isCloseTo(0, within(1e-6));
    double most = map.net().panels().stream().mapToDouble(p -> p.outline().area()).sum();
    assertThat(most).isCloseTo(across * wide * up * high, within(1e-6));
  }

  @Test
  void stretchesAreCountedFromTheLeftTheBottomOrTheFirstPoint() throws Exception {
    String cross =
        "const b = blank({ width: 90, height: 60 }).score({ from: \"left\", at: 30 });\n";
    Design left =
        run(cross + "b.score({ from: \"top\", at: 30, sense: [\"mountain\", \"valley\"] });");
    Design right =
        run(cross + "b.score({ points: [[90, 30], [0, 30]], sense: [\"valley\", \"mountain\"] });");
    for (Design d : new Design[] {left, right}) {
      assertThat(d.net().scores())
          .filteredOn(s -> d.net().segment(s.a()).middle().x() < d.net().box().minX() + 30 - 1)
          .allMatch(s -> s.sense() == Sense.MOUNTAIN)
          .hasSize(1);
    }
  }

  @Test
  void aLineIsDrawnWithinOnePanelAlone() throws Exception {
    Design one =
        run(
            """
            const b = blank({ width: 150, height: 110 });
            for (const from of ["left", "right"]) b.score({ from, at: 25, fold: 20 });
            b.score({ points: [[0, 0], [150, 110]], within: [75, 40], fold: 0 });
            b.cut({ from: "bottom", at: 55, within: [10, 50] });
            """);
    // Counted by hand: the left strip is cut in two, the middle divided, the right one whole.
    assertThat(one.net().panels()).hasSize(5);
    // The diagonal runs over 100 of 150 mm across.
    double slanted = Math.hypot(150, 110) * 100 / 150;
    assertThat(one.net().scores())
        .anySatisfy(
            s -> assertThat(one.net().segment(s.a()).length()).isCloseTo(slanted, within(1e-6)));
    assertThat(one.net().slits()).hasSize(1);
  }

  @Test
  void aLineIsCutOrScoredByThePanelsItParts() throws Exception {
    String tray =
        """
        const t = blank({ width: 150, height: 110 });
        for (const from of ["left", "right", "bottom", "top"]) t.score({ from, at: 25, fold: 90 });
        const tabs = [[12, 12], [138, 12], [12, 98], [138, 98]];
        t.fold(tabs, [[75, 12], [75, 98]], { as: "cut" });
        for (const [x, y] of tabs) {
          t.role([x, y], "tab").join([x, 55], [x < 75 ? 26 : 124, y < 55 ? 20 : 90], { tab: [x, y] });
        }
        """;
    Design made = run(tray);
    assertThat(made.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(made.net().slits()).hasSize(4);
    assertThat(made.net().scores()).hasSize(8);
    assertThat(run(tray.replace("as: \"cut\"", "as: \"perforated\"")).net().scores())
        .filteredOn(s -> s.perforated())
        .hasSize(4);
    Design uncut =
        run(
            "blank({ width: 90, height: 60 }).cut({ from: \"left\", at: 30 })"
                + ".fold([10, 10], [60, 10], { as: \"score\", fold: 30, sense: \"valley\" });");
    assertThat(uncut.net().scores()).hasSize(1);
    assertThat(uncut.net().pieces()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "b.score({ from: 'left', at: 60, within: [10, 10] });|does not run through the panel at",
        "b.score({ from: 'left', at: 60, within: [30, 10] });|does not run through the panel at",
        "b.cut({ points: [[1, 1], [9, 1], [9, 9]], within: [10, 10] });|takes one straight line",
        "b.fold([10, 10], [60, 10], { as: 'cut', fold: 90 });|a cut is not folded",
        "b.fold([10, 10], [60, 10], { as: 'crease' });|as",
        "b.fold([10, 10], [60, 10]);|needs to know how it is folded",
        "b.fold([[10, 10], [10, 40]], [[10, 20]], { fold: 9 });|no score runs between",
        "b.score({ from: 'left', at: 60, sense: ['mountain', 'up'] });|value 2",
        "b.score({ from: 'left', at: 60, fold: [90, 200] });|value 2",
      })
  void whatMakesNoSenseIsRefused(String said, String told) {
    ScriptException why =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                run(
                    "const b = blank({ width: 90, height: 60 }).score({ from: \"left\", at: 30"
                        + " });\n"
                        + said.replace('\'', '"')));
    assertThat(why).as(said).isNotNull().hasMessageContaining(told);
    assertThat(why.line()).isEqualTo(3);
  }
}
