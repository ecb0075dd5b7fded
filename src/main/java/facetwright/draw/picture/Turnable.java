package facetwright.draw.picture;

import facetwright.draw.Areas;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.net.Join;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A folded view as plain data, for a reader who turns and opens it: the panels flat, and where they
 * are at even parts of the way.
 *
 * @param panels in the order of the net
 * @param ways for each part of the way, first flat and last made, the pose of each panel
 */
public record Turnable(List<Face> panels, List<List<Motion3>> ways) {
  /** Parts of the way that are told; between them a straight line is near enough. */
  private static final int PARTS = 24;

  public Turnable {
    panels = List.copyOf(panels);
    ways = List.copyOf(ways);
  }

  /**
   * One panel.
   *
   * @param rings its outline, then its openings, in the plane of the net
   * @param layer the decorative paper on its outside, as rings; empty where it has none
   * @param under whether it ends up under another panel
   */
  public record Face(List<Polygon2> rings, List<Polygon2> layer, boolean under) {
    public Face {
      rings = List.copyOf(rings);
      layer = List.copyOf(layer);
    }
  }

  /** The net of a handout on its way from flat to made. */
  public static Turnable of(Net net, HandoutPictures pictures) {
    Set<Integer> under = new HashSet<>();
    for (Join join : net.joins()) {
      if (join instanceof Join.Lap lap) {
        under.add(lap.under());
      }
    }
    List<Face> faces = new ArrayList<>();
    for (int p = 0; p < net.panels().size(); p++) {
      List<Polygon2> layer = new ArrayList<>();
      for (Layer l : net.layers()) {
        if (l.panel() == p) {
          Areas.rings(Areas.layer(net, l)).forEach(layer::addAll);
        }
      }
      List<Polygon2> rings = new ArrayList<>(List.of(net.panels().get(p).outline()));
      net.panels().get(p).openings().forEach(o -> rings.add(o.outline()));
      boolean isTab = net.panels().get(p).role() == PanelRole.TAB;
      faces.add(new Face(rings, layer, isTab || under.contains(p)));
    }
    List<List<Motion3>> ways = new ArrayList<>();
    for (int i = 0; i <= PARTS; i++) {
      ways.add(pictures.poses((double) i / PARTS));
    }
    return new Turnable(faces, ways);
  }
}
