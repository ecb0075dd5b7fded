package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import facetwright.cli.desk.Exit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The words {@code layers} and {@code materials}. */
class LayersCommandTest {
  private static final String LANTERN = "library/harbour-lantern.js";

  @Test
  void layersInWords() {
    Run run = run("layers", LANTERN, "--count", "10", "--paper", "wave paper=12x12 in");
    assertThat(run.exit()).as(run.err()).isZero();
    assertThat(run.out())
        .contains("2 sheets of wave paper", "rectangle 57 mm × 25 mm", "80 for 10", "Cut 1: ")
        .contains("blade is sharp");
  }

  /** 13 1/2 in are 342.9 mm; the sheet goes by the unit that it was given in. */
  @Test
  void sizesTakeTheUnitWrittenLast() throws Exception {
    Run run = run("layers", LANTERN, "--paper", "wave paper=13 1/2x4in", "--json");
    assertThat(run.exit()).as(run.err()).isZero();
    JsonNode paper = new ObjectMapper().readTree(run.out()).path("papers").path(0);
    assertThat(paper.path("plans").path(0).path("sheet").asString()).isEqualTo("13.5 × 4 in");
    int all = 0;
    for (JsonNode group : paper.path("groups")) {
      all += group.path("all").asInt();
    }
    assertThat(all).isEqualTo(8);
  }

  @Test
  void materialsWithPrices() throws Exception {
    Run run =
        run("materials", LANTERN, "--class", "24", "--price", "sheet=1.20", "--currency", "EUR");
    assertThat(run.exit()).as(run.err()).isZero();
    assertThat(run.out()).contains("buy 14 sheets (needed 12), 16.80 EUR", "24 pieces");
    JsonNode json =
        new ObjectMapper().readTree(run("materials", LANTERN, "--count", "24", "--json").out());
    assertThat(json.path("shopping").path(0).path("buy").asInt()).isEqualTo(14);
    assertThat(json.path("cost").isNull()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "layers|--count|0|1 to 10000 pieces",
        "layers|--paper|wave paper|has no size",
        "layers|--paper|other=A4|Its papers: wave paper",
        "layers|--paper|wave paper=20x20|larger than every sheet",
        "layers|--paper|wave paper=tiny|no sheet is called",
        "layers|--directed|other|Its papers: wave paper",
        "materials|--price|gold=3|Names here: sheet",
        "materials|--price|sheet=dear|is not a number",
        "materials|--price|sheet=-1|must be 0 or more",
      })
  void wrongCallsAreExplained(String word, String option, String value, String told) {
    Run run = run(word, LANTERN, option, value);
    assertThat(run.exit()).isEqualTo(Exit.WRONG_CALL);
    assertThat(run.err()).contains(told);
    assertThat(run.out()).isEmpty();
  }
}
