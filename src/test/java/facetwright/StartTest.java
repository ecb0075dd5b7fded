package facetwright;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class StartTest {
  @Test
  void theWindowIsForThoseWhoNameNoCommandOrOpenAFile() {
    assertThat(Start.asksForWindow(new String[] {})).isTrue();
    assertThat(Start.asksForWindow(new String[] {"open", "mine.js"})).isTrue();
    assertThat(Start.asksForWindow(new String[] {"open"})).isFalse();
    assertThat(Start.asksForWindow(new String[] {"open", "--help"})).isFalse();
    assertThat(Start.asksForWindow(new String[] {"open", "a.js", "b.js"})).isFalse();
    assertThat(Start.asksForWindow(new String[] {"check", "mine.js"})).isFalse();
    assertThat(Start.asksForWindow(new String[] {"--help"})).isFalse();
  }
}
