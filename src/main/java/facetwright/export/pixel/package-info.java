/** Marks as pixels, and the file that holds them. */
package facetwright.export.pixel;
