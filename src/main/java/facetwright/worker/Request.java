package facetwright.worker;

import facetwright.adjust.propose.Question;
import facetwright.script.Facetwright;
import facetwright.script.StrayDials;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.io.Serializable;
import java.util.List;
import java.util.Map;

/**
 * A script to evaluate. Its dials may have been turned when it read otherwise: settings that they
 * do not take give way.
 *
 * @param fileName what its user calls it
 * @param source its text
 * @param settings dial values by name, as a person types them
 * @param questions what to ask of its design, one at most; where none is, the design is wanted
 */
public record Request(
    String fileName, String source, Map<String, String> settings, List<Question> questions)
    implements Serializable {
  /**
   * @throws IllegalArgumentException when there is more than one question
   */
  public Request {
    settings = Map.copyOf(settings);
    questions = List.copyOf(questions);
    if (questions.size() > 1) {
      throw new IllegalArgumentException("one question at a time");
    }
  }

  /** Asks for the design itself. */
  public Request(String fileName, String source, Map<String, String> settings) {
    this(fileName, source, settings, List.of());
  }

  /** The same script with a question to its design. */
  public Request asking(Question question) {
    return new Request(fileName, source, settings, List.of(question));
  }

  /**
   * Works it out on this thread.
   *
   * @param tried run at each design that is made to answer a question
   * @throws ScriptException when the script is wrong or has to be given up
   */
  public Reply answer(Budget budget, Runnable tried) throws ScriptException {
    if (questions.isEmpty()) {
      return new Reply.Done(
          Facetwright.evaluate(fileName, source, settings, StrayDials.YIELDING, budget));
    }
    WhatIf what = WhatIf.of(fileName, source, settings, StrayDials.YIELDING, budget).telling(tried);
    return new Reply.Proposed(questions.getFirst().answer(what));
  }
}
