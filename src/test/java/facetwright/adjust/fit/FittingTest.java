package facetwright.adjust.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.aim.Grid;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import facetwright.script.LibraryDesigns;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.Budget;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FittingTest {
  private static final SheetSize SHEET = SheetSize.custom(200, 160, Unit.MM);

  private static Fitting fit(String source, SheetSize sheet, int copies) throws Exception {
    WhatIf what = WhatIf.of("test.js", source, Map.of(), Budget.USUAL);
    return Fitting.of(what, sheet, copies, List.of(), Grid.usual(Unit.MM));
  }

  private static String square(String sheet) {
    return """
    design("Card", { units: "mm" });
    const side = dial("side", "50 mm", { from: 10, to: 300 });
    panel("card", { width: side, height: side });
    sheet("A4", { weight: 220%s });
    """
        .formatted(sheet);
  }

  // Squares with 5 mm round them and between them: one fills the sheet's shorter side less 10; two
  // side by side take (200 − 15)/2; four (160 − 15)/2; six (200 − 20)/3 by (160 − 15)/2.
  @ParameterizedTest
  @CsvSource({"1, 150", "2, 92.5", "4, 72.5", "6, 60"})
  void makesSquaresAsLargeAsTheSheetTakesThem(int copies, double side) throws Exception {
    Fitting fitting = fit(square(""), SHEET, copies);
    assertThat(fitting.isMet()).isTrue();
    assertThat(fitting.outcome().turns().getFirst().value()).isEqualTo(side);
    assertThat(fitting.after().count()).isGreaterThanOrEqualTo(copies);
  }

  /** Six of 65 mm lie there 2 mm apart, none 5 mm from the edge: they need not become smaller. */
  @Test
  void whatLiesThereStays() throws Exception {
    Fitting fitting = fit(square("").replace("\"50 mm\"", "\"65 mm\""), SHEET, 6);
    assertThat(fitting.before().count()).isEqualTo(6);
    assertThat(fitting.design().dials().getFirst().value()).isEqualTo(65);
  }

  @Test
  void keepsTheScriptsMargin() throws Exception {
    // 160 less twice 5.
    Fitting fitting = fit(square(", margin: 5"), SHEET, 1);
    assertThat(fitting.outcome().turns().getFirst().value()).isEqualTo(150);
    assertThatThrownBy(() -> fit(square(", margin: 80"), SHEET, 1))
        .hasMessageContaining("leaves nothing");
  }

  @Test
  void saysWhatDoesNotFitAndWhatHitsItsEnd() throws Exception {
    String lantern = LibraryDesigns.text("harbour-lantern");
    Fitting small = fit(lantern, SheetSizes.named("A6"), 1);
    assertThat(small.isMet()).isFalse();
    assertThat(small.after().count()).isZero();
    Fitting large = fit(lantern, SheetSizes.named("A1"), 1);
    assertThat(large.isMet()).isTrue();
    assertThat(large.atEnd()).containsExactly("side", "wall");
    assertThat(large.scale(WhatIf.of("l.js", lantern, Map.of(), Budget.USUAL).design()))
        .isGreaterThan(1);
  }

  @Test
  void laysADesignWithoutDialsAsItIs() throws Exception {
    String card =
        """
        design("Card", { units: "mm" });
        panel("card", { width: 98, height: 78 });
        sheet("A4", { weight: 220 });
        """;
    // With 2 mm between: 98 + 2 + 98 by 78 + 2 + 78.
    assertThat(fit(card, SHEET, 4).isMet()).isTrue();
    assertThat(fit(card, SHEET, 4).after().count()).isEqualTo(4);
    assertThat(fit(card, SHEET, 5).isMet()).isFalse();
  }

  @Test
  void refusesSillyCounts() {
    assertThatThrownBy(() -> fit(square(""), SHEET, 0)).hasMessageContaining("1 to 100");
  }
}
