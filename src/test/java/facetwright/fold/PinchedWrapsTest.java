package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.Net;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.words.Site;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/**
 * Wraps of n equal columns (width w, two walls of height h), every second one pinched, over short
 * walls and long.
 *
 * <p>A wall is the longest side of a right triangle with a − b: a = w/(2·tan(π/n)) from the axis at
 * the waist, b = w/(2·tan(2π/n)) at the rim. Shorter walls reach no rim. Their only other closed
 * forms run round more than once, or wave and sway.
 *
 * <p>In the plane of symmetry of a pinched column its middle panel, h long, leads from the waist
 * (a, 0) to the gussets' point, which is w/2 from the rim's corner (R, H), with R = w/(2·sin(2π/n))
 * and H² = h² − (a − b)². Gussets that point in pass through those of the other half where their
 * point comes below the waist, and through each other where it comes over the axis.
 */
class PinchedWrapsTest {
  private static final Site AT = Site.NONE;
  private static final double W = 24;

  private static Net wrap(int n, double h, Pinch pinch, boolean rims) {
    List<Double> rows = rims ? List.of(W / 4, h, h, W / 4) : List.of(h, h);
    WrapDraft wrap =
        WrapDraft.of(Collections.nCopies(n, W), WrapRow.usual(rows), AT).seam(W / 4, AT);
    if (rims) {
      wrap.all().columns("even", AT).rows("rim", AT).remove(AT);
      wrap.all().columns("odd", AT).rows("rim", AT).tabs(AT);
    }
    wrap.all().columns("even", AT).rows("wall", AT).gusset(pinch, null, AT);
    return wrap.build();
  }

  /** Where the gussets' point is, from the axis and from the waist up. */
  private record Point(double out, double up) {
    static Point of(int n, double h, Pinch pinch) {
      double a = W / (2 * Math.tan(Math.PI / n));
      double rim = W / (2 * Math.sin(2 * Math.PI / n));
      double in = a - W / (2 * Math.tan(2 * Math.PI / n));
      double up = Math.sqrt(h * h - in * in);
      // Two circles: h about (a, 0), W/2 about (rim, up).
      double x = rim - a;
      double d = Math.hypot(x, up);
      double along = (d * d + h * h - W * W / 4) / (2 * d);
      double aside = Math.sqrt(h * h - along * along);
      double side = pinch == Pinch.IN ? -1 : 1;
      return new Point(
          a + (along * x + side * aside * up) / d, (along * up - side * aside * x) / d);
    }
  }

  @Property(tries = 60, seed = "20261130")
  void closeExactlyWhenTheTriangleSays(
      @ForAll @IntRange(min = 3, max = 12) int half,
      @ForAll @DoubleRange(min = 0.6, max = 3) double times,
      @ForAll Pinch pinch,
      @ForAll boolean rims) {
    int n = 2 * half;
    double least = W / (2 * Math.sin(2 * Math.PI / n));
    double h = times * least;
    Assume.that(h > 0.52 * W);
    Assume.that(Math.abs(times - 1) > 0.03);
    Net net = wrap(n, h, pinch, rims);
    FoldedForm form = Folding.fold(net);
    if (times < 1) {
      assertThat(form.closure()).isIn(Closure.OPEN, Closure.IN_ITSELF);
      boolean inItself = !new Embedding(net, form).through().isEmpty();
      assertThat(form.closure() == Closure.OPEN ? form.gap() > 0.1 : inItself).isTrue();
      return;
    }
    assertThat(form.gap()).isLessThan(1e-9);
    Point point = Point.of(n, h, pinch);
    Assume.that(Math.abs(point.up) > 0.5 && Math.abs(point.out) > 0.5);
    boolean clear = pinch == Pinch.OUT || (point.up > 0 && point.out > 0);
    Embedding embedding = new Embedding(net, form);
    assertThat(form.closure()).isEqualTo(clear ? Closure.CLOSES : Closure.IN_ITSELF);
    assertThat(embedding.through().isEmpty()).isEqualTo(clear);
    if (clear) {
      assertThat(embedding.notOnce()).isEmpty();
    }
  }

  /**
   * Gussets that point in, on walls that only just reach: each row's points hang beyond the waist,
   * so that the rows are through each other, though their panels lie nearly in one plane.
   */
  @Property(tries = 12, seed = "20261130")
  void pointsBeyondTheWaistAreInTheWayHoweverFlatTheWallsLie(
      @ForAll @IntRange(min = 4, max = 8) int half,
      @ForAll @Scale(4) @DoubleRange(min = 1.0005, max = 1.03) double times,
      @ForAll boolean rims) {
    int n = 2 * half;
    double h = times * W / (2 * Math.sin(2 * Math.PI / n));
    assertThat(Point.of(n, h, Pinch.IN).up).isNegative();
    FoldedForm form = Folding.fold(wrap(n, h, Pinch.IN, rims));
    assertThat(form.closure()).as("%d columns, walls %s", n, h).isNotEqualTo(Closure.CLOSES);
    assertThat(form.closes()).isFalse();
  }

  /** What lies in one place lies there once: the walls that are long enough by a hair. */
  @Property(tries = 12, seed = "20261130")
  void standLowWhereWallsHardlyReach(
      @ForAll @IntRange(min = 4, max = 12) int half,
      @ForAll @Scale(3) @DoubleRange(min = 1.001, max = 1.02) double times) {
    int n = 2 * half;
    double least = W / (2 * Math.sin(2 * Math.PI / n));
    FoldedForm form = Folding.fold(wrap(n, times * least, Pinch.OUT, true));
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.gap()).isLessThan(1e-9);
  }
}
