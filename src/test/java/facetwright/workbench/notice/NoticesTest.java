package facetwright.workbench.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoticesTest {
  private final List<String> done = new ArrayList<>();

  private Notice asking(String about) {
    return new Notice(
        about,
        about + "?",
        "",
        List.of(
            new Notice.Choice("Yes", () -> done.add(about + " yes")),
            new Notice.Choice("No", () -> done.add(about + " no"))));
  }

  @Test
  void theyWaitInARow() {
    Notices notices = new Notices();
    Notice first = asking("a");
    notices.show(first);
    notices.show(asking("b"));
    assertThat(notices.now().get()).isEqualTo(first);
    notices.choose(first.choices().getFirst());
    assertThat(notices.now().get().title()).isEqualTo("b?");
    notices.choose(first.choices().getFirst());
    assertThat(notices.now().get().title()).as("no choice of this one").isEqualTo("b?");
    notices.putAway();
    assertThat(notices.now().get()).isNull();
    notices.putAway();
    assertThat(done).containsExactly("a yes", "b no");
  }

  @Test
  void aNewerOneAboutTheSameTakesThePlace() {
    Notices notices = new Notices();
    notices.show(asking("a"));
    notices.tell("a", "Told", "");
    assertThat(notices.now().get().title()).isEqualTo("Told");
    notices.withdraw("a");
    assertThat(notices.now().get()).isNull();
    assertThat(done).isEmpty();
  }

  @Test
  void oneMustBeAbleToChoose() {
    assertThatThrownBy(() -> new Notice("a", "b", "", List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
