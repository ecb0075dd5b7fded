package facetwright.form;

import facetwright.geom.LengthTolerance;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A plane that a form lies on itself mirrored in: each facet falls on one of the same shape with as
 * many openings. Where the openings lie is not looked at.
 */
public final class Mirror {
  /** Forms of more corners are not asked: finding their mirrors would take too long. */
  private static final int MOST_CORNERS = 150;

  private static final LengthTolerance SAME = LengthTolerance.FINE;

  /** A direction in which hardly two corners of a form made by measures lie level. */
  private static final Vec3 ASKEW = new Vec3(0.5717, 0.6853, 0.4511);

  private final int[] facet;
  private final int[] edge;

  private Mirror(int[] facet, int[] edge) {
    this.facet = facet;
    this.edge = edge;
  }

  /** The facet that a facet falls on. */
  public int facet(int f) {
    return facet[f];
  }

  /** The edge that an edge falls on. */
  public int edge(int e) {
    return edge[e];
  }

  /** The facets that fall on themselves, in their order. */
  public List<Integer> kept() {
    return IntStream.range(0, facet.length).filter(f -> facet[f] == f).boxed().toList();
  }

  /** All mirrors of a form; none of a very large one. */
  public static List<Mirror> of(Form form) {
    return form.corners().size() > MOST_CORNERS ? List.of() : new Finder(form).all();
  }

  private static final class Finder {
    private final Form form;
    private final List<Vec3> corners;
    private final Vec3 middle;
    private final Integer[] sorted;
    private final double[] keys;
    private final int[][] edgeOf;
    private final Map<Long, Integer> facetAlong = new HashMap<>();

    Finder(Form form) {
      this.form = form;
      corners = form.corners();
      middle = corners.stream().reduce(Vec3.ZERO, Vec3::plus).times(1.0 / corners.size());
      sorted = IntStream.range(0, corners.size()).boxed().toArray(Integer[]::new);
      Arrays.sort(sorted, Comparator.comparingDouble(c -> corners.get(c).dot(ASKEW)));
      keys = Arrays.stream(sorted).mapToDouble(c -> corners.get(c).dot(ASKEW)).toArray();
      edgeOf = Sides.edgeOfSide(form);
      for (int f = 0; f < edgeOf.length; f++) {
        List<Integer> round = form.facets().get(f).corners();
        for (int s = 0; s < round.size(); s++) {
          facetAlong.put(along(round.get(s), round.get((s + 1) % round.size())), f);
        }
      }
    }

    private static long along(int from, int to) {
      return ((long) from << Integer.SIZE) | to;
    }

    List<Mirror> all() {
      List<Mirror> found = new ArrayList<>();
      // Corners as far from the middle as each other: of few there are few that one may fall on.
      TreeMap<Long, List<Integer>> shells = new TreeMap<>();
      for (int c = 0; c < corners.size(); c++) {
        double far = corners.get(c).distance(middle);
        if (far > SAME.mm()) {
          shells.computeIfAbsent(Math.round(far * 1000), _ -> new ArrayList<>()).add(c);
        }
      }
      List<Integer> few =
          shells.values().stream().min(Comparator.comparingInt(List::size)).orElseThrow();
      int first = few.getFirst();
      for (int onto : few) {
        if (onto != first) {
          across(first, onto).ifPresent(found::add);
        }
      }
      // Those that leave the first corner where it is: another, off its axis, goes or stays.
      Vec3 axis = corners.get(first).minus(middle);
      IntStream.range(0, corners.size())
          .filter(c -> axis.cross(corners.get(c).minus(middle)).length() > axis.length() * 1e-3)
          .boxed()
          .findFirst()
          .ifPresent(
              second -> {
                in(axis.cross(corners.get(second).minus(middle))).ifPresent(found::add);
                double far = corners.get(second).distance(middle);
                double apart = corners.get(second).distance(corners.get(first));
                for (int onto = 0; onto < corners.size(); onto++) {
                  Vec3 there = corners.get(onto);
                  if (onto != second
                      && SAME.same(there.distance(middle), far)
                      && SAME.same(there.distance(corners.get(first)), apart)) {
                    across(second, onto).ifPresent(found::add);
                  }
                }
              });
      return found;
    }

    private Optional<Mirror> across(int from, int onto) {
      return in(corners.get(onto).minus(corners.get(from)));
    }

    /** The mirror in the plane through the middle square to this, if it is one. */
    private Optional<Mirror> in(Vec3 square) {
      Vec3 normal = square.unit();
      int[] image = new int[corners.size()];
      for (int c = 0; c < image.length; c++) {
        double off = corners.get(c).minus(middle).dot(normal);
        image[c] = at(corners.get(c).minus(normal.times(2 * off)));
        if (image[c] < 0) {
          return Optional.empty();
        }
      }
      int[] facet = new int[form.facets().size()];
      int[] edge = new int[form.edges().size()];
      for (int f = 0; f < facet.length; f++) {
        List<Integer> round = form.facets().get(f).corners();
        facet[f] = FormEdge.NONE;
        for (int s = 0; s < round.size(); s++) {
          int to = image[round.get(s)];
          int from = image[round.get((s + 1) % round.size())];
          int onto = facetAlong.getOrDefault(along(from, to), FormEdge.NONE);
          if (onto == FormEdge.NONE || (s > 0 && onto != facet[f])) {
            return Optional.empty();
          }
          facet[f] = onto;
          edge[edgeOf[f][s]] = edgeOf[onto][form.facets().get(onto).corners().indexOf(from)];
        }
        Facet its = form.facets().get(facet[f]);
        if (its.size() != round.size()
            || its.openings().size() != form.facets().get(f).openings().size()) {
          return Optional.empty();
        }
      }
      return Optional.of(new Mirror(facet, edge));
    }

    /** The corner at a place, or -1. */
    private int at(Vec3 place) {
      double key = place.dot(ASKEW);
      int at = Arrays.binarySearch(keys, key - 2 * SAME.mm());
      for (int i = at < 0 ? -at - 1 : at; i < keys.length && keys[i] < key + 2 * SAME.mm(); i++) {
        if (SAME.same(corners.get(sorted[i]), place)) {
          return sorted[i];
        }
      }
      return -1;
    }
  }
}
