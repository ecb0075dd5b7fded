package facetwright.adjust.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.draw.Drawing;
import facetwright.draw.Mark;
import facetwright.draw.page.ComparingPages;
import facetwright.fold.pose.Measures;
import facetwright.geom.Box2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.papers.order.Order;
import facetwright.script.Facetwright;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SweepTest {
  private static final String BOX =
      """
      design("Box", { units: "mm" });
      const side = dial("side", 20, { from: 10, to: 40 });
      if (side > 35) throw new Error("too broad for this box");
      prism({ sides: 6, side, height: 30 }).unfold();
      sheet("A4", { weight: 220 });
      """;

  private static Design box(String side) throws Exception {
    return Facetwright.evaluate("box.js", BOX, Map.of("side", side), Budget.USUAL);
  }

  private static Sweep sweep(double... values) throws Exception {
    Dial dial = box("20").dials().getFirst();
    List<Double> all = new ArrayList<>();
    for (double v : values) {
      all.add(v);
    }
    return Sweep.of(
        dial,
        Unit.MM,
        all,
        v -> Facetwright.evaluate("box.js", BOX, Map.of("side", v), Budget.USUAL));
  }

  // Across its corners a regular hexagon measures twice its side, across its sides √3 times.
  @Test
  void measuresEachStep() throws Exception {
    Sweep sweep = sweep(10, 20, 30);
    assertThat(sweep.steps()).hasSize(3);
    for (Sweep.Sample step : sweep.steps()) {
      Measures m = step.design().orElseThrow().folded().measures();
      assertThat(m.width()).isEqualTo(2 * step.value(), within(1e-6));
      assertThat(m.depth()).isEqualTo(Math.sqrt(3) * step.value(), within(1e-6));
    }
    SweepText text = new SweepText(Unit.MM);
    assertThat(text.row(sweep, sweep.steps().get(1)))
        .contains("20 (now)", "closes", "30 mm", "40 mm", "fits A4");
  }

  @Test
  void tellsAValueThatIsRefused() throws Exception {
    Sweep sweep = sweep(30, 38);
    assertThat(sweep.steps().get(1).design()).isEmpty();
    assertThat(sweep.steps().get(1).why()).contains("too broad for this box");
    assertThat(new SweepText(Unit.MM).row(sweep, sweep.steps().get(1))).startsWith("38", "none");
  }

  @Test
  void takesValuesWithinTheRange() throws Exception {
    Dial dial = box("20").dials().getFirst();
    assertThat(SweepValues.of(dial, Unit.MM)).contains(10.0, 20.0, 40.0).isSorted();
    assertThat(SweepValues.between(dial, 12, 14, Unit.MM))
        .containsExactly(12.0, 12.5, 13.0, 13.5, 14.0);
    assertThat(SweepValues.stepping(10, 20, 2.5)).containsExactly(10.0, 12.5, 15.0, 17.5, 20.0);
    assertThatThrownBy(() -> SweepValues.stepping(0, 1000, 1)).hasMessageContaining("100 values");
    assertThatThrownBy(() -> SweepValues.stepping(0, 10, 0)).hasMessageContaining("over 0");
  }

  /** Twice as broad is drawn twice as broad: seen from the front the breadth goes with the side. */
  @Test
  void drawsAllToOneScale() throws Exception {
    List<ComparingPages.Form> forms = new ArrayList<>();
    for (String side : List.of("15", "30")) {
      Design d = box(side);
      forms.add(new ComparingPages.Form("side " + side, List.of(), d.net(), d.folded().poses()));
    }
    Drawing page = ComparingPages.of("Box", Order.usual(Unit.MM).page(), forms).getFirst();
    Box2 left = seen(page, 0, page.width() / 2);
    Box2 right = seen(page, page.width() / 2, page.width());
    assertThat(right.width() / left.width()).isEqualTo(2, within(1e-6));
    assertThat(right.maxX()).isLessThan(page.width() - 10);
  }

  private static Box2 seen(Drawing page, double from, double to) {
    List<Vec2> corners =
        page.marks().stream()
            .filter(Mark.Patch.class::isInstance)
            .flatMap(m -> ((Mark.Patch) m).rings().stream())
            .flatMap(r -> r.corners().stream())
            .filter(c -> c.x() > from && c.x() < to)
            .toList();
    return Box2.around(corners);
  }
}
