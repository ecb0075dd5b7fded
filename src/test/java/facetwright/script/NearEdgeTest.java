package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.net.sheet.Laid;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.Mend;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Pieces keep room, and where the sheet leaves none a note says by how much, with a mend. */
class NearEdgeTest {
  private static final Pattern NEAR = Pattern.compile("as near as (?:about )?([\\d.]+) mm to the");
  private static final Pattern PERCENT = Pattern.compile("at (\\d+) % or less");

  private static Design design(String units, String script) throws ScriptException {
    return Facetwright.evaluate(
        "near.js",
        "design('Near', { units: '" + units + "' });\n" + script,
        Map.of(),
        Budget.USUAL);
  }

  private static List<Finding> near(Design design) {
    return design.findings().stream().filter(f -> f.rule().equals("near-edge")).toList();
  }

  private static String card(double wide, double high, String sheet) {
    return String.format(
        Locale.ROOT, "panel('card', { width: %.4f, height: %.4f });%n%s", wide, high, sheet);
  }

  @Property(tries = 25, seed = "20261202")
  void isToldWithWhatMendsIt(@ForAll @DoubleRange(min = 190, max = 210) double wide)
      throws ScriptException {
    Design design = design("mm", card(wide, wide + 60, "sheet('A4');"));
    assertThat(design.laid().fits()).isTrue();
    double edge = (210 - wide) / 2;
    if (edge >= 5) {
      assertThat(near(design)).isEmpty();
      return;
    }
    Finding found = near(design).getFirst();
    assertThat(found.severity()).isEqualTo(Finding.Severity.NOTE);
    Matcher told = NEAR.matcher(found.message());
    assertThat(told.find()).as(found.message()).isTrue();
    // The middle is found to a whole millimetre, and the note rounds.
    assertThat(Double.parseDouble(told.group(1))).isCloseTo(Math.max(0, edge - 0.5), within(0.56));
    assertThat(found.mends()).containsExactly(new Mend.Sheet("A3"));
    assertThat(near(design("mm", card(wide, wide + 60, "sheet('A3');")))).isEmpty();
    Matcher percent = PERCENT.matcher(found.fix());
    assertThat(percent.find()).as(found.fix()).isTrue();
    double scale = Double.parseDouble(percent.group(1)) / 100;
    assertThat(near(design("mm", card(scale * wide, scale * (wide + 60), "sheet('A4');"))))
        .isEmpty();
    double over = scale + 0.01;
    assertThat(near(design("mm", card(over * wide, over * (wide + 60), "sheet('A4');"))))
        .isNotEmpty();
  }

  /** Who says a margin has just that, and is told of no other. */
  @Test
  void aMarginThatIsSaidIsKept() throws ScriptException {
    assertThat(near(design("mm", card(208, 200, "sheet('A4', { margin: 0 });")))).isEmpty();
    assertThat(design("mm", card(208, 208, "sheet('A4', { margin: 2 });")).laid().fits()).isFalse();
  }

  @Test
  void whoCountsInInchesKeepsAQuarter() throws ScriptException {
    assertThat(design("in", card(8, 8, "")).laid().margin()).isEqualTo(6.35);
    assertThat(design("in", card(8, 8, "")).laid().stock().name()).isEqualTo("Letter");
    Design tight = design("in", card(8.25, 8.25, ""));
    assertThat(tight.laid().stock().name()).isEqualTo("Letter");
    assertThat(near(tight).getFirst().message())
        .contains("to the edge of the Letter sheet")
        .contains("1/4 in");
    Mend.Sheet larger = (Mend.Sheet) near(tight).getFirst().mends().getFirst();
    assertThat(near(design("in", card(8.25, 8.25, "sheet('" + larger.name() + "');")))).isEmpty();
  }

  /** Two parts that go on one sheet only near to each other go there. */
  @Test
  void partsComeNearerRatherThanTakeASheet() throws ScriptException {
    String two =
        "panel('one', { width: 196, height: 142 });\n"
            + "blank({ width: 196, height: 142 });\n"
            + "sheet('A4');";
    Design design = design("mm", two);
    Laid laid = design.laid();
    assertThat(laid.sheets()).isEqualTo(1);
    assertThat(near(design).getFirst().message()).contains("to each other");
    assertThat(near(design).getFirst().message()).startsWith("Pieces lie as near as");
  }
}
