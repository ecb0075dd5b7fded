package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class AlignedTest {
  @Test
  void whatIsAlikeStandsOnOneHeight() {
    assertThat(Aligned.of("a\nb\nc\nd\n", "a\nx\nc\ny\nd\n"))
        .containsExactly(
            new Aligned.Row("a", "a"),
            new Aligned.Row("b", "x"),
            new Aligned.Row("c", "c"),
            new Aligned.Row(null, "y"),
            new Aligned.Row("d", "d"));
  }

  @Test
  void scriptsThatShareHardlyAnythingAreSetBesideEachOther() {
    String mine = "a\n".repeat(3000);
    String theirs = "b\n".repeat(2500);
    assertThat(Aligned.of(mine, theirs)).hasSize(3000).noneMatch(Aligned.Row::isAlike);
  }

  /** Read down, each side is its script; as many lines are alike as one sequence can have. */
  @Property(tries = 300)
  void bothScriptsAreThereWhole(
      @ForAll @Size(max = 9) List<@CharRange(from = 'a', to = 'd') Character> mine,
      @ForAll @Size(max = 9) List<@CharRange(from = 'a', to = 'd') Character> theirs) {
    List<String> a = mine.stream().map(String::valueOf).toList();
    List<String> b = theirs.stream().map(String::valueOf).toList();
    List<Aligned.Row> rows = Aligned.of(String.join("\n", a), String.join("\n", b));
    assertThat(rows.stream().map(Aligned.Row::mine).filter(Objects::nonNull)).isEqualTo(a);
    assertThat(rows.stream().map(Aligned.Row::theirs).filter(Objects::nonNull)).isEqualTo(b);
    assertThat(rows.stream().filter(Aligned.Row::isAlike).count())
        .isGreaterThanOrEqualTo(common(a, b));
  }

  /** The length of the longest common subsequence, by its definition. */
  private static int common(List<String> a, List<String> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return 0;
    }
    List<String> restA = a.subList(1, a.size());
    List<String> restB = b.subList(1, b.size());
    return a.getFirst().equals(b.getFirst())
        ? common(restA, restB) + 1
        : Math.max(common(restA, b), common(a, restB));
  }
}
