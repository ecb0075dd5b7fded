package facetwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.fold.Card;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Scores round a point that are all to be folded right over and can't: what is advised is done to
 * the letter, with the digits that are printed, and nothing is left to say.
 */
class FoldFlatTest {
  /** Between two leaves, and which: the score after the first of them. */
  private static final String SCORE = "the score between \"leaf (\\d+)\" and \"leaf (\\d+)\"";

  private static final Pattern TURN =
      Pattern.compile(
          "Turn " + SCORE + " about that point by ([\\d.]+)° toward \"leaf (\\d+)\"(.*)\\.");
  private static final Pattern ADD =
      Pattern.compile(
          "Add a score across \"leaf (\\d+)\", from that point, ([\\d.]+)° from "
              + SCORE
              + ": 180°, a (mountain|valley)(.*)\\.");
  private static final Pattern OTHER = Pattern.compile(SCORE + " a (mountain|valley)");

  /** Leaves of these angles in turn, each followed by its score. */
  private record Fan(List<Double> sectors, List<Sense> senses) {
    Fan {
      sectors = new ArrayList<>(sectors);
      senses = new ArrayList<>(senses);
    }

    private int size() {
      return sectors.size();
    }

    List<Finding> found() {
      Card card = new Card();
      List<PanelDraft> leaves = new ArrayList<>();
      double at = 0;
      for (int i = 0; i < size(); i++) {
        Vec2 from = ray(at);
        at += sectors.get(i);
        Vec2 to = ray(i + 1 == size() ? 0 : at);
        leaves.add(card.panel("leaf " + i, 0, 0, from.x(), from.y(), to.x(), to.y()));
      }
      for (int i = 0; i < size(); i++) {
        card.draft.score(
            leaves.get(i).edge(2),
            leaves.get((i + 1) % size()).edge(0),
            senses.get(i),
            FoldAngle.degrees(180),
            card.next());
      }
      return Looks.at(card).stream().filter(f -> f.severity() == Finding.Severity.ERROR).toList();
    }

    private static Vec2 ray(double degrees) {
      return Vec2.polar(40, Math.toRadians(degrees));
    }

    /** The score after a leaf, named by both its leaves. */
    private int after(String one, String two) {
      int a = Integer.parseInt(one);
      int b = Integer.parseInt(two);
      return (a + 1) % size() == b ? a : b;
    }

    private void turn(String words) {
      for (MatchResult m : OTHER.matcher(words).results().toList()) {
        senses.set(after(m.group(1), m.group(2)), sense(m.group(3)));
      }
    }

    private static Sense sense(String word) {
      return Sense.valueOf(word.toUpperCase(Locale.ROOT));
    }

    /** The fan after the advice, read word by word. */
    Fan following(String fix) {
      Fan next = new Fan(sectors, senses);
      Matcher turn = TURN.matcher(fix);
      Matcher add = ADD.matcher(fix);
      if (turn.matches()) {
        next.turn(turn.group(5));
        int i = after(turn.group(1), turn.group(2));
        int toward = Integer.parseInt(turn.group(4));
        double by = Double.parseDouble(turn.group(3)) * (toward == i ? -1 : 1);
        assertThat(toward).isIn(i, (i + 1) % size());
        next.sectors.set(i, sectors.get(i) + by);
        next.sectors.set((i + 1) % size(), sectors.get((i + 1) % size()) - by);
      } else if (add.matches()) {
        next.turn(add.group(6));
        int across = Integer.parseInt(add.group(1));
        double from = Double.parseDouble(add.group(2));
        assertThat(after(add.group(3), add.group(4))).isEqualTo(Math.floorMod(across - 1, size()));
        next.sectors.set(across, sectors.get(across) - from);
        next.sectors.add(across, from);
        next.senses.add(across, sense(add.group(5)));
      } else {
        assertThat(fix).startsWith("Make ");
        next.turn(fix);
      }
      return next;
    }
  }

  private static Fan random(Random chance, int n) {
    List<Double> sectors = new ArrayList<>();
    List<Sense> senses = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sectors.add(1 + chance.nextDouble());
      sum += sectors.getLast();
      senses.add(chance.nextBoolean() ? Sense.MOUNTAIN : Sense.VALLEY);
    }
    double all = sum;
    sectors.replaceAll(s -> 360 * s / all);
    return new Fan(sectors, senses);
  }

  private static void follow(Fan fan) {
    List<Finding> found = fan.found();
    if (found.isEmpty()) {
      return;
    }
    assertThat(found).filteredOn(f -> f.rule().equals("fold-flat")).hasSize(1);
    String message = found.getFirst().message();
    assertThat(message + found.getFirst().fix())
        .doesNotContain("180° and 180°")
        .doesNotContain("less than");
    assertThat(fan.following(found.getFirst().fix()).found())
        .as("%s %s %s", fan, message, found.getFirst().fix())
        .isEmpty();
  }

  @Test
  void anyAnglesAndAnySenses() {
    Random chance = new Random(1797);
    for (int n : new int[] {3, 4, 4, 4, 4, 5, 5, 6, 6, 6, 6, 7, 8, 8, 9}) {
      for (int i = 0; i < 6; i++) {
        follow(random(chance, n));
      }
    }
  }

  /** Angles that are right but for a hair, and those of few widths, many of them equal. */
  @Test
  void nearlyRightAndEqualAngles() {
    List<List<Double>> corners =
        List.of(
            List.of(60.0, 90.0, 120.0, 90.0),
            List.of(90.0, 90.0, 90.0, 90.0),
            List.of(60.0, 60.0, 120.0, 120.0),
            List.of(60.0, 100.0, 120.0, 80.0),
            List.of(60.0, 60.0, 60.0, 60.0, 60.0, 60.0));
    for (List<Double> corner : corners) {
      for (double off : new double[] {0, 0.001, 0.004, 0.01, 0.03, 0.06, 0.3}) {
        for (int mask = 0; mask < 1 << corner.size(); mask++) {
          List<Double> sectors = new ArrayList<>(corner);
          sectors.set(0, corner.get(0) + off);
          sectors.set(1, corner.get(1) - off);
          List<Sense> senses = new ArrayList<>();
          for (int i = 0; i < corner.size(); i++) {
            senses.add((mask >> i & 1) == 1 ? Sense.MOUNTAIN : Sense.VALLEY);
          }
          follow(new Fan(sectors, senses));
        }
      }
    }
  }

  /** Of equal panels none is wider than the others. */
  @Test
  void equalPanelsAreNotCalledWider() {
    Sense m = Sense.MOUNTAIN;
    Sense v = Sense.VALLEY;
    // Three mountains round the two narrow panels side by side.
    Finding found =
        new Fan(List.of(60.0, 60.0, 120.0, 120.0), List.of(m, m, v, m)).found().getFirst();
    assertThat(found.message())
        .endsWith(
            "there are as many mountains and valleys as it takes, 3 and 1, but in this order one"
                + " panel gets in the way of another.");
    Finding narrow =
        new Fan(List.of(60.0, 100.0, 120.0, 80.0), List.of(m, m, v, m)).found().getFirst();
    assertThat(narrow.message()).contains("no room for that between the wider panels beside it");
  }
}
