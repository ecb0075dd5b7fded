package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Panel;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is told of panels, scores and corners that lines on a blank made: where they are on it. */
class FoundOnBlanksTest {
  private static final Pattern SPOT = Pattern.compile("\\(at ([0-9.]+), ([0-9.]+) mm");

  private static Design evaluate(String script) throws ScriptException {
    return Facetwright.evaluate("blank.js", script, Map.of(), Budget.USUAL);
  }

  @Test
  void aCornerIsToldByItsPlace() throws ScriptException {
    Design design =
        evaluate(
            """
            design("Tray", { units: "in" });
            const tray = blank({ width: 6, height: 5 });
            for (const from of ["left", "right", "top", "bottom"]) tray.score({ from, at: 1, fold: 90 });
            """);
    Finding found = design.findings().getFirst();
    assertThat(found.message())
        .isEqualTo(
            "At (1, 1) in on the blank, two scores run straight through each other, and only one"
                + " of them can be folded. The same holds for (5, 1) in; (1, 4) in; (5, 4) in.");
    assertThat(found.site().line()).isEqualTo(3);
    assertThat(found.in(Unit.MM).message()).contains("(25.4, 25.4) mm");
  }

  @Test
  void aScoreIsToldByItsEndsAndItsLine() throws ScriptException {
    Design design =
        evaluate(
            """
            design("Strip");
            const strip = blank({ width: 90, height: 20 });
            strip.score({ from: "left", at: 30 });
            strip.score({ from: "left", at: 60 });
            """);
    assertThat(Verdict.of(design.laid(), design.folded(), design.findings()).text(Unit.MM))
        .contains("how far to fold the score from (30, 0) mm to (30, 20) mm (line 3)");
  }

  @Test
  void aNamedPanelNeedsNoPlace() throws ScriptException {
    String script =
        """
        design("Strip");
        const strip = blank({ width: 90, height: 20 });
        strip.score({ from: "left", at: 45, fold: 90 });
        strip.hole([20, 3], { across: 5 });
        %s
        """;
    assertThat(evaluate(script.formatted("")).findings().getFirst().message())
        .contains("\"panel 1\" (at ");
    assertThat(
            evaluate(script.formatted("strip.name([5, 5], \"flap\");"))
                .findings()
                .getFirst()
                .message())
        .contains("\"flap\" comes");
  }

  /** Whatever panel is told of, the point beside its name names it in the script. */
  @Test
  void thePointToldLiesInThePanel() throws ScriptException {
    Random random = new Random(20261201);
    for (int i = 0; i < 25; i++) {
      double at = 12 + 60 * random.nextDouble();
      double low = 10 + 30 * random.nextDouble();
      String lines =
          String.format(
              Locale.ROOT,
              """
              design("Sheet");
              const card = blank({ width: 90, height: 60 });
              card.score({ from: "left", at: %.4f, fold: 20 });
              card.score({ points: [[0, %.4f], [%.4f, 50]], fold: 20 });
              card.hole([%.4f, 1.9], { across: 3 });
              """,
              at,
              low,
              at,
              at / 2);
      String told =
          evaluate(lines).findings().stream()
              .map(Finding::message)
              .filter(m -> SPOT.matcher(m).find())
              .findFirst()
              .orElseThrow();
      Matcher spot = SPOT.matcher(told);
      assertThat(spot.find()).isTrue();
      String named = lines + "card.name([" + spot.group(1) + ", " + spot.group(2) + "], \"here\");";
      assertThat(evaluate(named).findings()).anyMatch(f -> f.message().contains("\"here\""));
    }
  }

  @Test
  void placesAreRoundedAsFarAsThereIsRoom() {
    assertThat(new Value.Place(41.4214, 58.5786, 30).text(Unit.MM)).isEqualTo("(41, 59) mm");
    assertThat(new Value.Place(41.4214, 58.5786, 0.02).text(Unit.MM))
        .isEqualTo("(41.42, 58.58) mm");
    assertThat(new Value.Place(76.3, 25.1, 20).text(Unit.INCH)).isEqualTo("(3, 1) in");
    assertThat(new Value.Place(79.375, 25.4, 0).text(Unit.INCH)).isEqualTo("(3 1/8, 1) in");
    assertThat(Message.of("%s", Value.name("a").at(new Value.Place(1, 2, 0)).made(3)).text(Unit.MM))
        .isEqualTo("\"a\" (at 1, 2 mm; line 3)");
    Polygon2 triangle = new Polygon2(List.of(Vec2.ZERO, new Vec2(9, 0), new Vec2(0, 9)));
    Value.Place spot = new Panel.OnBlank(triangle.corners(), false).spot();
    assertThat(spot.room()).isGreaterThan(2.6);
  }
}
