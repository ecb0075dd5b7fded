/** One dial of a design over a range of values, side by side. */
package facetwright.adjust.sweep;
