package facetwright.papers.layers;

import facetwright.geom.LengthTolerance;
import facetwright.papers.cutting.CutPlan;
import facetwright.papers.cutting.Effort;
import facetwright.papers.cutting.Paper;
import facetwright.papers.cutting.Planner;
import facetwright.papers.cutting.Wanted;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Plans how layers are cut: rectangles exactly, triangles from strips where the paper's pattern has
 * no direction, all other shapes from the rectangle round them.
 */
public final class LayerCuts {
  private LayerCuts() {}

  /**
   * One plan a paper.
   *
   * @param pieces of the design, 1 or more
   * @param papers all that the layers name
   * @throws IllegalArgumentException when a layer is larger than every sheet of its paper, or a
   *     paper is missing
   */
  public static List<LayerPlan> plan(Layers layers, int pieces, List<LayerPaper> papers) {
    List<LayerPlan> plans = new ArrayList<>();
    for (String name : layers.papers()) {
      LayerPaper paper =
          papers.stream()
              .filter(p -> p.name().equals(name))
              .findFirst()
              .orElseThrow(
                  () ->
                      new IllegalArgumentException("no sheet size for the paper \"" + name + "\""));
      List<LayerGroup> groups =
          layers.groups().stream().filter(g -> g.paper().equals(name)).toList();
      plans.add(plan(paper, groups, pieces));
    }
    return List.copyOf(plans);
  }

  private static LayerPlan plan(LayerPaper paper, List<LayerGroup> groups, int pieces) {
    List<Wanted> wanted = new ArrayList<>();
    List<LayerPlan.NamedStrip> strips = new ArrayList<>();
    for (LayerGroup group : groups) {
      int count = group.count() * pieces;
      Optional<Strip> full =
          group.kind() == LayerGroup.Kind.TRIANGLE && !paper.directed()
              ? best(group, paper)
              : Optional.empty();
      if (full.isPresent()) {
        for (LayerPlan.NamedStrip strip : strips(group, full.get(), count)) {
          strips.add(strip);
          double length = strip.strip().length();
          wanted.add(Wanted.of(strip.name(), length, strip.strip().height(), strip.count(), true));
        }
      } else {
        wanted.add(
            Wanted.of(group.letter(), group.width(), group.height(), count, !paper.directed()));
      }
    }
    CutPlan plan = Planner.plan(paper.sizes(), wanted, 0, Effort.USUAL);
    return new LayerPlan(paper, pieces, groups, strips, plan);
  }

  /** The strip of which the largest sheet gives most triangles; none where it holds no strip. */
  private static Optional<Strip> best(LayerGroup group, LayerPaper paper) {
    Paper sheet = paper.sizes().stream().max(Comparator.comparingDouble(Paper::area)).orElseThrow();
    Strip best = null;
    long most = 0;
    for (int side = 0; side < 3; side++) {
      Optional<Strip> one = Strip.of(group.shape().outline(), side, 1);
      if (one.isEmpty()) {
        continue;
      }
      for (boolean across : new boolean[] {true, false}) {
        Strip strip = one.get().filling(across ? sheet.width() : sheet.height());
        double room = across ? sheet.height() : sheet.width();
        long triangles =
            strip.triangles()
                * (long) Math.floor((room + LengthTolerance.FINE.mm()) / strip.height());
        if (triangles > most || (triangles == most && best != null && strip.base() > best.base())) {
          most = triangles;
          best = strip;
        }
      }
    }
    return Optional.ofNullable(most == 0 ? null : best);
  }

  private static List<LayerPlan.NamedStrip> strips(LayerGroup group, Strip full, int count) {
    List<LayerPlan.NamedStrip> strips = new ArrayList<>();
    int whole = count / full.triangles();
    int rest = count % full.triangles();
    if (whole > 0) {
      strips.add(named(group, full, whole));
    }
    if (rest > 0) {
      strips.add(named(group, full.with(rest), 1));
    }
    return strips;
  }

  private static LayerPlan.NamedStrip named(LayerGroup group, Strip strip, int count) {
    return new LayerPlan.NamedStrip(
        "strip of " + strip.triangles() + " " + group.letter(), group, strip, count);
  }
}
