package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class ChartCommandTest {
  @Test
  void tellsTheTrayByOneMeasure() {
    String words = run(0, "chart", "library/supper-tray.js");
    assertThat(words)
        .contains("score chart for a ruler of 1/16 in", "1 1/4 in", "The same measure again")
        .contains("Slit, and stop at the score");
  }

  @Test
  void takesAnotherRulerAndRefusesNonsense() throws Exception {
    JsonNode json =
        new ObjectMapper()
            .readTree(run(0, "chart", "library/supper-tray.js", "--ruler", "0.5mm", "--json"));
    // 1 1/4 in is 31.75 mm: a quarter millimetre beside either mark.
    JsonNode measure = json.path("pieces").path(0).path("score_measures").path(0);
    assertThat(measure.path("mm").asDouble()).isEqualTo(31.75);
    assertThat(Math.abs(measure.path("off_mm").asDouble())).isEqualTo(0.25);
    assertThat(json.path("different_measures").asInt()).isEqualTo(1);
    assertThat(run(2, "chart", "library/supper-tray.js", "--ruler", "blue"))
        .contains("--ruler: \"blue\" is no ruler");
    assertThat(run(2, "chart", "library/supper-tray.js", "--ruler", "0.3mm"))
        .contains("is no ruler");
  }
}
