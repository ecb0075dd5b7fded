package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.JoinGap;
import facetwright.geom.Vec3;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.Panel;
import facetwright.net.Parts;
import facetwright.net.Score;
import facetwright.net.fitting.Label;
import facetwright.papers.materials.Prices;
import facetwright.papers.materials.Works;
import facetwright.papers.materials.WorksText;
import facetwright.papers.order.Order;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A part and its mirror image. What a mirror keeps and turns about is elementary: lengths stay, and
 * four places not in one plane change their sense (from memory).
 */
class MirroredPartsTest {
  private static final double SAME = 1e-6;

  private static Design evaluate(String script, Object... values) throws ScriptException {
    return Facetwright.evaluate(
        "pair.js",
        "design(\"Pair\");\nsheet({ width: 2000, height: 2000, caliper: 0.3 });\n"
            + String.format(Locale.ROOT, script, values),
        Map.of(),
        Budget.USUAL);
  }

  /** The corners of a part as it stands folded, in the order of the panels and their first side. */
  private static List<Vec3> corners(Design design, int part) {
    List<Vec3> all = new ArrayList<>();
    for (int p : design.net().parts().all().get(part).panels()) {
      Panel panel = design.net().panels().get(p);
      int n = panel.outline().size();
      for (int c = 0; c < n; c++) {
        // Of the image, corner 1 - c is what corner c was.
        int corner = part == 0 ? c : 1 - c;
        all.add(design.folded().poses().get(p).apply(panel.outline().corner(corner)));
      }
    }
    return all;
  }

  /** Folds as the mirror image does: all distances are kept, the sense is turned. */
  private static void isMirrored(Design design) {
    List<Vec3> one = corners(design, 0);
    List<Vec3> other = corners(design, 1);
    assertThat(other).hasSameSizeAs(one);
    Vec3 a = one.getFirst();
    Vec3 p = other.getFirst();
    int last = one.size() - 1;
    for (int i = 1; i <= last; i++) {
      assertThat(other.get(i).distance(p)).isCloseTo(one.get(i).distance(a), within(1e-4));
      assertThat(other.get(i).distance(other.get(last)))
          .isCloseTo(one.get(i).distance(one.get(last)), within(1e-4));
    }
    double most = 0;
    for (int i = 3; i <= last; i++) {
      for (int j = 2; j < i; j += 3) {
        double was = volume(a, one.get(1), one.get(j), one.get(i));
        double is = volume(p, other.get(1), other.get(j), other.get(i));
        assertThat(is).isCloseTo(-was, within(0.5 + Math.abs(was) * 1e-3));
        most = Math.max(most, Math.abs(was));
      }
    }
    assertThat(most).isGreaterThan(100);
  }

  private static double volume(Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
    return b.minus(a).cross(c.minus(a)).dot(d.minus(a)) / 6;
  }

  private static Net part(Design design, int part) {
    Parts.Part one = design.net().parts().all().get(part);
    return NetMerge.only(design.net(), one.panels(), one.stance());
  }

  private static void holds(Design design) {
    Net left = part(design, 0);
    Net right = part(design, 1);
    for (int p = 0; p < left.panels().size(); p++) {
      Panel was = left.panels().get(p);
      Panel is = right.panels().get(p);
      assertThat(is.cardArea()).isCloseTo(was.cardArea(), within(SAME));
      assertThat(is.openings()).hasSameSizeAs(was.openings());
    }
    assertThat(right.joins()).hasSameSizeAs(left.joins());
    assertThat(right.layers()).isEqualTo(left.layers());
    assertThat(right.ticks()).hasSameSizeAs(left.ticks());
    assertThat(right.scores().stream().map(Score::sense))
        .isEqualTo(left.scores().stream().map(Score::sense).toList());
    Net twice = NetMerge.mirrored(NetMerge.mirrored(left));
    assertThat(twice.scores()).isEqualTo(left.scores());
    assertThat(twice.joins()).isEqualTo(left.joins());
    assertThat(twice.stance()).isEqualTo(left.stance());
    for (int p = 0; p < left.panels().size(); p++) {
      Panel was = left.panels().get(p);
      Panel is = twice.panels().get(p);
      assertThat(is.sides()).isEqualTo(was.sides());
      assertThat(is.outline().arcs()).hasSameSizeAs(was.outline().arcs());
      for (int c = 0; c < was.outline().size(); c++) {
        assertThat(is.outline().corner(c)).isEqualTo(was.outline().corner(c));
      }
    }
    isMirrored(design);
  }

