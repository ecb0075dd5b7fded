/**
 * What to turn a design to so that its papers come out well: questions that need both the script,
 * which makes the design anew, and the papers, which tell how it would be made.
 */
package facetwright.adjust;
