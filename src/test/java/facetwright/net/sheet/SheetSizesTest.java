package facetwright.net.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.measure.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class SheetSizesTest {
  private static JsonNode standards() throws IOException {
    try (InputStream in = SheetSizesTest.class.getResourceAsStream("/standards/standards.json")) {
      return new ObjectMapper().readTree(in);
    }
  }

  /** ISO 216:2007 and ISO 269:1985 tables (read); all 33 sizes. */
  @ParameterizedTest
  @ValueSource(strings = {"A", "B", "C"})
  void isoSizesAreTheTables(String series) throws IOException {
    JsonNode table = standards().get("iso216").get(series + "_mm");
    assertThat(table.size()).isEqualTo(11);
    table
        .properties()
        .forEach(
            row -> {
              SheetSize size = SheetSizes.named(row.getKey());
              assertThat(size.width()).isEqualTo(row.getValue().get(0).asDouble());
              assertThat(size.height()).isEqualTo(row.getValue().get(1).asDouble());
            });
  }

  /** ANSI/ASME Y14.1 and common United States sizes (from memory). */
  @Test
  void unitedStatesSizesAreTheTables() throws IOException {
    JsonNode us = standards().get("us-sizes");
    agrees(us.get("common"), "");
    agrees(us.get("ansiY14_1"), "ANSI ");
    agrees(us.get("architectural"), "");
  }

  private static void agrees(JsonNode table, String prefix) {
    assertThat(table.size()).isGreaterThanOrEqualTo(6);
    table
        .properties()
        .forEach(
            row -> {
              SheetSize size = SheetSizes.named(prefix + row.getKey());
              JsonNode mm = row.getValue().get("mm");
              assertThat(size.width()).isCloseTo(mm.get(0).asDouble(), within(1e-9));
              assertThat(size.height()).isCloseTo(mm.get(1).asDouble(), within(1e-9));
            });
  }

  /** Common practice, no source: the square sheet of the craft shops is 12 in a side. */
  @ParameterizedTest
  @ValueSource(strings = {"12x12", "12 X 12", "12×12"})
  void craftSquare(String name) {
    assertThat(SheetSizes.named(name)).isEqualTo(new SheetSize("12x12", 304.8, 304.8));
  }

  @ParameterizedTest
  @CsvSource({"a4,A4", "ANSI-C,ANSI C", "letter ,Letter", "TABLOID,Tabloid"})
  void lettersAndSpacesDoNotMatter(String asked, String found) {
    assertThat(SheetSizes.named(asked).name()).isEqualTo(found);
  }

  @Test
  void anUnknownNameListsNearOnes() {
    assertThatThrownBy(() -> SheetSizes.named("Leter"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"Leter\"")
        .hasMessageContaining("did you mean Letter");
    assertThatThrownBy(() -> SheetSizes.named("bedsheet for a ship"))
        .hasMessageContaining("give its size");
  }

  @Test
  void namesAreNotAmbiguous() {
    List<String> names = SheetSizes.list().stream().map(s -> s.name().replace(" ", "")).toList();
    assertThat(names).doesNotHaveDuplicates();
  }

  @Test
  void customSizesAreNamedByTheirMeasures() {
    assertThat(SheetSize.custom(305, 120.5, Unit.MM).name()).isEqualTo("305 × 120.5 mm");
    assertThatThrownBy(() -> SheetSize.custom(0, 100, Unit.MM))
        .hasMessageContaining("10 mm to 2000 mm");
  }

  @Test
  void stockOfASizeTakesTheUsualCaliper() {
    Stock stock = SheetSizes.named("A4").stock(220);
    assertThat(stock.caliper()).isCloseTo(0.275, within(1e-12));
    assertThat(stock.turned().width()).isEqualTo(297);
  }

  /** What is taken or offered where nobody says is of the catalogue, and a larger one follows. */
  @ParameterizedTest
  @EnumSource(Unit.class)
  void commonSheetsAreNamedAndGrow(Unit unit) {
    assertThat(SheetSizes.list()).containsAll(CommonSheets.atHand());
    assertThat(CommonSheets.atHand()).doesNotHaveDuplicates().contains(CommonSheets.page(unit));
    assertThat(CommonSheets.forNets(unit)).startsWith(CommonSheets.page(unit));
    for (List<SheetSize> sizes :
        List.of(CommonSheets.forNets(unit), CommonSheets.forLayers(unit))) {
      assertThat(SheetSizes.list()).containsAll(sizes);
      for (int i = 1; i < sizes.size(); i++) {
        assertThat(sizes.get(i).width()).isGreaterThanOrEqualTo(sizes.get(i - 1).width());
        assertThat(sizes.get(i).height()).isGreaterThan(sizes.get(i - 1).height());
      }
    }
  }

  /** A sheet that has no name goes by its sides, in the unit that stands last. */
  @ParameterizedTest
  @CsvSource({
    "12x12, MM, 12x12, 304.8",
    "12 x 12 in, MM, 12 × 12 in, 304.8",
    "200x300, MM, 200 × 300 mm, 200",
    "20 x 30, CM, 20 × 30 cm, 200",
    "7 1/2 × 10 in, MM, 7.5 × 10 in, 190.5",
    "a4, INCH, A4, 210"
  })
  void sheetsAreReadByNameOrSides(String text, Unit unit, String name, double width) {
    SheetSize size = SheetSizes.read(text, unit);
    assertThat(size.name()).isEqualTo(name);
    assertThat(size.width()).isCloseTo(width, within(1e-9));
  }
}
