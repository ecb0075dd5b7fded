package facetwright.fold.pose;

import facetwright.geom.Motion3;
import facetwright.net.EdgeRef;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import facetwright.net.Stance;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Whether the card round a corner inside the net can be folded flat, every score right over. Panels
 * with a score between them that stays flat count as one.
 *
 * <p>What it does not tell: whether what hangs on the panels farther out gets in the way.
 *
 * @param corners of the panels round it, counter-clockwise
 * @param sectors the angles between the scores that are folded, in degrees, counter-clockwise
 * @param scores those scores, each after its sector: indices in the net
 * @param senses which way each of them is folded
 * @param first for each sector the place of its first panel among the corners
 * @param isMeant whether the net says that every score there is folded right over, 180°, or stays
 *     flat
 */
public record FlatFolding(
    List<Stance.Corner> corners,
    List<Double> sectors,
    List<Integer> scores,
    List<Sense> senses,
    List<Integer> first,
    boolean isMeant)
    implements Serializable {

  /** So many choices of scores to turn over are tried for a mend. */
  private static final int MOST_TRIED = 5000;

  public FlatFolding {
    corners = List.copyOf(corners);
    sectors = List.copyOf(sectors);
    scores = List.copyOf(scores);
    senses = List.copyOf(senses);
    first = List.copyOf(first);
  }

  /**
   * The angles between the scores taken with signs in turn, summed, in degrees: 0 where it can be
   * folded flat (T. Kawasaki 1989, J. Justin 1986; from memory).
   */
  public double alternating() {
    double sum = 0;
    for (int i = 0; i < sectors.size(); i++) {
      sum += i % 2 == 0 ? sectors.get(i) : -sectors.get(i);
    }
    return sum;
  }

  /**
   * Mountains less valleys: 2 or −2 where it can be folded flat (J. Justin 1986, Maekawa in K.
   * Kasahara and T. Takahama, 1987; from memory).
   */
  public int surplus() {
    return surplus(senses);
  }

  private static int surplus(List<Sense> senses) {
    return 2 * Collections.frequency(senses, Sense.MOUNTAIN) - senses.size();
  }

  /** Whether it can be folded flat with these mountains and valleys. */
  public boolean isPossible() {
    return areAnglesRight() && Math.abs(surplus()) == 2 && stuck().isEmpty();
  }

  /** Whether it can be folded flat with some mountains and valleys, as far as a hand can tell. */
  public boolean areAnglesRight() {
    return areAnglesRight(2 * Crimping.SAME_DEGREES);
  }

  private boolean areAnglesRight(double off) {
    return sectors.size() % 2 == 0 && Math.abs(alternating()) <= off;
  }

  /**
   * Whether it can be folded flat with these mountains and valleys, each sector being off by as
   * much as the card gives.
   *
   * @param radians that a sector may be off
   */
  private boolean isPossible(double radians) {
    return isPossible()
        || (areAnglesRight(sectors.size() * Math.toDegrees(radians))
            && Math.abs(surplus()) == 2
            && stuck().isEmpty());
  }

  /** A corner with other sectors, and so many senses; which scores they are is left open. */
  public FlatFolding with(List<Double> otherSectors, List<Sense> otherSenses) {
    return new FlatFolding(corners, otherSectors, scores, otherSenses, first, isMeant);
  }

  /**
   * A sector that is in the way though angles and numbers are right: it is no wider than its
   * neighbours and has both its scores folded to one side, at once or when smaller ones are folded.
   */
  public OptionalInt stuck() {
    return Crimping.stuck(sectors, senses);
  }

  /**
   * The fewest scores that have to be folded the other way for it to lie flat: places in {@link
   * #scores}. Empty where it lies flat as it is, where no senses help, and where that would take
   * trying too many.
   */
  public List<Integer> toTurn() {
    if (!areAnglesRight() || isPossible()) {
      return List.of();
    }
    int tried = 0;
    for (int few = 1; few <= senses.size() / 2 + 1; few++) {
      for (List<Integer> choice = firstOf(few);
          !choice.isEmpty();
          choice = nextOf(choice, senses.size())) {
        if (tried++ > MOST_TRIED) {
          return List.of();
        }
        List<Sense> turned = new ArrayList<>(senses);
        choice.forEach(i -> turned.set(i, turned.get(i).other()));
        if (Math.abs(surplus(turned)) == 2 && Crimping.stuck(sectors, turned).isEmpty()) {
          return choice;
        }
      }
    }
    return List.of();
  }

  private static List<Integer> firstOf(int few) {
    List<Integer> choice = new ArrayList<>();
    for (int i = 0; i < few; i++) {
      choice.add(i);
    }
    return choice;
  }

  /** The next choice of as many out of n, in order; empty after the last. */
  private static List<Integer> nextOf(List<Integer> choice, int n) {
    int k = choice.size();
    for (int i = k - 1; i >= 0; i--) {
      if (choice.get(i) < n - k + i) {
        List<Integer> next = new ArrayList<>(choice);
        for (int j = i; j < k; j++) {
          next.set(j, choice.get(i) + 1 + j - i);
        }
        return next;
      }
    }
    return List.of();
  }

  /**
   * The corners inside a net that it means to have folded flat, though they can't be.
   *
   * @param poses of its panels, folded
   * @param gives by how much a sector may be off, in radians, because the card bends or a miss is
   *     forgiven; 0 where angles have to be right
   */
  public static List<FlatFolding> locked(Net net, List<Motion3> poses, double gives) {
    if (net.scores().stream().noneMatch(FlatFolding::isRightOver)) {
      return List.of();
    }
    return Vertices.of(net, poses).stream()
        .flatMap(vertex -> at(net, vertex).stream())
        .filter(f -> f.isMeant() && !f.isPossible(gives))
        .toList();
  }

  /** The test at a vertex inside the net; empty for a vertex on its border. */
  public static Optional<FlatFolding> at(Net net, Vertices.Vertex vertex) {
    if (!vertex.interior()) {
      return Optional.empty();
    }
    Map<EdgeRef, Integer> scoreOf = new HashMap<>();
    for (int s = 0; s < net.scores().size(); s++) {
      scoreOf.put(net.scores().get(s).a(), s);
      scoreOf.put(net.scores().get(s).b(), s);
    }
    List<Stance.Corner> round = new ArrayList<>();
    List<Integer> after = new ArrayList<>();
    Stance.Corner corner = vertex.corners().getFirst();
    do {
      round.add(corner);
      // The side that ends in the corner leads to the next panel, counter-clockwise.
      int sides = net.panels().get(corner.panel()).outline().size();
      EdgeRef here = new EdgeRef(corner.panel(), Math.floorMod(corner.corner() - 1, sides));
      after.add(scoreOf.get(here));
      Score score = net.scores().get(after.getLast());
      EdgeRef there = score.a().equals(here) ? score.b() : score.a();
      corner = new Stance.Corner(there.panel(), there.edge());
    } while (!corner.equals(round.getFirst()) && round.size() < vertex.corners().size());
    return Optional.of(between(net, round, after));
  }

  private static FlatFolding between(Net net, List<Stance.Corner> round, List<Integer> after) {
    List<Score> scores = after.stream().map(net.scores()::get).toList();
    boolean meant =
        scores.stream().anyMatch(FlatFolding::isRightOver)
            && scores.stream().allMatch(s -> isRightOver(s) || staysFlat(s));
    // Begin behind a score that is folded, so that no sector is parted by the beginning.
    int begin = 0;
    while (meant && !isRightOver(scores.get(Math.floorMod(begin - 1, round.size())))) {
      begin++;
    }
    List<Double> sectors = new ArrayList<>();
    List<Integer> folded = new ArrayList<>();
    List<Sense> senses = new ArrayList<>();
    List<Integer> first = new ArrayList<>();
    double sector = 0;
    int from = begin;
    for (int k = begin; k < begin + round.size(); k++) {
      int i = k % round.size();
      Stance.Corner at = round.get(i);
      sector += Math.toDegrees(net.panels().get(at.panel()).outline().angle(at.corner()));
      if (!meant || isRightOver(scores.get(i))) {
        sectors.add(sector);
        folded.add(after.get(i));
        senses.add(scores.get(i).sense());
        first.add(from % round.size());
        sector = 0;
        from = k + 1;
      }
    }
    return new FlatFolding(round, sectors, folded, senses, first, meant);
  }

  private static boolean isRightOver(Score score) {
    return score.angle().isRightOver();
  }

  private static boolean staysFlat(Score score) {
    return score.angle() instanceof FoldAngle.Known(double degrees, _) && degrees == 0;
  }
}
