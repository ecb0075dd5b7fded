package facetwright.fold.touch;

import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Panels of a flat fold that would have to run through the crease between two others.
 *
 * <p>A score folded right over tells which of its two panels lies over the other, and so does a
 * lap. What follows from that is followed: a panel that reaches across a crease lies over both its
 * panels or under both; of two creases in one place that open to one side, the one's panels lie
 * both between the other's or both outside; what runs on across a line that another runs on across
 * keeps its side of it (J. Justin 1997, after R. Lang, Origami Design Secrets: from memory); and
 * where three panels share a place, what is over the one that is over the third is over the third.
 *
 * <p>What it does not detect: panels of which neither senses nor laps tell, nor what follows from
 * them, which lies over the other, though every order may fail; a lap whose panel lies on the
 * outside of the other by what senses tell.
 */
final class Layers {
  private final List<PosedPanel> placed;
  private final double by;
  private final List<Crease> creases = new ArrayList<>();
  private final Set<Integer> flat = new TreeSet<>();

  /** For each pair that shares a place: 1 where the first is over the second, −1 under, 0 open. */
  private final Map<Long, Integer> order = new HashMap<>();

  /**
   * A score or seam whose panels lie in one plane.
   *
   * @param isOver whether both lie to one side of it
   */
  private record Crease(int a, int b, Vec3 from, Vec3 to, boolean isOver) {}

  private Layers(List<PosedPanel> placed, double by) {
    this.placed = placed;
    this.by = by;
  }

