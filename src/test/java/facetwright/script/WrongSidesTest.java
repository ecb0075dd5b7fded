package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.pose.FoldTree;
import facetwright.fold.pose.Gaps;
import facetwright.geom.Motion3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Panels on two sides of a base, joined by every pair of their free sides. A search by chance over
 * all folds tells how near the two come; where that is far, the verdict says so, by no more than
 * that, and what is advised mends it.
 */
class WrongSidesTest {
  private static final double SIDE = 40;

  private static final Pattern APART = Pattern.compile("stay ([\\d.]+) mm apart at least");
  private static final Pattern MEET =
      Pattern.compile(
          "Join sides that meet(?: at a corner)?: side (\\d) .*?of \"one\" with side (\\d) .*?of"
              + " \"other\"\\.");

  private static final String FACES =
      """
      design("Faces");
      const base = panel("base", { sides: %d, side: %s });
      const one = base.attach("1", "one", { %s });
      const other = base.attach("%d", "other", { %s });
      %s
      sheet("A0");
      """;

  static Stream<Arguments> joins() {
    List<Arguments> all = new ArrayList<>();
    for (int n = 3; n <= 6; n++) {
      for (int other = 2; other <= n; other++) {
        for (String shape : List.of("sides: 3", "depth: 30", "sides: 5")) {
          int sides = shape.startsWith("depth") ? 4 : Integer.parseInt(shape.substring(7));
          for (int one = 2; one <= sides; one++) {
            for (int two = 2; two <= sides; two++) {
              // Of panels with many pairs some have to do.
              if ((n + other + one + 2 * two) % (4 * sides - 9) == 0) {
                all.add(Arguments.of(n, other, shape, one, two, (one + two) % 2 == 0));
              }
            }
          }
        }
      }
    }
    return all.stream();
  }

  private static Design design(int n, int other, String shape, String join) throws ScriptException {
    String script = String.format(Locale.ROOT, FACES, n, SIDE, shape, other, shape, join);
    return Facetwright.evaluate("faces.js", script, Map.of(), Budget.USUAL);
  }

  private static String join(int one, int two, boolean tab) {
    return "one.join(\"%d\", other, \"%d\", { %s });"
        .formatted(one, two, tab ? "depth: 5" : "tab: false");
  }

  private static String verdict(Design design) {
    return Verdict.of(design.laid(), design.folded(), design.findings()).text(design.unit());
  }

  @ParameterizedTest
  @MethodSource("joins")
  void isJudged(int n, int other, String shape, int one, int two, boolean tab)
      throws ScriptException {
    Design design = design(n, other, shape, join(one, two, tab));
    double nearest = nearest(design.net());
    String verdict = verdict(design);
    Matcher apart = APART.matcher(verdict);
    boolean isToldApart = apart.find();
    if (isToldApart) {
      assertThat(Double.parseDouble(apart.group(1))).isLessThanOrEqualTo(nearest + 0.005);
    }
    if (nearest > 0.5) {
      assertThat(verdict).startsWith("Does not close");
    }
    if (!isToldApart) {
      return;
    }
    // The search by chance stops near the least, which is told to a thousandth.
    assertThat(Double.parseDouble(apart.group(1))).isGreaterThan(0.97 * nearest - 0.05);
    assertThat(verdict).startsWith("Does not close");
    assertThat(design.folded().closes()).isFalse();
    List<Finding> errors =
        design.findings().stream()
            .filter(f -> f.severity() == Finding.Severity.ERROR && !f.rule().equals("overlap"))
            .toList();
    assertThat(errors).extracting(Finding::rule).containsExactly("wrong-sides");
    String fix = errors.getFirst().fix();
    Matcher meet = MEET.matcher(fix);
    String mended = meet.matches() ? join(toInt(meet.group(1)), toInt(meet.group(2)), tab) : "";
    assertThat(meet.matches() || fix.endsWith("or leave this join out.")).as(fix).isTrue();
    assertThat(verdict(design(n, other, shape, mended))).doesNotStartWith("Does not close");
  }

  private static int toInt(String digits) {
    return Integer.parseInt(digits);
  }

  /** The least gap that a search by chance finds: many throws, the best of them followed down. */
  private static double nearest(Net net) {
    Random chance = new Random(5);
    double best = Double.POSITIVE_INFINITY;
    List<double[]> seeds = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      seeds.add(new double[] {turn(chance), turn(chance)});
    }
    seeds.sort((a, b) -> Double.compare(gap(net, a), gap(net, b)));
    for (double[] seed : seeds.subList(0, 5)) {
      double[] at = seed;
      double gap = gap(net, at);
      for (double step = 0.3; step > 1e-5; step *= 0.93) {
        for (int k = 0; k < 4; k++) {
          double[] near = {
            at[0] + step * chance.nextGaussian(), at[1] + step * chance.nextGaussian()
          };
          double its = gap(net, near);
          if (its < gap) {
            gap = its;
            at = near;
          }
        }
      }
      best = Math.min(best, gap);
    }
    return best;
  }

  private static double turn(Random chance) {
    return Math.PI * (2 * chance.nextDouble() - 1);
  }

  /** By turns about the scores of the two panels, which are the first two of the net. */
  private static double gap(Net net, double[] angles) {
    Join.Seam seam = (Join.Seam) net.joins().getFirst();
    List<Motion3> poses = new ArrayList<>(Collections.nCopies(net.panels().size(), Motion3.NONE));
    for (int s = 0; s < 2; s++) {
      int panel = net.scores().get(s).b().panel();
      poses.set(panel, FoldTree.turn(net, s, net.scores().get(s).a().panel(), angles[s]));
    }
    return Gaps.seam(net, poses, seam.a(), seam.b());
  }
}
