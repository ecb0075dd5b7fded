/**
 * Device-free drawings: what lies on a page at true size, before any file format.
 *
 * <p>Words. A {@link facetwright.draw.Drawing} is a page with <em>marks</em> on it, in painting
 * order: strokes, circles, fills and text. Its lower left corner is the origin; x runs right, y
 * runs up, everything is in millimetres. A stroke has a {@link facetwright.draw.LineKind}, which
 * fixes its meaning, width, dashes and ink; a black-and-white print reads by the dashes alone.
 *
 * <p>A <em>template page</em> is one sheet with its net, a title, a legend, a caution and a check
 * ruler that tells whether the printer kept the size.
 */
package facetwright.draw;
