package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Trays whose corners are folded webs, lapped to the long walls. */
class CornerWebsTest {
  private static Design tray(double width, double height, double wall, String... folds)
      throws Exception {
    String script =
        String.format(
            Locale.ROOT,
            """
            design("Web tray");
            const W = %s, H = %s, w = %s;
            const tray = blank({ width: W, height: H });
            for (const from of ["bottom", "top"]) tray.score({ from, at: w, between: [w, W - w], fold: 90 });
            for (const from of ["left", "right"]) tray.score({ from, at: w, between: [w, H - w], fold: 90 });
            for (const at of [w, W - w]) for (const between of [[0, w], [H - w, H]]) {
              tray.score({ from: "left", at, between%s });
            }
            for (const at of [w, H - w]) for (const between of [[0, w], [W - w, W]]) {
              tray.score({ from: "bottom", at, between%s });
            }
            for (const x of [0, W]) for (const y of [0, H]) {
              const in_ = [x ? W - w : w, y ? H - w : w];
              tray.score({ points: [[x, y], in_]%s });
              tray.lap([x ? W - w / 2 : w / 2, y ? H - w / 5 : w / 5], [W / 2, y ? H - w / 2 : w / 2]);
            }
            tray.standOn([W / 2, H / 2]);
            sheet("A2", { weight: 220 });
            """,
            width,
            height,
            wall,
            folds[0],
            folds[1],
            folds[2]);
    return Facetwright.evaluate("tray.js", script, Map.of(), Budget.USUAL);
  }

  private static String verdict(Design design) {
    return Verdict.of(design.laid(), design.folded(), design.findings()).text(design.unit());
  }

  /** Whether found or given, the webs lie on their walls: nothing is wider than the floor. */
  @Test
  void websLieInsideTheLongWalls() throws Exception {
    Random chance = new Random(31);
    for (int i = 0; i < 12; i++) {
      double wall = 12 + 20 * chance.nextDouble();
      double width = 2 * wall + 60 + 80 * chance.nextDouble();
      double height = 2 * wall + 40 + 60 * chance.nextDouble();
      String[] given = {", fold: 180", ", fold: 90", ", fold: 180, sense: \"valley\""};
      for (String[] folds : List.of(new String[] {"", "", ""}, given)) {
        Design design = tray(width, height, wall, folds);
        assertThat(design.folded().closure()).as(verdict(design)).isEqualTo(Closure.CLOSES);
        assertThat(design.folded().measures().height()).isCloseTo(wall, within(1e-4));
        assertThat(Math.max(design.folded().measures().width(), design.folded().measures().depth()))
            .isCloseTo(Math.max(width, height) - 2 * wall, within(1e-3));
        assertThat(design.findings()).isEmpty();
      }
    }
  }

  /** Webs left flat in the plane of the long wall stick out past its end, and do not hold. */
  @Test
  void websThatStickOutDoNotClose() throws Exception {
    Random chance = new Random(32);
    for (int i = 0; i < 6; i++) {
      double wall = 12 + 20 * chance.nextDouble();
      Design design =
          tray(
              2 * wall + 60 + 80 * chance.nextDouble(),
              2 * wall + 40 + 60 * chance.nextDouble(),
              wall,
              ", fold: 0",
              ", fold: 0",
              ", fold: 90");
      assertThat(verdict(design)).startsWith("Does not close");
      List<Finding> beside =
          design.findings().stream().filter(f -> f.message().contains("lies beside")).toList();
      assertThat(beside).hasSize(1);
      assertThat(beside).allMatch(f -> f.severity() == Finding.Severity.ERROR);
      assertThat(beside.getFirst().fix()).endsWith("right over: 180°, a mountain.");
    }
  }
}
