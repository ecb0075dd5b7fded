package facetwright.script;

import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Panel;
import facetwright.script.design.Design;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which walls of a part bear a tab, read from its joins. */
final class Walls {
  private Walls() {}

  private static Set<Integer> hosts(Design design, String part) {
    return design.net().joins().stream()
        .filter(Join.Seam.class::isInstance)
        .map(Join.Seam.class::cast)
        .filter(s -> s.tab() != Join.Seam.NO_TAB)
        .map(s -> s.b().panel())
        .filter(p -> panel(design, p).name().startsWith(part))
        .collect(Collectors.toSet());
  }

  private static Panel panel(Design design, int index) {
    return design.net().panels().get(index);
  }

  /** How many walls that are so wide bear one. */
  static int lined(Design design, String part, double width) {
    return (int)
        hosts(design, part).stream()
            .filter(
                p -> {
                  var outline = panel(design, p).outline();
                  return IntStream.range(0, outline.size())
                      .anyMatch(i -> Math.abs(outline.side(i).length() - width) < 1e-6);
                })
            .count();
  }

  /**
   * The least room at a wall of a part with equal sides and equal corners, moved to where that is
   * most: of walls with a tab a caliper less. Its floor is the first panel; the search is by steps
   * that shrink to a hundred thousandth of a caliper.
   */
  static double room(Design design, String part, double room, double caliper) {
    Set<Integer> lined = hosts(design, part);
    List<Integer> body =
        IntStream.range(0, design.net().panels().size())
            .filter(p -> panel(design, p).name().startsWith(part + " side"))
            .boxed()
            .toList();
    Vec3 one = out(design, body.getFirst());
    Vec3 up = one.cross(out(design, body.get(1))).unit();
    Vec3 two = up.cross(one);
    double x = 0;
    double y = 0;
    double best = -Double.MAX_VALUE;
    for (double step = caliper; step > 1e-5 * caliper; ) {
      boolean isBetter = false;
      for (int d = 0; d < 24; d++) {
        double nx = x + step * Math.cos(d * Math.PI / 12);
        double ny = y + step * Math.sin(d * Math.PI / 12);
        double least = Double.MAX_VALUE;
        for (int p : body) {
          Vec3 out = out(design, p);
          double off = room - (lined.contains(p) ? caliper : 0);
          least = Math.min(least, off - nx * out.dot(one) - ny * out.dot(two));
        }
        if (least > best) {
          best = least;
          x = nx;
          y = ny;
          isBetter = true;
        }
      }
      step = isBetter ? step : step / 2;
    }
    return best;
  }

  private static Vec3 out(Design design, int panel) {
    return design.folded().poses().get(panel).ez();
  }
}
