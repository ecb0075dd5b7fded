package facetwright.worker;

import facetwright.script.Design;
import facetwright.script.sandbox.ScriptException;

/** Turns a script into a design. */
@FunctionalInterface
public interface Evaluator {
  /**
   * Evaluates one script. Should end soon, with an exception of kind {@link
   * ScriptException.Kind#STOPPED}, when its thread is interrupted.
   */
  Design evaluate(Request request) throws ScriptException;
}
