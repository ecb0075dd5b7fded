package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.draw.LabelSetting;
import facetwright.draw.Lettering;
import facetwright.draw.Mark;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Words are on their panels and upright, whichever way a piece is made. */
class LabelsTest {
  private static Design made(String lines) throws ScriptException {
    return Facetwright.evaluate("d.js", "design(\"D\");\n" + lines, Map.of(), Budget.USUAL);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "prism({ sides: 6, side: 40, height: 60 }).label(\"side\", \"Tidewell walk\").unfold();",
        "pyramid({ sides: 5, side: 50, height: 60 }).label(\"side\", \"Guild\").unfold();",
        "prism({ sides: 5, side: 50, height: 40 }).label(\"side\", \"Oake\", { cut: true })"
            + ".unfold({ as: \"petals\" });",
        "wrap({ columns: 6, width: 40, rows: [60], seam: 8 }).rows(1).label(\"to the harbour\");",
        "const f = panel(\"f\", { width: 60, height: 60 });"
            + " f.attach(\"top\", \"a\", { depth: 40, fold: 90 }).label(\"one\");"
            + " f.attach(\"left\", \"b\", { depth: 40, fold: 90 }).label(\"two\");",
        "box({ width: 50, depth: 50, height: 50 }).label(\"side 2\", \"four of it\")"
            + ".unfold({ part: \"p\", count: 4 });",
      })
  void theyLieOnTheirPanelsAndAreReadUpright(String lines) throws Exception {
    Design d = made(lines);
    assertThat(d.findings()).noneMatch(f -> f.rule().equals("label"));
    List<LabelSetting> all = LabelSetting.all(d.net());
    assertThat(all).isNotEmpty().hasSameSizeAs(d.net().fittings().labels());
    for (LabelSetting set : all) {
      int p = set.label().panel();
      assertThat(d.net().panels().get(p).region().covers(Planar.polygon(set.outline()))).isTrue();
      assertThat(set.size()).isGreaterThanOrEqualTo(Lettering.pt(Lettering.SMALLEST_PT) - 1e-9);
      Motion3 pose = d.folded().whole().get(p);
      for (Mark.Text line : set.lines()) {
        Vec2 along = Vec2.polar(1, Math.toRadians(line.angle()));
        Vec3 run = pose.direction(new Vec3(along.x(), along.y(), 0));
        Vec3 up = pose.direction(new Vec3(-along.y(), along.x(), 0));
        assertThat(run.z()).isCloseTo(0, within(1e-6));
        assertThat(up.z()).isPositive();
      }
    }
  }

  @Test
  void whatHasNoRoomIsToldAndWhatIsTooLargeIsMadeSmaller() throws Exception {
    Design small = made("panel(\"a\", { width: 9, height: 5 }).label(\"incomprehensible\");");
    assertThat(small.findings())
        .filteredOn(f -> f.rule().equals("label"))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Finding.Severity.WARNING));
    assertThat(LabelSetting.all(small.net())).isEmpty();
    Design large = made("panel(\"a\", { width: 60, height: 30 }).label(\"Mirren\", { size: 40 });");
    assertThat(large.findings())
        .filteredOn(f -> f.rule().equals("label"))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Finding.Severity.NOTE));
    assertThat(LabelSetting.all(large.net())).hasSize(1);
  }

  @Test
  void theyKeepClearOfOpenings() throws Exception {
    Design d =
        made(
            "blank({ width: 60, height: 90 }).hole([30, 45], { across: 6 }).label([10, 10],"
                + " \"thanks\");");
    LabelSetting set = LabelSetting.all(d.net()).getFirst();
    assertThat(set.outline().contains(new Vec2(30, 45))).isFalse();
  }
}
