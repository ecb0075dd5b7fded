/**
 * Where the keys go. A node is <em>reached</em> when Tab leads to it; the window has
 * <em>parts</em>, from one to the next of which one leaps; what comes up for a while knows the
 * <em>way back</em> to where one was.
 */
package facetwright.workbench.focus;
