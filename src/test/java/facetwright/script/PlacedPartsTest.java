package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Together;
import facetwright.fold.touch.Collision;
import facetwright.fold.touch.Collisions;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Parts of any size put together: what is told of the whole is what its parts come to by elementary
 * rules, nothing passes through anything, and it makes no odds which of two is said to go.
 */
class PlacedPartsTest {
  private static final int TRIES = 12;

  private static Design evaluate(String script, Object... values) throws ScriptException {
    return Facetwright.evaluate(
        "parts.js",
        "design(\"Parts\");\nsheet({ width: 4000, height: 4000, caliper: 0.3 });\n"
            + String.format(Locale.ROOT, script, values),
        Map.of(),
        Budget.USUAL);
  }

  /** Panels of two parts that pass through each other where all stands together. */
  private static List<Collision> through(Design design) {
    Set<Integer> first = Set.copyOf(design.net().parts().all().getFirst().panels());
    return Collisions.of(design.net(), design.folded().whole()).stream()
        .filter(c -> first.contains(c.a()) != first.contains(c.b()))
        .filter(Collision::isInTheWay)
        .toList();
  }

  private static double area(int sides, double side) {
    return sides * side * side / (4 * Math.tan(Math.PI / sides));
  }

  @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
  void lidsOfAnyPrismGoOver(
      @ForAll @IntRange(min = 3, max = 10) int sides,
      @ForAll @DoubleRange(min = 20, max = 60) double side,
      @ForAll @DoubleRange(min = 15, max = 90) double tall,
      @ForAll @DoubleRange(min = 8, max = 120) double lip,
      @ForAll @DoubleRange(min = 0.5, max = 1.5) double room)
      throws ScriptException {
    double wide = side + 2 * room * Math.tan(Math.PI / sides);
    String parts =
        """
        const box = prism({ sides: %1$d, side: %2$.9f, height: %3$.9f }).open("top").unfold({ part: "box", tabs: false });
        const lid = prism({ sides: %1$d, side: %4$.9f, height: %5$.9f }).open("top").unfold({ part: "lid", tabs: false });
        """;
    Design over = evaluate(parts + "lid.over(box);", sides, side, tall, wide, lip);
    Design into = evaluate(parts + "box.into(lid);", sides, side, tall, wide, lip);
    assertThat(over.folded().measures().height()).isCloseTo(Math.max(tall, lip), within(1e-6));
    double covered = Math.min(lip, tall);
    double volume =
        area(sides, side) * tall + area(sides, wide) * lip - area(sides, side) * covered;
    assertThat(over.folded().measures().volume()).isCloseTo(volume, within(1e-6 * volume));
    assertThat(through(over)).isEmpty();
    Together.Nest nest = over.folded().together().nests().getFirst();
    assertThat(nest.room()).isCloseTo(room, within(1e-3));
    assertThat(into.folded().together().nests().getFirst().room())
        .isCloseTo(nest.room(), within(1e-6));
    assertThat(fits(into)).isEqualTo(fits(over));
  }

  private static List<String> fits(Design design) {
    return design.findings().stream()
        .filter(f -> f.rule().equals("fit"))
        .map(Finding::message)
        .toList();
  }

