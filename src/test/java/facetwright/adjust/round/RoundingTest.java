package facetwright.adjust.round;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.adjust.write.Literal;
import facetwright.adjust.write.Literals;
import facetwright.aim.Knob;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.Measures;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.ToSet;
import facetwright.script.LibraryDesigns;
import facetwright.script.WhatIf;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.Budget;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoundingTest {
  /** A tray: all its measures are its width, its height, its wall, and sums of them. */
  private static final String TRAY =
      """
      design("Tray", { units: "mm" });
      const width = dial("width", %s, { from: 100, to: 200 });
      const height = dial("height", %s, { from: 80, to: 160 });
      const wall = dial("wall", %s, { from: 10, to: 30 });
      const tray = blank({ width, height });
      for (const from of ["left", "right", "bottom", "top"]) tray.score({ from, at: wall, fold: 90 });
      for (const from of ["left", "right"]) {
        tray.cut({ from, at: wall, between: [0, wall] }).cut({ from, at: wall, between: [height - wall, height] });
      }
      for (const x of [wall / 2, width - wall / 2])
        for (const y of [wall / 2, height - wall / 2]) tray.role([x, y], "tab");
      tray.standOn([width / 2, height / 2]);
      sheet("A4", { weight: 240 });
      """;

  private static Rounding round(String source, Ruler ruler) throws Exception {
    return Rounding.of(WhatIf.of("test.js", source, Map.of(), Budget.USUAL), ruler, 1);
  }

  private static Rounding library(String name, Ruler ruler) throws Exception {
    return round(LibraryDesigns.text(name), ruler);
  }

  private static Map<String, String> typed(Rounding rounding, Unit unit) {
    Map<String, String> typed = new HashMap<>();
    for (Rounding.Turn turn : rounding.turns()) {
      if (turn.isTurned()) {
        typed.put(turn.knob().name(), turn.typed(rounding.ruler(), unit));
      }
    }
    return typed;
  }

  // An inch is exactly 25.4 mm: 1 1/8 in is 28.575 mm and 2 3/8 in is 60.325 mm, the nearest
  // sixteenths to 28 mm and 60 mm.
  @Test
  void takesALanternToInches() throws Exception {
    Rounding rounding = library("harbour-lantern", Ruler.SIXTEENTHS);
    assertThat(typed(rounding, Unit.MM)).isEqualTo(Map.of("side", "1-1/8in", "wall", "2-3/8in"));
    assertThat(rounding.after().dials().get("side")).isEqualTo(28.575, within(1e-12));
    // All scores lie on marks now; the blank does not, for the seam is 12 mm wide.
    List<Measure> off =
        rounding.after().toSet().form().stream().filter(m -> !m.isOnRuler()).toList();
    assertThat(off).hasSize(1);
    assertThat(off.getFirst().mm()).isEqualTo(8 * 28.575 + 12, within(1e-9));
    assertThat(rounding.constants()).hasSize(1);
    Constant seam = rounding.constants().getFirst();
    assertThat(seam.text()).isEqualTo("12");
    assertThat(seam.becomes()).isEqualTo("\"1/2 in\"");
    assertThat(seam.site().line()).isEqualTo(18);
    assertThat(rounding.after().design().folded().closure()).isEqualTo(Closure.CLOSES);
  }

  @Test
  void leavesALanternThatIsOnTheRulerAlone() throws Exception {
    Rounding rounding = library("harbour-lantern", Ruler.HALF_MM);
    assertThat(rounding.turns()).noneMatch(Rounding.Turn::isTurned);
    assertThat(rounding.after().toSet().formOff()).isZero();
  }

  @Test
  void takesABoxToMillimetresWithLittleMoves() throws Exception {
    Rounding rounding = library("hex-favour-box", Ruler.MM);
    Map<String, Double> dials = rounding.after().dials();
    // 1 1/4 in, 1 1/2 in and 1/2 in are 31.75 mm, 38.1 mm and 12.7 mm.
    assertThat(dials.get("side") * 25.4).isEqualTo(32, within(1e-9));
    assertThat(dials.get("tall") * 25.4).isEqualTo(38, within(1e-9));
    assertThat(dials.get("lip") * 25.4).isEqualTo(13, within(1e-9));
    // The lid's side is the box's and 2·tan 30° times the slip; the slip makes it 33 mm.
    assertThat(dials.get("side") * 25.4 + 2 * Math.tan(Math.PI / 6) * dials.get("slip") * 25.4)
        .isEqualTo(33, within(1e-3));
    assertThat(rounding.after().toSet().formOff()).isZero();
  }

  // The edge of a girdle of 8 corners on a circle is 2·r·sin(π/8), that of a point 48 mm above it
  // √(r² + 48²): two dials bring two lengths onto marks.
  @Test
  void turnsDialsBetweenMarksWhereThatPutsSidesOnMarks() throws Exception {
    Rounding rounding = library("gull-bauble", Ruler.MM);
    double waist = rounding.after().dials().get("waist");
    double tall = rounding.after().dials().get("tall");
    assertThat(2 * waist * Math.sin(Math.PI / 8)).isEqualTo(16, within(1e-4));
    assertThat(Math.hypot(waist, tall / 2)).isEqualTo(52, within(1e-4));
  }

  // A part of 1e-12 lies far above the rounding of doubles (2^-53, IEEE 754), far below any length
  // that is meant; what dials are turned to must not hang on it.
  @ParameterizedTest
  @ValueSource(strings = {"1 - 1e-12", "1 + 1e-12", "1 + 7e-13"})
  void aHairChangesNoChoice(String hair) throws Exception {
    String source = LibraryDesigns.text("gull-bauble");
    String other = source.replace("radius: waist", "radius: waist * (" + hair + ")");
    assertThat(other).isNotEqualTo(source);
    assertThat(typed(round(other, Ruler.MM), Unit.MM))
        .isEqualTo(typed(round(source, Ruler.MM), Unit.MM));
    String third = other.replace("height: tall", "height: tall / (" + hair + ")");
    assertThat(third).isNotEqualTo(other);
    assertThat(typed(round(third, Ruler.MM), Unit.MM))
        .isEqualTo(typed(round(source, Ruler.MM), Unit.MM));
  }

  @ParameterizedTest
  @CsvSource({
    "boathouse, 16",
    "boathouse, 1",
    "cut-gem, 16",
    "cut-gem, 1",
    "fog-drum, 16",
    "twisted-tower, 1",
    "supper-tray, 1",
    "supper-tray, 16"
  })
  void neverMakesADesignWorse(String name, int parts) throws Exception {
    Ruler ruler = parts == 1 ? Ruler.MM : new Ruler(Unit.INCH, parts);
    Rounding rounding = library(name, ruler);
    assertThat(rounding.after().toSet().formOff())
        .isLessThanOrEqualTo(rounding.before().toSet().formOff());
    assertThat(rounding.after().isAsSoundAs(rounding.before())).isTrue();
    for (Rounding.Turn turn : rounding.turns()) {
      Knob knob = turn.knob();
      double mm = rounding.after().design().unit().mm();
      assertThat(Math.abs(turn.value() - knob.now()) * mm)
          .isLessThanOrEqualTo(Math.max(ruler.divisionMm(), knob.step() * mm) + 1e-6);
      assertThat(turn.value()).isBetween(knob.from() - 1e-9, knob.to() + 1e-9);
    }
  }

  @Test
  void saysWhatStepsHold() throws Exception {
    Rounding rounding = library("supper-tray", Ruler.MM);
    assertThat(new RoundingText(rounding, Unit.INCH).constants())
        .anySatisfy(
            line -> assertThat(line.words()).contains("Line 10: width has steps of 0.25 in"));
  }

  // Set by a rule in millimetres a tray of 9 × 6 in with walls of 1 1/4 in comes to 229 × 152 mm
  // with walls of 32 mm; between the walls that leaves 165 × 88 mm.
  @Test
  void foldsATrayAsItIsSet() throws Exception {
    WhatIf what = WhatIf.of("tray.js", LibraryDesigns.text("supper-tray"), Map.of(), Budget.USUAL);
    Draft draft = Draft.of(Map.of(), what.design(), Ruler.MM);
    FoldedForm form = Rounding.asSet(draft).orElseThrow().form();
    Measures m = form.measures();
    assertThat(m.width()).isEqualTo(165, within(1e-6));
    assertThat(m.depth()).isEqualTo(88, within(1e-6));
    assertThat(m.height()).isEqualTo(32, within(1e-6));
  }

  @Property(tries = 6, seed = "20261125")
  void putsEveryMeasureOfATrayOnMarks(
      @ForAll @DoubleRange(min = 103, max = 197) double width,
      @ForAll @DoubleRange(min = 83, max = 157) double height,
      @ForAll @DoubleRange(min = 12, max = 28) double wall)
      throws Exception {
    Rounding rounding = round(TRAY.formatted(width, height, wall), Ruler.SIXTEENTHS);
    assertThat(rounding.after().toSet().formOff()).isZero();
    for (Measure m : ToSet.distinct(rounding.after().toSet().form())) {
      double sixteenths = m.mm() / 25.4 * 16;
      assertThat(sixteenths).isEqualTo(Math.rint(sixteenths), within(0.005));
    }
    for (Rounding.Turn turn : rounding.turns()) {
      assertThat(Math.abs(turn.value() - turn.knob().now())).isLessThanOrEqualTo(25.4 / 16);
    }
  }

  @Test
  void writesDialsAndConstantsIntoTheScript() throws Exception {
    String source = LibraryDesigns.text("harbour-lantern");
    WhatIf what = WhatIf.of("l.js", source, Map.of("sides", "10"), Budget.USUAL);
    Rounding rounding = Rounding.of(what, Ruler.SIXTEENTHS, 1);
    String written = Rewriting.of(what, rounding, true).text();
    assertThat(written)
        .contains("dial(\"sides\", 10, {", "dial(\"side\", \"1 1/8 in\", {", "seam: \"1/2 in\" })");
    List<Dial> now = WhatIf.of("l.js", written, Map.of(), Budget.USUAL).design().dials();
    assertThat(now.stream().map(Dial::value)).containsExactly(10.0, 1.125, 2.375);
  }

  // Counted in inches its corners differ in the last digit: that must not give it another net.
  @ParameterizedTest
  @ValueSource(ints = {4, 8, 16, 32})
  void aTwistedTowerComesToInches(int parts) throws Exception {
    String source = LibraryDesigns.text("twisted-tower");
    WhatIf what = WhatIf.of("t.js", source, Map.of(), Budget.USUAL);
    Rounding rounding = Rounding.of(what, new Ruler(Unit.INCH, parts), 1);
    String written = Rewriting.of(what, rounding, false).text();
    assertThat(written).contains("units: \"in\"", "tab: \"7 mm\"");
  }

  @Test
  void readsNumbersOutsideDialsOnly() {
    String source =
        """
        // 5 in a comment
        const a = dial("a 3", 7, { from: 1 });
        const b2 = panel({ width: 12.5, height: "3/8 in" }).attach("2", { depth: .5 });
        """;
    assertThat(Literals.besideDials(source).stream().map(Literal::text))
        .containsExactly("12.5", "\"3/8 in\"", ".5");
    assertThat(Literals.besideDials(source).get(1).length(Unit.MM).mm())
        .isEqualTo(9.525, within(1e-12));
  }
}
