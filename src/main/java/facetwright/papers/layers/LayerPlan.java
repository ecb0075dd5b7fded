package facetwright.papers.layers;

import facetwright.language.Telling;
import facetwright.papers.cutting.CutPlan;
import java.util.List;

/**
 * How the layers of one paper are cut for so many pieces of a design.
 *
 * @param paper the paper
 * @param pieces of the design
 * @param groups the layers cut from it
 * @param strips for each group of triangles how its strips are cut; each kind of strip is one of
 *     the wanted rectangles of the plan, under its name
 * @param plan the trimmer's cuts
 */
public record LayerPlan(
    LayerPaper paper, int pieces, List<LayerGroup> groups, List<NamedStrip> strips, CutPlan plan) {
  /** A strip under the name that the plan gives it. */
  public record NamedStrip(String name, LayerGroup group, Strip strip, int count) {}

  public LayerPlan {
    groups = List.copyOf(groups);
    strips = List.copyOf(strips);
  }

  /** What a piece of the trimmer's plan is called; strips have names of their own. */
  public String called(String name, Telling tell) {
    return strips.stream()
        .filter(s -> s.name().equals(name))
        .findFirst()
        .map(
            s ->
                tell.say(
                    "cuts.strip", "count", s.strip().triangles(), "letter", s.group().letter()))
        .orElse(name);
  }

  /** Area of the paper that no layer uses, in mm², with what falls away beside slanted sides. */
  public double waste() {
    return plan.paperArea()
        - pieces * groups.stream().mapToDouble(g -> g.count() * g.shape().area()).sum();
  }
}
