package facetwright.papers.guide;

import facetwright.papers.layers.LayerPaper;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.layers.Strip;
import java.util.ArrayList;
import java.util.List;

/**
 * A strip with ticks on both edges, as long as the paper strip it marks or one stretch of it.
 *
 * @param letter of the layers that it marks
 * @param paper what they are cut from
 * @param base from tick to tick on each edge, in mm
 * @param lead of the first tick on the one edge before the first on the other, in mm
 * @param length of the strip, in mm
 * @param height of the strip, in mm
 * @param below distances of the ticks on the lower edge from the left end, in mm
 * @param above distances of the ticks on the upper edge from the left end, in mm
 * @param triangles how many it gives
 * @param waste left over at its two ends, in mm²
 */
public record TickStrip(
    String letter,
    LayerPaper paper,
    double base,
    double lead,
    double length,
    double height,
    List<Double> below,
    List<Double> above,
    int triangles,
    double waste) {

  public TickStrip {
    below = List.copyOf(below);
    above = List.copyOf(above);
  }

  /** One for each group of triangles cut from strips: that of its longest strip. */
  public static List<TickStrip> of(LayerPlan plan) {
    List<TickStrip> all = new ArrayList<>();
    String last = "";
    for (LayerPlan.NamedStrip named : plan.strips()) {
      if (!named.group().letter().equals(last)) {
        last = named.group().letter();
        Strip s = named.strip();
        all.add(
            new TickStrip(
                last,
                plan.paper(),
                s.base(),
                s.lead(),
                s.length(),
                s.height(),
                s.below(),
                s.above(),
                s.triangles(),
                s.waste()));
      }
    }
    return List.copyOf(all);
  }
}
