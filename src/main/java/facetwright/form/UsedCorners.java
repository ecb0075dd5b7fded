package facetwright.form;

import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The corners that facets name, in their order, and the facets numbered anew by them. */
record UsedCorners(List<Vec3> corners, List<Facet> facets) {

  static UsedCorners of(List<Vec3> corners, List<Facet> facets) {
    boolean[] named = new boolean[corners.size()];
    facets.forEach(f -> f.corners().forEach(c -> named[c] = true));
    int[] number = new int[corners.size()];
    Arrays.fill(number, -1);
    List<Vec3> used = new ArrayList<>();
    for (int c = 0; c < named.length; c++) {
      if (named[c]) {
        number[c] = used.size();
        used.add(corners.get(c));
      }
    }
    return new UsedCorners(
        used,
        facets.stream()
            .map(f -> f.numbered(f.corners().stream().map(c -> number[c]).toList()))
            .toList());
  }
}
