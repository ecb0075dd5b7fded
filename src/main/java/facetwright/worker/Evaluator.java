package facetwright.worker;

import facetwright.script.sandbox.ScriptException;

/** Answers what is asked of a script. */
@FunctionalInterface
interface Evaluator {
  /**
   * Answers one request. Should end soon, with an exception of kind {@link
   * ScriptException.Kind#STOPPED}, when its thread is interrupted.
   *
   * @param tried run now and then while it goes on
   */
  Reply answer(Request request, Runnable tried) throws ScriptException;
}
