package facetwright.net;

import java.io.Serializable;

/**
 * Two panels of a net that lie over each other in the flat, so that it can't be cut from one sheet
 * as it lies.
 *
 * @param a the panel with the lower index
 * @param b the other
 * @param area what they share, in mm²
 */
public record Overlap(int a, int b, double area) implements Serializable {}
