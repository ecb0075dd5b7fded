/**
 * Runs a script where it can do no harm: no file, network, class, thread or clock is within its
 * reach, and its time, memory and depth are bounded.
 *
 * <p>The <em>host</em> is the Java side that puts functions into a script's hands; the
 * <em>guest</em> is the script. A <em>budget</em> bounds what one run may take. What goes wrong is
 * a {@link facetwright.script.sandbox.ScriptException} in a maker's words, with its line.
 */
package facetwright.script.sandbox;