  @Property(tries = 8, shrinking = ShrinkingMode.OFF)
  void leaningFormsAndTheirImages(
      @ForAll @IntRange(min = 3, max = 7) int sides,
      @ForAll @DoubleRange(min = 20, max = 50) double side,
      @ForAll @DoubleRange(min = 0.6, max = 0.95) double part)
      throws ScriptException {
    Design design =
        evaluate(
            """
            const body = frustum({ sides: %d, side: %.3f, top: %.3f, height: 40 })
              .hole("side 1", { across: 4, at: [3, 4] }).window("side 2", { border: 6 });
            const left = body.unfold({ part: "left" });
            left.mirrored("right").beside(left);
            """,
            sides, side, side * part);
    holds(design);
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        """
        const floor = panel("floor", { width: 60, height: 40 }).tick([0, 5], [0, 0]);
        const wall = floor.attach("left", "wall", { depth: 25, fold: 70 });
        wall.hole([8, 8], { across: 3 });
        wall.window({ width: 20, height: 8 });
        floor.attach("top", "back", { depth: 30, fold: 90 }).label("UP");
        const left = floor.part("left");
        left.mirrored("right").beside(left);
        """,
        """
        const body = wrap({ widths: [30, 50, 40, 45], rows: [60], seam: 12 });
        body.columns(2).rows(1).window({ border: 8 });
        body.columns(1).rows(1).hole([5, 9], { across: 4 });
        const left = body.part("left");
        left.mirrored("right").beside(left);
        """,
        """
        const card = blank({ width: 90, height: 60 });
        card.score({ from: "left", at: 30, fold: 60 });
        card.score({ from: "left", at: 70, fold: 40, sense: "valley" });
        card.hole([10, 12], { across: 5 });
        const left = card.part("left");
        left.mirrored("right").beside(left);
        """
      })
  void everyWayIn(String script) throws ScriptException {
    holds(evaluate(script));
  }

  @Test
  void whatDoesNotCloseDoesNotCloseMirrored() throws ScriptException {
    Design design =
        evaluate(
            """
            const floor = panel("floor", { width: 60, height: 40 });
            const one = floor.attach("left", "one", { depth: 25, fold: 90 });
            const two = floor.attach("top", "two", { depth: 20, fold: 70 });
            one.join("right", two, "left", { depth: 8 });
            const left = floor.part("left");
            left.mirrored("right");
            """);
    assertThat(design.folded().closure()).isNotEqualTo(Closure.CLOSES);
    List<JoinGap> gaps = design.folded().gaps();
    assertThat(gaps).hasSize(2);
    assertThat(gaps.getLast().mm()).isCloseTo(gaps.getFirst().mm(), within(1e-4));
    assertThat(gaps.getFirst().mm()).isGreaterThan(1);
  }

  @Test
  void wordsStayReadable() throws ScriptException {
    Design design =
        evaluate(
            """
            const body = frustum({ sides: 4, side: 40, top: 30, height: 40 }).label("side 1", "HALLO");
            const left = body.unfold({ part: "left" });
            left.mirrored("right").beside(left);
            """);
    List<Label> labels = design.net().fittings().labels();
    assertThat(labels).hasSize(2);
    // Up on the made form is up in both: the first side runs the other way in a mirror.
    double one = labels.getFirst().up();
    double other = labels.getLast().up();
    assertThat(Math.cos(Math.PI - one)).isCloseTo(Math.cos(other), within(1e-6));
    assertThat(Math.sin(Math.PI - one)).isCloseTo(Math.sin(other), within(1e-6));
  }

  @Test
  void countsNamesAndFittings() throws ScriptException {
    Design design =
        evaluate(
            """
            const back = panel("back", { width: 40, height: 60 });
            back.attach("left", "shelf", { depth: 25, fold: 90 });
            const left = back.part("left", { count: 2 });
            const right = left.mirrored("right", { count: 3 });
            left.note("Sand the edge.");
            right.note("And this one.");
            left.mirrored();
            """);
    assertThat(design.net().parts().all().stream().map(Parts.Part::name))
        .containsExactly(
            "left 1",
            "right 1",
            "mirrored left 1",
            "left 2",
            "right 2",
            "right 3",
            "mirrored left 2");
    // Two left and two of its images with one note each, three right ones with two.
    assertThat(design.net().fittings().all()).hasSize(2 + 2 + 3 * 2);
    Works works = Works.of(design.laid(), design.gluing(), Unit.MM, List.of(), 2);
    String like = ", the mirror image of “left”: cut it by its own lines, same side up";
    assertThat(new WorksText(Order.usual(Unit.MM)).materials(works.materials(), Prices.NONE))
        .contains(
            "Parts to make: 4 of “left”; 6 of “right”%s; 4 of “mirrored left”%s."
                .formatted(like, like));
    assertThat(design.net().panels().stream().map(Panel::name))
        .contains("left 1 shelf", "right 1 shelf", "mirrored left 2 shelf");
  }
}
