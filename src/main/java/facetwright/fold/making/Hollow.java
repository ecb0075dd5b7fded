package facetwright.fold.making;

import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Net;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The room inside a made body. What goes in is taken to be a round thing that stands upright, and
 * to be brought in along a straight line, turned by hand as it goes; cloth, ribbon and the like are
 * not reckoned with. Panels are taken to be thin.
 */
final class Hollow {
  /** Panels that touch a thing by no more are no wall beside it, in mm. */
  private static final double TOUCH = 0.5;

  /** At so many heights, evenly, it is tried to stand. */
  private static final int HEIGHTS = 12;

  /** Between these heights it is tried so often at half the step. */
  private static final int HALVINGS = 4;

  /** Directions in which a thing is brought in; more give nothing new. */
  private static final int DIRECTIONS = 12;

  /** Directions nearer to each other than this, by their cosine, are one. */
  private static final double SAME = 0.999;

  private final Net net;
  private final List<Motion3> poses;
  private final List<Integer> panels;
  private final List<Vec3> points;
  private final List<CrossSection.Wall> walls;

  /**
   * @param poses where each of the net's panels is
   * @param panels those round the hollow
   */
  Hollow(Net net, List<Motion3> poses, List<Integer> panels) {
    this.net = net;
    this.poses = poses;
    this.panels = panels;
    this.points = panels.stream().flatMap(p -> corners(p).stream()).toList();
    this.walls =
        panels.stream()
            .filter(p -> net.panels().get(p).role() != PanelRole.TAB)
            .map(p -> new CrossSection.Wall(corners(p), poses.get(p).ez()))
            .toList();
  }

  private List<Vec3> corners(int panel) {
    return net.panels().get(panel).outline().corners().stream()
        .map(poses.get(panel)::apply)
        .toList();
  }

  /**
   * Room for a round thing.
   *
   * @param middle of it
   * @param across how wide it may be, in mm
   */
  record Room(Vec3 middle, double across) {}

  /**
   * Where a round thing has room, as low as it goes; where it has none, where the widest of its
   * height has, found at some heights alone.
   */
  Room room(double height, double across) {
    double low = points.stream().mapToDouble(Vec3::z).min().orElse(0);
    double high = points.stream().mapToDouble(Vec3::z).max().orElse(0);
    double free = high - low - height;
    if (free < -TOUCH) {
      return new Room(Vec3.ZERO, 0);
    }
    TreeSet<Double> feet = new TreeSet<>();
    for (int i = 0; i <= HEIGHTS; i++) {
      feet.add(low + Math.max(0, free) * i / HEIGHTS);
    }
    Room best = new Room(Vec3.ZERO, 0);
    for (double foot : feet) {
      Shadow.Gap gap = standing(foot, foot + height);
      if (gap.across() > best.across + Shadow.WITHIN) {
        best = new Room(middle(gap, foot, height), gap.across());
        if (gap.across() >= across - Shadow.WITHIN) {
          return best;
        }
      }
    }
    return finer(best, height, Math.max(0, free) / HEIGHTS, low, low + Math.max(0, free));
  }

  private static Vec3 middle(Shadow.Gap gap, double foot, double height) {
    return new Vec3(gap.place().x(), gap.place().y(), foot + height / 2);
  }

  /** Between the heights that were tried: by halves of the step between them. */
  private Room finer(Room best, double height, double step, double low, double high) {
    Room found = best;
    double half = step;
    for (int i = 0; i < HALVINGS && found.across > 0; i++) {
      half /= 2;
      double foot = found.middle.z() - height / 2;
      for (double at : new double[] {foot - half, foot + half}) {
        if (at >= low && at <= high) {
          Shadow.Gap gap = standing(at, at + height);
          if (gap.across() > found.across + Shadow.WITHIN) {
            found = new Room(middle(gap, at, height), gap.across());
          }
        }
      }
    }
    return found;
  }

