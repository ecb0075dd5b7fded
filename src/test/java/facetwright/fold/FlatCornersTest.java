package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.pose.FlatFolding;
import facetwright.fold.pose.Vertices;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Score;
import facetwright.net.Sense;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** Every assignment of mountains and valleys at one corner, against every order of its layers. */
class FlatCornersTest {
  private static List<Sense> senses(int mask, int n) {
    return IntStream.range(0, n)
        .mapToObj(i -> (mask >> i & 1) == 1 ? Sense.MOUNTAIN : Sense.VALLEY)
        .toList();
  }

  private static FlatFolding at(List<Double> sectors, int mask) {
    int n = sectors.size();
    List<Integer> each = IntStream.range(0, n).boxed().toList();
    return new FlatFolding(List.of(), sectors, each, senses(mask, n), each, true);
  }

  private static void assertAll(List<Double> sectors) {
    Set<Integer> foldable = Layering.foldable(sectors);
    for (int mask = 0; mask < 1 << sectors.size(); mask++) {
      FlatFolding found = at(sectors, mask);
      assertThat(found.isPossible())
          .as("%s, mountains %s", sectors, Integer.toBinaryString(mask))
          .isEqualTo(foldable.contains(mask));
      int turned = mask;
      for (int i : found.toTurn()) {
        turned ^= 1 << i;
      }
      // Who follows the mend is done, wherever the angles allow it at all.
      assertThat(foldable.contains(turned)).as("%s turned", sectors).isEqualTo(!foldable.isEmpty());
    }
  }

  /** Angles in whole degrees whose alternate ones add up to 180. */
  private static List<Double> random(Random chance, int n, int step) {
    List<List<Integer>> halves = new ArrayList<>();
    for (int half = 0; half < 2; half++) {
      List<Integer> cuts = new ArrayList<>(List.of(0, 180));
      while (cuts.size() < n / 2 + 1) {
        int cut = step * (1 + chance.nextInt(180 / step - 1));
        if (!cuts.contains(cut)) {
          cuts.add(cut);
        }
      }
      Collections.sort(cuts);
      halves.add(IntStream.range(0, n / 2).mapToObj(i -> cuts.get(i + 1) - cuts.get(i)).toList());
    }
    return IntStream.range(0, n).mapToObj(i -> (double) halves.get(i % 2).get(i / 2)).toList();
  }

  @Test
  void everyAssignmentOfRandomCorners() {
    Random chance = new Random(1906);
    for (int n : new int[] {4, 4, 4, 4, 4, 4, 6, 6, 6, 6, 6, 6, 6, 6, 8, 8, 8}) {
      assertAll(random(chance, n, 1));
    }
  }

  /** Few different angles, so that many sectors are equal and many scores come to lie together. */
  @Test
  void everyAssignmentOfCornersWithEqualSectors() {
    Random chance = new Random(71);
    for (int n : new int[] {4, 4, 4, 4, 6, 6, 6, 6, 6, 6, 8, 8, 8, 8, 8}) {
      assertAll(random(chance, n, n == 8 ? 30 : 45 - 15 * (n / 6)));
    }
    for (int n : new int[] {2, 4, 6, 8}) {
      assertAll(Collections.nCopies(n, 360.0 / n));
    }
    assertAll(List.of(45.0, 90.0, 135.0, 90.0));
  }

  /**
   * 60°, 100°, 120°, 80°: the smallest needs one of each beside it, which leaves four of the eight
   * that differ by two.
   */
  @Test
  void theStrictlySmallestSectorNeedsOneOfEach() {
    List<Double> sectors = List.of(60.0, 100.0, 120.0, 80.0);
    List<Integer> possible =
        IntStream.range(0, 16).filter(m -> at(sectors, m).isPossible()).boxed().toList();
    assertThat(possible).hasSize(4).allMatch(m -> (m & 1) != (m >> 3 & 1));
    int alike = 0b1011;
    assertThat(at(sectors, alike).surplus()).isEqualTo(2);
    assertThat(at(sectors, alike).isPossible()).isFalse();
    assertThat(at(sectors, alike).stuck()).hasValue(0);
  }

  /** T. Hull, from memory, as the data says: so many assignments of a corner with four scores. */
  @Test
  void publishedCountsOfAssignments() {
    int told = 0;
    for (JsonNode example : FoldTheoremsTest.examples("maekawa-justin")) {
      if (!example.has("countOfValidAssignments")) {
        continue;
      }
      List<Double> sectors = FoldTheoremsTest.numbers(example.get("sectorAnglesDeg"));
      long count =
          IntStream.range(0, 1 << sectors.size()).filter(m -> at(sectors, m).isPossible()).count();
      assertThat(count).isEqualTo(example.get("countOfValidAssignments").asInt());
      told++;
    }
    assertThat(told).isPositive();
  }

  private static FlatFolding ofNet(List<Double> directions, List<Double> angles) {
    return ofNet(directions, angles, directions.size());
  }

