package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.workbench.file.Abridged.Alike;
import facetwright.workbench.file.Abridged.Line;
import facetwright.workbench.file.Abridged.Shown;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class AbridgedTest {
  @Test
  void onlyWhatLiesNearADifferenceShows() {
    String same = "a\n".repeat(20);
    assertThat(Abridged.of(Aligned.of(same + "b\n" + same, same + "c\nd\n" + same), 2))
        .containsExactly(
            new Alike(18),
            new Line(19, 19, new Aligned.Row("a", "a")),
            new Line(20, 20, new Aligned.Row("a", "a")),
            new Line(21, 21, new Aligned.Row("b", "c")),
            new Line(21, 22, new Aligned.Row(null, "d")),
            new Line(22, 23, new Aligned.Row("a", "a")),
            new Line(23, 24, new Aligned.Row("a", "a")),
            new Alike(18));
  }

  /** Every row that differs shows, in order, its numbers right, and no line is left unaccounted. */
  @Property(tries = 500)
  void nothingThatDiffersIsLeftOut(
      @ForAll @Size(max = 40) List<@CharRange(from = 'a', to = 'c') Character> mine,
      @ForAll @Size(max = 40) List<@CharRange(from = 'a', to = 'c') Character> theirs,
      @ForAll @IntRange(min = 0, max = 4) int around) {
    List<Aligned.Row> rows = Aligned.of(lines(mine), lines(theirs));
    List<Aligned.Row> left = new ArrayList<>(rows);
    for (Shown shown : Abridged.of(rows, around)) {
      switch (shown) {
        case Line(int a, int b, Aligned.Row row) -> {
          assertThat(row).isEqualTo(left.removeFirst());
          if (row.mine() != null) {
            assertThat(mine.get(a - 1).toString()).isEqualTo(row.mine());
          }
          if (row.theirs() != null) {
            assertThat(theirs.get(b - 1).toString()).isEqualTo(row.theirs());
          }
        }
        case Alike(int lines) -> {
          assertThat(lines).isGreaterThan(1);
          for (int i = 0; i < lines; i++) {
            assertThat(left.removeFirst().isAlike()).isTrue();
          }
        }
      }
    }
    assertThat(left).isEmpty();
  }

  private static String lines(List<Character> letters) {
    StringBuilder text = new StringBuilder();
    letters.forEach(c -> text.append(c).append('\n'));
    return text.toString();
  }
}
