package facetwright.net.backing;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Motion2;
import facetwright.geom.PartingSides;
import facetwright.geom.Planar;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Backing;
import facetwright.net.EdgeRef;
import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.words.Mend;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;

/**
 * The pieces of paper or film behind the windows of a net. One piece goes behind each window; where
 * those of two windows of a panel would meet, one goes behind both. Each keeps {@link
 * Backing#CLEAR} from the sides of its panel, from holes and other windows, and from tabs glued
 * under the panel along its sides.
 *
 * <p>What it does not see: a panel that laps under another, whose place is known only when folded.
 */
public final class Backings {
  /** The most there is room for is found to so many mm. */
  private static final double NEAR = 1e-7;

  /** The narrowest that a script may ask for, in mm. */
  private static final double NARROWEST = 0.5;

  /** One that is left open goes down by so many mm, so that it is easily measured. */
  private static final double STEP = 0.5;

  /**
   * One piece.
   *
   * @param panel index of the panel behind whose windows it is glued
   * @param outline where it lies in the net, seen from the outside
   * @param overlap how far it reaches past each window at least, in mm
   * @param glued the card it is glued on round its windows, in mm²
   * @param asked what the script asked for
   */
  public record Piece(int panel, Polygon2 outline, double overlap, double glued, Backing asked) {}

  private final Net net;
  private final int panel;
  private final Backing asked;
  private final List<Geometry> inTheWay = new ArrayList<>();

  private Backings(Net net, int panel, Backing asked) {
    this.net = net;
    this.panel = panel;
    this.asked = asked;
    for (Opening o : on().openings()) {
      if (!o.behind().contains(asked)) {
        inTheWay.add(Planar.polygon(o.outline()));
      }
    }
    for (Join join : net.joins()) {
      if (join instanceof Join.Seam(EdgeRef a, EdgeRef b, int tab, _, _)
          && tab != Join.Seam.NO_TAB
          && b.panel() == panel) {
        inTheWay.add(Planar.polygon(underneath(a, b, tab)));
      }
    }
  }

  /** Whether a net has any. */
  public static boolean isAny(Net net) {
    return net.panels().stream()
        .flatMap(p -> p.openings().stream())
        .anyMatch(o -> !o.behind().isEmpty());
  }

  /**
   * All of a net, in the order of its panels. Where a call leaves the overlap open, all its pieces
   * get the same.
   *
   * @throws NetException when there is no room for one; it says how much there is
   */
  public static List<Piece> of(Net net) {
    Map<Backing, List<Backings>> calls = new LinkedHashMap<>();
    for (int p = 0; p < net.panels().size(); p++) {
      int panel = p;
      net.panels().get(p).openings().stream()
          .flatMap(o -> o.behind().stream())
          .distinct()
          .forEach(
              b ->
                  calls
                      .computeIfAbsent(b, _ -> new ArrayList<>())
                      .add(new Backings(net, panel, b)));
    }
    return calls.values().stream()
        .flatMap(panels -> together(panels).stream())
        .sorted(Comparator.comparingInt(Piece::panel))
        .toList();
  }

  /** With the greatest overlap that all of them have room for. */
  private static List<Piece> together(List<Backings> panels) {
    Backing asked = panels.getFirst().asked;
    double least = asked.least() - LengthTolerance.FINE.mm();
    for (double overlap = asked.most(); overlap >= least; overlap -= STEP) {
      double by = overlap;
      List<Optional<List<Piece>>> pieces = panels.stream().map(p -> p.pieces(by)).toList();
      if (pieces.stream().allMatch(Optional::isPresent)) {
        return pieces.stream().flatMap(Optional::stream).flatMap(List::stream).toList();
      }
    }
    throw panels.stream()
        .filter(p -> p.pieces(asked.least()).isEmpty())
        .findFirst()
        .orElseThrow()
        .refused();
  }

