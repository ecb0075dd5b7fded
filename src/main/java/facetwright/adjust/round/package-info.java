/**
 * Rounding a design to a maker's ruler.
 *
 * <p>A <em>stop</em> is a value of a dial worth trying: where it stands, or a mark of the ruler
 * within its <em>reach</em>. A <em>draft</em> is the design with its dials at given values and the
 * measures its maker would then set. Where no stops put a measure on a mark, dials may come to lie
 * between marks so that the measure does: dials are typed, measures are set by the ruler.
 */
package facetwright.adjust.round;
