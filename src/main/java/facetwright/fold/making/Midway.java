package facetwright.fold.making;

import facetwright.fold.pose.FoldTree;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.pose.RigidFit;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * How a piece lies between two actions of making it up. What holds fast by then, see {@link Held},
 * stands where the made form has it; what still swings is folded {@link #OPEN} of its way, tabs
 * that are not glued {@link #TAB} of theirs, so that the face that takes the glue shows.
 *
 * <p>This is how it lies, not to scale of openness: how far a hand has what swings open is up to
 * the hand. Where scores close loops (a wrap with gussets), a piece of which nothing is glued is
 * shown {@link #OPEN} of its way to the made form; what then swings is brought to meet what it
 * hangs on by rigid panels, nearest to that, and card may part there by a hair. Pieces that are not
 * joined yet stand off by {@link #OFF} of the whole's size.
 */
public final class Midway {
  /** Part of its fold angle that a panel has which still swings. */
  public static final double OPEN = 0.7;

  /** Part of its fold angle that a tab has which is not glued. */
  public static final double TAB = 0.3;

  /** Part of the way to the made form from which gussets begin that are to be pushed in. */
  private static final double NEARLY = 0.8;

  private static final double OFF = 0.18;

  private final Net net;
  private final FoldPath path;
  private final FoldedForm form;
  private final List<List<Integer>> scoresOf = new ArrayList<>();
  private final int[] piece;
  private final Map<Double, List<Motion3>> onTheWay = new HashMap<>();

  public Midway(Net net, FoldPath path) {
    this.net = net;
    this.path = path;
    this.form = path.form();
    this.piece = net.pieceOfPanel();
    net.panels().forEach(_ -> scoresOf.add(new ArrayList<>()));
    for (int s = 0; s < net.scores().size(); s++) {
      scoresOf.get(net.scores().get(s).a().panel()).add(s);
      scoresOf.get(net.scores().get(s).b().panel()).add(s);
    }
  }

  /**
   * Where each panel is before an action, from its place in the net.
   *
   * @param actions of one part, or of all
   * @param at index of the action; as many as there are when all is made
   */
  public List<Motion3> before(List<Action> actions, int at) {
    List<Motion3> poses = new ArrayList<>(form.poses());
    if (at == actions.size()) {
      return poses;
    }
    List<Bond> all = Action.bonds(actions);
    List<Bond> done = Action.bonds(actions.subList(0, at));
    Set<Integer> pushed = new HashSet<>();
    for (Action action : actions.subList(0, at)) {
      if (action instanceof Action.Pinched(List<Integer> gussets, boolean _)) {
        pushed.addAll(gussets);
      }
    }
    for (List<Integer> body : Bodies.of(net)) {
      List<Bond> own = all.stream().filter(b -> body.contains(Gluing.panel(net, b))).toList();
      if (!own.isEmpty()) {
        List<Bond> glued = own.stream().filter(done::contains).toList();
        place(poses, body, own, glued, pushed);
      }
    }
    return List.copyOf(poses);
  }

  private void place(
      List<Motion3> poses,
      List<Integer> body,
      List<Bond> own,
      List<Bond> done,
      Set<Integer> pushed) {
    long scores = net.scores().stream().filter(s -> body.contains(s.a().panel())).count();
    long pieces = body.stream().map(p -> piece[p]).distinct().count();
    if (scores <= body.size() - pieces) {
      Ajar open = Ajar.of(net, form, body, own, done);
      swing(poses, body, open.clusters().getFirst(), open);
      return;
    }
    Set<Integer> tabs = Ajar.tabs(net, body, own, done);
    boolean isBegun = !done.isEmpty() || !pushed.isEmpty();
    double part = isBegun && pushed.isEmpty() ? NEARLY : OPEN;
    List<Motion3> way =
        onTheWay.computeIfAbsent(
            part, t -> path.at(form.together().isSome() ? t * FoldPath.APART : t));
    if (!isBegun) {
      body.forEach(p -> poses.set(p, way.get(p)));
      return;
    }
    Set<Integer> loose = loose(body, pushed);
    Set<Integer> fast = new HashSet<>();
    body.stream()
        .filter(p -> !loose.contains(p) && !tabs.contains(p) && !hangsOn(p, loose))
        .forEach(fast::add);
    if (!loose.isEmpty()) {
      Motion3 onto = aligned(way, fast);
      loose.forEach(p -> poses.set(p, way.get(p).then(onto)));
      new Meeting(net, loose, fast, done).settle(poses);
    }
    Set<Integer> placed = new HashSet<>(fast);
    placed.addAll(loose);
    swing(poses, body, placed, new Ajar(tabs, List.of()));
  }

  /**
   * The panel that lies under another, or closes over an opening, or carries the edge that does.
   */
  public static int lying(Net net, Bond bond) {
    return switch (bond) {
      case Bond.Closing(int tab) -> tab;
      case Bond.Joined(int join) ->
          switch (net.joins().get(join)) {
            case Join.Seam s when s.tab() == Join.Seam.NO_TAB -> s.a().panel();
            case Join.Seam s -> s.tab();
            case Join.Lap l -> l.under();
          };
    };
  }

  /** Gussets that are not pushed in, and what hangs on them but for tabs. */
  private Set<Integer> loose(List<Integer> body, Set<Integer> pushed) {
    Set<Integer> loose = new HashSet<>();
    Set<Integer> pinched = new HashSet<>();
    for (Join join : net.joins()) {
      if (Gluing.isPinch(net, join) && join instanceof Join.Seam s) {
        pinched.add(s.a().panel());
        pinched.add(s.b().panel());
      }
    }
    for (int p : body) {
      if (pinched.contains(p) && !pushed.contains(p)) {
        loose.add(p);
        for (int s : scoresOf.get(p)) {
          int next = net.scores().get(s).across(p);
          if (net.panels().get(next).role() != PanelRole.TAB && !pushed.contains(next)) {
            loose.add(next);
          }
        }
      }
    }
    return loose;
  }

  /** Whether a panel is a tab of one of these. */
  private boolean hangsOn(int panel, Set<Integer> loose) {
    return net.panels().get(panel).role() == PanelRole.TAB
        && scoresOf.get(panel).stream()
            .anyMatch(s -> loose.contains(net.scores().get(s).across(panel)));
  }

  /** What brings what is fast from the way to where it is made. */
  private Motion3 aligned(List<Motion3> open, Set<Integer> fast) {
    if (fast.isEmpty()) {
      return Motion3.NONE;
    }
    RigidFit fit = new RigidFit();
    for (int p : fast) {
      for (Vec2 c : net.panels().get(p).outline().corners()) {
        fit.pair(open.get(p).apply(c), form.poses().get(p).apply(c));
      }
    }
    return fit.motion();
  }

  /** Hangs on what is fast all that is not, from panel to panel. */
  private void swing(List<Motion3> poses, List<Integer> body, Set<Integer> fast, Ajar open) {
    Set<Integer> placed = new HashSet<>(fast);
    List<Integer> first = body.stream().filter(fast::contains).toList();
    hang(poses, placed, new ArrayDeque<>(first), open, OPEN);
    for (int p : body) {
      if (!placed.contains(p) && !open.tabs().contains(p)) {
        // A piece that nothing holds yet: as it will be, but off.
        Set<Integer> before = new HashSet<>(placed);
        placed.add(p);
        hang(poses, placed, new ArrayDeque<>(List.of(p)), open, 1);
        Set<Integer> own = new TreeSet<>(placed);
        own.removeAll(before);
        Vec3 off = off(fast, own).times(OFF * reach(body));
        own.forEach(q -> poses.set(q, poses.get(q).then(shift(off))));
      }
    }
  }

  private void hang(
      List<Motion3> poses, Set<Integer> placed, ArrayDeque<Integer> next, Ajar open, double part) {
    while (!next.isEmpty()) {
      int p = next.remove();
      for (int s : scoresOf.get(p)) {
        int q = net.scores().get(s).across(p);
        if (placed.add(q)) {
          boolean isMade = Ajar.isTab(net, q) || open.isWithin(p, q);
          double folded = open.tabs().contains(q) ? TAB : isMade ? 1 : part;
          Motion3 turn = FoldTree.turn(net, s, p, folded * path.angles().foldBy(s));
          poses.set(q, turn.then(poses.get(p)));
          next.add(q);
        }
      }
    }
  }

  private Vec3 off(Set<Integer> from, Set<Integer> own) {
    if (from.isEmpty()) {
      return Vec3.ZERO;
    }
    Vec3 way = middle(own).minus(middle(from));
    return way.length() < 1 ? Vec3.Z : way.unit();
  }

  private Vec3 middle(Set<Integer> panels) {
    Vec3 sum = Vec3.ZERO;
    for (int p : panels) {
      sum = sum.plus(Pinched.middle(net, form, p));
    }
    return sum.times(1.0 / panels.size());
  }

  private double reach(List<Integer> body) {
    List<Vec3> corners = body.stream().flatMap(p -> form.corners(net, p).stream()).toList();
    return corners.stream().mapToDouble(c -> c.distance(corners.getFirst())).max().orElse(0);
  }

  private static Motion3 shift(Vec3 by) {
    return new Motion3(Vec3.X, Vec3.Y, Vec3.Z, by);
  }
}
