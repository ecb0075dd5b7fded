package facetwright.net;

import facetwright.geom.Polygon2;
import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * How the finished form stands on the table: these corners lie level when it is made, and seen from
 * above they run counter-clockwise. A flat base panel is given by its corners in reverse (its
 * outside faces the table); a wrap by the corners round its waist.
 *
 * <p>The first side of the ring is the front, which faces the reader.
 *
 * @param ring at least three corners
 */
public record Stance(List<Corner> ring) implements Serializable {

  /** What makers call the panel that a form stands on; common practice, no source. */
  private static final List<String> BASES = List.of("base", "floor", "bottom", "foot");

  /** What they call the one that faces them. */
  public static final String FRONT = "front";

  /** What faces them of a form where none is called so. */
  private static final String FIRST_SIDE = "side 1";

  /** A corner of a panel's outline. */
  public record Corner(int panel, int corner) implements Serializable {}

  /**
   * @throws IllegalArgumentException when fewer than three corners are given
   */
  public Stance {
    ring = List.copyOf(ring);
    if (ring.size() < 3) {
      throw new IllegalArgumentException("a stance needs at least three corners");
    }
  }

  /**
   * The same of the net's mirror image, facing the same way: the first side of the ring stays it.
   *
   * @param corners how many corners a panel has
   */
  Stance mirrored(IntUnaryOperator corners) {
    int n = ring.size();
    return new Stance(
        IntStream.range(0, n)
            .mapToObj(i -> ring.get(Polygon2.mirroredCorner(i, n)))
            .map(
                c ->
                    new Corner(
                        c.panel(),
                        Polygon2.mirroredCorner(c.corner(), corners.applyAsInt(c.panel()))))
            .toList());
  }

  /** The same in a net where so many panels come before. */
  public Stance after(int panels) {
    return new Stance(ring.stream().map(c -> new Corner(c.panel() + panels, c.corner())).toList());
  }

  /**
   * On a panel, its outside to the table.
   *
   * @param corners how many corners it has
   * @param front which of its sides faces the reader
   */
  public static Stance on(int panel, int corners, int front) {
    return new Stance(
        IntStream.range(0, corners)
            .mapToObj(i -> new Corner(panel, Math.floorMod(front + 1 - i, corners)))
            .toList());
  }

  /**
   * As what some panels are called says: on the one called base, floor, bottom or foot, the one
   * called front in front. Where none is called so, it stands on another.
   *
   * @param otherwise the panel on which it stands then, its first side in front
   */
  public static Stance asCalled(Net net, List<Integer> panels, int otherwise) {
    int base =
        BASES.stream()
            .flatMap(word -> panels.stream().filter(p -> isCalled(net, p, word)))
            .findFirst()
            .orElse(otherwise);
    int side = base == otherwise ? 0 : sideTo(net, base, otherwise).orElse(0);
    for (String front : List.of(FIRST_SIDE, FRONT)) {
      for (int p : panels) {
        if (isCalled(net, p, front)) {
          side = sideTo(net, base, p).orElse(side);
        }
      }
    }
    return on(base, net.panels().get(base).outline().size(), side);
  }

  /** Also after the name of its part: "lid front". */
  private static boolean isCalled(Net net, int panel, String word) {
    Panel one = net.panels().get(panel);
    String name = one.name().toLowerCase(Locale.ROOT);
    return one.role() == PanelRole.FACET && (name.equals(word) || name.endsWith(" " + word));
  }

  /** Which side of a panel is scored to another. */
  private static OptionalInt sideTo(Net net, int panel, int other) {
    return net.scores().stream()
        .flatMapToInt(
            s ->
                s.a().panel() == panel && s.b().panel() == other
                    ? IntStream.of(s.a().edge())
                    : s.b().panel() == panel && s.a().panel() == other
                        ? IntStream.of(s.b().edge())
                        : IntStream.empty())
        .findFirst();
  }
}