  /**
   * What a tab under the panel keeps clear of: an opening, and where there is a backing behind it
   * as much card round it as that needs at least.
   */
  public static Polygon2 kept(Opening opening) {
    return opening.behind().stream()
        .flatMap(b -> BackedWindows.largerBy(opening.outline(), b.least() + Backing.CLEAR).stream())
        .findFirst()
        .orElseGet(opening::outline);
  }

  private Panel on() {
    return net.panels().get(panel);
  }

  /** Where a tab lies in the net when it is folded under the panel that its side meets. */
  private Polygon2 underneath(EdgeRef a, EdgeRef b, int tab) {
    Segment2 carrying = net.segment(a);
    Segment2 meeting = net.segment(b);
    return Motion2.carrying(carrying.from(), carrying.to(), meeting.to(), meeting.from())
        .apply(net.panels().get(tab).outline());
  }

  /** What is glued behind the windows; empty where there is no room for it. */
  private Optional<List<Piece>> pieces(double overlap) {
    List<BackedWindows> groups = new ArrayList<>();
    for (Opening o : on().openings()) {
      if (o.behind().contains(asked)) {
        groups.add(new BackedWindows(on().outline(), List.of(o.outline()), asked));
      }
    }
    List<Piece> made = new ArrayList<>();
    for (int g = 0; g < groups.size(); g++) {
      Optional<Piece> piece = fitting(groups.get(g), overlap);
      if (piece.isEmpty()) {
        return Optional.empty();
      }
      int met = met(piece.get(), made);
      if (met < 0) {
        made.add(piece.get());
      } else {
        // One piece goes behind both; all are made anew.
        groups.set(met, groups.get(met).and(groups.remove(g)));
        made.clear();
        g = -1;
      }
    }
    return Optional.of(made);
  }

  private static int met(Piece piece, List<Piece> made) {
    for (int i = 0; i < made.size(); i++) {
      if (PartingSides.meet(piece.outline, made.get(i).outline)) {
        return i;
      }
    }
    return -1;
  }

  /** The greatest overlap there is room for; empty where there is less than may be asked for. */
  private OptionalDouble most() {
    double fits = 0;
    double not = asked.least();
    while (not - fits > NEAR) {
      double middle = (fits + not) / 2;
      if (pieces(middle).isPresent()) {
        fits = middle;
      } else {
        not = middle;
      }
    }
    return fits >= NARROWEST ? OptionalDouble.of(fits) : OptionalDouble.empty();
  }

  private Optional<Piece> fitting(BackedWindows windows, double overlap) {
    return windows.outlines(overlap).stream()
        .filter(this::isFree)
        .findFirst()
        .map(o -> new Piece(panel, o, overlap, o.area() - windows.area(), asked));
  }

  private boolean isFree(Polygon2 outline) {
    Geometry piece = Planar.polygon(outline);
    double clear = Backing.CLEAR - LengthTolerance.FINE.mm();
    return on().outline().contains(outline.corner(0))
        && Planar.polygon(on().outline()).getExteriorRing().distance(piece) >= clear
        && inTheWay.stream().allMatch(g -> g.distance(piece) >= clear);
  }

  private NetException refused() {
    OptionalDouble most = most();
    Message why =
        Message.of(
            "no backing with an overlap of %s fits behind the windows of %s, %s clear of scores,"
                + " edges, holes and tabs",
            Value.given(asked.least()), Value.name(on().name()), Value.given(Backing.CLEAR));
    if (most.isEmpty()) {
      return new NetException(
          Message.of("%s: there is no room at all; make the window smaller", why), asked.site());
    }
    return new NetException(
        Message.of(
            "%s: there is room for %s; write that overlap, or make the window smaller by %s all"
                + " round",
            why,
            Value.atMost(most.getAsDouble()),
            Value.atLeast(asked.least() - most.getAsDouble())),
        asked.site(),
        asked.least() == asked.most()
            ? List.of(
                new Mend.Length(
                    "overlap", 0, List.of(), asked.least(), most.getAsDouble(), NARROWEST))
            : List.of());
  }
}
