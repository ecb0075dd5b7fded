package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Holes punched in tabs lie over each other when the form is made. */
class TabHolesTest {
  private static final double FINE = 1e-6;

  private static Design run(String script, Object... values) throws ScriptException {
    String text = String.format(Locale.ROOT, script, values);
    return Facetwright.evaluate("a.js", text, Map.of(), Budget.USUAL);
  }

  /** Where the holes of the tabs of a row are in the folded form. */
  private static List<Vec3> holes(Design made, String row) {
    List<Vec3> holes = new ArrayList<>();
    Net net = made.net();
    for (int p = 0; p < net.panels().size(); p++) {
      Panel panel = net.panels().get(p);
      for (Opening o : panel.openings()) {
        if (panel.role() == PanelRole.TAB && panel.name().endsWith(row)) {
          holes.add(made.folded().poses().get(p).apply(((Opening.Hole) o).centre()));
        }
      }
    }
    return holes;
  }

  /** Where holes lie from the middle of the fold that their tab hangs on, x along it. */
  private static List<Vec2> fromFold(Net net) {
    List<Vec2> found = new ArrayList<>();
    for (Score score : net.scores()) {
      for (EdgeRef ref : List.of(score.a(), score.b())) {
        Panel panel = net.panels().get(ref.panel());
        Segment2 fold = panel.outline().side(ref.edge());
        for (Opening o : panel.role() == PanelRole.TAB ? panel.openings() : List.<Opening>of()) {
          Vec2 off = ((Opening.Hole) o).centre().minus(fold.middle());
          found.add(new Vec2(off.dot(fold.direction()), off.dot(fold.direction().left())));
        }
      }
    }
    return found;
  }

  /** One over the other: the tabs are as thick as nothing in the reckoning. */
  private static void assertOneOverTheOther(List<Vec3> holes, int count) {
    assertThat(holes).hasSize(count);
    for (Vec3 hole : holes) {
      assertThat(hole.distance(holes.getFirst())).isCloseTo(0, within(FINE));
    }
  }

  /**
   * The tabs of a pinched lantern of four sides are as deep as its opening is wide, so that they
   * all reach over its middle: half a side from each fold, and with it the holes.
   */
  @Property(tries = 12, seed = "20261204")
  void thoseOfAPinchedLanternMeetOnItsAxis(
      @ForAll @IntRange(min = 3, max = 5) int half,
      @ForAll @DoubleRange(min = 20, max = 40) double width,
      @ForAll @DoubleRange(min = 1.8, max = 3) double high,
      @ForAll @DoubleRange(min = 2, max = 4) double across)
      throws Exception {
    Design made =
        run(
            """
            design("Lantern");
            const body = wrap({ columns: %d, width: %s, rows: [%s, %s, %s, %s], seam: 10 });
            body.columns("even").rows("rim").remove();
            body.columns("even").rows("wall").gusset();
            body.columns("odd").rows("rim").tabs({ hole: %s });
            sheet("A0");
            """,
            2 * half, width, width, width * high, width * high, width, across);
    assertThat(made.folded().closure()).isEqualTo(Closure.CLOSES);
    assertOneOverTheOther(holes(made, "(row 1)"), half);
    assertOneOverTheOther(holes(made, "(row 4)"), half);
    // From the fold: the inner radius of a regular polygon, w/2/tan(π/m) (elementary).
    double in = width / 2 / Math.tan(Math.PI / half);
    assertThat(fromFold(made.net())).hasSize(2 * half);
    assertThat(fromFold(made.net()))
        .allSatisfy(off -> assertThat(off.distance(new Vec2(0, in))).isCloseTo(0, within(FINE)));
  }

  /** Columns of two widths that taper: the tabs stand square on walls that lean. */
  @Property(tries = 12, seed = "20261205")
  void thoseOfATaperedShadeMeetOnItsAxis(
      @ForAll @DoubleRange(min = 24, max = 40) double wide,
      @ForAll @DoubleRange(min = 24, max = 40) double other,
      @ForAll @DoubleRange(min = 0.6, max = 1.5) double taper)
      throws Exception {
    Design made =
        run(
            """
            design("Shade");
            const shade = wrap({
              widths: [[%s, %s, %s, %s], [%s, %s, %s, %s]], rows: [60, %s], names: ["wall", "rim"], seam: 8 });
            shade.rows("rim").tabs({ hole: 3 });
            sheet("A0");
            """,
            wide,
            other,
            wide,
            other,
            wide * taper,
            other * taper,
            wide * taper,
            other * taper,
            Math.max(wide, other) * taper);
    assertThat(made.folded().closure()).isEqualTo(Closure.CLOSES);
    List<Vec3> holes = holes(made, "").stream().toList();
    assertOneOverTheOther(holes, 4);
  }

  /** A tab that does not reach over the middle has its hole at half its depth. */
  @Test
  void aShallowTabHasItAtHalfItsDepth() throws Exception {
    Design made =
        run(
            """
            design("Drum");
            const drum = wrap({ columns: 8, width: 30, rows: [60, 16], names: ["wall", "rim"], seam: 8 });
            drum.rows("rim").tabs({ hole: 3 });
            """);
    assertThat(fromFold(made.net())).hasSize(8);
    assertThat(fromFold(made.net()))
        .allSatisfy(off -> assertThat(off.distance(new Vec2(0, 8))).isCloseTo(0, within(FINE)));
  }

  /** So has a tab of a panel, however its ends are cut back. */
  @Test
  void aTabOfAPanelHasItAtHalfItsDepth() throws Exception {
    Design made =
        run(
            """
            design("Tag");
            panel("tag", { width: 40, height: 60 }).tab("top", { depth: 12, bevel: 50 }).hole({ across: 3 });
            """);
    assertThat(fromFold(made.net()))
        .singleElement()
        .satisfies(off -> assertThat(off.distance(new Vec2(0, 6))).isCloseTo(0, within(FINE)));
  }
}
