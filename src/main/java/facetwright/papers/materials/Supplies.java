package facetwright.papers.materials;

import facetwright.measure.Millilitres;
import facetwright.net.Net;
import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Fitting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What goes in and on, as it is bought: things that are alike together. */
final class Supplies {
  /** Sizes are told apart by this, in mm. */
  private static final double SAME = 0.001;

  private Supplies() {}

  private record Kind(String key, Goods what, Need.Unit unit) {}

  /**
   * @param pieces how many are made of the design
   */
  static List<Need> of(Net net, int pieces) {
    Map<Kind, Double> sums = new LinkedHashMap<>();
    for (Fitting fitting : net.fittings().all()) {
      switch (fitting.thing()) {
        case Extra.Ribbon r ->
            sums.merge(
                new Kind("ribbon", new Goods.Ribbon(size(r.width())), Need.Unit.METRES),
                r.length() / 1000,
                Double::sum);
        case Extra.Light l ->
            sums.merge(
                new Kind(
                    "light",
                    new Goods.Light(l.kind(), size(l.across()), size(l.height())),
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
      sums.merge(
          new Kind("filling", new Goods.Filling(f.what(), false), Need.Unit.PIECES),
          (double) f.count(),
          Double::sum);
    } else if (f.hasVolume()) {
      sums.merge(
          new Kind("filling", new Goods.Filling(f.what(), false), Need.Unit.MILLILITRES),
          f.volume() / Millilitres.ONE,
          Double::sum);
    } else {
      sums.merge(
          new Kind("filling", new Goods.Filling(f.what(), true), Need.Unit.PIECES),
          1.0,
          Double::sum);
    }
  }

  /** Two that are one size are one, whatever unit either was written in. */
  private static double size(double mm) {
    return Math.rint(mm / SAME) * SAME;
  }
}
