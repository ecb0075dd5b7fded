package facetwright.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Work that is counted, stopped and bounded. */
class PaceTest {
  private static int count(AtomicInteger done, int times) {
    for (int i = 0; i < times; i++) {
      Pace.step();
      done.incrementAndGet();
    }
    return times;
  }

  @Test
  void workGoesOnToItsEnd() {
    Pace pace = new Pace(10);
    AtomicInteger done = new AtomicInteger();
    assertThat(pace.<Integer, RuntimeException>of(() -> count(done, 10))).isEqualTo(10);
    assertThat(pace.steps()).isEqualTo(10);
    assertThat(pace.part()).isEqualTo(1);
  }

  @Test
  void itEndsAtItsBoundAndSaysWhatWasTooMuch() {
    Pace pace = new Pace(10);
    AtomicInteger done = new AtomicInteger();
    assertThatThrownBy(
            () ->
                pace.<Integer, RuntimeException>of(
                    () -> {
                      Pace.doing("counting");
                      return count(done, 100);
                    }))
        .isInstanceOf(TooMuch.class)
        .hasMessage(
            "Counting is more work than one paper may take. Fewer openings, panels or pieces take"
                + " less.");
    assertThat(done).hasValue(9);
  }

  @Test
  void itEndsAtTheStepAfterItWasAskedTo() {
    Pace pace = new Pace(1000);
    AtomicInteger done = new AtomicInteger();
    assertThatThrownBy(
            () ->
                pace.<Integer, RuntimeException>of(
                    () -> {
                      count(done, 5);
                      pace.stop();
                      return count(done, 100);
                    }))
        .isInstanceOf(Stopped.class);
    assertThat(done).hasValue(5);
  }

  @Test
  void theEndOfMemoryIsTooMuchToo() {
    Pace pace = new Pace(10);
    assertThatThrownBy(
            () ->
                pace.<Integer, RuntimeException>of(
                    () -> {
                      throw new OutOfMemoryError("as in a paper without end");
                    }))
        .isInstanceOf(TooMuch.class)
        .hasMessage(
            "This takes more memory than there is. Fewer openings, panels or pieces take less.");
  }

  @Test
  void aPaceHasAStepAtLeast() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Pace(0));
  }

  /** As in tests, and where papers are no part of it. */
  @Test
  void withoutAPaceStepsDoNothing() {
    Pace.doing("counting");
    assertThat(count(new AtomicInteger(), 5)).isEqualTo(5);
  }
}
