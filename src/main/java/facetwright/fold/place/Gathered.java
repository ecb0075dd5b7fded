package facetwright.fold.place;

import facetwright.fold.pose.Together;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Parts;
import facetwright.net.Parts.Lie;
import facetwright.net.Parts.Placing;
import facetwright.net.Parts.Side;
import java.util.ArrayList;
import java.util.List;

/**
 * How several parts lie that go into one opening together. They are tried in a row, one behind the
 * other and one on the other, those made alike in rows and layers of every number, too. Taken is
 * the first way in which all have room and none stands out of the opening; where there is none, one
 * that lacks next to nothing, then one that stands out, then that which lacks least.
 */
final class Gathered {
  /** What lacks no more room, in mm on a side, is meant to lie so; common practice, no source. */
  private static final double NEARLY = 2;

  private final Net net;
  private final List<Skin> skins;
  private final Cluster[] cluster;
  private final List<Placing> mates;

  /**
   * @param cluster for each part what it is together with already
   * @param mates what stands beside another or lies with it already
   */
  Gathered(Net net, List<Skin> skins, Cluster[] cluster, List<Placing> mates) {
    this.net = net;
    this.skins = skins;
    this.cluster = cluster;
    this.mates = mates;
  }

  /** Rows of so many, so many of them in a layer, and so many layers. */
  private record Grid(int row, int rows, int layers) {
    int all() {
      return row * rows * layers;
    }
  }

  /** All that lies with one part, from the placing of the second on. */
  static List<Placing.With> group(List<Placing> placings, int from) {
    Placing.With first = (Placing.With) placings.get(from);
    List<Placing.With> group = new ArrayList<>();
    for (Placing placing : placings.subList(from, placings.size())) {
      if (!(placing instanceof Placing.With w) || w.onto() != first.onto()) {
        break;
      }
      group.add(w);
    }
    return group;
  }

  /**
   * For each of a group where it stands or lies.
   *
   * @param into how all of them go in then
   */
  List<Placing> of(List<Placing.With> group, Placing into) {
    List<Grid> grids = grids(group);
    List<Placing> best = laid(group, grids.getFirst());
    Fit most = Fit.NONE;
    for (Grid grid : grids.size() == 1 ? List.<Grid>of() : grids) {
      List<Placing> laid = laid(group, grid);
      Fit fit = fit(laid, into);
      if (fit.isBetter(most)) {
        best = laid;
        most = fit;
      }
      if (fit.rank() == Fit.IN) {
        break;
      }
    }
    return best;
  }

  /**
   * How all go in.
   *
   * @param room in mm on a side
   * @param out how far they stand out of the opening, in mm
   */
  private record Fit(double room, double out) {
    static final int IN = 3;

    static final Fit NONE = new Fit(Double.NEGATIVE_INFINITY, 0);

    int rank() {
      boolean isIn = out <= Room.LEAST.mm();
      return room >= 0 ? isIn ? IN : 1 : room >= -NEARLY && isIn ? 2 : 0;
    }

    boolean isBetter(Fit other) {
      return rank() != other.rank() ? rank() > other.rank() : room > other.room + Room.LEAST.mm();
    }
  }

  private List<Grid> grids(List<Placing.With> group) {
    int all = group.size() + 1;
    Grid pile = new Grid(1, 1, all);
    List<Grid> rows = List.of(new Grid(all, 1, 1), new Grid(1, all, 1), pile);
    Lie lie = group.getFirst().lie();
    if (lie != Lie.FOUND) {
      return List.of(
          switch (lie) {
            case RIGHT -> rows.getFirst();
            case BACK -> rows.get(1);
            case TOP, FOUND -> pile;
          });
    }
    List<Grid> grids = new ArrayList<>(rows.subList(0, 2));
    List<Parts.Part> parts = net.parts().all();
    int first = parts.get(group.getFirst().onto()).first();
    if (group.stream().allMatch(w -> parts.get(w.part()).first() == first)) {
      for (int layers = 1; layers < all; layers++) {
        for (int row = all; row >= 1; row--) {
          Grid grid = new Grid(row, all / (row * layers), layers);
          if (grid.all() == all && !grids.contains(grid)) {
            grids.add(grid);
          }
        }
      }
    }
    grids.add(pile);
    return grids;
  }

  private static List<Placing> laid(List<Placing.With> group, Grid grid) {
    List<Placing> laid = new ArrayList<>();
    for (int i = 1; i <= group.size(); i++) {
      Placing.With w = group.get(i - 1);
      int layer = grid.row * grid.rows;
      laid.add(
          i % grid.row != 0
              ? beside(w, member(group, i - 1), Side.RIGHT)
              : i % layer != 0
                  ? beside(w, member(group, i - grid.row), Side.BACK)
                  : new Placing.On(w.part(), member(group, i - layer), Vec2.ZERO, 0, w.site()));
    }
    return laid;
  }

  private static Placing beside(Placing.With w, int by, Side side) {
    return new Placing.Beside(w.part(), by, side, w.gap(), 0, w.site());
  }

  private static int member(List<Placing.With> group, int i) {
    return i == 0 ? group.getFirst().onto() : group.get(i - 1).part();
  }

  private Fit fit(List<Placing> laid, Placing into) {
    try {
      int first = laid.getFirst().onto();
      Cluster all = cluster[first];
      for (Placing placing : laid) {
        Cluster comes = cluster[placing.part()];
        Way.Found found = new Way(net, skins, mates, comes, all).of(0, placing);
        all = all.with(comes, placing.part(), placing.onto(), found.motion(), false);
      }
      List<Placing> with = new ArrayList<>(mates);
      with.addAll(laid);
      boolean isOver = all.parts().contains(into.onto());
      Cluster other = cluster[isOver ? into.part() : into.onto()];
      Way way = new Way(net, skins, with, isOver ? other : all, isOver ? all : other);
      Way.Found found = way.of(0, into);
      Together.Nest nest = found.nest().orElseThrow();
      Motion3 moved = isOver ? found.motion().inverse() : found.motion();
      Vec3 axis = isOver ? moved.direction(found.from()).unit() : found.from().unit();
      Skin inner = all.skin(first, skins, all.parts()).moved(moved);
      Skin outer = skins.get(nest.outer());
      double out = isOver && !nest.isTube() ? 0 : inner.reach(axis) - outer.reach(axis);
      Vec3 back = axis.times(-1);
      double through = nest.isTube() ? inner.reach(back) - outer.reach(back) : 0;
      return new Fit(nest.room(), Math.max(out, through));
    } catch (NoWay no) {
      return Fit.NONE;
    }
  }

  /**
   * What lies between parts that go in along an axis side by side.
   *
   * @param all the parts
   */
  static Together.Between between(List<Placing> mates, List<Integer> all, Vec3 axis) {
    int times = 0;
    double mm = 0;
    for (Placing placing : mates) {
      Vec3 way =
          switch (placing.shut()) {
            case Placing.Beside b when b.side() == Side.FRONT || b.side() == Side.BACK -> Vec3.Y;
            case Placing.Beside _ -> Vec3.X;
            default -> Vec3.Z;
          };
      boolean isAcross = Math.abs(way.dot(axis)) < 0.5;
      if (isAcross && all.contains(placing.part()) && all.contains(placing.onto())) {
        times++;
        mm += placing.shut() instanceof Placing.Beside b ? b.gap() : 0;
      }
    }
    return new Together.Between(times, mm);
  }
}
