package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.net.sheet.Laid;
import facetwright.script.sandbox.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Without a sheet the net is laid for the smallest common sheet that any of its nets lies on. */
class SmallestSheetTest {
  private static final List<String> SHEETS = List.of("A4", "A3", "A2");

  /** The net of each that packs smallest is too long for the sheet that another net lies on. */
  private static final List<String> STRIPS =
      List.of(
          "prism({ outline: star({ points: 5, across: 125, inner: 0.5 }), height: 100 })",
          "prism({ outline: star({ points: 6, across: 140, inner: 0.6 }), height: 15 })",
          "prism({ sides: 5, radius: 55, height: 100 })",
          "antiprism({ sides: 5, radius: 40, height: 100 })",
          "antiprism({ sides: 5, radius: 100, height: 30 })");

  private static Laid laid(String form, String sheet) throws Exception {
    String named = sheet.isEmpty() ? "" : "sheet(\"" + sheet + "\");\n";
    String script = "design(\"D\");\n" + named + form + ".unfold();";
    return Facetwright.evaluate("d.js", script, Map.of(), Budget.USUAL).laid();
  }

  private static boolean isHeld(String form, String sheet) throws Exception {
    Laid laid = laid(form, sheet);
    return laid.fits() && laid.sheets() == 1;
  }

  /** Room round pieces never takes a larger sheet than they lie on with the least room. */
  @Property(tries = 12, seed = "20261207")
  void roomTakesNoLargerSheet(
      @ForAll @DoubleRange(min = 60, max = 280) double wide,
      @ForAll @DoubleRange(min = 60, max = 200) double high,
      @ForAll boolean inches,
      @ForAll boolean isForm)
      throws Exception {
    String head = inches ? "design(\"D\", { units: \"in\" });\n" : "design(\"D\");\n";
    double unit = inches ? 25.4 : 1;
    String thing =
        isForm
            ? String.format(
                Locale.ROOT,
                "box({ width: %f, depth: %f, height: %f }).unfold();\n",
                wide / 3 / unit,
                high / 4 / unit,
                high / 3 / unit)
            : String.format(
                Locale.ROOT,
                "panel(\"a\", { width: %1$f, height: %2$f });\n"
                    + "panel(\"b\", { width: %2$f, height: %1$f });\n",
                wide / unit,
                high / unit);
    Laid laid = Facetwright.evaluate("d.js", head + thing, Map.of(), Budget.USUAL).laid();
    List<String> sizes = inches ? List.of("Letter", "Tabloid") : SHEETS;
    for (String smaller : sizes.subList(0, sizes.indexOf(laid.stock().name()))) {
      String named = head + "sheet(\"" + smaller + "\", { margin: 0 });\n" + thing;
      Laid there = Facetwright.evaluate("d.js", named, Map.of(), Budget.USUAL).laid();
      assertThat(there.fits() && there.sheets() == 1).as(named).isFalse();
    }
  }

  @Test
  void noSmallerSheetWouldHoldIt() throws Exception {
    List<String> forms = new ArrayList<>(STRIPS);
    for (int size = 60; size <= 220; size += 80) {
      String text = "pyramid({ sides: 5, side: %d, height: %d })";
      forms.add(String.format(Locale.ROOT, text, size / 2, size));
    }
    for (String form : forms) {
      String taken = laid(form, "").stock().name();
      for (String smaller : SHEETS.subList(0, SHEETS.indexOf(taken))) {
        assertThat(isHeld(form, smaller)).as(form + " on " + smaller).isFalse();
      }
    }
  }
}
