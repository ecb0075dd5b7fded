package facetwright.fold.place;

import facetwright.fold.touch.Collision;
import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion3;
import facetwright.geom.Segment2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import facetwright.net.Score;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The sides of a folded body's skin with nothing on their other side, such as those round an
 * opening. Tabs, and what a lap hides, do not bound it.
 */
public final class FreeSides {
  /** Sides shorter than this have no direction to speak of. */
  private static final LengthTolerance SHORT = LengthTolerance.FINE;

  private FreeSides() {}

  /**
   * One of them as it stands.
   *
   * @param ref which side of which panel
   * @param outside direction of its panel
   */
  public record Side(EdgeRef ref, Vec3 from, Vec3 to, Vec3 outside) {
    public Vec3 along() {
      return to.minus(from).unit();
    }
  }

  /**
   * All of a body's, in the order of its panels.
   *
   * @param poses where each panel of the net is
   */
  public static List<Side> of(Net net, List<Motion3> poses, List<Integer> body) {
    Set<Integer> hidden = new HashSet<>();
    Set<Integer> glued = new HashSet<>();
    Set<EdgeRef> met = new HashSet<>();
    for (int p : body) {
      if (net.panels().get(p).role() == PanelRole.TAB) {
        hidden.add(p);
      }
    }
    for (Join join : net.joins()) {
      switch (join) {
        case Join.Seam s -> {
          met.add(s.a());
          met.add(s.b());
          glued.add(s.tab());
        }
        case Join.Lap l -> hidden.add(l.under());
      }
    }
    for (Score s : net.scores()) {
      boolean open = isLoose(s.a().panel(), hidden, glued) || isLoose(s.b().panel(), hidden, glued);
      if (!open) {
        met.add(s.a());
        met.add(s.b());
      }
    }
    List<Side> sides = new ArrayList<>();
    for (int p : body) {
      for (int e = 0; !hidden.contains(p) && e < net.panels().get(p).outline().size(); e++) {
        EdgeRef ref = new EdgeRef(p, e);
        if (!met.contains(ref) && net.segment(ref).length() > SHORT.mm()) {
          Segment2 flat = net.segment(ref);
          Motion3 pose = poses.get(p);
          sides.add(new Side(ref, pose.apply(flat.from()), pose.apply(flat.to()), pose.ez()));
        }
      }
    }
    return sides;
  }

  private static boolean isLoose(int panel, Set<Integer> hidden, Set<Integer> glued) {
    return hidden.contains(panel) && !glued.contains(panel);
  }

  /** The closed rings they make, each side from the end of the one before. */
  public static List<List<Side>> rings(List<Side> sides) {
    List<Side> left = new ArrayList<>(sides);
    List<List<Side>> rings = new ArrayList<>();
    while (!left.isEmpty()) {
      List<Side> ring = new ArrayList<>(List.of(left.removeFirst()));
      Vec3 start = ring.getFirst().from();
      boolean goesOn = true;
      while (goesOn && ring.getLast().to().distance(start) > Collision.HELD) {
        Vec3 end = ring.getLast().to();
        Optional<Side> next =
            left.stream().filter(s -> s.from().distance(end) <= Collision.HELD).findFirst();
        next.ifPresent(
            s -> {
              ring.add(s);
              left.remove(s);
            });
        goesOn = next.isPresent();
      }
      if (goesOn) {
        rings.add(List.copyOf(ring));
      }
    }
    return rings;
  }
}
