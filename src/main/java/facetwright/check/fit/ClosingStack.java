package facetwright.check.fit;

import facetwright.check.finding.Mm;
import facetwright.check.finding.Subject;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Motion3;
import facetwright.geom.PartingSides;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.sheet.Laid;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Panels that lie on each other in one plane of the folded form, so many that the stack is thicker
 * than what tabs forgive, as where rim tabs all lap over one opening.
 *
 * <p>What it does not detect: stacks whose panels lie more than a caliper apart or aslant, since
 * scores fold without thickness.
 *
 * @param panels that lie on each other where it is thickest, in panel order
 * @param area of that place, in mm²; 0 where it is all of them at once
 * @param thickness of the card there, in mm
 */
public record ClosingStack(List<Integer> panels, double area, double thickness) {
  /** Areas that differ by no more, in mm², are alike: outlines are cut by one another. */
  private static final double LEAST_AREA = 1e-6;

  /** A panel, its tab and a bevel's end on top are usual everywhere. */
  private static final int LEAST_LAYERS = 4;

  /** A stack up to this thick, in mm, is taken up by the glue line; common practice, no source. */
  private static final double FORGIVEN = 1;

  /** Panels slanting less than 8° can lie on each other; a sliver on edge is none of them. */
  private static final double LEVEL = 0.99;

  /** Panels in one plane, as they lie in the first one's own. */
  private record Plane(
      Motion3 back, List<Integer> panels, List<Polygon2> outlines, List<Polygon> lying) {}

  public ClosingStack {
    panels = List.copyOf(panels);
  }

  /** The thickest in each plane of the form; none where the form is not solved. */
  public static List<ClosingStack> of(Laid laid, FoldedForm folded) {
    if (folded.closure() == Closure.NOT_SOLVED) {
      return List.of();
    }
    Subject subject = new Subject(laid, folded);
    List<ClosingStack> all = new ArrayList<>();
    for (Plane plane : planes(subject)) {
      double caliper =
          plane.panels().stream().mapToDouble(subject::caliper).max().orElse(subject.caliper());
      int least = Math.max(LEAST_LAYERS, (int) Math.floor(FORGIVEN / caliper) + 1);
      ClosingStack stack = thickest(plane, least);
      if (stack.panels().size() >= least) {
        double thick = stack.panels().stream().mapToDouble(subject::caliper).sum();
        all.add(new ClosingStack(stack.panels(), stack.area(), thick));
      }
    }
    return all;
  }

  private static List<Plane> planes(Subject subject) {
    List<Plane> planes = new ArrayList<>();
    for (int p = 0; p < subject.net().panels().size(); p++) {
      boolean placed = false;
      for (int i = 0; i < planes.size() && !placed; i++) {
        placed = lay(subject, p, planes.get(i));
      }
      if (!placed) {
        Plane own =
            new Plane(
                subject.folded().poses().get(p).inverse(),
                new ArrayList<>(),
                new ArrayList<>(),
                new ArrayList<>());
        lay(subject, p, own);
        planes.add(own);
      }
    }
    return planes;
  }

  /** Adds the panel to the plane if it lies in it. */
  private static boolean lay(Subject subject, int panel, Plane plane) {
    Motion3 move = subject.folded().poses().get(panel).then(plane.back());
    if (Math.abs(move.ez().z()) < LEVEL) {
      return false;
    }
    List<Polygon2> rings = new ArrayList<>();
    for (Polygon2 ring : rings(subject, panel)) {
      List<Vec2> corners = new ArrayList<>();
      for (Vec2 corner : ring.corners()) {
        Vec3 at = move.apply(corner);
        if (Math.abs(at.z()) > Mm.HAIR + subject.caliper(panel)) {
          return false;
        }
        corners.add(new Vec2(at.x(), at.y()));
      }
      rings.add(Polygon2.ofEitherSense(corners));
    }
    plane.panels().add(panel);
    plane.outlines().add(rings.getFirst());
    plane.lying().add(Planar.polygon(rings.getFirst(), rings.subList(1, rings.size())));
    return true;
  }

  private static List<Polygon2> rings(Subject subject, int panel) {
    List<Polygon2> rings = new ArrayList<>();
    rings.add(subject.panel(panel).outline());
    subject.panel(panel).openings().forEach(o -> rings.add(o.outline()));
    return rings;
  }

  /**
   * Where the most panels lie, so many at least; of equals the largest part.
   *
   * @return without panels where there are never so many
   */
  private static ClosingStack thickest(Plane plane, int least) {
    List<Integer> near = crowded(plane, least);
    ClosingStack best = new ClosingStack(List.of(), 0, 0);
    if (near.size() < least) {
      return best;
    }
    if (lieInOnePlace(plane, near)) {
      List<Integer> all = near.stream().map(i -> plane.panels().get(i)).toList();
      return new ClosingStack(all, 0, 0);
    }
    Geometry[] outlines =
        near.stream().map(i -> plane.lying().get(i).getBoundary()).toArray(Geometry[]::new);
    Polygonizer parts = new Polygonizer();
    parts.add(OverlayNGRobust.union(Planar.factory().createGeometryCollection(outlines)));
    for (Object face : parts.getPolygons()) {
      Polygon part = (Polygon) face;
      if (part.getArea() <= Glued.SHALLOW * part.getLength() / 2) {
        continue;
      }
      Point inside = part.getInteriorPoint();
      List<Integer> here =
          near.stream()
              .filter(i -> plane.lying().get(i).contains(inside))
              .map(i -> plane.panels().get(i))
              .toList();
      boolean more = here.size() > best.panels().size();
      boolean larger =
          here.size() == best.panels().size() && part.getArea() > best.area() + LEAST_AREA;
      if (more || larger) {
        best = new ClosingStack(here, part.getArea(), 0);
      }
    }
    return best;
  }

  /** A quick sign that all of them share more card than their openings could take away. */
  private static boolean lieInOnePlace(Plane plane, List<Integer> near) {
    Geometry common = Planar.polygon(plane.outlines().get(near.getFirst()));
    double open = 0;
    for (int i : near) {
      Polygon outline = Planar.polygon(plane.outlines().get(i));
      common = OverlayNGRobust.overlay(common, outline, OverlayNG.INTERSECTION);
      open += outline.getArea() - plane.lying().get(i).getArea();
    }
    return common.getArea() - open > Glued.SHALLOW * common.getLength() / 2;
  }

  /** Those that may share area with enough others to make a stack. */
  private static List<Integer> crowded(Plane plane, int least) {
    List<Polygon2> outlines = plane.outlines();
    List<Integer> crowded = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      Polygon2 own = outlines.get(i);
      if (outlines.stream().filter(other -> !PartingSides.isApart(own, other)).count() >= least) {
        crowded.add(i);
      }
    }
    return crowded;
  }
}
