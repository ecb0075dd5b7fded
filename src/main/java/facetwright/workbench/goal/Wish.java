package facetwright.workbench.goal;

import facetwright.adjust.propose.Question;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.check.finding.Finding;
import facetwright.measure.Unit;
import facetwright.script.design.Design;
import java.util.List;
import java.util.Optional;

/**
 * What somebody at the table wishes a design came to.
 *
 * @param word one of {@link GoalReader#WORDS}
 * @param value as typed
 * @param turn the dial that may be turned; empty to leave the choice
 */
public record Wish(String word, String value, String turn) {

  /** The wish that would put a finding right by turning dials; empty where none would. */
  public static Optional<Wish> mending(Design design, Finding finding) {
    if (design.dials().isEmpty()) {
      return Optional.empty();
    }
    return switch (finding.rule()) {
      case "gap", "tear" -> Optional.of(new Wish("gap", "0", ""));
      case "off-sheet" -> Optional.of(new Wish("fits", design.laid().stock().name(), ""));
      default -> Optional.empty();
    };
  }

  /** What it is good for, on a button. */
  public String verb() {
    return word.equals("fits") ? "Find dials so that it fits" : "Find dials so that it closes";
  }

  /**
   * The wish as a question to the design as it stands.
   *
   * @param unit what plain numbers count
   * @param grid the ruler that dials are set by
   * @throws IllegalArgumentException when its value is none for its word, without a full stop
   */
  Question question(Unit unit, Grid grid) {
    List<String> dials = turn.isEmpty() ? List.of() : List.of(turn);
    return new Question.Aim(List.of(GoalReader.read(word, value, unit)), dials, grid);
  }
}
