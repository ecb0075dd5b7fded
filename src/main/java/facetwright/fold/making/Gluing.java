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
  /** Heights that differ by less part of the whole count as one. */
  private static final double LEVEL = 0.08;

  /** An edge that climbs by more than this part of its length is upright. */
  private static final double UPRIGHT = 0.7;

  /** How far from right opposite the other of a pair may lie, in radians; the nearest first. */
  private static final List<Double> OPPOSITE = List.of(Math.PI / 18, Math.PI / 3);

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

  /** Where something is glued in the made form. */
  private record Located(Bond bond, Vec3 place, boolean upright) {}

  /** All that is glued of a net, each once. */
  public static List<Stage> of(Net net, FoldedForm form) {
    return new Gluing(net, form).turns();
  }

  /** A panel of what is glued. */
  public static int panel(Net net, Bond bond) {
    return switch (bond) {
      case Bond.Joined(int join) -> panel(net.joins().get(join));
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
      List<Located> joins = new ArrayList<>();
      for (int j = 0; j < net.joins().size(); j++) {
        Join join = net.joins().get(j);
        if (body.contains(panel(join)) && !isPinch(net, join) && join.hold().isGlued()) {
          joins.add(placed(j));
        }
      }
      List<Located> closing = body.stream().filter(this::closes).map(this::closing).toList();
      if (!joins.isEmpty() || !closing.isEmpty()) {
        turns.addAll(body(joins, closing, middle(body)));
      }
      // What takes no glue comes when all of it is glued: it can be opened again.
      for (Hold hold : List.of(Hold.HOOK, Hold.TONGUE, Hold.FLAP, Hold.TUCK)) {
        for (int j = 0; j < net.joins().size(); j++) {
          if (net.joins().get(j).hold() == hold && body.contains(panel(net.joins().get(j)))) {
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
  private Located closing(int tab) {
    Vec2 flat =
        net.scores().stream()
            .filter(s -> s.a().panel() == tab || s.b().panel() == tab)
            .findFirst()
            .map(s -> net.segment(s.a()).middle())
            .orElseGet(() -> net.panels().get(tab).outline().centroid());
    return new Located(new Bond.Closing(tab), form.poses().get(tab).apply(flat), false);
  }

  private List<Stage> body(List<Located> joins, List<Located> closing, Vec3 middle) {
    List<Located> mouths = new ArrayList<>(closing);
    joins.stream().filter(this::isRidge).forEach(mouths::add);
    List<Located> left = new ArrayList<>(joins);
    left.removeAll(mouths);
    List<List<Located>> seams = seams(left);
    seams.forEach(left::removeAll);
    List<Stage> turns = new ArrayList<>();
    seams.forEach(run -> run.forEach(s -> turns.add(new Stage(List.of(s.bond)))));
    Located first =
        !seams.isEmpty()
            ? seams.getFirst().getFirst()
            : joins.isEmpty() ? closing.getFirst() : joins.getFirst();
    double late = azimuth(first.place, middle);
    for (List<Located> level : levels(left)) {
      turns.addAll(round(level, middle, late));
    }
    for (List<Located> opening : levels(mouths)) {
      turns.addAll(round(opening, middle, late));
    }
    return turns;
  }

  /**
   * What closes a wrap, each with its tabs from the table up: a run of tabs of which none that is
   * upright has another upright at its height.
   */
  private List<List<Located>> seams(List<Located> joins) {
    List<List<Located>> levels = levels(joins);
    List<List<Located>> seams = new ArrayList<>();
    for (List<Integer> run : Runs.of(net, joins.stream().map(Gluing::join).toList())) {
      List<Located> own =
          joins.stream()
              .filter(l -> run.contains(join(l)))
              .sorted(Comparator.comparingDouble(l -> l.place.z()))
              .toList();
      List<Located> upright = own.stream().filter(Located::upright).toList();
      boolean isAlone =
          levels.stream()
              .filter(l -> l.stream().anyMatch(upright::contains))
              .allMatch(own::containsAll);
      if (!upright.isEmpty() && isAlone) {
        seams.add(own);
      }
    }
    seams.sort(Comparator.comparingDouble(r -> r.getFirst().place.z()));
    return seams;
  }

  private static int join(Located located) {
    return ((Bond.Joined) located.bond).join();
  }

  /** Whether two fins meet there over an opening: steep panels that hang by no upright score. */
  private boolean isRidge(Located located) {
    return net.joins().get(join(located)) instanceof Join.Lap l
        && Math.abs(form.poses().get(l.over()).ez().z()) < 1 - UPRIGHT
        && !located.upright
        && Faces.isFacing(form, l)
        && net.panels().get(l.under()).role() != PanelRole.GUSSET;
  }

  /** Joins by height from the table up, uprights apart from the others. */
  private static List<List<Located>> levels(List<Located> joins) {
    double low = joins.stream().mapToDouble(j -> j.place.z()).min().orElse(0);
    double high = joins.stream().mapToDouble(j -> j.place.z()).max().orElse(0);
    double step = Math.max(LEVEL * (high - low), 0.5);
    List<Located> rising = new ArrayList<>(joins);
    rising.sort(Comparator.comparingDouble(j -> j.place.z()));
    List<List<Located>> levels = new ArrayList<>();
    for (boolean upright : new boolean[] {true, false}) {
      double last = Double.NEGATIVE_INFINITY;
      for (Located join : rising) {
        if (join.upright == upright) {
          if (join.place.z() > last + step) {
            levels.add(new ArrayList<>());
          }
          levels.getLast().add(join);
          last = join.place.z();
        }
      }
    }
    levels.sort(Comparator.comparingDouble(l -> l.getFirst().place.z()));
    return levels;
  }

  /** Opposite pairs, that with the join nearest to the seam last. */
  private static List<Stage> round(List<Located> level, Vec3 middle, double late) {
    record Two(List<Located> pair, double fromSeam) {}
    List<Located> left = new ArrayList<>(level);
    left.sort(
        Comparator.<Located>comparingDouble(j -> apart(azimuth(j.place, middle), late))
            .thenComparingInt(level::indexOf));
    List<Two> pairs = new ArrayList<>();
    // What lies right opposite is paired first, so that it is not taken by a neighbour's partner.
    for (double slack : OPPOSITE) {
      for (Located one : List.copyOf(left)) {
        double opposite = azimuth(one.place, middle) + Math.PI;
        left.stream()
            .filter(j -> left.contains(one) && apart(azimuth(j.place, middle), opposite) < slack)
            .min(Comparator.comparingDouble(j -> apart(azimuth(j.place, middle), opposite)))
            .ifPresent(
                other -> {
                  left.removeAll(List.of(one, other));
                  pairs.add(new Two(List.of(other, one), apart(azimuth(one.place, middle), late)));
                });
      }
    }
    for (Located one : left) {
      pairs.add(new Two(List.of(one), apart(azimuth(one.place, middle), late)));
    }
    pairs.sort(Comparator.comparingDouble(Two::fromSeam));
    return pairs.reversed().stream()
        .map(t -> new Stage(t.pair.stream().map(Located::bond).toList()))
        .toList();
  }

  private static double azimuth(Vec3 place, Vec3 middle) {
    return Math.atan2(place.y() - middle.y(), place.x() - middle.x());
  }

  private static double apart(double a, double b) {
    return Math.abs(Math.IEEEremainder(a - b, 2 * Math.PI));
  }

  private static int panel(Join join) {
    return switch (join) {
      case Join.Seam s -> s.a().panel();
      case Join.Lap l -> l.under();
    };
  }

  private Located placed(int j) {
    return switch (net.joins().get(j)) {
      case Join.Seam s ->
          new Located(new Bond.Joined(j), at(s.b(), net.segment(s.b()), 0.5), isUpright(s.b()));
      case Join.Lap l ->
          new Located(
              new Bond.Joined(j),
              form.poses().get(l.under()).apply(net.panels().get(l.under()).outline().centroid()),
              hangsUpright(l.under()));
    };
  }

  /** Whether a panel hangs on the others by an upright score. */
  private boolean hangsUpright(int panel) {
    return net.scores().stream()
        .filter(s -> s.a().panel() == panel || s.b().panel() == panel)
        .anyMatch(s -> isUpright(s.a()));
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
