package facetwright.net;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.PartingSides;
import facetwright.geom.Planar;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Polygon;

/**
 * Finds panels that lie over each other in the flat net. A panel that lies in another's window does
 * not overlap it. It does not see cuts that cross a panel, and panels that only touch.
 */
public final class Overlaps {
  private Overlaps() {}

  /**
   * Overlaps deeper than the fine length tolerance along the smaller panel's outline: neighbours
   * along a score may stand that far apart or over each other, whatever their size.
   */
  public static List<Overlap> find(Net net) {
    return find(net, LengthTolerance.FINE);
  }

  /**
   * @param depth how deep two panels may reach over each other along the whole outline of the
   *     smaller one before they count
   */
  public static List<Overlap> find(Net net, LengthTolerance depth) {
    List<Panel> panels = net.panels();
    List<Box2> boxes = panels.stream().map(p -> p.outline().box()).toList();
    List<Integer> byLeft =
        IntStream.range(0, panels.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> boxes.get(i).minX()))
            .toList();
    List<Overlap> found = new ArrayList<>();
    for (int i = 0; i < byLeft.size(); i++) {
      int one = byLeft.get(i);
      for (int j = i + 1; j < byLeft.size(); j++) {
        int two = byLeft.get(j);
        if (boxes.get(two).minX() >= boxes.get(one).maxX() - depth.mm()) {
          break;
        }
        if (boxes.get(one).grown(-depth.mm()).meets(boxes.get(two))) {
          add(found, panels, Math.min(one, two), Math.max(one, two), depth);
        }
      }
    }
    found.sort(Comparator.comparingInt(Overlap::a).thenComparingInt(Overlap::b));
    return List.copyOf(found);
  }

  private static void add(
      List<Overlap> found, List<Panel> panels, int a, int b, LengthTolerance depth) {
    if (PartingSides.isApart(panels.get(a).outline(), panels.get(b).outline())) {
      return;
    }
    Polygon one = panels.get(a).region();
    Polygon two = panels.get(b).region();
    double area = Planar.sharedArea(one, two);
    double most = depth.mm() * 2 * Math.min(one.getLength(), two.getLength());
    if (area > most) {
      found.add(new Overlap(a, b, area));
    }
  }
}
