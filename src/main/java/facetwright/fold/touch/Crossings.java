package facetwright.fold.touch;

import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What asks something of the order of layers: bends along a line where other card is, too.
 *
 * <p>Looked at along such a line, a bend is two rays, and so is another bend on the same line, or a
 * panel that runs on across it. The one sheet crosses the other where, going round, a ray of the
 * one is followed by one of the other, then again by one of the one. Rays that lie on each other
 * may be in either order, and each exchange of two makes a crossing of what was none, or the other
 * way round: so that no crossing there asks that of the orders of those rays an even number, or an
 * odd one, be such or such. What J. Justin asks of flat folds (1997, after R. Lang, Origami Design
 * Secrets: from memory) are the cases of this with all rays in one plane; that a tube runs round
 * but once, and that a tab ends before what stands at the edge of the panel over it, are others.
 */
final class Crossings {
  private final List<PosedPanel> placed;
  private final Set<Long> lying;
  private final Map<Long, Boolean> sharing = new HashMap<>();
  private final List<Crossing> all = new ArrayList<>();
  private final List<Collision> plain = new ArrayList<>();

  /** Card on one side of a line: which panel, and which way it goes from there, length 1. */
  private record Ray(int panel, Vec3 way) {}

  /** Card through a line to both sides. */
  private record Sheet(Ray one, Ray two) {}

  private Crossings(List<PosedPanel> placed, Set<Long> lying) {
    this.placed = placed;
    this.lying = lying;
  }

  /**
   * All that is asked of a form.
   *
   * @param near pairs of panels that touch
   */
  static Crossings of(Net net, List<PosedPanel> placed, List<BoxTree.Pair> near, double by) {
    Set<Long> lying = new HashSet<>();
    List<List<Integer>> beside = new ArrayList<>();
    placed.forEach(_ -> beside.add(new ArrayList<>()));
    for (BoxTree.Pair pair : near) {
      beside.get(pair.a()).add(pair.b());
      beside.get(pair.b()).add(pair.a());
      if (placed.get(pair.a()).liesOn(placed.get(pair.b()), by)) {
        lying.add(key(pair.a(), pair.b()));
      }
    }
    Crossings crossings = new Crossings(placed, lying);
    crossings.look(Bend.all(net, placed), beside, by);
    return crossings;
  }

  static long key(int a, int b) {
    return ((long) Math.min(a, b) << 32) | Math.max(a, b);
  }

  private void look(List<Bend> bends, List<List<Integer>> beside, double by) {
    List<List<Integer>> bendsOf = new ArrayList<>();
    placed.forEach(_ -> bendsOf.add(new ArrayList<>()));
    for (int i = 0; i < bends.size(); i++) {
      bendsOf.get(bends.get(i).a()).add(i);
      bendsOf.get(bends.get(i).b()).add(i);
    }
    int[] seen = new int[bends.size()];
    int[] met = new int[placed.size()];
    for (int i = 0; i < bends.size(); i++) {
      Bend bend = bends.get(i);
      for (int side : new int[] {bend.a(), bend.b()}) {
        for (int c : beside.get(side)) {
          if (bend.isOf(c) || met[c] == i + 1) {
            continue;
          }
          met[c] = i + 1;
          across(bend, c, by);
          for (int j : bendsOf.get(c)) {
            if (j > i && seen[j] != i + 1) {
              seen[j] = i + 1;
              along(bend, bends.get(j));
            }
          }
        }
      }
    }
  }

  /** A panel that runs on across a bend. */
  private void across(Bend bend, int c, double by) {
    PosedPanel panel = placed.get(c);
    if (Math.abs(panel.above(bend.from())) > by || Math.abs(panel.above(bend.to())) > by) {
      return;
    }
    Vec3 way = panel.normal().cross(bend.along()).unit();
    double left = panel.reach(bend.from(), way);
    double right = panel.reach(bend.from(), way.times(-1));
    if (left <= Collision.HELD || right <= Collision.HELD) {
      return;
    }
    new Patch(bend.from(), bend.along(), way)
        .across(bend.length(), panel, Collision.HELD)
        .ifPresent(
            x -> {
              Ray on = new Ray(c, way);
              Ray back = new Ray(c, way.times(-1));
              Sheet one = sheet(bend);
              // What it has too much is what reaches beyond the panel it lies on.
              boolean isOn = isOn(one.one, on) || isOn(one.two, on);
              boolean isBackOn = isOn(one.one, back) || isOn(one.two, back);
              double depth =
                  isOn == isBackOn ? Math.min(x.left(), x.right()) : isOn ? x.right() : x.left();
              ask(
                  bend,
                  one,
                  new Sheet(on, back),
                  Collision.through(c, bend.a(), bend.b(), depth, x.length(), x.middle()));
            });
  }

