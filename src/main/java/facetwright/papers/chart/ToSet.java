package facetwright.papers.chart;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.measure.Ruler;
import facetwright.net.EdgeRef;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Every measure that the maker of a net sets by a ruler, piece after piece.
 *
 * <p>For a piece that a scoring board serves these are the measures of its chart. A piece that is
 * drawn panel by panel, or traced, goes by the lengths of its sides: where its points lie on the
 * sheet follows from them, and no ruler has to show that.
 *
 * @param form the sizes of blanks and all that scores go by; a length comes as often as it is met
 * @param cuts what only cuts go by, such as the ends of tabs
 */
public record ToSet(List<Measure> form, List<Measure> cuts) {
  /** Measures that differ by no more are set once. */
  private static final LengthTolerance SAME = new LengthTolerance(1e-5);

  public ToSet {
    form = List.copyOf(form);
    cuts = List.copyOf(cuts);
  }

  /**
   * The measures of a chart.
   *
   * @param chart of this net
   */
  public static ToSet of(Net net, ScoreChart chart) {
    List<Measure> form = new ArrayList<>();
    List<Measure> cuts = new ArrayList<>();
    int[] piece = net.pieceOfPanel();
    for (int i = 0; i < chart.pieces().size(); i++) {
      PieceChart p = chart.pieces().get(i);
      if (p.isForBoard()) {
        form.add(Measure.of(p.width(), p.ruler()));
        form.add(Measure.of(p.height(), p.ruler()));
        form.addAll(p.scoreMeasures());
        cuts.addAll(p.cutMeasures());
      } else {
        sides(net, i, piece, p.ruler(), form, cuts);
      }
    }
    return new ToSet(form, cuts);
  }

  private static void sides(
      Net net, int of, int[] piece, Ruler ruler, List<Measure> form, List<Measure> cuts) {
    for (int i = 0; i < piece.length; i++) {
      if (piece[i] != of) {
        continue;
      }
      boolean isFacet = net.panels().get(i).role() != PanelRole.TAB;
      arcs(net.panels().get(i).outline(), ruler, cuts);
      for (int e = 0; e < net.panels().get(i).outline().size(); e++) {
        if (net.panels().get(i).outline().isRound(e)) {
          continue;
        }
        EdgeRef ref = new EdgeRef(i, e);
        boolean forForm = isFacet || net.use(ref) instanceof Net.EdgeUse.Scored;
        (forForm ? form : cuts).add(Measure.of(net.segment(ref).length(), ruler));
      }
      for (Opening opening : net.panels().get(i).openings()) {
        if (opening instanceof Opening.Slot s && s.isLine()) {
          cuts.add(Measure.of(s.line().length(), ruler));
        } else if (!(opening instanceof Opening.Hole)) {
          Polygon2 outline = opening.outline();
          arcs(outline, ruler, cuts);
          for (int e = 0; e < outline.size(); e++) {
            if (!outline.isRound(e)) {
              cuts.add(Measure.of(outline.side(e).length(), ruler));
            }
          }
        }
      }
    }
  }

  /** An arc is set by its radius. */
  private static void arcs(Polygon2 outline, Ruler ruler, List<Measure> cuts) {
    outline
        .arcs()
        .forEach(a -> cuts.add(Measure.of(outline.corner(a.first()).distance(a.centre()), ruler)));
  }

  /** All of them, those of the form first. */
  public List<Measure> all() {
    return Stream.concat(form.stream(), cuts.stream()).toList();
  }

  /** How many different measures of the form lie between two marks. */
  public int formOff() {
    return off(form);
  }

  /** How many different measures that only cuts go by lie between two marks. */
  public int cutsOff() {
    return off(cuts);
  }

  /** By how much the measure farthest off a mark misses it, in mm; 0 where all lie on marks. */
  public double mostOff() {
    return all().stream()
        .filter(m -> !m.isOnRuler())
        .mapToDouble(m -> Math.abs(m.reading().errorMm()))
        .max()
        .orElse(0);
  }

  private static int off(List<Measure> measures) {
    return distinct(measures.stream().filter(m -> !m.isOnRuler()).toList()).size();
  }

  /** Each length once, where it is met first. */
  public static List<Measure> distinct(List<Measure> measures) {
    LengthTolerance same = SAME;
    Map<Double, Measure> found = new LinkedHashMap<>();
    for (Measure m : measures) {
      if (found.keySet().stream().noneMatch(k -> same.same(k, m.mm()))) {
        found.put(m.mm(), m);
      }
    }
    return List.copyOf(found.values());
  }
}