  @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
  void starsGoOverStars(
      @ForAll @IntRange(min = 4, max = 8) int points,
      @ForAll @DoubleRange(min = 40, max = 80) double reach,
      @ForAll @DoubleRange(min = 0.45, max = 0.7) double waist,
      @ForAll @DoubleRange(min = 0.4, max = 1.2) double room)
      throws ScriptException {
    Design star =
        evaluate(
            """
            function star(reach, tall, off, part) {
              const ring = [];
              for (let i = 0; i < %1$d; i++) {
                for (const [r, turn] of [[reach, 0], [reach * %3$.9f, 0.5]]) {
                  const a = (2 * Math.PI * (i + turn)) / %1$d;
                  ring.push([r * Math.cos(a), r * Math.sin(a)]);
                }
              }
              const n = ring.length;
              const line = (i) => {
                const [p, q] = [ring[i %% n], ring[(i + 1) %% n]];
                const l = Math.hypot(q[0] - p[0], q[1] - p[1]);
                const [x, y] = [(q[1] - p[1]) / l, (p[0] - q[0]) / l];
                return [x, y, x * p[0] + y * p[1] + off];
              };
              const set = ring.map((_, i) => {
                const [a, b] = [line(i + n - 1), line(i)];
                const d = a[0] * b[1] - a[1] * b[0];
                return [(a[2] * b[1] - a[1] * b[2]) / d, (a[0] * b[2] - a[2] * b[0]) / d];
              });
              const low = panel(part, { corners: set });
              for (let i = 1; i <= n; i++) low.attach(String(i), "wall " + i, { depth: tall, fold: 90 });
              return low.part(part);
            }
            const box = star(%2$.9f, 30, 0, "box");
            const lid = star(%2$.9f, 12, %4$.9f, "lid");
            lid.over(box);
            """,
            points, reach, waist, room);
    assertThat(star.folded().together().refused()).isEmpty();
    Together.Nest nest = star.folded().together().nests().getFirst();
    assertThat(nest.room()).isCloseTo(room, within(1e-3));
    assertThat(nest.depth()).isCloseTo(12, within(1e-6));
    assertThat(star.folded().measures().height()).isCloseTo(30, within(1e-6));
    // Two triangles a point, by half the product of two sides and the sine between them.
    double base = points * reach * reach * waist * Math.sin(Math.PI / points);
    double round = 2 * points * side(points, reach, waist);
    double corners = points * (tan(tip(points, reach, waist)) - tan(dip(points, reach, waist)));
    double lid = base + round * room + corners * room * room;
    double volume = base * (30 - 12) + lid * 12;
    assertThat(star.folded().measures().volume()).isCloseTo(volume, within(1e-6 * volume));
    assertThat(through(star)).isEmpty();
  }

  private static double side(int points, double reach, double waist) {
    double r = reach * waist;
    return Math.sqrt(reach * reach + r * r - 2 * reach * r * Math.cos(Math.PI / points));
  }

  /** Half of what a side turns at a tip: set off by 1, it grows by its tangent at this end. */
  private static double tip(int points, double reach, double waist) {
    double half =
        Math.asin(reach * waist * Math.sin(Math.PI / points) / side(points, reach, waist));
    return Math.PI / 2 - half;
  }

  private static double dip(int points, double reach, double waist) {
    return tip(points, reach, waist) - Math.PI / points;
  }

  private static double tan(double angle) {
    return Math.tan(angle);
  }

  @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
  void towersStandAsHighAndFullAsTheirParts(
      @ForAll @IntRange(min = 3, max = 8) int sides,
      @ForAll @DoubleRange(min = 30, max = 60) double side,
      @ForAll @DoubleRange(min = 5, max = 50) double one,
      @ForAll @DoubleRange(min = 5, max = 50) double two,
      @ForAll @DoubleRange(min = 0.2, max = 1) double part,
      @ForAll @DoubleRange(min = -180, max = 180) double turn)
      throws ScriptException {
    Design tower =
        evaluate(
            """
            const low = prism({ sides: %1$d, side: %2$.9f, height: %3$.9f }).unfold({ tabs: false });
            const high = prism({ sides: %1$d, side: %4$.9f, height: %5$.9f }).unfold({ tabs: false });
            high.on(low, { turn: %6$.9f });
            """,
            sides, side, one, part * side, two, turn);
    double volume = area(sides, side) * one + area(sides, part * side) * two;
    assertThat(tower.folded().measures().height()).isCloseTo(one + two, within(1e-6));
    assertThat(tower.folded().measures().volume()).isCloseTo(volume, within(1e-6 * volume));
    assertThat(through(tower)).isEmpty();
  }

  /**
   * A knob on a lid that is turned over would end inside; on one that stands as it lies, on top.
   */
  @ParameterizedTest
  @CsvSource({"base, 48", "top, 40"})
  void aKnobIsOnTop(String open, double tall) throws ScriptException {
    Design design =
        evaluate(
            """
            const box = prism({ sides: 6, side: 30, height: 40 }).open("top").unfold({ part: "box" });
            const lid = prism({ sides: 6, side: 31, height: 15 }).open("%s").unfold({ part: "lid" });
            const knob = prism({ sides: 4, side: 12, height: 8 }).unfold({ part: "knob" });
            %s
            """
                .formatted(open, "knob.on(lid); lid.over(box);"));
    assertThat(design.folded().measures().height()).isEqualTo(tall, within(0.001));
  }
}
