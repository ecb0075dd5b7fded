package facetwright.fold.touch;

import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Panels in one place that no order of layers lets be there.
 *
 * <p>Of two panels that lie on each other the one is outside the other. Where both are scored or
 * joined along one line and what follows lies on each other again, the order follows, too: what was
 * outside stays outside. Where that comes back to the first two the other way round, or makes each
 * of several lie outside the next all round, as in a tube that runs round twice or three times,
 * none of them can be where it is.
 *
 * <p>What it does not detect: layers held between others, which {@link Layers} looks for.
 */
final class Interlock {
  /**
   * Normals whose cosine misses 1 by no more, which is some 2.6°, may be of one plane; whether
   * their corners lie in it decides.
   */
  private static final double PARALLEL = 1e-3;

  /**
   * Of a plane's two sides that which this points to counts as above; no usual plane is along it.
   */
  static final Vec3 ASIDE = new Vec3(0.5377, 0.6191, 0.5721);

  private final Net net;
  private final List<PosedPanel> placed;
  private final double by;
  private final EdgeRef[][] across;
  private final Map<Lying, Integer> numberOf = new HashMap<>();
  private final List<Lying> lying = new ArrayList<>();

  /** For each pair another one whose order follows from its, itself at the end of each chain. */
  private final List<Integer> like = new ArrayList<>();

  /** Whether its order is the other way round than that one's. */
  private final List<Boolean> turned = new ArrayList<>();

  private final List<Boolean> torn = new ArrayList<>();

  /** Two panels in one plane; {@code a} is the smaller number. */
  private record Lying(int a, int b) {}

  /** An end of a chain, and whether the order turns on the way there. */
  private record Root(int number, boolean turned) {}

