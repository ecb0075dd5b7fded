package facetwright.check.closing;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Checks;
import facetwright.check.Looks;
import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.Folding;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSizes;
import facetwright.net.sheet.Stock;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.words.Site;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is said of pinched wraps whose walls are too short, followed to the letter: each number in
 * the message is put into the wrap, which then closes, and a little less does not do.
 */
class ShortWallTest {
  private static final Site AT = new Site(3, 1);
  private static final Stock SHEET = SheetSizes.named("A0").stock(220);

  /** Walls u wide, columns between them v wide and pinched, two rows; rim tabs on the walls. */
  private record Wrap(
      int n, double u, double v, double low, double high, Pinch pinch, boolean rims) {
    Wrap(int n, double u, double v, double low, double high, Pinch pinch) {
      this(n, u, v, low, high, pinch, false);
    }

    static Wrap even(int n, double w, double h, Pinch pinch) {
      return new Wrap(n, w, w, h, h, pinch);
    }

    Net net() {
      List<Double> widths = IntStream.range(0, n).mapToObj(i -> i % 2 == 0 ? u : v).toList();
      List<Double> rows = rims ? List.of(u / 4, low, high, u / 4) : List.of(low, high);
      WrapDraft wrap = WrapDraft.of(widths, WrapRow.usual(rows), AT).seam(u / 4, AT);
      if (rims) {
        wrap.all().columns("even", AT).rows("rim", AT).remove(AT);
        wrap.all().columns("odd", AT).rows("rim", AT).tabs(AT);
      }
      wrap.all().columns("even", AT).rows("wall", AT).gusset(pinch, null, AT);
      return wrap.build();
    }

    Wrap longer(double walls) {
      return new Wrap(n, u, v, Math.max(low, walls), Math.max(high, walls), pinch, rims);
    }

    Wrap narrower(double columns) {
      return new Wrap(n, u, columns, low, high, pinch, rims);
    }

    Wrap out() {
      return new Wrap(n, u, v, low, high, Pinch.OUT, rims);
    }

    Said said() {
      Laid laid = SheetLayout.lay(net(), SHEET, new Room(0, SheetLayout.USUAL_GAP));
      FoldedForm form = Folding.fold(laid);
      return new Said(
          Verdict.of(laid, form, Checks.all(laid, GlueOrder.of(laid.net(), form))).text(Unit.MM),
          Checks.all(laid, GlueOrder.of(laid.net(), form)));
    }
  }

  private record Said(String verdict, List<Finding> all) {
    boolean closes() {
      boolean sound = all.stream().noneMatch(f -> f.severity() == Finding.Severity.ERROR);
      assertThat(sound).as(verdict + all).isEqualTo(verdict.startsWith("Closes"));
      return sound;
    }

    List<String> fixes() {
      return Looks.of("short-wall", all).stream().map(Finding::fix).toList();
    }

    /** The numbers told, the smallest first. */
    List<Double> numbers(String pattern) {
      return fixes().stream()
          .flatMap(fix -> Pattern.compile(pattern).matcher(fix).results())
          .map(m -> Double.valueOf(m.group(1)))
          .sorted()
          .toList();
    }
  }

  private static final String LONG = "[Mm]ake the walls ([\\d.]+) mm long or longer";
  private static final String NARROW = "[Mm]ake the pinched columns ([\\d.]+) mm wide or narrower";
  private static final String OUT = "let the points go out: gusset\\(\\{ point: \"out\" }\\)";
  private static final String LONG_OUT =
      "point: \"out\" }\\), with walls of ([\\d.]+) mm or longer";

  private static void follow(Wrap wrap) {
    Said said = wrap.said();
    if (said.closes()) {
      return;
    }
    // One cause, said once, and first in the verdict.
    assertThat(said.all)
        .filteredOn(f -> f.severity() == Finding.Severity.ERROR)
        .hasSizeBetween(1, wrap.low == wrap.high ? 1 : 2)
        .allMatch(f -> f.rule().equals("short-wall"));
    assertThat(said.verdict)
        .matches("Does not close: (its walls are .* long at least|the points of .*).*\\.");
    List<Double> walls = said.numbers(LONG);
    List<Double> columns = said.numbers(NARROW);
    assertThat(walls.isEmpty() && columns.isEmpty()).isFalse();
    if (!walls.isEmpty()) {
      closes(wrap.longer(walls.getLast()), true, said);
      if (wrap.low == wrap.high) {
        closes(wrap.longer(0.985 * walls.getLast()), false, said);
      }
    }
    if (!columns.isEmpty()) {
      closes(wrap.narrower(columns.getFirst()), true, said);
    }
    if (said.fixes().stream().anyMatch(fix -> fix.matches(".*" + OUT + ".*"))
        && said.numbers(LONG_OUT).isEmpty()) {
      closes(wrap.out(), true, said);
    }
    if (!said.numbers(LONG_OUT).isEmpty()) {
      closes(wrap.out().longer(said.numbers(LONG_OUT).getLast()), true, said);
    }
  }

