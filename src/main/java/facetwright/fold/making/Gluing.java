package facetwright.fold.making;

import facetwright.fold.pose.FoldedForm;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Join.Hold;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The order in which a form is glued. Body by body; first the seam that closes a wrap, all its tabs
 * one after the other, then what is left from the table up, last what closes an opening, tabs that
 * fold over it or fins that meet, one opening after the other from the table up. What lies at one
 * height goes round in opposite pairs, so that pulls even out, and what lies nearest to the seam
 * comes last (common practice, no source). Edges of gussets that only meet because they are pinched
 * take no glue and are not told.
 *
 * <p>What it does not tell: whether a hand still reaches inside. The last joins of a closed form
 * are always the hardest.
 */
public final class Gluing {
  /** An edge that climbs by more than this part of its length is upright. */
  private static final double UPRIGHT = 0.7;

  private final Net net;
  private final FoldedForm form;

  private Gluing(Net net, FoldedForm form) {
    this.net = net;
    this.form = form;
  }

  /**
   * What is glued in one go: a pair that lies opposite, or a single one.
   *
   * @param bonds one or two
   */
  public record Stage(List<Bond> bonds) {
    public Stage {
      bonds = List.copyOf(bonds);
    }
  }

  /** All that is glued of a net, each once. */
  static List<Stage> of(Net net, FoldedForm form) {
    return new Gluing(net, form).turns();
  }

  /** A panel of what is glued. */
  public static int panel(Net net, Bond bond) {
    return switch (bond) {
      case Bond.Joined(int join) -> net.joins().get(join).from();
      case Bond.Closing(int tab) -> tab;
    };
  }

  /** All that is glued, in order: the first has number 1. */
  public static List<Bond> numbered(List<Stage> turns) {
    return turns.stream().flatMap(t -> t.bonds().stream()).toList();
  }

  /** Whether two edges of gussets meet there because they are pinched. */
  public static boolean isPinch(Net net, Join join) {
    return join instanceof Join.Seam s
        && s.tab() == Join.Seam.NO_TAB
        && net.panels().get(s.a().panel()).role() == PanelRole.GUSSET
        && net.panels().get(s.b().panel()).role() == PanelRole.GUSSET;
  }

  private List<Stage> turns() {
    List<Stage> turns = new ArrayList<>();
    for (List<Integer> body : Bodies.of(net)) {
      List<Rounds.Located> joins = new ArrayList<>();
      for (int j = 0; j < net.joins().size(); j++) {
        Join join = net.joins().get(j);
        if (body.contains(join.from()) && !isPinch(net, join) && join.hold().isGlued()) {
          joins.add(placed(j));
        }
      }
      List<Rounds.Located> closing = body.stream().filter(this::closes).map(this::closing).toList();
      if (!joins.isEmpty() || !closing.isEmpty()) {
        turns.addAll(body(joins, closing, middle(body)));
      }
      // What takes no glue comes when all of it is glued: it can be opened again.
      for (Hold hold : List.of(Hold.HOOK, Hold.LATCH, Hold.TONGUE, Hold.FLAP, Hold.TUCK)) {
        for (int j = 0; j < net.joins().size(); j++) {
          if (net.joins().get(j).hold() == hold && body.contains(net.joins().get(j).from())) {
            turns.add(new Stage(List.of(new Bond.Joined(j))));
          }
        }
      }
    }
    return List.copyOf(turns);
  }

  /** Whether a panel is a tab that no join names. */
  private boolean closes(int panel) {
    return net.panels().get(panel).role() == PanelRole.TAB
        && net.joins().stream()
            .noneMatch(
                j ->
                    switch (j) {
                      case Join.Seam s -> s.tab() == panel;
                      case Join.Lap l -> l.under() == panel || l.over() == panel;
                    });
  }

  /** A tab's place is the middle of the score on which it hangs. */
  private Rounds.Located closing(int tab) {
    Vec2 flat =
        net.scores().stream()
            .filter(s -> s.isOf(tab))
            .findFirst()
            .map(s -> net.segment(s.a()).middle())
            .orElseGet(() -> net.panels().get(tab).outline().centroid());
    return new Rounds.Located(new Bond.Closing(tab), form.poses().get(tab).apply(flat), false);
  }

