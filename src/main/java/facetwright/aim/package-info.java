/**
 * What a design would come to if its dials stood otherwise, and how to turn them so that it comes
 * to what is wanted.
 *
 * <p>A <em>knob</em> is a dial as this package sees it: a number within its ends. A <em>trial</em>
 * makes the design with its knobs at given values; what it then measures is a {@link
 * facetwright.aim.Measured}. A <em>slope</em> says how a measure changes with one knob. A
 * <em>goal</em> is what a measure should come to, or the sheet that the net should fit; an
 * <em>aim</em> is goals together with the knobs that may be turned for them. A <em>mark</em> is a
 * value that a maker can set: a line of the ruler, or a step of the dial.
 *
 * <p>Nothing here knows where designs come from: any function from knob values to measures will do.
 */
package facetwright.aim;