  Interlock(Net net, List<PosedPanel> placed, double by) {
    this.net = net;
    this.placed = placed;
    this.by = by;
    this.across = new EdgeRef[placed.size()][];
    for (int p = 0; p < across.length; p++) {
      across[p] = new EdgeRef[net.panels().get(p).outline().size()];
    }
    for (Score s : net.scores()) {
      tie(s.a(), s.b());
    }
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam(EdgeRef a, EdgeRef b, _, _)) {
        tie(a, b);
      }
    }
  }

  private void tie(EdgeRef a, EdgeRef b) {
    if (!isTab(a.panel()) && !isTab(b.panel())) {
      across[a.panel()][a.edge()] = b;
      across[b.panel()][b.edge()] = a;
    }
  }

  private boolean isTab(int panel) {
    return net.panels().get(panel).role() == PanelRole.TAB;
  }

  /** Whether two panels are facets or gussets in one plane. */
  boolean isLying(int a, int b) {
    PosedPanel one = placed.get(a);
    PosedPanel two = placed.get(b);
    return !isTab(a)
        && !isTab(b)
        && 1 - Math.abs(one.normal().dot(two.normal())) <= PARALLEL
        && one.liesIn(two, by)
        && two.liesIn(one, by);
  }

  /** All pairs that can't be where they are, of those that lie in one plane. */
  List<Collision> among(List<BoxTree.Pair> pairs) {
    pairs.forEach(p -> number(new Lying(p.a(), p.b())));
    Map<Lying, Vec3> places = new HashMap<>();
    for (BoxTree.Pair pair : pairs) {
      for (int i = 0; i < across[pair.a()].length; i++) {
        for (int j = 0; j < across[pair.b()].length; j++) {
          follow(new EdgeRef(pair.a(), i), new EdgeRef(pair.b(), j), places);
        }
      }
    }
    comeRound();
    List<Collision> found = new ArrayList<>();
    for (int n = 0; n < lying.size(); n++) {
      Lying pair = lying.get(n);
      if (torn.get(root(n).number()) && places.containsKey(pair)) {
        found.add(Collision.inOnePlace(pair.a, pair.b, places.get(pair)));
      }
    }
    return found;
  }

  /** Marks orders by which one panel is above another, that above a third, and so on to the one. */
  private void comeRound() {
    Map<Integer, Map<Integer, List<Integer>>> above = new HashMap<>();
    for (int n = 0; n < lying.size(); n++) {
      Lying pair = lying.get(n);
      Root root = root(n);
      boolean up = placed.get(pair.a).normal().dot(ASIDE) > 0 != root.turned;
      above
          .computeIfAbsent(root.number, _ -> new HashMap<>())
          .computeIfAbsent(up ? pair.a : pair.b, _ -> new ArrayList<>())
          .add(up ? pair.b : pair.a);
    }
    above.forEach((root, order) -> torn.set(root, torn.get(root) || comesRound(order)));
  }

  /** Whether nothing is left at the bottom when, again and again, what lies undermost is taken. */
  private static boolean comesRound(Map<Integer, List<Integer>> above) {
    Map<Integer, List<Integer>> left = new HashMap<>(above);
    boolean taken = true;
    while (taken) {
      Set<Integer> over = new HashSet<>();
      left.values().forEach(over::addAll);
      taken = left.keySet().removeIf(p -> !over.contains(p));
    }
    return !left.isEmpty();
  }

  /** Ties the order of two panels to that of the two behind sides of them that run along. */
  private void follow(EdgeRef one, EdgeRef two, Map<Lying, Vec3> places) {
    EdgeRef behindOne = across[one.panel()][one.edge()];
    EdgeRef behindTwo = across[two.panel()][two.edge()];
    if (behindOne == null || behindTwo == null || !runsAlong(one, two)) {
      return;
    }
    places.putIfAbsent(new Lying(one.panel(), two.panel()), start(one).toward(end(one), 0.5));
    int a = behindOne.panel();
    int b = behindTwo.panel();
    Integer next = numberOf.get(new Lying(Math.min(a, b), Math.max(a, b)));
    boolean rightOver =
        numberOf.containsKey(new Lying(Math.min(one.panel(), a), Math.max(one.panel(), a)))
            && runsAlong(one, behindOne);
    if (next == null || rightOver || !runsAlong(behindOne, behindTwo)) {
      return;
    }
    boolean alike = placed.get(a).normal().dot(placed.get(b).normal()) > 0;
    unite(numberOf.get(new Lying(one.panel(), two.panel())), next, a > b && alike);
  }

  /** Whether two sides lie on one line for a stretch, their panels to one side of it. */
  private boolean runsAlong(EdgeRef one, EdgeRef two) {
    Vec3 from = start(one);
    Vec3 way = end(one).minus(from);
    double length = way.length();
    if (length <= by) {
      return false;
    }
    Vec3 along = way.times(1 / length);
    Vec3 p = start(two).minus(from);
    Vec3 q = end(two).minus(from);
    double low = Math.max(0, Math.min(p.dot(along), q.dot(along)));
    double high = Math.min(length, Math.max(p.dot(along), q.dot(along)));
    boolean onLine = p.cross(along).length() <= by && q.cross(along).length() <= by;
    return onLine && high - low > by && inward(one).dot(inward(two)) > 0;
  }

  private Vec3 inward(EdgeRef side) {
    return placed.get(side.panel()).normal().cross(end(side).minus(start(side)));
  }

  private Vec3 start(EdgeRef side) {
    return placed.get(side.panel()).outline().get(side.edge());
  }

  private Vec3 end(EdgeRef side) {
    List<Vec3> outline = placed.get(side.panel()).outline();
    return outline.get((side.edge() + 1) % outline.size());
  }

  private void number(Lying pair) {
    numberOf.put(pair, lying.size());
    like.add(lying.size());
    turned.add(false);
    torn.add(false);
    lying.add(pair);
  }

  private Root root(int number) {
    boolean flips = false;
    int n = number;
    while (like.get(n) != n) {
      flips ^= turned.get(n);
      n = like.get(n);
    }
    return new Root(n, flips);
  }

  private void unite(int one, int two, boolean flips) {
    Root a = root(one);
    Root b = root(two);
    boolean between = a.turned ^ b.turned ^ flips;
    if (a.number == b.number) {
      torn.set(a.number, torn.get(a.number) || between);
    } else {
      like.set(a.number, b.number);
      turned.set(a.number, between);
      torn.set(b.number, torn.get(a.number) || torn.get(b.number));
    }
  }
}
