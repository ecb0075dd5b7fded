package facetwright.fold.making;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Motion3;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which face of a panel takes the glue, read off the made form. */
public final class Faces {
  /** Panels that lie on each other are no farther apart, in mm: some layers of thick card. */
  private static final double NEAR = 3;

  /** Panels whose normals part by less than some 8° lie flat on each other. */
  private static final double FLAT = 0.99;

  /** What shares less is not glued to each other, in mm². */
  private static final double AREA = 4;

  /** The radius of a disc of that area, in mm. */
  private static final double DISC = Math.sqrt(AREA / Math.PI);

  private Faces() {}

  /** A face of the card. */
  public enum Face {
    /** The outside, which faces up on the template. */
    OUTSIDE,
    /** The inside. */
    INSIDE,
    /** Neither: it is only folded in. */
    NONE
  }

  /**
   * Of each panel that is glued on another the face that takes the glue. A tab lies under a panel;
   * panels that lie on each other the same way up do so, too; those that face each other are glued
   * inside to inside. A flap that closes an opening is glued by its inside on those folded in
   * before it; the first lies on nothing.
   */
  static Map<Integer, Face> of(Net net, FoldedForm form, List<Gluing.Stage> stages) {
    Map<Integer, Face> faces = new TreeMap<>();
    List<Integer> folded = new ArrayList<>();
    for (Bond bond : Gluing.numbered(stages)) {
      switch (bond) {
        case Bond.Closing(int tab) -> {
          boolean lies =
              folded.stream().anyMatch(p -> liesOn(net, form, tab, p)) || lies(net, form, tab);
          faces.put(tab, lies ? Face.INSIDE : Face.NONE);
          folded.add(tab);
        }
        case Bond.Joined(int j) when net.joins().get(j).hold().isGlued() -> {
          switch (net.joins().get(j)) {
            case Join.Seam s when s.tab() == Join.Seam.NO_TAB -> {}
            case Join.Seam s -> faces.put(s.tab(), Face.OUTSIDE);
            case Join.Lap l -> faces.put(l.under(), isFacing(form, l) ? Face.INSIDE : Face.OUTSIDE);
          }
        }
        case Bond.Joined _ -> {}
      }
    }
    return faces;
  }

  /** Whether the insides of two panels face each other. */
  public static boolean isFacing(FoldedForm form, Join.Lap lap) {
    return normal(form, lap.under()).dot(normal(form, lap.over())) < 0;
  }

  private static Vec3 normal(FoldedForm form, int panel) {
    return form.poses().get(panel).ez();
  }

  /** Whether a tab that no join names lies on a panel that is no tab. */
  private static boolean lies(Net net, FoldedForm form, int tab) {
    for (int p = 0; p < net.panels().size(); p++) {
      if (net.panels().get(p).role() != PanelRole.TAB && liesOn(net, form, tab, p)) {
        return true;
      }
    }
    return false;
  }

  private static boolean liesOn(Net net, FoldedForm form, int one, int other) {
    Motion3 pose = form.poses().get(one);
    if (Math.abs(pose.ez().dot(normal(form, other))) < FLAT) {
      return false;
    }
    List<Vec3> corners = form.corners(net, other).stream().map(pose.inverse()::apply).toList();
    if (corners.stream().anyMatch(c -> Math.abs(c.z()) > NEAR)) {
      return false;
    }
    List<Vec2> flat = new ArrayList<>(corners.stream().map(c -> new Vec2(c.x(), c.y())).toList());
    if (pose.ez().dot(normal(form, other)) < 0) {
      flat = flat.reversed();
    }
    Polygon2 own = net.panels().get(one).outline();
    Polygon2 under = new Polygon2(flat);
    return shareDisc(own, under) || Planar.sharedArea(own, under) > AREA;
  }

  /** Whether a disc of that area about a middle lies in both: most that share it do. */
  private static boolean shareDisc(Polygon2 a, Polygon2 b) {
    Vec2 one = a.centroid();
    Vec2 other = b.centroid();
    return Stream.of(one.toward(other, 0.5), one, other)
        .anyMatch(p -> holdsDisc(a, p) && holdsDisc(b, p));
  }

  private static boolean holdsDisc(Polygon2 outline, Vec2 middle) {
    return outline.contains(middle)
        && IntStream.range(0, outline.size())
            .allMatch(i -> outline.side(i).distance(middle) > DISC);
  }
}
