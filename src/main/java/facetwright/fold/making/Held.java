package facetwright.fold.making;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which panels of a body hold fast when some of it is glued. A panel still swings aside where it
 * hangs on the rest by one straight line of scores, or by nothing; a gusset does until what closes
 * over it is glued.
 */
final class Held {
  private final Net net;
  private final FoldedForm form;
  private final List<Integer> panels;
  private final List<List<Score>> lines;
  private final Map<Integer, Bond> over;

  /**
   * @param bonds all that is glued of the body
   */
  Held(Net net, FoldedForm form, List<Integer> panels, List<Bond> bonds) {
    this.net = net;
    this.form = form;
    this.panels = panels;
    this.lines = lines();
    this.over = Pinched.over(net, form, panels, bonds);
  }

  /** The panels that hold fast. */
  Set<Integer> after(List<Bond> done) {
    Set<Integer> swing = new HashSet<>();
    over.forEach(
        (gusset, bond) -> {
          if (!done.contains(bond)) {
            swing.add(gusset);
          }
        });
    // What hangs on a gusset that still swings is not held by it.
    Set<Integer> loose = Set.copyOf(swing);
    addLoose(swing, together(done, List.of(), loose));
    lines.forEach(line -> addLoose(swing, together(done, line, loose)));
    done.stream()
        .filter(Bond.Closing.class::isInstance)
        .forEach(b -> swing.remove(((Bond.Closing) b).tab()));
    Set<Integer> held = new HashSet<>(panels);
    held.removeAll(swing);
    return held;
  }

  /** All but what hangs together with the most card. */
  private void addLoose(Set<Integer> swing, int[] root) {
    int core = largest(root);
    panels.stream().filter(p -> Bodies.find(root, p) != core).forEach(swing::add);
  }

  /** What hangs together without some scores, and without what some panels hold. */
  private int[] together(List<Bond> done, List<Score> without, Set<Integer> loose) {
    int[] root = IntStream.range(0, net.panels().size()).toArray();
    for (Score s : net.scores()) {
      boolean isHeld = !loose.contains(s.a().panel()) && !loose.contains(s.b().panel());
      if (isHeld && !without.contains(s)) {
        Bodies.unite(root, s.a().panel(), s.b().panel());
      }
    }
    for (Bond bond : done) {
      if (bond instanceof Bond.Joined(int join)) {
        Bodies.unite(root, net.joins().get(join).from(), net.joins().get(join).onto());
      }
    }
    return root;
  }

  /** What has the most card. */
  private int largest(int[] root) {
    Map<Integer, Double> area = new LinkedHashMap<>();
    for (int p : panels) {
      area.merge(Bodies.find(root, p), net.panels().get(p).outline().area(), Double::sum);
    }
    return area.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElseThrow();
  }

  /** Scores by the straight line that they lie on in the made form. */
  private List<List<Score>> lines() {
    List<List<Score>> all = new ArrayList<>();
    for (Score s : net.scores()) {
      if (!panels.contains(s.a().panel())) {
        continue;
      }
      all.stream()
          .filter(line -> isInLine(line.getFirst(), s))
          .findFirst()
          .ifPresentOrElse(line -> line.add(s), () -> all.add(new ArrayList<>(List.of(s))));
    }
    return all;
  }

  private boolean isInLine(Score one, Score other) {
    List<Vec3> a = ends(one.a());
    Vec3 along = a.getLast().minus(a.getFirst());
    if (along.length() < LengthTolerance.UNSEEN.mm()) {
      return false;
    }
    return ends(other.a()).stream()
        .allMatch(
            p ->
                p.minus(a.getFirst()).cross(along).length()
                    < LengthTolerance.UNSEEN.mm() * along.length());
  }

  private List<Vec3> ends(EdgeRef side) {
    Segment2 line = net.segment(side);
    return List.of(at(side.panel(), line.from()), at(side.panel(), line.to()));
  }

  private Vec3 at(int panel, Vec2 place) {
    return form.poses().get(panel).apply(place);
  }
}
