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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is done to script and dials, taken back and done again, in one order. */
class StoryTest {
  private static Desk desk() {
    Desk desk =
        new Desk(_ -> CompletableFuture.completedFuture(new Reply.Stopped()), Runnable::run);
    desk.lay(null, Work.of("// a script"), Work.of("// a script"));
    return desk;
  }

  /** Types letter by letter at a place, as a hand does. */
  private static void type(Desk desk, int at, String letters) {
    for (int i = 0; i < letters.length(); i++) {
      write(desk, new Change(at + i, "", letters.substring(i, i + 1)));
    }
  }

  private static void takeAway(Desk desk, int at) {
    write(desk, new Change(at, desk.text().get().substring(at, at + 1), ""));
  }

  private static void write(Desk desk, Change change) {
    desk.write(change.in(desk.text().get()), change);
  }

  private static void write(Desk desk, String text) {
    desk.write(text, Change.between(desk.text().get(), text));
  }

  private static List<String> textsBack(Desk desk, int steps) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      desk.undo();
      texts.add(desk.text().get());
    }
    return texts;
  }

  @Test
  void aDragIsOneStepAndComesBackToTheValueWhereTheHandLetGo() {
    Desk desk = desk();
    desk.turn("wall", "38.5");
    desk.hold(true);
    List.of("38", "37.5", "36", "34.5").forEach(v -> desk.turn("wall", v));
    desk.hold(false);
    desk.undo();
    assertThat(desk.settings().get()).isEqualTo(Map.of("wall", "38.5"));
    desk.redo();
    assertThat(desk.settings().get()).isEqualTo(Map.of("wall", "34.5"));
  }

  @Test
  void aDragThatEndsWhereItBeganIsNoStep() {
    Desk desk = desk();
    desk.turn("side", "20");
    desk.turn("wall", "38.5");
    desk.hold(true);
    List.of("38", "38.5").forEach(v -> desk.turn("wall", v));
    desk.hold(false);
    desk.undo();
    assertThat(desk.settings().get()).isEqualTo(Map.of("side", "20"));
  }

  @Test
  void aTurnTakenBackInTheMiddleOfADragEndsItsStep() {
    Desk desk = desk();
    desk.hold(true);
    desk.turn("wall", "38");
    desk.undo();
    desk.turn("wall", "40");
    desk.turn("wall", "41");
    desk.hold(false);
    desk.undo();
    assertThat(desk.settings().get()).isEmpty();
    desk.redo();
    assertThat(desk.settings().get()).isEqualTo(Map.of("wall", "41"));
  }

  @Test
  void lettersAreTakenBackWordByWordAndDialsInTheirOrderAmongThem() {
    Desk desk = desk();
    type(desk, 11, " for the");
    desk.turn("wall", "40");
    type(desk, 19, " quay");
    assertThat(textsBack(desk, 2)).containsExactly("// a script for the ", "// a script for the");
    assertThat(desk.settings().get()).isEqualTo(Map.of("wall", "40"));
    desk.undo();
    assertThat(desk.settings().get()).isEmpty();
    assertThat(textsBack(desk, 3))
        .containsExactly("// a script for ", "// a script ", "// a script");
    for (int i = 0; i < 6; i++) {
      desk.redo();
    }
    assertThat(desk.work()).isEqualTo(new Work("// a script for the quay", Map.of("wall", "40")));
  }

  /** Which of two like letters is the one just typed can't be told from the texts. */
  @ParameterizedTest
  @ValueSource(strings = {"a script", "aaa", "script", "aab", " a", "ss"})
  void aWordTypedBeforeItsOwnLettersIsOneStep(String word) {
    Desk desk = desk();
    type(desk, 11, "\n");
    for (int at : new int[] {3, 5, 9, 11}) {
      String before = desk.text().get();
      desk.endStep();
      type(desk, at, word.strip());
      int steps = word.strip().split(" ").length;
      assertThat(textsBack(desk, steps).getLast()).as("at %d", at).isEqualTo(before);
    }
  }

  @Test
  void elsewhereOrOnTheNextLineIsAnotherStep() {
    Desk desk = desk();
    type(desk, 11, "s\nab");
    type(desk, 2, "!");
    takeAway(desk, 15);
    takeAway(desk, 14);
    assertThat(textsBack(desk, 5))
        .containsExactly(
            "//! a scripts\nab",
            "// a scripts\nab",
            "// a scripts\n",
            "// a scripts",
            "// a script");
  }

  @Test
  void lettersTakenAwayOneAfterAnotherComeBackTogether() {
    Desk desk = desk();
    for (int at = 10; at >= 8; at--) {
      takeAway(desk, at);
    }
    takeAway(desk, 3);
    takeAway(desk, 3);
    assertThat(textsBack(desk, 2)).containsExactly("// a scr", "// a script");
  }

  @Test
  void whatIsPastedMendedOrEndedIsAStepOfItsOwn() {
    Desk desk = desk();
    type(desk, 11, "a");
    write(desk, "// a scriptabcd");
    type(desk, 15, "e");
    desk.endStep();
    type(desk, 16, "f");
    desk.text().set("// a scriptabcdefg");
    type(desk, 18, "h");
    assertThat(textsBack(desk, 6))
        .containsExactly(
            "// a scriptabcdefg",
            "// a scriptabcdef",
            "// a scriptabcde",
            "// a scriptabcd",
            "// a scripta",
            "// a script");
  }

  @Test
  void anotherScriptHasAnotherStory() {
    Desk desk = desk();
    type(desk, 0, "x");
    desk.turn("wall", "40");
    desk.lay(
        null, new Work("// other", Map.of("side", "3")), new Work("// other", Map.of("side", "3")));
    desk.undo();
    desk.redo();
    assertThat(desk.work()).isEqualTo(new Work("// other", Map.of("side", "3")));
  }

  /** The desk against a plain list of states: each step back and again is exact. */
  @Property(tries = 500)
  void backAndAgainAreInverse(@ForAll Random random) {
    Desk desk = desk();
    List<Work> states = new ArrayList<>(List.of(desk.work()));
    int at = 0;
    for (int i = 0; i < 60; i++) {
      switch (random.nextInt(12)) {
        case 0, 1 -> desk.turn(dial(random), value(random));
        case 2, 3 -> {
          String dragged = dial(random);
          desk.hold(true);
          for (int turns = random.nextInt(8); turns >= 0; turns--) {
            desk.turn(dragged, value(random));
          }
          desk.hold(false);
        }
        case 4 -> desk.release(dial(random));
        case 5 -> {
          Map<String, String> all = new LinkedHashMap<>();
          all.put(dial(random), value(random));
          all.put(dial(random), value(random));
          desk.take(all, random.nextBoolean() ? desk.text().get() : "// script " + i);
        }
        case 6 -> {
          desk.endStep();
          write(desk, changed(desk.text().get(), random));
        }
        case 7 -> desk.text().set(changed(desk.text().get(), random));
        case 8 -> {
          desk.hold(true);
          for (int turns = random.nextInt(8); turns >= 0; turns--) {
            write(desk, changed(desk.text().get(), random));
          }
          desk.hold(false);
        }
        case 9, 10 -> {
          desk.undo();
          at = Math.max(0, at - 1);
          assertThat(desk.work()).isEqualTo(states.get(at));
          continue;
        }
        default -> {
          desk.redo();
          at = Math.min(states.size() - 1, at + 1);
          assertThat(desk.work()).isEqualTo(states.get(at));
          continue;
        }
      }
      // A step that changes nothing is none.
      if (!desk.work().equals(states.get(at))) {
        states = new ArrayList<>(states.subList(0, ++at));
        states.add(desk.work());
      }
    }
    while (at > 0) {
      desk.undo();
      assertThat(desk.work()).isEqualTo(states.get(--at));
    }
    while (at < states.size() - 1) {
      desk.redo();
      assertThat(desk.work()).isEqualTo(states.get(++at));
    }
  }

  /** However letters are typed and taken, enough steps back lead through texts that were. */
  @Property(tries = 300)
  void typingComesBackThroughWhatWas(@ForAll Random random) {
    Desk desk = desk();
    List<Work> all = new ArrayList<>(List.of(desk.work()));
    for (int i = 0; i < 80; i++) {
      int at = random.nextInt(desk.text().get().length() + 1);
      switch (random.nextInt(4)) {
        case 0 -> type(desk, at, "ab cd\n".substring(random.nextInt(6)));
        case 1 -> desk.turn(dial(random), value(random));
        case 2 -> write(desk, changed(desk.text().get(), random));
        default -> {
          for (int b = at; b > Math.max(0, at - 3); b--) {
            takeAway(desk, b - 1);
          }
        }
      }
      all.add(desk.work());
    }
    Work last = desk.work();
    int steps = 0;
    for (Work was = null; !desk.work().equals(was); steps++) {
      was = desk.work();
      desk.undo();
    }
    assertThat(desk.work()).isEqualTo(all.getFirst());
    for (int i = 0; i < steps; i++) {
      desk.redo();
    }
    assertThat(desk.work()).isEqualTo(last);
  }

  private static String changed(String text, Random random) {
    int from = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), from + random.nextInt(4));
    String put = "aab\n ".substring(random.nextInt(5));
    return text.substring(0, from) + put + text.substring(to);
  }

  private static String dial(Random random) {
    return "abc".substring(random.nextInt(3)).substring(0, 1);
  }

  private static String value(Random random) {
    return String.valueOf(random.nextInt(6));
  }
}
