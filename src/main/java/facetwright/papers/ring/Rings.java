package facetwright.papers.ring;

import facetwright.fold.making.Bodies;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.RingCount;
import facetwright.geom.RoundOff;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.pace.Pace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * All ways to seat copies of a piece in a ring. A piece of several bodies, such as a box with a lid
 * beside it, is seated by the body that it stands on.
 *
 * <p>What it does not find: rings by seats of which less than half would meet, by sides that are
 * not flat, and by seats that something reaches over; rings in which every second copy is turned
 * round.
 */
public final class Rings {
  private static final double MEETING = 0.5;

  private static final int FREE_SIDES = 5;

  private static final double WORTH_GLUING = 0.25;

  /** Steps that it takes to see how two seats meet. */
  private static final int PAIR = 100;

  private final List<Pair> pairs = new ArrayList<>();

  private final List<Seat> seats;

  private Rings(List<Seat> seats) {
    this.seats = List.copyOf(seats);
  }

  /**
   * @throws IllegalArgumentException when it is not known where the panels end up
   */
  public static Rings of(Net net, FoldedForm apart) {
    FoldedForm form = apart.standing();
    if (form.closure() == Closure.NOT_SOLVED) {
      throw new IllegalArgumentException(
          "where the panels end up is not known, so no ring can be planned");
    }
    List<Integer> body = body(net, form);
    List<Vec3> points = new ArrayList<>();
    body.forEach(p -> points.addAll(form.corners(net, p)));
    Pace.doing("seating the piece side by side");
    List<Seat> seats = Seat.of(net, form, body, points);
    Rings rings = new Rings(seats);
    for (int i = 0; i < seats.size(); i++) {
      for (int j = i + 1; j < seats.size(); j++) {
        Pace.step(PAIR + points.size());
        Pair pair = Pair.of(body, points, seats.get(i), seats.get(j));
        if (pair.meets(MEETING)) {
          rings.pairs.add(pair);
        }
      }
    }
    return rings;
  }

  /** The panels of what is seated: all that is put together, or what stands. */
  private static List<Integer> body(Net net, FoldedForm form) {
    int standing = net.stance().ring().getFirst().panel();
    return form.together().whole().contains(standing)
        ? form.together().whole()
        : Bodies.of(net).stream().filter(b -> b.contains(standing)).findFirst().orElseThrow();
  }

  /**
   * These ways but those that tip the piece: it stands in the ring as it does alone. Where a piece
   * is asked for no other ways than these, there may be none.
   */
  public Rings standing() {
    Rings standing = new Rings(seats);
    pairs.stream().filter(Pair::isUpright).forEach(standing.pairs::add);
    return standing;
  }

  /**
   * The ways to seat so many, the best first: flush ones, then those that ask least by {@link
   * RingPlan#burden}; of equals those that tip the piece least, then those that meet most. Ways
   * that differ only in which of alike seats meet are told once.
   *
   * @throws IllegalArgumentException when the count is out of range
   */
  public List<RingPlan> plans(int count) {
    RingCount.checked(count);
    List<RingPlan> plans = new ArrayList<>();
    Pair last = null;
    for (Pair pair : fitting(count).toList()) {
      if (last == null || !alike(last, pair)) {
        plans.add(pair.plan(count));
        last = pair;
      }
    }
    return List.copyOf(plans);
  }

  /**
   * The pairs that seat so many, the best first. What is told of a ring, aimed at or made is told
   * of the first of these.
   */
  private Stream<Pair> fitting(int count) {
    return pairs.stream()
        .filter(p -> p.fits(count))
        .sorted(
            Comparator.<Pair>comparingLong(p -> grid(p.burden(count)))
                .thenComparingLong(p -> grid(p.tipped()))
                .thenComparingLong(p -> -Math.round(p.contact())));
  }

  /**
   * How far neighbours in a ring of so many stand open at the outer end of where they meet, in mm;
   * below 0 where these take more of the circle than there is.
   *
   * @param by the two sides that meet, as {@link #ways} names them; empty for those that the ring
   *     is planned by, the first of {@link #plans}, or where none fits those that come nearest
   * @return empty where these sides can't meet, or none can
   */
  public Optional<Double> opening(int count, String by) {
    return (by.isEmpty()
            ? Stream.concat(fitting(count), nearest(count))
            : nearest(count).filter(p -> p.name().equals(by)))
        .map(p -> p.opening(count))
        .findFirst();
  }

  /**
   * The pairs of sides that may meet in a ring of so many, by name, those first that are nearest to
   * seating flush and tip the piece least; of alike ones the first.
   */
  public List<String> ways(int count) {
    List<Pair> ways = new ArrayList<>();
    nearest(count)
        .sorted(Comparator.comparingLong(p -> grid(p.off(count))))
        .filter(p -> ways.stream().noneMatch(w -> alike(w, p)))
        .forEachOrdered(ways::add);
    return ways.stream().map(Pair::name).toList();
  }

  /**
   * Sides that hardly meet are left out: where less than a quarter of the largest meeting would be
   * glued, nobody builds a ring.
   */
  private Stream<Pair> nearest(int count) {
    double most = pairs.stream().mapToDouble(Pair::contact).max().orElse(0);
    return pairs.stream()
        .filter(p -> p.contact() >= WORTH_GLUING * most)
        .sorted(Comparator.comparingDouble(p -> Math.abs(p.opening(count))));
  }

  /** The counts up to {@link RingCount#MOST} that seat flush. */
  public List<Integer> flushCounts() {
    List<Integer> flush = new ArrayList<>();
    for (int n = RingCount.LEAST; n <= RingCount.MOST; n++) {
      int count = n;
      if (pairs.stream().anyMatch(p -> p.isFlush(count))) {
        flush.add(n);
      }
    }
    return List.copyOf(flush);
  }

  /**
   * How many upright sides a regular piece has, five at least: a piece of three or four sides is
   * seldom free to have more. Empty where its upright sides do not go round by equal angles.
   */
  OptionalInt equalSides() {
    List<Double> headings =
        seats.stream()
            .map(Seat::normal)
            .filter(n -> Math.abs(n.z()) < RoundOff.SOLVED)
            .map(n -> Math.atan2(n.y(), n.x()))
            .sorted()
            .toList();
    int sides = headings.size();
    for (int i = 0; i + 1 < sides; i++) {
      double turn = headings.get(i + 1) - headings.get(i);
      if (grid(turn) != grid(2 * Math.PI / sides)) {
        return OptionalInt.empty();
      }
    }
    return sides < FREE_SIDES ? OptionalInt.empty() : OptionalInt.of(sides);
  }

  private static boolean alike(Pair a, Pair b) {
    return grid(a.takes()) == grid(b.takes())
        && grid(a.tipped()) == grid(b.tipped())
        && Math.round(a.contact()) == Math.round(b.contact());
  }

  /**
   * Angles in steps of a thousandth of a degree or so, so that rounding does not tell them apart.
   */
  private static long grid(double radians) {
    return Math.round(radians * 5e4);
  }
}
