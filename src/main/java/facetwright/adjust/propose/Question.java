package facetwright.adjust.propose;

import facetwright.aim.Goal;
import facetwright.aim.Grid;
import facetwright.measure.Ruler;
import facetwright.message.Refused;
import facetwright.net.sheet.SheetSize;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.Sentence;
import java.io.Serializable;
import java.util.List;

/** What may be asked of a design beside what it is. */
public sealed interface Question extends Serializable {
  /**
   * Which dials put its measures on a ruler's marks?
   *
   * @param marks by how many marks a dial may be turned at most, over 0
   */
  record Round(Ruler ruler, int marks) implements Question {}

  /**
   * Which dials make it as large as lets so many of it lie on one sheet?
   *
   * @param copies how many
   * @param grid the ruler its dials are set by
   */
  record Fit(SheetSize sheet, int copies, Grid grid) implements Question {}

  /**
   * Which dials make it come to something?
   *
   * @param turn the dials that may be turned; empty to leave the choice
   * @param grid the ruler they are set by
   */
  record Aim(List<Goal> goals, List<String> turn, Grid grid) implements Question {
    public Aim {
      goals = List.copyOf(goals);
      turn = List.copyOf(turn);
    }
  }

  /**
   * Answers it.
   *
   * @param what the design, with its dials as they stand
   * @throws ScriptException when the script has to be given up
   */
  default Proposal answer(WhatIf what) throws ScriptException {
    try {
      return switch (this) {
        case Round round -> RoundAnswer.to(what, round);
        case Fit fit -> FitAnswer.to(what, fit);
        case Aim aim -> AimAnswer.to(what, aim);
      };
    } catch (IllegalArgumentException e) {
      return Proposal.none(Sentence.of(Refused.text(e, what.design().unit())));
    }
  }
}
