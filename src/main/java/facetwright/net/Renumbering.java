package facetwright.net;

import java.util.function.IntUnaryOperator;
import java.util.function.UnaryOperator;

/**
 * What hangs together in a net, told by other numbers of its panels and sides.
 *
 * @param panels the number that a panel has now
 * @param sides the side that a side is now
 */
public record Renumbering(IntUnaryOperator panels, UnaryOperator<EdgeRef> sides) {

  /** One of panels whose sides keep their numbers. */
  static Renumbering of(IntUnaryOperator panels) {
    return new Renumbering(
        panels, side -> new EdgeRef(panels.applyAsInt(side.panel()), side.edge()));
  }

  public Score of(Score s) {
    return new Score(
        sides.apply(s.a()),
        sides.apply(s.b()),
        s.sense(),
        s.angle(),
        s.perforated(),
        s.hinge(),
        s.site());
  }

  public Slit of(Slit s) {
    return new Slit(sides.apply(s.a()), sides.apply(s.b()), s.site());
  }

  public Join of(Join join) {
    return switch (join) {
      case Join.Seam s ->
          new Join.Seam(
              sides.apply(s.a()),
              sides.apply(s.b()),
              s.tab() == Join.Seam.NO_TAB ? Join.Seam.NO_TAB : panels.applyAsInt(s.tab()),
              s.hold(),
              s.site());
      case Join.Lap l ->
          new Join.Lap(
              panels.applyAsInt(l.under()), panels.applyAsInt(l.over()), l.hold(), l.site());
    };
  }

  Layer of(Layer l) {
    return new Layer(panels.applyAsInt(l.panel()), l.reveal(), l.paper(), l.site());
  }

  Tick of(Tick t) {
    return new Tick(panels.applyAsInt(t.panel()), t.mark(), t.site());
  }

  Cutaway of(Cutaway c) {
    return new Cutaway(c.sides().stream().map(sides).toList(), c.site());
  }
}
