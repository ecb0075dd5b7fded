package facetwright.adjust.propose;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.adjust.Remark;
import facetwright.aim.Goal;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.measure.Unit;
import facetwright.script.Facetwright;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dials that are said to close a design do. */
class ClosingTest {
  /** A triangle of two sides of 80 and outer angles of 120: its floor must be 80, too. */
  private static final String TENT =
      """
      design("Card tent");
      const floor = dial("floor", %s, { from: %s, to: %s, step: 5 });
      const lean = dial("lean", %s, { from: 100, to: 140 });
      const front = panel("front", { width: 60, height: 80 });
      const back = front.attach("top", "back", { depth: 80, fold: lean });
      const under = back.attach("top", "floor", { depth: floor, fold: 120 });
      under.join("top", front, "bottom", { depth: 10 });
      sheet("A4");
      """;

  private static Proposal ask(String script) throws ScriptException {
    List<Goal> goals = List.of(GoalReader.read("gap", "0", Unit.MM));
    WhatIf what = WhatIf.of("tent.js", script, Map.of(), Budget.USUAL);
    return new Question.Aim(goals, List.of(), Grid.usual(Unit.MM)).answer(what);
  }

  private static String words(Proposal answer) {
    return answer.remarks().stream().map(Remark::words).collect(Collectors.joining("\n"));
  }

  /** Every way that is offered is made as it would be taken, and closes; some floors have none. */
  @ParameterizedTest
  @CsvSource({
    "75, 60, 90, 120, true",
    "80, 60, 90, 124.25, true",
    "85, 60, 90, 120, true",
    "80, 60, 90, 135, true",
    "65, 60, 70, 120, false",
    "60, 60, 70, 131, false",
    "110, 100, 120, 120, false",
  })
  void whatIsOfferedCloses(String floor, String from, String to, String lean, boolean is)
      throws Exception {
    Proposal answer = ask(TENT.formatted(floor, from, to, lean));
    assertThat(answer.isMet()).as(words(answer)).isEqualTo(is);
    assertThat(answer.ways().isEmpty()).as(words(answer)).isEqualTo(!is);
    for (Suggestion way : answer.ways()) {
      Design taken = Facetwright.evaluate("tent.js", way.source(), way.settings(), Budget.USUAL);
      assertThat(taken.folded().closes()).as(way.name()).isTrue();
      assertThat(taken.isSound()).as(way.name()).isTrue();
    }
    if (is) {
      assertThat(words(answer)).startsWith("It closes with ");
      assertThat(answer.dials()).anyMatch(d -> d.change().matches("[+-][0-9.]+"));
    } else {
      assertThat(words(answer))
          .startsWith("No setting was found with which it closes")
          .contains("What would help: ");
      assertThat(answer.dials()).isEmpty();
    }
  }

  @Test
  void whatClosesIsNotTurned() throws Exception {
    Proposal answer = ask(TENT.formatted("80", "60", "90", "120"));
    assertThat(words(answer)).startsWith("It closes as it stands.");
    assertThat(answer.ways()).isEmpty();
  }
}
