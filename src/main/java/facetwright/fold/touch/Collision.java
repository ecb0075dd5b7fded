package facetwright.fold.touch;

import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.io.Serializable;
import java.util.List;
import java.util.OptionalInt;

/**
 * Two panels that pass through each other, or that lie in one place where no order of layers lets
 * them.
 *
 * @param kind which of these
 * @param a index of the one panel
 * @param b index of the other, larger than {@code a}
 * @param depth how far the one reaches through the other, in mm. Of panels that pass through each
 *     other square to it, the least of the four reaches on either side of either panel; of one that
 *     is held how far it reaches through the crease; 0 where they lie in one place
 * @param length of the line along which they pass through each other, in mm; 0 where they lie in
 *     one place
 * @param place the middle of that line's longest stretch, in the folded form
 * @param crease the two panels that are scored or joined where a third, held between them, would
 *     have to run through; of one glued to the outside the panel that is to be over it; else empty
 */
public record Collision(
    Kind kind, int a, int b, double depth, double length, Vec3 place, List<Integer> crease)
    implements Serializable {
  /** What a steady hand holds when cutting and scoring, in mm; common practice, no source. */
  public static final double HELD = 0.2;

  /** How panels are in each other's way. */
  public enum Kind {
    /** They pass through each other. */
    PASSING,
    /** They lie in one place, and what is joined to them runs round more than once. */
    ROUND,
    /** The one lies between the other and what that is joined to, and runs through their crease. */
    HELD,
    /** The one is glued under the other, but comes to lie on its outside. */
    OUTSIDE,
    /** They lie in one place, and each order of layers fails somewhere. */
    STUCK
  }

  public Collision {
    crease = List.copyOf(crease);
  }

  private static Collision inOnePlace(Kind kind, int a, int b, Vec3 place, List<Integer> crease) {
    return new Collision(kind, Math.min(a, b), Math.max(a, b), 0, 0, place, crease);
  }

  static Collision round(int a, int b, Vec3 place) {
    return inOnePlace(Kind.ROUND, a, b, place, List.of());
  }

  static Collision outside(int under, int over, Vec3 place) {
    return inOnePlace(Kind.OUTSIDE, under, over, place, List.of(over));
  }

  static Collision stuck(int a, int b, Vec3 place) {
    return inOnePlace(Kind.STUCK, a, b, place, List.of());
  }

  /** A panel held between two others that runs through the crease between them. */
  static Collision through(int held, int one, int other, double depth, double length, Vec3 place) {
    return new Collision(
        Kind.HELD,
        Math.min(held, one),
        Math.max(held, one),
        depth,
        length,
        place,
        List.of(Math.min(one, other), Math.max(one, other)));
  }

  /** The panel that is held between two others. */
  public OptionalInt held() {
    return kind == Kind.HELD ? OptionalInt.of(crease.contains(a) ? b : a) : OptionalInt.empty();
  }

  /** The panel that is glued under another, and comes to lie on its outside. */
  public OptionalInt outside() {
    return kind == Kind.OUTSIDE ? OptionalInt.of(crease.contains(a) ? b : a) : OptionalInt.empty();
  }

  /**
   * The panel past which a tab glued under it reaches, through what hangs together with it there;
   * empty where it is no such tab that is in the way.
   */
  public OptionalInt pastHost(Net net) {
    for (Join join : kind == Kind.HELD ? net.joins() : List.<Join>of()) {
      if (join instanceof Join.Seam(_, EdgeRef host, int tab, _, _)
          && tab == held().orElseThrow()
          && crease.contains(host.panel())) {
        return OptionalInt.of(host.panel());
      }
    }
    return OptionalInt.empty();
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
