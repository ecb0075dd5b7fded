package facetwright.fold.touch;

import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.io.Serializable;
import java.util.List;
import java.util.OptionalInt;

/**
 * Two panels that pass through each other, or that lie in one place where no order of layers lets
 * them.
 *
 * @param a index of the one panel
 * @param b index of the other, larger than {@code a}
 * @param depth how far the one reaches through the other, square to it, in mm: the least of the
 *     four reaches on either side of either panel; 0 where they lie in one place
 * @param length of the line along which they pass through each other, in mm; 0 where they lie in
 *     one place
 * @param place the middle of that line's longest stretch, in the folded form
 * @param crease the two panels that are scored or joined where a third, held between them, would
 *     have to run through; empty where they pass through each other otherwise
 */
public record Collision(int a, int b, double depth, double length, Vec3 place, List<Integer> crease)
    implements Serializable {
  /** What a steady hand holds when cutting and scoring, in mm; common practice, no source. */
  public static final double HELD = 0.2;

  static Collision inOnePlace(int a, int b, Vec3 place) {
    return new Collision(Math.min(a, b), Math.max(a, b), 0, 0, place, List.of());
  }

  /** A panel held between two others that runs through the crease between them. */
  static Collision through(int held, int one, int other, double depth, double length, Vec3 place) {
    return new Collision(
        Math.min(held, one),
        Math.max(held, one),
        depth,
        length,
        place,
        List.of(Math.min(one, other), Math.max(one, other)));
  }

  /** The panel that is held between two others. */
  public OptionalInt held() {
    return crease.isEmpty() ? OptionalInt.empty() : OptionalInt.of(crease.contains(a) ? b : a);
  }

  /** Whether both lie in one place, as the walls of a tube that runs twice round. */
  public boolean isInOnePlace() {
    return depth == 0;
  }

  /** Whether the form can't be made for it: they meet by more than a steady hand makes up. */
  public boolean isInTheWay() {
    return isInOnePlace() || depth > HELD;
  }

  /** Whether one of them is a tab, which can be cut otherwise without changing the form. */
  public boolean isOfTab(Net net) {
    return net.panels().get(a).role() == PanelRole.TAB
        || net.panels().get(b).role() == PanelRole.TAB;
  }
}
