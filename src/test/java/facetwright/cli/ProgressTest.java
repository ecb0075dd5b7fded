package facetwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.cli.desk.Progress;
import facetwright.pace.Pace;
import facetwright.pace.TooMuch;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Long work of commands: bounded, and told where somebody watches. */
class ProgressTest {
  private final StringWriter told = new StringWriter();

  private Progress progress(boolean isSeen) {
    return new Progress(new PrintWriter(told, true), isSeen, isSeen ? 1 : 1000, 1000);
  }

  @Test
  void quickWorkIsDoneWithoutAWord() {
    Progress patient = new Progress(new PrintWriter(told, true), true, 1_000_000, 1000);
    assertThat(patient.<Integer, RuntimeException>during("Drawing", () -> 7)).isEqualTo(7);
    assertThat(told.toString()).isEmpty();
  }

  @Test
  void workThatIsTooMuchEnds() {
    assertThatThrownBy(
            () ->
                progress(false)
                    .during(
                        "Drawing",
                        () -> {
                          Pace.doing("laying copies on the sheet");
                          while (true) {
                            Pace.step();
                          }
                        }))
        .isInstanceOf(TooMuch.class)
        .hasMessageStartingWith("Laying copies on the sheet is more work than one paper may take.");
  }

  /** It ends only after it was told once. */
  @Test
  void longWorkIsToldAndTheLineCleared() {
    int done =
        progress(true)
            .during(
                "Drawing layout.pdf",
                () -> {
                  Pace.doing("laying copies on the sheet");
                  while (told.getBuffer().isEmpty()) {
                    Thread.onSpinWait();
                  }
                  return 7;
                });
    assertThat(done).isEqualTo(7);
    assertThat(told.toString())
        .contains("Drawing layout.pdf: laying copies on the sheet … 0 s, 0.1 % of what it may take")
        .endsWith("\r\u001b[K");
  }

  @Test
  void lineTellsHowFarItIs() {
    Pace pace = new Pace(200);
    boolean done =
        pace.<Boolean, RuntimeException>of(
            () -> {
              Pace.doing("counting");
              Pace.step(99);
              return true;
            });
    assertThat(done).isTrue();
    assertThat(Progress.line("Drawing a.pdf", pace, 12))
        .isEqualTo("Drawing a.pdf: counting … 12 s, 50 % of what it may take");
  }

  /** A thousandth of the bound is seen to grow, too. */
  @Test
  void littleWorkIsToldInTenths() {
    Pace pace = new Pace(10_000);
    boolean done =
        pace.<Boolean, RuntimeException>of(
            () -> {
              Pace.step(37);
              return true;
            });
    assertThat(done).isTrue();
    assertThat(Progress.line("Drawing a.pdf", pace, 2))
        .isEqualTo("Drawing a.pdf … 2 s, 0.4 % of what it may take");
  }
}