  private Shadow.Gap standing(double foot, double head) {
    double touch = Math.min(TOUCH, (head - foot) / 4);
    View view = View.along(Vec3.Z);
    List<Shadow.Shape> shadows = new ArrayList<>();
    List<Vec2> all = new ArrayList<>();
    for (int p : panels) {
      List<Vec3> part = Cutting.above(corners(p), Vec3.Z, foot + touch);
      part = Cutting.above(part, Vec3.Z.times(-1), -(head - touch));
      if (part.size() > 1) {
        List<Vec2> seen = part.stream().map(view::seen).toList();
        all.addAll(seen);
        shadows.add(new Shadow.Shape(seen, List.of()));
      }
    }
    if (all.isEmpty()) {
      return new Shadow.Gap(Vec2.ZERO, 0);
    }
    CrossSection within = new CrossSection(walls, view, Vec3.Z, (foot + head) / 2);
    return new Shadow(shadows, all, within).widest();
  }

  /**
   * How wide a round thing can be brought from outside to a place, in mm. Where that is wide enough
   * it may be told less wide than it is: how much wider is not looked for.
   *
   * @param held the panels that no longer swing aside
   * @param enough how wide is wide enough, in mm
   */
  double way(Set<Integer> held, Vec3 to, double enough) {
    double widest = 0;
    for (Vec3 direction : directions(held)) {
      widest = Math.max(widest, way(held, to, direction, true, enough));
      if (widest >= enough) {
        break;
      }
    }
    return widest;
  }

  /** Whether a thing so wide comes to a place from outside along one direction. */
  boolean isOpen(Set<Integer> held, Vec3 to, Vec3 direction, double across) {
    double enough = across - Shadow.WITHIN;
    return way(held, to, direction, true, enough) >= enough;
  }

  /**
   * How wide the hole is by which something falls out below; 0 where it does not, and where nothing
   * closes the form below.
   */
  double falls(Vec3 from, double across) {
    Vec3 down = Vec3.Z.times(-1);
    Set<Integer> all = Set.copyOf(panels);
    double enough = across - Shadow.WITHIN;
    double open = way(all, from, down, true, Double.POSITIVE_INFINITY);
    boolean isHole = open >= enough && way(all, from, down, false, enough) < enough;
    return isHole ? open : 0;
  }

  private double way(
      Set<Integer> held, Vec3 to, Vec3 direction, boolean isThroughHoles, double enough) {
    View view = View.along(direction);
    double from = direction.dot(to);
    List<Shadow.Shape> inTheWay = new ArrayList<>();
    for (int p : panels) {
      if (!held.contains(p)) {
        continue;
      }
      List<Vec3> part = Cutting.above(corners(p), direction, from);
      if (part.size() > 1) {
        inTheWay.add(
            new Shadow.Shape(
                part.stream().map(view::seen).toList(),
                isThroughHoles ? holes(p, view, direction, from) : List.of()));
      }
    }
    CrossSection within = new CrossSection(walls, view, direction, from);
    List<Vec2> all = points.stream().map(view::seen).toList();
    return new Shadow(inTheWay, all, within).widest(enough).across();
  }

  private List<List<Vec2>> holes(int p, View view, Vec3 direction, double from) {
    Panel panel = net.panels().get(p);
    Motion3 pose = poses.get(p);
    List<List<Vec2>> holes = new ArrayList<>();
    for (Opening opening : panel.openings()) {
      if (opening.behind().isEmpty()) {
        List<Vec3> ring = opening.outline().corners().stream().map(pose::apply).toList();
        List<Vec3> part = Cutting.above(ring, direction, from);
        if (part.size() > 2) {
          holes.add(part.stream().map(view::seen).toList());
        }
      }
    }
    return holes;
  }

  /** Up and down, and square to whatever is open or swings aside. */
  private List<Vec3> directions(Set<Integer> held) {
    List<Vec3> all = new ArrayList<>(List.of(Vec3.Z, Vec3.Z.times(-1)));
    for (int p : panels) {
      boolean opens =
          !held.contains(p)
              || net.panels().get(p).openings().stream()
                  .anyMatch(o -> o instanceof Opening.Window && o.behind().isEmpty());
      if (opens) {
        Vec3 out = poses.get(p).ez();
        for (Vec3 way : List.of(out, out.times(-1))) {
          if (all.size() < DIRECTIONS && all.stream().noneMatch(d -> d.dot(way) > SAME)) {
            all.add(way);
          }
        }
      }
    }
    return all;
  }
}
