package facetwright.fold.making;

import facetwright.fold.pose.FoldedForm;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What of a body stands open when some of it is glued.
 *
 * @param tabs and flaps that are not in place
 * @param clusters what holds together in itself; the first has the most card
 */
record Ajar(Set<Integer> tabs, List<Set<Integer>> clusters) {
  /**
   * @param own all that is glued of the body
   * @param done what is glued by now
   */
  static Ajar of(Net net, FoldedForm form, List<Integer> body, List<Bond> own, List<Bond> done) {
    Set<Integer> tabs = tabs(net, body, own, done);
    return new Ajar(tabs, clusters(net, form, body, own, done, tabs));
  }

  /** Whether two panels hold together. */
  boolean isWithin(int one, int other) {
    return clusters.stream().anyMatch(c -> c.contains(one) && c.contains(other));
  }

  /** What holds fast in itself; the first with the most card. */
  private static List<Set<Integer>> clusters(
      Net net,
      FoldedForm form,
      List<Integer> body,
      List<Bond> own,
      List<Bond> done,
      Set<Integer> tabs) {
    List<Set<Integer>> clusters = new ArrayList<>();
    List<Integer> rest = body.stream().filter(p -> !tabs.contains(p)).toList();
    while (!rest.isEmpty()) {
      Set<Integer> held = new HashSet<>(new Held(net, form, rest, own).after(done));
      held.retainAll(rest);
      if (held.size() <= 1 && !clusters.isEmpty()) {
        return clusters;
      }
      clusters.add(held);
      if (held.isEmpty()) {
        return clusters;
      }
      rest = rest.stream().filter(p -> !held.contains(p)).toList();
    }
    return clusters;
  }

  /** Tabs, and what is to lie on another by itself, that are not in place. */
  static Set<Integer> tabs(Net net, List<Integer> body, List<Bond> own, List<Bond> done) {
    Set<Integer> tabs = new HashSet<>();
    body.stream().filter(p -> isTab(net, p)).forEach(tabs::add);
    for (Bond bond : own) {
      int lying = Midway.lying(net, bond);
      boolean isLap = bond instanceof Bond.Joined(int j) && net.joins().get(j) instanceof Join.Lap;
      if (done.contains(bond)) {
        tabs.remove(lying);
      } else if (isLap && scores(net, lying) == 1) {
        tabs.add(lying);
      }
    }
    return tabs;
  }

  /** Whether a panel is a tab that hangs on one score. */
  static boolean isTab(Net net, int panel) {
    return net.panels().get(panel).role() == PanelRole.TAB && scores(net, panel) == 1;
  }

  private static long scores(Net net, int panel) {
    return net.scores().stream().filter(s -> s.isOf(panel)).count();
  }
}
