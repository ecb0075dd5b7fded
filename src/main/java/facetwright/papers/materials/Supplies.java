package facetwright.papers.materials;

import facetwright.measure.Length;
import facetwright.measure.Millilitres;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What goes in and on, as it is bought: things that are alike together. */
final class Supplies {
  private Supplies() {}

  private record Kind(String key, String what, Need.Unit unit) {}

  /**
   * @param unit sizes are told in it
   * @param pieces how many are made of the design
   */
  static List<Need> of(Net net, Unit unit, int pieces) {
    Map<Kind, Double> sums = new LinkedHashMap<>();
    for (Fitting fitting : net.fittings().all()) {
      switch (fitting.thing()) {
        case Extra.Ribbon r ->
            sums.merge(
                new Kind("ribbon", "ribbon, " + text(r.width(), unit) + " wide", Need.Unit.METRES),
                r.length() / 1000,
                Double::sum);
        case Extra.Light l ->
            sums.merge(
                new Kind(
                    "light",
                    l.kind()
                        + ", up to "
                        + text(l.across(), unit)
                        + " across and "
                        + text(l.height(), unit)
                        + " tall",
                    Need.Unit.PIECES),
                1.0,
                Double::sum);
        case Extra.Filling f -> filling(f, sums);
        case Extra.Note _ -> {}
      }
    }
    List<Need> needs = new ArrayList<>();
    sums.forEach((kind, sum) -> needs.add(new Need(kind.key, kind.what, pieces * sum, kind.unit)));
    return needs;
  }

  private static void filling(Extra.Filling f, Map<Kind, Double> sums) {
    if (f.count() > 0) {
      sums.merge(new Kind("filling", f.what(), Need.Unit.PIECES), (double) f.count(), Double::sum);
    } else if (f.hasVolume()) {
      sums.merge(
          new Kind("filling", f.what(), Need.Unit.MILLILITRES),
          f.volume() / Millilitres.ONE,
          Double::sum);
    } else {
      sums.merge(new Kind("filling", f.what() + ", to fill", Need.Unit.PIECES), 1.0, Double::sum);
    }
  }

  private static String text(double mm, Unit unit) {
    return new Length(mm).read(unit);
  }
}
