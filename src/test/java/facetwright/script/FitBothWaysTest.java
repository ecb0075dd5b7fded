package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/**
 * A part over another and the other in the one are told alike: the one opening, larger by so much
 * on a side than what goes into it, whichever of the two moves. Against the thickness of two walls,
 * half of each on a side (elementary). A part that goes over another is turned over first, so that
 * an outline of no mirror symmetry is mirrored then.
 */
class FitBothWaysTest {
  /** What is told of the fit of two parts. */
  private record Told(
      boolean closes, Optional<Double> room, List<Finding.Severity> found, List<Double> numbers) {
    private static Told of(String script) {
      try {
        Design d = Facetwright.evaluate("design.js", script, Map.of(), Budget.USUAL);
        String verdict = Verdict.of(d.laid(), d.folded(), d.findings()).text(d.unit());
        Matcher room =
            Pattern.compile("with ([\\d.]+) (?:mm|cm|in)\\b[^;]*? of room").matcher(verdict);
        List<Finding> fits = d.findings().stream().filter(f -> f.rule().equals("fit")).toList();
        return new Told(
            verdict.startsWith("Closes"),
            room.find() ? Optional.of(Double.valueOf(room.group(1))) : Optional.empty(),
            fits.stream().map(Finding::severity).toList(),
            fits.stream()
                .flatMap(
                    f -> Pattern.compile("\\d+\\.?\\d*").matcher(f.message() + f.fix()).results())
                .map(m -> Double.valueOf(m.group()))
                .sorted()
                .toList());
      } catch (ScriptException e) {
        throw new AssertionError(script, e);
      }
    }
  }

  enum Unit {
    MM(1),
    CM(0.1),
    IN(1 / 25.4);

    private final double part;

    Unit(double part) {
      this.part = part;
    }

    private String of(double mm) {
      return Double.toString(mm * part);
    }
  }

  /** Some outline of this kind, the last of no symmetry. */
  private static String outline(int kind, Unit unit, Random any) {
    String wide = unit.of(40 + 50 * any.nextDouble());
    String tall = unit.of(40 + 50 * any.nextDouble());
    int n = any.nextInt(6);
    return switch (kind) {
      case 0 -> "rectangle({ width: %s, height: %s })".formatted(wide, tall);
      case 1 ->
          "regular({ sides: %d, side: %s })".formatted(3 + n, unit.of(18 + 20 * any.nextDouble()));
      case 2 ->
          "star({ points: %d, across: %s, inner: %s })"
              .formatted(4 + n, wide, 0.45 + 0.4 * any.nextDouble());
      case 3 ->
          "rectangle({ width: %s, height: %s }).rounded(%s, { sides: %d })"
              .formatted(wide, tall, unit.of(5 + 9 * any.nextDouble()), 1 + n / 2);
      default ->
          "outline("
              + IntStream.range(0, 4 + n)
                  .mapToObj(
                      i -> {
                        double at = 2 * Math.PI * (i + 0.5 * any.nextDouble()) / (4 + n);
                        double out = 30 + 25 * any.nextDouble();
                        return List.of(unit.of(out * Math.cos(at)), unit.of(out * Math.sin(at)));
                      })
                  .toList()
              + ")";
    };
  }

  @Property(tries = 60, seed = "20261201")
  void overIsToldAsInto(
      @ForAll @IntRange(min = 0, max = 4) int kind,
      @ForAll Unit unit,
      @ForAll @IntRange(min = 1, max = 1_000_000) int seed,
      @ForAll @DoubleRange(min = -1.5, max = 3.5) double off,
      @ForAll @DoubleRange(min = 0.15, max = 0.65) double card) {
    double room = 2 * (off - card);
    Assume.that(Math.abs(room) > 0.03 && Math.abs(room - 4) > 0.03);
    String alpha =
        """
        design("Two parts", { units: "%s" });
        sheet({ width: "1000 mm", height: "1000 mm", caliper: %s });
        const alpha = %s;
        const box = prism({ outline: alpha, height: %s }).open("top").unfold({ tabs: false, part: "alpha" });
        """
            .formatted(
                unit.name().toLowerCase(Locale.ROOT),
                unit.of(card),
                outline(kind, unit, new Random(seed)),
                unit.of(25));
    String beta =
        """
        const lid = prism({ outline: alpha.offset(%s)%s, height: %s })
          .open("top").unfold({ tabs: false, part: "beta" });
        """;
    String deep = unit.of(20);
    String over =
        alpha
            + beta.formatted(unit.of(off), kind == 4 ? ".mirrored()" : "", deep)
            + "lid.over(box);";
    String into = alpha + beta.formatted(unit.of(off), "", deep) + "box.into(lid);";
    Told told = Told.of(over);
    assertThat(told).as(over).isEqualTo(Told.of(into));
    assertThat(told.closes).as(over).isEqualTo(room > 0);
    assertThat(told.found.isEmpty()).as("%s: %s", over, told).isEqualTo(room > 0 && room < 4);
    double parts = unit == Unit.MM ? 0.006 : 0.03;
    told.room.ifPresent(
        r ->
            assertThat(Math.abs(r / unit.part - Math.max(0, room)))
                .as("%s: %s", over, told)
                .isLessThan(parts));
  }
}
