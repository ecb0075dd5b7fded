/**
 * The language scripts are written in: the functions they see, the sandbox they run in, the dials
 * they declare, and the {@link facetwright.script.design.Design} they come to.
 *
 * <p>A <em>dial</em> is a parameter of a design that its user may turn.
 */
package facetwright.script;
