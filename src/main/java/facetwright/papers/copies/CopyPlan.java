package facetwright.papers.copies;

import facetwright.geom.Box2;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.measure.Ruler;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.PieceOutline;
import facetwright.net.sheet.Room;
import facetwright.net.sheet.Stock;
import facetwright.pace.Pace;
import facetwright.papers.copies.Pattern.Placed;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * How copies of a net lie on one sheet.
 *
 * <p>Tried are patterns of even rows, of the net one way or of it and the same turned end for end,
 * interlocking as far as straight rows let them, lengthwise and across, and along the sides of the
 * net's smallest rectangle, and the boxes round it cut from the sheet edge to edge; then whether
 * one more goes into what is left. Of ways that give as many the boxes are taken where straight
 * cuts part these and not the others. Where the stock's grain is known, only what keeps the net's
 * direction along it is tried. The most found is told; it does not promise that no other way gives
 * more. A net of several pieces is laid as it lies. Of a net so small that more than {@link #MOST}
 * would go there, no more are laid and told.
 *
 * @param stock the sheet as it lies
 * @param room kept free along its edges and between two copies
 * @param copies from where the net lies to where each copy lies on the sheet; none where the net
 *     takes more than one sheet
 */
public record CopyPlan(Stock stock, Room room, List<Motion2> copies) {
  /** No more copies than these are laid: nobody cuts as many from one sheet. */
  public static final int MOST = 500;

  public CopyPlan {
    copies = List.copyOf(copies);
  }

  /** The box round each copy of the planned net, in mm on the sheet. */
  public List<Box2> boxes(Net net) {
    return boxes(Blank.shape(net), copies);
  }

  /** How far from the sheet's edges all copies of the planned net keep, in mm. */
  public double toEdge(Net net) {
    return boxes(net).stream()
        .mapToDouble(
            box ->
                Math.min(
                    Math.min(box.minX(), box.minY()),
                    Math.min(stock.width() - box.maxX(), stock.height() - box.maxY())))
        .min()
        .orElse(0);
  }

  /** How a trimmer parts the sheet between copies of the planned net. */
  public Parting parting(Net net, Ruler ruler) {
    return Parting.of(stock, boxes(net), ruler);
  }

  /** How many copies one sheet gives. */
  public int count() {
    return copies.size();
  }

  /** Whether there may be more than are laid. */
  public boolean isMost() {
    return copies.size() >= MOST;
  }

  /** All copies of the planned net as one net on the sheet. */
  public Laid laid(Net net) {
    List<Net> all =
        copies.stream().map(m -> net.moved(Collections.nCopies(net.pieces(), m))).toList();
    return new Laid(NetMerge.of(all), stock, 1, true, room);
  }

  /**
   * Plans a sheet. Along its edges and between two copies as much is kept free as where the net
   * lies there alone, or less where that gives more copies: of the rooms that give the most, the
   * widest.
   *
   * @param laid the net on its sheet
   */
  public static CopyPlan of(Laid laid) {
    if (!laid.fits() || laid.sheets() > 1) {
      return new CopyPlan(laid.stock(), laid.kept(), List.of());
    }
    CopyPlan best = null;
    for (Room room : laid.orLess()) {
      CopyPlan plan = of(laid.net(), laid.stock(), room);
      best = best == null || plan.count() > best.count() ? plan : best;
    }
    return best;
  }

  /**
   * Plans a sheet.
   *
   * @param net as it lies along the stock's grain, where that is known
   * @param room kept free along its edges and between two copies
   */
  public static CopyPlan of(Net net, Stock stock, Room room) {
    Geometry shape = Blank.shape(net);
    Pace.doing("laying copies of a net of " + shape.getNumPoints() + " corners on the sheet");
    double width = stock.width() - 2 * room.margin();
    double height = stock.height() - 2 * room.margin();
    double gap = room.gap();
    List<Motion2> best = List.of();
    for (double angle : angles(shape, stock)) {
      Pace.step(10L * shape.getNumPoints());
      Blank blank = Blank.of(shape, angle, gap);
      Blank turned = Blank.of(shape, angle + Math.PI, gap);
      List<Motion2> across = motions(most(blank, turned, width, height), Motion2.NONE);
      best = across.size() > best.size() ? across : best;
      // The same with rows up the sheet: the sheet turned a quarter to the right, and back.
      Blank lying = Blank.of(shape, angle - Math.PI / 2, gap);
      Blank lyingTurned = Blank.of(shape, angle + Math.PI / 2, gap);
      Motion2 back = Motion2.turn(Math.PI / 2).then(Motion2.shift(new Vec2(width, 0)));
      List<Motion2> up = motions(most(lying, lyingTurned, height, width), back);
      best = up.size() > best.size() ? up : best;
      if (best.size() == MOST) {
        return new CopyPlan(stock, room, inOrder(shape, stock, room, best));
      }
    }
    List<Motion2> boxes = Boxes.motions(shape, stock, width, height, gap);
    boolean isEasier = boxes.size() == best.size() && !isParted(shape, stock, best);
    best = boxes.size() > best.size() || isEasier ? boxes : best;
    List<Motion2> all =
        new Leftover(shape, angles(shape, stock), gap, width, height).fill(best, MOST);
    return new CopyPlan(stock, room, inOrder(shape, stock, room, all));
  }

  /** Whether straight cuts part all of them. */
  private static boolean isParted(Geometry shape, Stock stock, List<Motion2> copies) {
    return Parting.of(stock, boxes(shape, copies), Ruler.MM).together().isEmpty();
  }

  private static List<Box2> boxes(Geometry shape, List<Motion2> copies) {
    return copies.stream()
        .map(m -> box(shape, m))
        .map(box -> new Box2(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()))
        .toList();
  }

  /** From the foot up and from left to right, all together in the middle of the sheet. */
  private static List<Motion2> inOrder(
      Geometry shape, Stock stock, Room room, List<Motion2> copies) {
    Envelope all = new Envelope();
    copies.forEach(m -> all.expandToInclude(box(shape, m)));
    Vec2 middle =
        new Vec2(
            half(stock.width() - all.getWidth(), room) - all.getMinX(),
            half(stock.height() - all.getHeight(), room) - all.getMinY());
    return copies.stream()
        .map(m -> m.then(Motion2.shift(middle)))
        .sorted(
            Comparator.comparingDouble((Motion2 m) -> Math.rint(box(shape, m).getMinY()))
                .thenComparingDouble(m -> box(shape, m).getMinX()))
        .toList();
  }

  /** In whole millimetres where that leaves the room. */
  private static double half(double free, Room room) {
    double whole = Math.floor(free / 2);
    return whole < room.margin() || free < 2 ? Math.max(0, free) / 2 : whole;
  }

  private static Envelope box(Geometry shape, Motion2 motion) {
    return Planar.moved(shape, motion).getEnvelopeInternal();
  }

  /** The outlines of all copies of the planned net, in mm on the sheet. */
  public List<Polygon2> outlines(Net net) {
    Geometry shape = Blank.shape(net);
    return copies.stream().flatMap(m -> Planar.outlines(Planar.moved(shape, m)).stream()).toList();
  }

  /** As it lies first; what is told by its smallest rectangle last. */
  private static List<Double> angles(Geometry shape, Stock stock) {
    List<Double> angles = new ArrayList<>(List.of(0.0));
    if (stock.grain() == Stock.Grain.UNKNOWN) {
      angles.add(Math.PI / 2);
      angles.addAll(PieceOutline.aligning(shape));
    }
    return angles;
  }

  private static List<Placed> most(Blank blank, Blank turned, double width, double height) {
    if (blank.width() > width + LengthTolerance.FINE.mm()
        || blank.height() > height + LengthTolerance.FINE.mm()) {
      return List.of();
    }
    List<Row> rows = new ArrayList<>(List.of(Row.of(blank)));
    rows.addAll(Row.ofTwo(blank, turned));
    List<Placed> best = List.of();
    for (Row row : rows) {
      for (Pattern pattern : Pattern.of(row)) {
        Pace.step(100);
        List<Placed> placed = pattern.within(width, height, MOST);
        best = placed.size() > best.size() ? placed : best;
        if (best.size() == MOST) {
          return best;
        }
      }
    }
    return best;
  }

  private static List<Motion2> motions(List<Placed> placed, Motion2 back) {
    return placed.stream()
        .map(p -> p.blank().motion().then(Motion2.shift(p.at())).then(back))
        .toList();
  }
}
