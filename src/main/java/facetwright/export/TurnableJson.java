package facetwright.export;

import facetwright.draw.picture.Turnable;
import facetwright.geom.Motion3;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec3;
import facetwright.words.Decimals;
import java.util.List;
import java.util.stream.Collectors;

/** A turnable view as a script reads it: numbers only. */
final class TurnableJson {
  private TurnableJson() {}

  static String of(Turnable view) {
    return "{\"panels\":"
        + array(
            view.panels().stream()
                .map(
                    f ->
                        "{\"rings\":"
                            + rings(f.rings())
                            + ",\"layer\":"
                            + rings(f.layer())
                            + ",\"under\":"
                            + f.under()
                            + "}")
                .toList())
        + ",\n\"ways\":"
        + array(
            view.ways().stream()
                .map(way -> array(way.stream().map(TurnableJson::pose).toList()))
                .toList())
        + "}";
  }

  private static String rings(List<Polygon2> rings) {
    return array(
        rings.stream()
            .map(
                r ->
                    array(
                        r.corners().stream()
                            .map(c -> "[" + number(c.x(), 3) + "," + number(c.y(), 3) + "]")
                            .toList()))
            .toList());
  }

  private static String pose(Motion3 m) {
    return array(List.of(vector(m.ex(), 5), vector(m.ey(), 5), vector(m.origin(), 3)));
  }

  private static String vector(Vec3 v, int places) {
    return "["
        + number(v.x(), places)
        + ","
        + number(v.y(), places)
        + ","
        + number(v.z(), places)
        + "]";
  }

  private static String number(double value, int places) {
    return Decimals.places(value, places);
  }

  private static String array(List<String> items) {
    return items.stream().collect(Collectors.joining(",", "[", "]"));
  }
}
