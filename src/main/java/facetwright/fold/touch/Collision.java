package facetwright.fold.touch;

import facetwright.geom.Vec3;
import java.io.Serializable;

/**
 * Two panels that pass through each other.
 *
 * @param a index of the one panel
 * @param b index of the other, larger than {@code a}
 * @param depth how far the one reaches through the other, square to it, in mm: the least of the
 *     four reaches on either side of either panel
 * @param length of the line along which they pass through each other, in mm
 * @param place the middle of that line's longest stretch, in the folded form
 */
public record Collision(int a, int b, double depth, double length, Vec3 place)
    implements Serializable {}
