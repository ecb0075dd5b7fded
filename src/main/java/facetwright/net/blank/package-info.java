/** The way in from a blank sheet: scored, cut and slit along lines, panels told from waste. */
package facetwright.net.blank;
