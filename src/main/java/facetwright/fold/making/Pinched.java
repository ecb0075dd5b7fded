package facetwright.fold.making;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Gussets, and what closes over them: they are pushed in just before it is glued. */
public final class Pinched {
  private Pinched() {}

  /** For each gusset the nearest bond that closes over it, where there is one. */
  static Map<Integer, Bond> over(Net net, FoldedForm form, List<Integer> panels, List<Bond> bonds) {
    List<Bond> closing =
        bonds.stream()
            .filter(
                b ->
                    switch (b) {
                      case Bond.Closing _ -> true;
                      case Bond.Joined(int j) -> net.joins().get(j) instanceof Join.Lap;
                    })
            .toList();
    Map<Integer, Bond> over = new LinkedHashMap<>();
    for (int p : panels) {
      if (net.panels().get(p).role() == PanelRole.GUSSET) {
        Vec3 middle = middle(net, form, p);
        closing.stream()
            .min(
                Comparator.comparingDouble(
                    b -> middle(net, form, Gluing.panel(net, b)).distance(middle)))
            .ifPresent(b -> over.put(p, b));
      }
    }
    return over;
  }

  /**
   * The gussets pushed in before a stage: those that it or what closes the same opening holds.
   *
   * @param pushed those that are in already
   */
  public static Set<Integer> before(
      Net net, FoldedForm form, List<Gluing.Stage> stages, int stage, Set<Integer> pushed) {
    Bond now = stages.get(stage).bonds().getFirst();
    List<Integer> body = body(net, Gluing.panel(net, now));
    List<Bond> bonds =
        Gluing.numbered(stages).stream().filter(b -> body.contains(Gluing.panel(net, b))).toList();
    Map<Integer, Bond> over = over(net, form, body, bonds);
    return over.keySet().stream()
        .filter(g -> !pushed.contains(g) && isMouth(net, form, over.get(g), now))
        .collect(Collectors.toSet());
  }

  /** The body that a panel belongs to. */
  public static List<Integer> body(Net net, int panel) {
    return Bodies.of(net).stream().filter(b -> b.contains(panel)).findFirst().orElseThrow();
  }

  /** Whether two bonds close the same opening: they are of one kind, at about one height. */
  private static boolean isMouth(Net net, FoldedForm form, Bond one, Bond other) {
    if (one.equals(other)) {
      return true;
    }
    int p = Gluing.panel(net, one);
    int q = Gluing.panel(net, other);
    double off = middle(net, form, p).z() - middle(net, form, q).z();
    double size = net.panels().get(p).outline().box().height();
    return one instanceof Bond.Closing && other instanceof Bond.Closing && Math.abs(off) < size / 2;
  }

  static Vec3 middle(Net net, FoldedForm form, int panel) {
    return form.poses().get(panel).apply(net.panels().get(panel).outline().centroid());
  }
}
