package facetwright.fold.place;

import facetwright.fold.pose.Together;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Whether what is hinged opens without catching on what it is hinged to. The card is taken as thick
 * all round its faces, corners rounded; what lies on the other shut lies on it by the card's
 * thickness. It is looked at every half degree: between two looks a place 100 mm from the hinge
 * goes 0.9 mm.
 *
 * <p>What it does not detect: tabs glued to walls, and what does not hang together with the two.
 */
public final class Swinging {
  /** Between two looks, in degrees. */
  public static final double STEP = 0.5;

  private static final LengthTolerance LEAST = LengthTolerance.UNSEEN;

  /** Halvings by which the least change is sought that lets it open. */
  private static final int HALVINGS = 12;

  /** What catches is not widened by more than this part, and still called the same. */
  private static final double MOST = 0.5;

  private final Together.Swing swing;
  private final double caliper;
  private final List<Integer> moved = new ArrayList<>();
  private final List<Integer> stay = new ArrayList<>();
  private final List<List<Vec3>> moving = new ArrayList<>();
  private final List<List<Vec3>> still = new ArrayList<>();

  /**
   * @param caliper how thick the card is of what moves and what does not, half of both together
   */
  public Swinging(Net net, Together together, Together.Swing swing, double caliper) {
    this.swing = swing;
    this.caliper = caliper;
    Set<Integer> hidden = new HashSet<>();
    for (Join join : net.joins()) {
      if (join instanceof Join.Lap lap) {
        hidden.add(lap.under());
      }
    }
    for (int p : together.whole()) {
      if (net.panels().get(p).role() != PanelRole.TAB && !hidden.contains(p)) {
        Motion3 pose = together.shut().get(p);
        boolean moves = swing.panels().contains(p);
        (moves ? moved : stay).add(p);
        (moves ? moving : still)
            .add(net.panels().get(p).outline().corners().stream().map(pose::apply).toList());
      }
    }
  }

  /**
   * How it opens.
   *
   * @param room beyond the card where it comes nearest that it does not lie on shut, in mm; below 0
   *     where it catches, infinite where nothing comes near
   * @param at how far it is open there, in degrees
   * @param moving the panel that comes nearest
   * @param still the panel to which
   */
  public record Way(double room, double at, int moving, int still) {
    public boolean catches() {
      return room < -LEAST.mm();
    }
  }

  /** How it opens as it is. */
  public Way way() {
    return way(0, 0);
  }

  /**
   * How much farther out the side across from the hinge has to be, in mm; empty if that won't do.
   */
  public OptionalDouble outward() {
    double deep = moving.stream().flatMap(List::stream).mapToDouble(this::inward).max().orElse(0);
    return least(MOST * deep, by -> way(0, by / deep));
  }

  /** How much less far it may go over the other, in mm; empty if that won't do. */
  public OptionalDouble shallower() {
    double high =
        moving.stream()
            .flatMap(List::stream)
            .mapToDouble(c -> c.minus(swing.from()).dot(swing.away()))
            .max()
            .orElse(0);
    return least(high, by -> way(by, 0));
  }

  /** A way opened by so much. */
  @FunctionalInterface
  private interface Changed {
    Way by(double mm);
  }

  private static OptionalDouble least(double most, Changed changed) {
    if (changed.by(most).catches()) {
      return OptionalDouble.empty();
    }
    double low = 0;
    double high = most;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (changed.by(middle).catches()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return OptionalDouble.of(high);
  }

  private Vec3 in() {
    return swing.away().cross(swing.to().minus(swing.from()).unit());
  }

  private double inward(Vec3 corner) {
    return corner.minus(swing.from()).dot(in());
  }

  /**
   * @param lift so much higher it lies shut, in mm
   * @param wider by this part of it every place lies farther from the hinge
   */
  private Way way(double lift, double wider) {
    Vec3 up = swing.away().times(caliper + lift);
    Vec3 in = in();
    List<List<Vec3>> shut =
        moving.stream()
            .map(f -> f.stream().map(c -> c.plus(up).plus(in.times(wider * inward(c)))).toList())
            .toList();
    double[][] start = new double[shut.size()][still.size()];
    int looks = (int) Math.ceil(Math.toDegrees(swing.radians()) / STEP);
    Way best = new Way(Double.POSITIVE_INFINITY, 0, -1, -1);
    for (int look = 0; look <= looks; look++) {
      double angle = look == looks ? swing.radians() : Math.toRadians(look * STEP);
      Motion3 turn = Motion3.about(swing.from().plus(up), swing.to().plus(up), angle);
      for (int m = 0; m < shut.size(); m++) {
        List<Vec3> face = shut.get(m).stream().map(turn::apply).toList();
        for (int s = 0; s < still.size(); s++) {
          double near = best.room + caliper;
          if (look > 0 && Near.areApart(face, still.get(s), near)) {
            continue;
          }
          double mm = Near.of(face, still.get(s));
          if (look == 0) {
            start[m][s] = mm;
          }
          // Where it is near already shut, how it lies shut is told elsewhere.
          double room = start[m][s] > caliper + LEAST.mm() ? mm - caliper : mm - start[m][s];
          boolean isTold = start[m][s] > caliper + LEAST.mm() || room < -LEAST.mm();
          if (isTold && room < best.room) {
            best = new Way(room, Math.toDegrees(angle), moved.get(m), stay.get(s));
          }
        }
      }
    }
    return best;
  }

  /** How far it opens before it comes down to the table, in degrees; empty where it does not. */
  public OptionalDouble table() {
    double foot = lowest(still);
    int looks = (int) Math.floor(Math.toDegrees(swing.radians()) / STEP);
    for (int look = 1; look <= looks; look++) {
      Motion3 turn = swing.turned(Math.toRadians(look * STEP));
      double low = lowest(moving.stream().map(f -> f.stream().map(turn::apply).toList()).toList());
      if (low < foot - LEAST.mm()) {
        return OptionalDouble.of((look - 1) * STEP);
      }
    }
    return OptionalDouble.empty();
  }

  private static double lowest(List<List<Vec3>> faces) {
    return faces.stream().flatMap(List::stream).mapToDouble(Vec3::z).min().orElse(0);
  }
}
