package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The room for a light is that within the made form, as elementary geometry has it: not the pockets
 * between its points, not where slopes come in; and a hole below lets through what is narrower.
 */
class RoomInsideTest {
  /** A gap is found to a tenth of a millimetre. */
  private static final double FOUND = 0.15;

  private static final Pattern UP_TO = Pattern.compile("up to ([0-9.]+) mm");

  private static Design evaluate(String script, Object... values) throws ScriptException {
    return Facetwright.evaluate(
        "room.js",
        "design(\"Room\", { units: \"mm\" }); sheet({ width: 2000, height: 2000, caliper: 0.3 });\n"
            + String.format(Locale.ROOT, script, values),
        Map.of(),
        Budget.USUAL);
  }

  /** How wide a light may be, as it is told where it is too wide. */
  private static double room(Design design) {
    Finding told =
        design.findings().stream()
            .filter(f -> f.rule().equals("no-room"))
            .findFirst()
            .orElseThrow();
    Matcher m = UP_TO.matcher(told.what().text(Unit.MM));
    assertThat(m.find()).as(told.what().toString()).isTrue();
    assertThat(told.remedy().text(Unit.MM)).contains(m.group(1));
    return Double.parseDouble(m.group(1));
  }

  /** Too high and too wide: the lower one that is advised goes in. */
  @Test
  void aLowerAndNarrowerOneIsAdvised() throws ScriptException {
    Random random = new Random(5);
    for (int i = 0; i < 4; i++) {
      double side = 8 + 10 * random.nextDouble();
      String form = "prism({ sides: 6, side: %s, height: 25 }).open(\"top\").unfold()";
      String light = form + ".light({ across: %s, height: %s });";
      Design high = evaluate(light, side, 3 * side, 40);
      Finding told =
          high.findings().stream()
              .filter(f -> f.rule().equals("no-room"))
              .findFirst()
              .orElseThrow();
      Matcher wide =
          Pattern.compile("Take a lower one, up to ([\\d.]+) mm across, or make the form larger\\.")
              .matcher(told.fix());
      assertThat(wide.matches()).as(told.fix()).isTrue();
      double across = Double.parseDouble(wide.group(1));
      assertThat(across).isEqualTo(Math.sqrt(3) * side, within(FOUND));
      assertThat(evaluate(light, side, across - FOUND, 20).findings())
          .noneMatch(f -> f.rule().equals("no-room"));
      Design only = evaluate(light, side, side, 40);
      assertThat(only.findings())
          .filteredOn(f -> f.rule().equals("no-room"))
          .extracting(Finding::fix)
          .containsExactly("Take a lower one, or make the form larger.");
    }
  }

  /** The circle that touches both outer walls and the inner corner: r (1 + 1 / √2) = arm. */
  @Test
  void pocketsOutsideAreNoRoom() throws ScriptException {
    Random random = new Random(4);
    for (int i = 0; i < 3; i++) {
      int arm = 16 + random.nextInt(14);
      Design design =
          evaluate(
              """
              const ell = outline([[0, 0], [100, 0], [100, %1$s], [%1$s, %1$s], [%1$s, 100], [0, 100]]);
              prism({ outline: ell, height: 40 }).open("top").unfold().light({ across: %2$s, height: 10 });
              """,
              arm, 2 * arm);
      assertThat(room(design)).isEqualTo(2 * arm / (1 + Math.sqrt(0.5)), within(FOUND));
    }
  }

  /** A pyramid is narrower higher up, in proportion: its slopes leave side (1 - h / tall). */
  @Test
  void slopesTakeRoom() throws ScriptException {
    Random random = new Random(7);
    for (int i = 0; i < 3; i++) {
      double side = 50 + random.nextInt(40);
      double tall = 60 + random.nextInt(60);
      double high = 10 + random.nextInt(20);
      Design design =
          evaluate(
              "pyramid({ sides: 4, side: %s, height: %s }).unfold().light({ across: %s, height: %s"
                  + " });",
              side, tall, side, high);
      // Walls that touch its head by half a millimetre are none beside it.
      assertThat(room(design))
          .isBetween(side * (1 - high / tall) - FOUND, side * (1 - (high - 0.5) / tall) + FOUND);
    }
  }

  @ParameterizedTest
  @CsvSource({"30, hole, true", "45, hole, false", "30, open, false", "30, none, false"})
  void aHoleBelowLetsThroughWhatIsNarrower(double across, String below, boolean isTold)
      throws ScriptException {
    String cut =
        switch (below) {
          case "hole" -> ".window(\"base\", { border: 10 })";
          case "open" -> ".open(\"base\")";
          default -> "";
        };
    Design design =
        evaluate(
            "box({ width: 60, depth: 60, height: 50 })%s.open(\"top\").unfold().light({ across: %s,"
                + " height: 20 });",
            cut, across);
    assertThat(design.findings().stream().filter(f -> f.rule().equals("falls-out")))
        .hasSize(isTold ? 1 : 0)
        .allSatisfy(f -> assertThat(f.what().toString()).containsPattern("up to (39|40)"))
        .allSatisfy(f -> assertThat(f.site().line()).isEqualTo(2));
    assertThat(design.findings()).extracting(Finding::rule).doesNotContain("no-room", "no-way-in");
  }
}
