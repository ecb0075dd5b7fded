package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.geom.Vec2;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Rim tabs of wraps, folded over an opening of m equal sides: those that reach past it are told,
 * and what the finding proposes helps.
 */
class RimTabsTest {
  private static final double WIDTH = 30;
  private static final double HAIR = 0.2;

  private static final Pattern SQUARE = Pattern.compile("^Make .* at most ([0-9.]+) mm deep");

  private static final Pattern MEND =
      Pattern.compile("by (\\d+)°(?: and make it at most ([0-9.]+) mm deep)?\\.$");

  /** Of twice as many columns, every second one pinched; the walls as long as closing asks for. */
  private static String pinched(int sides, double depth, String tabs) {
    double lean =
        WIDTH / 2 / Math.tan(Math.PI / (2 * sides)) - WIDTH / 2 / Math.tan(Math.PI / sides);
    return String.format(
        Locale.ROOT,
        """
        design("Pinched");
        const body = wrap({ columns: %d, width: %s, rows: [%s, %s, %s, %s], seam: 10 });
        body.columns("even").rows("rim").remove();
        body.columns("even").rows("wall").gusset();
        body.columns("odd").rows("rim").tabs(%s);
        sheet("A0");
        """,
        2 * sides,
        WIDTH,
        depth,
        2 * lean + 20,
        2 * lean + 20,
        depth,
        tabs);
  }

  private static String plain(int sides, double depth, String tabs) {
    return String.format(
        Locale.ROOT,
        """
        design("Plain");
        const body = wrap({
          columns: %d, width: %s, rows: [%s, 50, %s], names: ["rim", "wall", "rim"], seam: 10 });
        body.columns("all").rows("rim").tabs(%s);
        sheet("A0");
        """,
        sides,
        WIDTH,
        depth,
        depth,
        tabs);
  }

  private static Design design(String script) throws Exception {
    return Facetwright.evaluate("rim.js", script, Map.of(), Budget.USUAL);
  }

  private static List<Finding> found(Design design) {
    return design.findings().stream().filter(f -> f.rule().equals("tab-sticks-out")).toList();
  }

  /**
   * How far a tab reaches past a regular opening whose one side is its foot: both are convex, so
   * that a corner reaches farthest. Reckoned in the opening's own plane, from the tab's outline.
   */
  private static double past(Design design, int sides) {
    double most = 0;
    for (Panel panel : design.net().panels()) {
      if (panel.role() != PanelRole.TAB || !panel.name().startsWith("rim")) {
        continue;
      }
      List<Vec2> corners = panel.outline().corners();
      int n = corners.size();
      int foot = 0;
      for (int i = 0; i < n; i++) {
        if (Math.abs(corners.get(i).distance(corners.get((i + 1) % n)) - WIDTH) < 1e-9
            && corners.get(i).y() == corners.get((i + 1) % n).y()) {
          foot = i;
        }
      }
      Vec2 from = corners.get(foot);
      Vec2 along = corners.get((foot + 1) % n).minus(from).unit();
      List<Vec2> opening = new ArrayList<>(List.of(Vec2.ZERO));
      for (int i = 0; i + 1 < sides; i++) {
        opening.add(opening.getLast().plus(Vec2.polar(WIDTH, 2 * Math.PI * i / sides)));
      }
      for (Vec2 corner : corners) {
        Vec2 off = corner.minus(from);
        Vec2 at = new Vec2(off.dot(along), along.cross(off));
        most = Math.max(most, outside(at, opening));
      }
    }
    return most;
  }

  private static double outside(Vec2 at, List<Vec2> convex) {
    double nearest = Double.POSITIVE_INFINITY;
    boolean inside = true;
    for (int i = 0; i < convex.size(); i++) {
      Vec2 a = convex.get(i);
      Vec2 b = convex.get((i + 1) % convex.size());
      Vec2 way = b.minus(a);
      inside &= way.cross(at.minus(a)) >= -1e-9;
      double t = Math.clamp(way.dot(at.minus(a)) / way.dot(way), 0, 1);
      nearest = Math.min(nearest, a.plus(way.times(t)).distance(at));
    }
    return inside ? 0 : nearest;
  }

  private static void assertTold(String script, int sides) throws Exception {
    Design design = design(script);
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
    double past = past(design, sides);
    List<Finding> found = found(design);
    assertThat(!found.isEmpty()).as("%s: %.3f mm past", script, past).isEqualTo(past > HAIR);
    if (past > HAIR) {
      assertThat(found.getFirst().severity()).isEqualTo(Finding.Severity.WARNING);
      String told = found.getFirst().message().replaceAll(".*out ([0-9.]+) mm.*", "$1");
      assertThat(Double.parseDouble(told)).isCloseTo(past, within(0.01));
    }
  }

  /** Sides of the opening, depths and bevels over their whole range. */
  @Test
  void tabsThatReachPastTheRimAreTold() throws Exception {
    for (int sides : new int[] {3, 4, 5, 6, 8}) {
      for (double part : new double[] {0.2, 0.6, 0.86, 1, 1.3, 2}) {
        assertTold(pinched(sides, part * WIDTH, ""), sides);
        assertTold(plain(sides, part * WIDTH, ""), sides);
      }
      for (double bevel : new double[] {0, 15, 30}) {
        assertTold(plain(sides, 0.5 * WIDTH, "{ bevel: " + bevel + " }"), sides);
      }
    }
  }

  @Test
  void whoFollowsTheMendIsDone() throws Exception {
    int mended = 0;
    for (int sides : new int[] {3, 4, 5, 6}) {
      for (double part : new double[] {0.5, 0.9, 1.5, 2.2}) {
        for (String tabs : new String[] {"", "{ bevel: 0 }"}) {
          double depth = part * WIDTH;
          List<Finding> found = found(design(plain(sides, depth, tabs)));
          if (found.isEmpty()) {
            continue;
          }
          Matcher mend = MEND.matcher(found.getFirst().fix());
          Matcher square = SQUARE.matcher(found.getFirst().fix());
          boolean isSquare = square.find();
          assertThat(isSquare || mend.find()).as(found.getFirst().fix()).isTrue();
          String told = isSquare ? square.group(1) : mend.group(2);
          double shallower = told == null ? depth : Double.parseDouble(told);
          String bevel = isSquare ? tabs : "{ bevel: " + mend.group(1) + " }";
          assertThat(found(design(plain(sides, shallower, bevel)))).isEmpty();
          mended++;
        }
      }
    }
    assertThat(mended).isGreaterThan(10);
  }

  /** A brim, folded outward, lies over no opening. */
  @Test
  void aBrimIsNoTabThatSticksOut() throws Exception {
    String brim = plain(4, 20, "") + "body.rows(\"rim\").fold(90, { sense: \"valley\" });\n";
    assertThat(found(design(brim))).isEmpty();
  }
}
