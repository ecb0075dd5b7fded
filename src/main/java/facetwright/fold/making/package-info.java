/**
 * The order in which a piece is made up. A <em>bond</em> is one thing to be glued or closed, a
 * <em>stage</em> what is glued in one go, and a <em>step</em> either a stage or a thing that goes
 * in or on at its moment: before what would close over it. The <em>way</em> at a stage is the
 * widest round thing that can still be brought to the middle of the hollow.
 */
package facetwright.fold.making;
