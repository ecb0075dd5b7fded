package facetwright.script;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Join;
import facetwright.net.Layer;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.Score;
import facetwright.net.fitting.Fitting;
import facetwright.net.fitting.Label;
import java.util.List;
import java.util.function.Function;

/**
 * Whether two nets are one thing made twice: the same panels in the same order, scored, cut, joined
 * and covered alike, wherever they lie and whatever they are called.
 */
final class MadeAlike {
  private MadeAlike() {}

  /**
   * @param a turned no otherwise than {@code b} is
   */
  static boolean are(Net a, Net b) {
    return a.panels().size() == b.panels().size()
        && arePanels(a, b)
        && same(a, b, n -> n.scores().stream().map(MadeAlike::score).toList())
        && same(a, b, n -> n.slits().stream().map(s -> List.of(s.a(), s.b())).toList())
        && same(a, b, n -> n.joins().stream().map(MadeAlike::join).toList())
        && same(a, b, n -> n.layers().stream().map(MadeAlike::layer).toList())
        && same(a, b, n -> n.fittings().labels().stream().map(MadeAlike::label).toList())
        && same(a, b, n -> n.fittings().all().stream().map(Fitting::thing).toList())
        && a.ticks().size() == b.ticks().size();
  }

  private static boolean same(Net a, Net b, Function<Net, List<?>> told) {
    return told.apply(a).equals(told.apply(b));
  }

  private static boolean arePanels(Net a, Net b) {
    if (a.panels().isEmpty()) {
      return true;
    }
    Vec2 by = base(b).minus(base(a));
    for (int p = 0; p < a.panels().size(); p++) {
      Panel one = a.panels().get(p);
      Panel other = b.panels().get(p);
      if (one.role() != other.role()
          || one.openings().size() != other.openings().size()
          || !isMoved(one.outline(), other.outline(), by)) {
        return false;
      }
      for (int o = 0; o < one.openings().size(); o++) {
        Opening first = one.openings().get(o);
        Opening second = other.openings().get(o);
        if (first.behind().size() != second.behind().size()
            || !isMoved(first.outline(), second.outline(), by)) {
          return false;
        }
      }
    }
    return true;
  }

  private static Vec2 base(Net net) {
    return net.panels().getFirst().outline().corner(0);
  }

  private static boolean isMoved(Polygon2 one, Polygon2 other, Vec2 by) {
    if (one.size() != other.size()) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      if (one.corner(i).plus(by).distance(other.corner(i)) > LengthTolerance.UNSEEN.mm()) {
        return false;
      }
    }
    return true;
  }

  private static List<?> score(Score s) {
    return List.of(s.a(), s.b(), s.sense(), s.angle(), s.perforated(), s.hinge());
  }

  private static List<?> join(Join join) {
    return switch (join) {
      case Join.Seam s -> List.of(s.a(), s.b(), s.tab(), s.hold());
      case Join.Lap l -> List.of(l.under(), l.over(), l.hold());
    };
  }

  private static List<?> layer(Layer l) {
    return List.of(l.panel(), l.reveal(), l.paper());
  }

  private static List<?> label(Label l) {
    return List.of(l.panel(), l.asked().text(), l.asked().size(), l.asked().cut());
  }
}