  /**
   * @param lying pairs of panels in one plane that touch or share a place
   * @param by what overlaps or reaches across by no more, in mm, is not told from what touches
   */
  static List<Collision> through(
      Net net, List<PosedPanel> placed, List<BoxTree.Pair> lying, double by) {
    Layers layers = new Layers(placed, by);
    Map<Long, BoxTree.Pair> touching = new HashMap<>();
    lying.forEach(p -> touching.put(key(p.a(), p.b()), p));
    for (Score score : net.scores()) {
      layers.crease(touching, score.a(), score.b());
    }
    if (layers.creases.stream().noneMatch(Crease::isOver)) {
      return List.of();
    }
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam(EdgeRef a, EdgeRef b, _, _)) {
        layers.crease(touching, a, b);
      }
    }
    for (BoxTree.Pair pair : lying) {
      if (layers.shares(pair.a(), pair.b())) {
        layers.order.put(key(pair.a(), pair.b()), 0);
        layers.flat.addAll(List.of(pair.a(), pair.b()));
      }
    }
    layers.told(net);
    return layers.follow();
  }

  private static long key(int a, int b) {
    return ((long) Math.min(a, b) << 32) | Math.max(a, b);
  }

  private void crease(Map<Long, BoxTree.Pair> touching, EdgeRef a, EdgeRef b) {
    if (!touching.containsKey(key(a.panel(), b.panel()))) {
      return;
    }
    Vec3 from = corner(a, 0);
    Vec3 to = corner(a, 1);
    if (corner(b, 1).distance(from) <= Collision.HELD
        && corner(b, 0).distance(to) <= Collision.HELD) {
      creases.add(new Crease(a.panel(), b.panel(), from, to, up(a.panel()) != up(b.panel())));
    }
  }

  private Vec3 corner(EdgeRef side, int end) {
    List<Vec3> outline = placed.get(side.panel()).outline();
    return outline.get((side.edge() + end) % outline.size());
  }

  /** Whether the outside of a panel is the upper side of its plane. */
  private boolean up(int panel) {
    return placed.get(panel).normal().dot(Interlock.ASIDE) > 0;
  }

  /** The orders that senses and laps tell. */
  private void told(Net net) {
    for (Score score : net.scores()) {
      boolean rightOver = score.angle() instanceof FoldAngle.Known(double degrees) && degrees > 90;
      if (rightOver) {
        boolean inside = score.sense() == Sense.MOUNTAIN;
        tell(score.a().panel(), score.b().panel(), up(score.a().panel()) == inside ? 1 : -1);
      }
    }
    for (Join join : net.joins()) {
      if (join instanceof Join.Lap(int under, int over, _)) {
        tell(over, under, up(over) ? 1 : -1);
      }
    }
  }

  private void tell(int a, int b, int over) {
    order.computeIfPresent(key(a, b), (_, was) -> was == 0 ? (a < b ? over : -over) : was);
  }

  /** Of two panels 1 where the first is over the second, −1 under, 0 open; empty where apart. */
  private Optional<Integer> over(int a, int b) {
    return Optional.ofNullable(order.get(key(a, b))).map(o -> a < b ? o : -o);
  }

  private List<Collision> follow() {
    List<Rule> rules = new ArrayList<>();
    for (Crease crease : creases) {
      for (int c : flat) {
        crossing(crease, c).ifPresent(rules::add);
      }
    }
    for (int i = 0; i < creases.size(); i++) {
      for (int j = i + 1; j < creases.size(); j++) {
        along(creases.get(i), creases.get(j)).ifPresent(rules::add);
      }
    }
    do {
      boolean more = true;
      while (more) {
        more = false;
        for (Rule rule : rules) {
          more |= isSettledBy(rule);
        }
      }
    } while (isPassedOn());
    return rules.stream().filter(r -> product(r) < 0).flatMap(r -> r.broken.stream()).toList();
  }

  /** Pairs whose orders, 1 or −1, make 1 when multiplied; and what to tell where they don't. */
  private record Rule(List<int[]> pairs, Optional<Collision> broken) {}

  private Optional<Rule> rule(Optional<Collision> broken, int... pairs) {
    List<int[]> all = new ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      if (over(pairs[i], pairs[i + 1]).isEmpty()) {
        return Optional.empty();
      }
      all.add(new int[] {pairs[i], pairs[i + 1]});
    }
    return Optional.of(new Rule(all, broken));
  }

  private int product(Rule rule) {
    int product = 1;
    for (int[] pair : rule.pairs) {
      product *= over(pair[0], pair[1]).orElseThrow();
    }
    return product;
  }

  /** Whether all orders of a rule but one are known, so that this one is now, too. */
  private boolean isSettledBy(Rule rule) {
    int[] open = null;
    int product = 1;
    for (int[] pair : rule.pairs) {
      int known = over(pair[0], pair[1]).orElseThrow();
      if (known == 0) {
        if (open != null) {
          return false;
        }
        open = pair;
      } else {
        product *= known;
      }
    }
    if (open == null) {
      return false;
    }
    tell(open[0], open[1], product);
    return true;
  }

  /** Whether an order followed from two others at a place that three panels share. */
  private boolean isPassedOn() {
    boolean any = false;
    for (Map.Entry<Long, Integer> entry : order.entrySet()) {
      int a = (int) (entry.getKey() >> 32);
      int c = entry.getKey().intValue();
      if (entry.getValue() != 0) {
        continue;
      }
      for (int b : flat) {
        int first = over(a, b).orElse(0);
        if (first != 0 && first == over(b, c).orElse(0) && shares(a, b, c)) {
          entry.setValue(first);
          any = true;
          break;
        }
      }
    }
    return any;
  }

  /** What holds where a panel reaches across a crease. */
  private Optional<Rule> crossing(Crease crease, int c) {
    if (c == crease.a || c == crease.b || over(crease.a, c).isEmpty()) {
      return Optional.empty();
    }
    Vec3 along = crease.to.minus(crease.from).unit();
    // The inside of the one panel's side lies to the left.
    Patch patch = new Patch(crease.from, along, placed.get(crease.a).normal().cross(along));
    return patch
        .across(crease.to.distance(crease.from), placed.get(c), by)
        .flatMap(
            x ->
                rule(
                    Optional.of(
                        Collision.through(
                            c,
                            crease.a,
                            crease.b,
                            crease.isOver ? x.right() : Math.min(x.left(), x.right()),
                            x.length(),
                            x.middle())),
                    crease.a,
                    c,
                    crease.b,
                    c));
  }

  /** What holds of two creases that run along one line for a stretch. */
  private Optional<Rule> along(Crease one, Crease two) {
    boolean apart = one.a != two.a && one.a != two.b && one.b != two.a && one.b != two.b;
    if (!apart || over(one.a, two.a).or(() -> over(one.a, two.b)).isEmpty() || !isAlong(one, two)) {
      return Optional.empty();
    }
    if (one.isOver && two.isOver) {
      return rule(
          Optional.of(Collision.through(two.a, one.a, one.b, 0, 0, one.from.toward(one.to, 0.5))),
          one.a,
          two.a,
          one.a,
          two.b,
          one.b,
          two.a,
          one.b,
          two.b);
    }
    if (one.isOver || two.isOver) {
      Crease bent = one.isOver ? one : two;
      Crease flatOne = one.isOver ? two : one;
      int c = over(bent.a, flatOne.a).isPresent() ? flatOne.a : flatOne.b;
      return rule(Optional.empty(), bent.a, c, bent.b, c);
    }
    return over(one.a, two.a).isPresent()
        ? rule(Optional.empty(), one.a, two.a, one.b, two.b)
        : rule(Optional.empty(), one.a, two.b, one.b, two.a);
  }

  private boolean isAlong(Crease one, Crease two) {
    double length = one.to.distance(one.from);
    Vec3 along = one.to.minus(one.from).unit();
    Vec3 p = two.from.minus(one.from);
    Vec3 q = two.to.minus(one.from);
    double low = Math.max(0, Math.min(p.dot(along), q.dot(along)));
    double high = Math.min(length, Math.max(p.dot(along), q.dot(along)));
    return high - low > by && p.cross(along).length() <= by && q.cross(along).length() <= by;
  }

  private boolean shares(int... panels) {
    return Patch.of(placed.get(panels[0]))
        .share(IntStream.of(panels).mapToObj(placed::get).toList(), by);
  }
}