  private static void closes(Wrap followed, boolean expected, Said said) {
    Said then = followed.said();
    assertThat(then.closes()).as("%s: %s, %s", followed, said.fixes(), then).isEqualTo(expected);
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 8, 10, 12, 14, 16, 18, 20, 22, 24})
  void followedInEveryNumberOfColumns(int n) {
    double reach = 24 / (2 * Math.sin(2 * Math.PI / n));
    for (double part : new double[] {0.8, 0.97, 1.02, 1.05}) {
      for (Pinch pinch : Pinch.values()) {
        if (part * reach > 12.5) {
          follow(Wrap.even(n, 24, part * reach, pinch));
        }
      }
    }
  }

  /** The least walls of points that go in, 24 mm wide; elementary, see {@link PinchedRow}. */
  @ParameterizedTest
  @CsvSource({"6, 15.96", "8, 19.42", "10, 22.83", "12, 26.27", "16, 33.3"})
  void namesTheLeastWallsOfPointsThatGoIn(int n, double least) {
    double reach = 24 / (2 * Math.sin(2 * Math.PI / n));
    Said said = Wrap.even(n, 24, 0.95 * reach, Pinch.IN).said();
    assertThat(said.numbers(LONG)).containsExactly(least);
    assertThat(said.verdict)
        .isEqualTo(
            Message.of(
                    "Does not close: its walls are %s long and have to be %s long at least, or %s"
                        + " where the points go out.",
                    Value.length(0.95 * reach), Value.length(least), Value.atLeast(reach))
                .text(Unit.MM));
  }

  /**
   * Walls that just reach lie flat: points that go out close so, those that go in hang through the
   * row beyond.
   */
  @ParameterizedTest
  @EnumSource(Pinch.class)
  void atTheFlatLimit(Pinch pinch) {
    for (int n = 6; n <= 24; n += 2) {
      Said said = Wrap.even(n, 24, 24 / (2 * Math.sin(2 * Math.PI / n)), pinch).said();
      assertThat(said.closes()).as("%d columns: %s", n, said.verdict).isEqualTo(pinch == Pinch.OUT);
      assertThat(said.verdict).doesNotStartWith("Not known");
    }
  }

  /**
   * A hair on either side of the least length, where neither joins nor layers tell much: points
   * that go out need v/(2·sin θ), those that go in (D + √(D² + v²))/2, see {@link PinchedRow}; and
   * those that go in on walls between the two never close.
   */
  @Property(tries = 60, seed = "20261201")
  void agreesWithTheLeastLengthWithinAHair(
      @ForAll @IntRange(min = 3, max = 12) int half,
      @ForAll @DoubleRange(min = 20, max = 40) double w,
      @ForAll @Scale(5) @DoubleRange(min = 0.0006, max = 0.004) double off,
      @ForAll @IntRange(min = -1, max = 1) int side,
      @ForAll Pinch pinch,
      @ForAll boolean atReach,
      @ForAll boolean rims) {
    double reach = w / (2 * Math.sin(Math.PI / half));
    double in = w / (2 * Math.tan(Math.PI / half));
    double least = pinch == Pinch.IN ? (in + Math.hypot(in, w)) / 2 : reach;
    double h = (atReach ? reach : least) * (1 + side * off);
    Wrap wrap = new Wrap(2 * half, w, w, h, h, pinch, rims);
    Said said = wrap.said();
    assertThat(said.closes()).as("%s: %s", wrap, said.verdict).isEqualTo(h >= least);
    if (h < least) {
      assertThat(said.numbers(LONG)).containsExactly(Math.ceil(100 * least - 1e-6) / 100);
      closes(wrap.longer(said.numbers(LONG).getFirst()), true, said);
    }
  }

  @Property(tries = 40, seed = "20261130")
  void followedOverWidthsAndRows(
      @ForAll @IntRange(min = 3, max = 8) int half,
      @ForAll @DoubleRange(min = 12, max = 40) double u,
      @ForAll @DoubleRange(min = 12, max = 40) double v,
      @ForAll @DoubleRange(min = 0.8, max = 1.3) double low,
      @ForAll @DoubleRange(min = 0.8, max = 1.3) double high,
      @ForAll boolean alike,
      @ForAll Pinch pinch) {
    double reach = v / (2 * Math.sin(Math.PI / half));
    Assume.that(Math.min(low, high) * reach > 0.55 * v);
    double other = alike ? low : high;
    follow(new Wrap(2 * half, u, v, low * reach, other * reach, pinch));
  }
}