  private static FlatFolding ofNet(List<Double> directions, List<Double> angles, int known) {
    Net net = Fan.net(directions, angles, i -> i < known);
    return Vertices.of(net, Folding.fold(net)).stream()
        .flatMap(v -> FlatFolding.at(net, v).stream())
        .findFirst()
        .orElseThrow();
  }

  /** A score that stays flat parts no sector: it may stand anywhere. */
  @Test
  void scoresThatStayFlatPartNothing() {
    List<Double> directions = List.of(0.0, 25.0, 60.0, 160.0, 280.0, 300.0);
    List<Double> angles = List.of(-180.0, 0.0, 180.0, 180.0, 180.0, 0.0);
    FlatFolding found = ofNet(directions, angles);
    assertThat(found.isMeant()).isTrue();
    assertThat(found.sectors()).hasSize(4);
    assertThat(found.isPossible()).isTrue();
    List<Double> alike = List.of(-180.0, 0.0, -180.0, -180.0, 180.0, 0.0);
    assertThat(ofNet(directions, alike).isPossible()).isFalse();
    // A single line right over, with a crossing line that stays flat.
    assertThat(
            ofNet(List.of(0.0, 90.0, 180.0, 270.0), List.of(180.0, 0.0, 180.0, 0.0)).isPossible())
        .isTrue();
    assertThat(
            ofNet(List.of(0.0, 90.0, 200.0, 270.0), List.of(180.0, 0.0, 180.0, 0.0)).isPossible())
        .isFalse();
  }

  /**
   * Scores of 180° whose senses nobody asked for: one assignment that folds is found wherever brute
   * force over all of them finds any, some senses being asked for or none.
   */
  @Test
  void sensesLeftOutAreChosen() {
    Random chance = new Random(4);
    for (int n : new int[] {4, 4, 4, 4, 6, 6}) {
      List<Double> sectors = random(chance, n, 1);
      Map<List<Double>, Set<Integer>> brute = new HashMap<>();
      List<Double> directions = new ArrayList<>();
      double at = 0;
      for (double s : sectors) {
        directions.add(at);
        at += s;
      }
      for (int said : new int[] {0, 0b1, 0b11, (1 << n) - 1}) {
        int mask = chance.nextInt(1 << n);
        Net open = Fan.net(directions, Collections.nCopies(n, 180.0), _ -> true);
        List<Score> scores = new ArrayList<>();
        for (int i = 0; i < n; i++) {
          Score s = open.scores().get(i);
          boolean isSaid = (said >> i & 1) == 1;
          scores.add(
              new Score(
                  s.a(),
                  s.b(),
                  isSaid && (mask >> i & 1) == 0 ? Sense.VALLEY : Sense.MOUNTAIN,
                  isSaid ? FoldAngle.degrees(180) : FoldAngle.degreesEitherWay(180),
                  false,
                  false,
                  s.site()));
        }
        Net net = open.scored(scores);
        Net chosen = FlatSenses.in(net);
        FlatFolding corner =
            Vertices.of(chosen, Folding.fold(chosen)).stream()
                .flatMap(v -> FlatFolding.at(chosen, v).stream())
                .findFirst()
                .orElseThrow();
        Set<Integer> able = brute.computeIfAbsent(corner.sectors(), Layering::foldable);
        boolean isAble = false;
        for (int each = 0; each < 1 << n; each++) {
          List<Sense> senses = new ArrayList<>();
          for (int i = 0; i < n; i++) {
            int score = corner.scores().get(i);
            boolean isSaid = (said >> score & 1) == 1;
            senses.add(
                isSaid
                    ? net.scores().get(score).sense()
                    : (each >> score & 1) == 1 ? Sense.MOUNTAIN : Sense.VALLEY);
          }
          int as = 0;
          for (int i = 0; i < n; i++) {
            as |= senses.get(i) == Sense.MOUNTAIN ? 1 << i : 0;
          }
          isAble |= able.contains(as);
        }
        assertThat(able).isNotEmpty();
        assertThat(corner.isPossible()).as("%s said %s", sectors, said).isEqualTo(isAble);
        for (int i = 0; i < n; i++) {
          if ((said >> i & 1) == 1) {
            assertThat(chosen.scores().get(i).sense()).isEqualTo(net.scores().get(i).sense());
          }
        }
      }
    }
  }

  /** Where another score stands open or is to be found, nothing is said of lying flat. */
  @Test
  void partlyFlatCornersAreNotMeantToLieFlat() {
    List<Double> directions = List.of(0.0, 90.0, 180.0, 270.0);
    assertThat(ofNet(directions, List.of(180.0, 90.0, 180.0, 90.0)).isMeant()).isFalse();
    assertThat(ofNet(directions, List.of(180.0, 180.0, 180.0, -180.0), 3).isMeant()).isFalse();
    assertThat(FoldAngle.degrees(180)).isNotEqualTo(FoldAngle.TO_SOLVE);
    assertThat(ofNet(directions, List.of(0.0, 0.0, 0.0, 0.0)).isMeant()).isFalse();
  }
}