  private List<Stage> body(List<Rounds.Located> joins, List<Rounds.Located> closing, Vec3 middle) {
    List<Rounds.Located> mouths = new ArrayList<>(closing);
    joins.stream().filter(this::isRidge).forEach(mouths::add);
    List<Rounds.Located> left = new ArrayList<>(joins);
    left.removeAll(mouths);
    List<List<Rounds.Located>> seams = seams(left);
    seams.forEach(left::removeAll);
    List<Stage> turns = new ArrayList<>();
    seams.forEach(run -> run.forEach(s -> turns.add(new Stage(List.of(s.bond())))));
    Rounds.Located first =
        !seams.isEmpty()
            ? seams.getFirst().getFirst()
            : joins.isEmpty() ? closing.getFirst() : joins.getFirst();
    double late = Rounds.azimuth(first.place(), middle);
    for (List<Rounds.Located> level : Rounds.levels(left)) {
      turns.addAll(Rounds.round(level, middle, late));
    }
    for (List<Rounds.Located> opening : Rounds.levels(mouths)) {
      turns.addAll(Rounds.round(opening, middle, late));
    }
    return turns;
  }

  /**
   * What closes a wrap, each with its tabs from the table up: a run of tabs of which none that is
   * upright has another upright at its height.
   */
  private List<List<Rounds.Located>> seams(List<Rounds.Located> joins) {
    List<List<Rounds.Located>> levels = Rounds.levels(joins);
    List<List<Rounds.Located>> seams = new ArrayList<>();
    for (List<Integer> run : Runs.of(net, joins.stream().map(Gluing::join).toList())) {
      List<Rounds.Located> own =
          joins.stream()
              .filter(l -> run.contains(join(l)))
              .sorted(Comparator.comparingDouble(l -> l.place().z()))
              .toList();
      List<Rounds.Located> upright = own.stream().filter(Rounds.Located::upright).toList();
      boolean isAlone =
          levels.stream()
              .filter(l -> l.stream().anyMatch(upright::contains))
              .allMatch(own::containsAll);
      if (!upright.isEmpty() && isAlone) {
        seams.add(own);
      }
    }
    seams.sort(Comparator.comparingDouble(r -> r.getFirst().place().z()));
    return seams;
  }

  private static int join(Rounds.Located located) {
    return ((Bond.Joined) located.bond()).join();
  }

  /** Whether two fins meet there over an opening: steep panels that hang by no upright score. */
  private boolean isRidge(Rounds.Located located) {
    return net.joins().get(join(located)) instanceof Join.Lap l
        && Math.abs(form.poses().get(l.over()).ez().z()) < 1 - UPRIGHT
        && !located.upright()
        && Faces.isFacing(form, l)
        && net.panels().get(l.under()).role() != PanelRole.GUSSET;
  }

  private Rounds.Located placed(int j) {
    return switch (net.joins().get(j)) {
      case Join.Seam s ->
          new Rounds.Located(
              new Bond.Joined(j), at(s.b(), net.segment(s.b()), 0.5), isUpright(s.b()));
      case Join.Lap l ->
          new Rounds.Located(
              new Bond.Joined(j),
              form.poses().get(l.under()).apply(net.panels().get(l.under()).outline().centroid()),
              hangsUpright(l.under()));
    };
  }

  /** Whether a panel hangs on the others by an upright score. */
  private boolean hangsUpright(int panel) {
    return net.scores().stream().filter(s -> s.isOf(panel)).anyMatch(s -> isUpright(s.a()));
  }

  private boolean isUpright(EdgeRef ref) {
    Segment2 side = net.segment(ref);
    Vec3 from = at(ref, side, 0);
    Vec3 to = at(ref, side, 1);
    return Math.abs(to.z() - from.z()) > UPRIGHT * from.distance(to);
  }

  private Vec3 at(EdgeRef ref, Segment2 side, double part) {
    return form.poses().get(ref.panel()).apply(side.from().toward(side.to(), part));
  }

  /** The middle of the panels that are seen; tabs, which lie to one side, would draw it aside. */
  private Vec3 middle(List<Integer> panels) {
    List<Integer> seen =
        panels.stream().filter(p -> net.panels().get(p).role() != PanelRole.TAB).toList();
    Vec3 sum = Vec3.ZERO;
    for (int p : seen) {
      sum = sum.plus(form.poses().get(p).apply(net.panels().get(p).outline().centroid()));
    }
    return sum.times(1.0 / seen.size());
  }
}
