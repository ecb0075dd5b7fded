package facetwright.fold;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FlatFolding;
import facetwright.fold.pose.Vertices;
import facetwright.geom.Motion3;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Mountains and valleys for scores that are to be folded right over without anybody having asked
 * which way: such that the card round every corner inside the net lies flat, with as few changes at
 * each corner as that takes, and where there is a choice, such that no layers are in each other's
 * way.
 *
 * <p>What it does not tell: which of several such choices is easiest to fold; and where a corner
 * has more than {@value #MOST_OPEN} scores nobody asked for, or the choices are too many to try, it
 * leaves the net as it is.
 */
public final class FlatSenses {
  private static final int MOST_OPEN = 12;

  /** So many choices are tried at corners, and so many of those that fit all corners are folded. */
  private static final int MOST_TRIED = 20_000;

  private static final int MOST_FOLDED = 16;

  private final Net net;
  private final List<FlatFolding> corners;
  private int tried;
  private int folded;
  private Optional<Net> fits = Optional.empty();

  private FlatSenses(Net net, List<FlatFolding> corners) {
    this.net = net;
    this.corners = corners;
  }

  /** The net with such senses; the same net where nothing is open, or nothing was found. */
  public static Net in(Net net) {
    if (IntStream.range(0, net.scores().size()).noneMatch(s -> isOpen(net, s))) {
      return net;
    }
    List<Motion3> flat = Collections.nCopies(net.panels().size(), Motion3.NONE);
    List<FlatFolding> corners =
        Vertices.of(net, flat).stream()
            .flatMap(v -> FlatFolding.at(net, v).stream())
            .filter(c -> c.isMeant() && c.scores().stream().anyMatch(s -> isOpen(net, s)))
            .toList();
    if (corners.isEmpty()) {
      return net;
    }
    FlatSenses search = new FlatSenses(net, corners);
    return search.from(0, new TreeMap<>()).or(() -> search.fits).orElse(net);
  }

  private static boolean isOpen(Net net, int score) {
    Score s = net.scores().get(score);
    return s.angle().isRightOver() && !s.angle().isSenseSaid();
  }

  /** A net whose corners all lie flat and whose layers do, the senses of some scores chosen. */
  private Optional<Net> from(int corner, Map<Integer, Sense> chosen) {
    if (corner == corners.size()) {
      return clear(chosen);
    }
    FlatFolding at = corners.get(corner);
    List<Integer> places =
        IntStream.range(0, at.scores().size())
            .filter(i -> isOpen(net, at.scores().get(i)))
            .filter(i -> !chosen.containsKey(at.scores().get(i)))
            .boxed()
            .toList();
    if (places.size() > MOST_OPEN) {
      return Optional.empty();
    }
    List<Integer> masks =
        IntStream.range(0, 1 << places.size())
            .boxed()
            .sorted(Comparator.comparingInt(Integer::bitCount))
            .toList();
    for (int mask : masks) {
      if (tried++ > MOST_TRIED || folded >= MOST_FOLDED) {
        return Optional.empty();
      }
      Map<Integer, Sense> with = new TreeMap<>(chosen);
      for (int k = 0; k < places.size(); k++) {
        int score = at.scores().get(places.get(k));
        Sense sense = net.scores().get(score).sense();
        with.put(score, (mask >> k & 1) == 1 ? sense.other() : sense);
      }
      List<Sense> senses = new ArrayList<>(at.senses());
      for (int i = 0; i < senses.size(); i++) {
        senses.set(i, with.getOrDefault(at.scores().get(i), senses.get(i)));
      }
      if (at.with(at.sectors(), senses).isPossible()) {
        Optional<Net> found = from(corner + 1, with);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Net> clear(Map<Integer, Sense> chosen) {
    List<Score> scores = new ArrayList<>(net.scores());
    chosen.forEach((s, sense) -> scores.set(s, scores.get(s).toward(sense)));
    Net with = net.scored(scores);
    fits = fits.or(() -> Optional.of(with));
    folded++;
    return Folding.fold(with).closure() == Closure.IN_ITSELF ? Optional.empty() : Optional.of(with);
  }
}
