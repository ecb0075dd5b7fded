package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What an aim in a script does to its design. */
class ScriptAimTest {
  private static final String PRISM =
      """
      design("Drum");
      const side = dial("side", 30, { from: 15, to: 45 });
      const tall = dial("tall", 50, { from: 20, to: 90 });
      %s
      prism({ sides: 6, side, height: tall }).unfold();
      sheet("A2");
      """;

  private static Design evaluate(String script, Map<String, String> settings)
      throws ScriptException {
    return Facetwright.evaluate("drum.js", script, settings, Budget.USUAL);
  }

  private static double value(Design design, String dial) {
    return design.dials().stream()
        .filter(d -> d.name().equals(dial))
        .findFirst()
        .orElseThrow()
        .value();
  }

  private static List<Finding> aims(Design design) {
    return design.findings().stream().filter(f -> f.rule().equals("aim")).toList();
  }

  @Test
  void aScriptsAimTurnsItsDials() throws Exception {
    Design design = evaluate(PRISM.formatted("aim({ height: 72.5, turn: 'tall' });"), Map.of());
    assertThat(value(design, "tall")).isEqualTo(72.5);
    assertThat(value(design, "side")).isEqualTo(30);
    assertThat(design.folded().measures().height()).isCloseTo(72.5, within(1e-9));
    assertThat(aims(design)).isEmpty();
    assertThat(design.said()).containsExactly("Aimed with tall 72.5: height: 72.5 mm, as asked.");
  }

  @Test
  void aMissOnTheRulerIsTold() throws Exception {
    Design design = evaluate(PRISM.formatted("aim({ height: 72.3, turn: ['tall'] });"), Map.of());
    assertThat(value(design, "tall")).isEqualTo(72.5);
    assertThat(design.said().getFirst()).contains("72.5 mm, 0.2 mm more than asked");
    Design exact =
        evaluate(PRISM.formatted("aim({ height: 72.3, turn: 'tall', ruler: 'none' });"), Map.of());
    assertThat(value(exact, "tall")).isCloseTo(72.3, within(1e-6));
    Design sixteenths =
        evaluate(
            PRISM.formatted("aim({ height: 72.3, turn: 'tall', ruler: '1/16 in' });"), Map.of());
    double marks = value(sixteenths, "tall") / 25.4 * 16;
    assertThat(marks).isCloseTo(Math.rint(marks), within(1e-5));
  }

  @Test
  void aDialSetByHandStays() throws Exception {
    String script = PRISM.formatted("aim({ volume: '150 ml', turn: ['side', 'tall'] });");
    Design one = evaluate(script, Map.of("tall", "80"));
    assertThat(value(one, "tall")).isEqualTo(80);
    // n/4·cot(π/n)·s²·80 = 150000 gives s = 26.86.
    assertThat(value(one, "side")).isEqualTo(27);
    Design both = evaluate(script, Map.of("tall", "80", "side", "40"));
    assertThat(value(both, "side")).isEqualTo(40);
    assertThat(aims(both).getFirst().message()).contains("not followed");
  }

  @Test
  void anAimOutOfReachIsAWarningWithItsLine() throws Exception {
    Design design = evaluate(PRISM.formatted("aim({ height: 200, turn: 'tall' });"), Map.of());
    assertThat(value(design, "tall")).isEqualTo(90);
    assertThat(aims(design))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Finding.Severity.WARNING))
        .satisfies(f -> assertThat(f.site().line()).isEqualTo(4))
        .satisfies(
            f ->
                assertThat(f.message())
                    .contains("200 mm can't be reached", "90 mm", "tall is at its greatest (90)"))
        .satisfies(f -> assertThat(f.fix()).contains("Widen the range"));
  }

  @Test
  void sameBytesTwice() throws Exception {
    String script = PRISM.formatted("aim({ volume: '150 ml', area: '170 cm2' });");
    assertThat(evaluate(script, Map.of())).isEqualTo(evaluate(script, Map.of()));
  }

  @Test
  void wrongAimsAreRefusedAtTheirLine() {
    for (String[] wrong :
        new String[][] {
          {"aim({ height: 60, turn: 'tal' });", "no dial called \"tal\""},
          {"aim({ turn: 'tall' });", "nothing to aim at"},
          {"aim({ height: 'high' });", "is not a length"},
          {"aim({ gap: 3 });", "only 0 makes sense"},
          {"aim({ fits: 'Lettr' });", "Letter"},
          {"aim({ heigth: 60 });", "height"},
          {"aim({ height: 60 }); aim({ width: 60 });", "twice"},
          {"aim({ height: 60, ruler: 'coarse' });", "ruler"},
          {"aim({ height: 60, grid: '1 mm' });", "Did you mean \"ruler\"?"},
        }) {
      assertThatThrownBy(() -> evaluate(PRISM.formatted(wrong[0]), Map.of()))
          .isInstanceOfSatisfying(
              ScriptException.class,
              e -> {
                assertThat(e.getMessage() + " " + e.remedy()).contains(wrong[1]);
                assertThat(e.line()).isEqualTo(4);
              });
    }
  }

  /** An interrupt before the first run is not taken for a value that makes no design. */
  @Test
  void stopsWhenToldTo() {
    Thread.currentThread().interrupt();
    try {
      assertThatThrownBy(() -> evaluate(PRISM.formatted("aim({ volume: '150 ml' });"), Map.of()))
          .isInstanceOfSatisfying(
              ScriptException.class,
              e -> assertThat(e.kind()).isEqualTo(ScriptException.Kind.STOPPED));
    } finally {
      boolean _ = Thread.interrupted();
    }
  }
}
