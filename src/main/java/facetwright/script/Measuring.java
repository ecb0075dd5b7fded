package facetwright.script;

import facetwright.aim.Goal;
import facetwright.aim.Lie;
import facetwright.aim.Measure;
import facetwright.aim.Measured;
import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Box2;
import facetwright.net.Net;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.ring.Rings;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a design measures, as an aim looks at it. */
final class Measuring {
  private Measuring() {}

  static Measured of(Facetwright.Made made, Packing packing) {
    Net net = made.design().net();
    FoldedForm folded = made.design().folded();
    Box2 box = net.box();
    Map<Measure, Double> values = new EnumMap<>(Measure.class);
    values.put(Measure.NET_WIDTH, box.width());
    values.put(Measure.NET_HEIGHT, box.height());
    values.put(Measure.AREA, folded.measures().area());
    if (folded.closure() != Closure.NOT_SOLVED) {
      values.put(Measure.HEIGHT, folded.measures().height());
      values.put(Measure.WIDTH, folded.measures().width());
      values.put(Measure.DEPTH, folded.measures().depth());
      values.put(Measure.VOLUME, folded.measures().volume());
      values.put(Measure.GAP, folded.gap());
      values.put(Measure.STRAIN, folded.strain());
    }
    double weight = made.design().laid().stock().weight();
    List<Room> rooms = made.rooms();
    Map<Goal.Ring, Optional<Double>> rings = new HashMap<>();
    return new Measured(
        values,
        size -> lie(net, size, weight, rooms, packing),
        ring -> rings.computeIfAbsent(ring, r -> opening(net, folded, r)));
  }

  /** What a search asks of a design again and again, and takes every pair of its sides to tell. */
  private static Optional<Double> opening(Net net, FoldedForm folded, Goal.Ring ring) {
    if (folded.closure() == Closure.NOT_SOLVED) {
      return Optional.empty();
    }
    Rings rings = Rings.of(net, folded);
    return (ring.standing() ? rings.standing() : rings).opening(ring.count(), ring.by());
  }

  /** Laid out with the room that the design itself may have, on one sheet. */
  private static Lie lie(
      Net net, SheetSize size, double weight, List<Room> rooms, Packing packing) {
    if (2 * rooms.getLast().margin() >= Math.min(size.width(), size.height())) {
      return new Lie(false, net.box().width(), net.box().height());
    }
    Laid laid = SheetLayout.lay(net, size.stock(weight), rooms);
    Box2 box = laid.net().box();
    boolean one = laid.fits() && laid.sheets() == 1;
    return new Lie(one && packing.holds(laid), box.width(), box.height());
  }
}
