package facetwright.workbench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.worker.Reply;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Dials turned, taken back and turned again. */
class TurnsTest {
  private static Desk desk() {
    Desk desk =
        new Desk(_ -> CompletableFuture.completedFuture(new Reply.Stopped()), Runnable::run);
    desk.lay(null, Work.of("// a script"));
    return desk;
  }

  @Test
  void aDragIsOneStepAndComesBackToTheValueWhereTheHandLetGo() {
    Desk desk = desk();
    desk.turn("wall", "38.5");
    desk.keepTurning(true);
    List.of("38", "37.5", "36", "34.5").forEach(v -> desk.turn("wall", v));
    desk.keepTurning(false);
    desk.turnBack();
    assertThat(desk.settings().get()).isEqualTo(Map.of("wall", "38.5"));
    desk.turnAgain();
    assertThat(desk.settings().get()).isEqualTo(Map.of("wall", "34.5"));
  }

  @Test
  void aDragThatEndsWhereItBeganIsNoStep() {
    Desk desk = desk();
    desk.turn("side", "20");
    desk.turn("wall", "38.5");
    desk.keepTurning(true);
    List.of("38", "38.5").forEach(v -> desk.turn("wall", v));
    desk.keepTurning(false);
    desk.turnBack();
    assertThat(desk.settings().get()).isEqualTo(Map.of("side", "20"));
  }

  @Test
  void aTurnTakenBackInTheMiddleOfADragEndsItsStep() {
    Desk desk = desk();
    desk.keepTurning(true);
    desk.turn("wall", "38");
    desk.turnBack();
    desk.turn("wall", "40");
    desk.turn("wall", "41");
    desk.keepTurning(false);
    desk.turnBack();
    assertThat(desk.settings().get()).isEmpty();
    desk.turnAgain();
    assertThat(desk.settings().get()).isEqualTo(Map.of("wall", "41"));
  }

  private record State(Map<String, String> dials, String script) {
    static State of(Desk desk) {
      return new State(desk.settings().get(), desk.text().get());
    }
  }

  /** The desk against a plain list of states: each step back and again is exact. */
  @Property(tries = 500)
  void backAndAgainAreInverse(@ForAll Random random) {
    Desk desk = desk();
    List<State> states = new ArrayList<>(List.of(State.of(desk)));
    int at = 0;
    for (int i = 0; i < 60; i++) {
      switch (random.nextInt(9)) {
        case 0, 1 -> desk.turn(dial(random), value(random));
        case 2, 3 -> {
          String dragged = dial(random);
          desk.keepTurning(true);
          for (int turns = random.nextInt(8); turns >= 0; turns--) {
            desk.turn(dragged, value(random));
          }
          desk.keepTurning(false);
        }
        case 4 -> desk.release(dial(random));
        case 5 -> {
          Map<String, String> all = new LinkedHashMap<>();
          all.put(dial(random), value(random));
          all.put(dial(random), value(random));
          desk.take(all, random.nextBoolean() ? desk.text().get() : "// script " + i);
        }
        case 6, 7 -> {
          desk.turnBack();
          at = Math.max(0, at - 1);
          assertThat(State.of(desk)).isEqualTo(states.get(at));
          continue;
        }
        default -> {
          desk.turnAgain();
          at = Math.min(states.size() - 1, at + 1);
          assertThat(State.of(desk)).isEqualTo(states.get(at));
          continue;
        }
      }
      // A step that changes nothing is none.
      State now = State.of(desk);
      if (!now.equals(states.get(at))) {
        states = new ArrayList<>(states.subList(0, ++at));
        states.add(now);
      }
    }
    while (at > 0) {
      desk.turnBack();
      assertThat(State.of(desk)).isEqualTo(states.get(--at));
    }
    while (at < states.size() - 1) {
      desk.turnAgain();
      assertThat(State.of(desk)).isEqualTo(states.get(++at));
    }
  }

  private static String dial(Random random) {
    return "abc".substring(random.nextInt(3)).substring(0, 1);
  }

  private static String value(Random random) {
    return String.valueOf(random.nextInt(6));
  }
}