  /** Two bends that run along one line for a stretch. */
  private void along(Bend one, Bend two) {
    if (one.isOf(two.a()) || one.isOf(two.b()) || !runsAlong(one, two)) {
      return;
    }
    Sheet other = sheet(two);
    Sheet first = sheet(one);
    Vec3 middle = one.from().toward(one.to(), 0.5);
    int c = isOn(first.one, other.one) || isOn(first.two, other.one) ? two.a() : two.b();
    int a = isLying(one.a(), c) ? one.a() : one.b();
    ask(
        one,
        first,
        other,
        isLying(one.a(), one.b()) && isLying(two.a(), two.b())
            ? Collision.through(c, one.a(), one.b(), 0, 0, middle)
            : Collision.round(a, c, middle));
  }

  private static boolean runsAlong(Bend one, Bend two) {
    Vec3 p = two.from().minus(one.from());
    Vec3 q = two.to().minus(one.from());
    Vec3 along = one.along();
    double low = Math.max(0, Math.min(p.dot(along), q.dot(along)));
    double high = Math.min(one.length(), Math.max(p.dot(along), q.dot(along)));
    return high - low > Collision.HELD
        && p.cross(along).length() <= Collision.HELD
        && q.cross(along).length() <= Collision.HELD;
  }

  private Sheet sheet(Bend bend) {
    Vec3 along = bend.along();
    return new Sheet(
        new Ray(bend.a(), placed.get(bend.a()).normal().cross(along).unit()),
        new Ray(bend.b(), along.cross(placed.get(bend.b()).normal()).unit()));
  }

  /** Whether two rays lie on each other. */
  private boolean isOn(Ray ray, Ray other) {
    return isLying(ray.panel, other.panel) && ray.way.dot(other.way) > 0;
  }

  private boolean isLying(int a, int b) {
    return lying.contains(key(a, b));
  }

  /** Whether the panels of a score lie in one plane. */
  boolean isLying(Score score) {
    return isLying(score.a().panel(), score.b().panel());
  }

  /** Whether two panels lie in one plane and share a place. */
  boolean lieTogether(int a, int b) {
    return isLying(a, b) && share(a, b);
  }

  /** Keeps what is asked where a bend and another sheet come together. */
  @SuppressWarnings("ReferenceEquality") // One thing is no other, however alike.
  private void ask(Bend bend, Sheet one, Sheet two, Collision otherwise) {
    Vec3 along = bend.along();
    Vec3 x = one.one.way;
    Vec3 y = along.cross(x);
    double end = isOn(one.one, one.two) ? 0 : turn(one.two.way, x, y);
    List<Crossing.Pair> pairs = new ArrayList<>();
    boolean even = true;
    for (Ray other : List.of(two.one, two.two)) {
      boolean isIn = false;
      boolean isOn = false;
      for (Ray ray : List.of(one.one, one.two)) {
        boolean lies = isOn(ray, other);
        if (lies ? !share(ray.panel, other.panel) : !isApart(ray, other, bend.from())) {
          return;
        }
        if (lies) {
          pairs.add(new Crossing.Pair(ray.panel, other.panel));
          // Further round is over where going round leads up.
          even ^= along.cross(ray.way).dot(PosedPanel.ASIDE) > 0;
          isIn = !isOn && ray == one.one && end > 0;
          isOn = true;
        }
      }
      if (!isOn) {
        isIn = turn(other.way, x, y) < end;
      }
      even ^= isIn;
    }
    if (!pairs.isEmpty()) {
      all.add(new Crossing(pairs, even, otherwise));
    } else if (!even) {
      plain.add(otherwise);
    }
  }

  /** Whether two rays come apart by more than a steady hand makes up. */
  private boolean isApart(Ray one, Ray two, Vec3 from) {
    double reach =
        Math.min(
            placed.get(one.panel).reach(from, one.way), placed.get(two.panel).reach(from, two.way));
    return one.way.distance(two.way) * reach > Collision.HELD;
  }

  /** How far round from x a way is, in radians, from 0 to 2π. */
  private static double turn(Vec3 way, Vec3 x, Vec3 y) {
    double angle = Math.atan2(way.dot(y), way.dot(x));
    return angle < 0 ? angle + 2 * Math.PI : angle;
  }

  private boolean share(int a, int b) {
    return sharing.computeIfAbsent(
        key(a, b),
        _ -> Patch.of(placed.get(a)).share(List.of(placed.get(a), placed.get(b)), Collision.HELD));
  }

  /** What is wrong whatever the layers. */
  List<Collision> plain() {
    return plain;
  }

  /** What is asked of the layers. */
  List<Crossing> all() {
    return all;
  }
}
