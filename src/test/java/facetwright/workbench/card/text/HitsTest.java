package facetwright.workbench.card.text;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.text.Stretch;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class HitsTest {
  @Test
  void goesRound() {
    Hits hits = Hits.of("Rim rim RIM", "rim", false);
    assertThat(hits.all())
        .containsExactly(new Stretch(0, 3), new Stretch(4, 7), new Stretch(8, 11));
    assertThat(hits.next(3)).isEqualTo(1);
    assertThat(hits.next(9)).isZero();
    assertThat(hits.previous(4)).isZero();
    assertThat(hits.previous(0)).isEqualTo(2);
    assertThat(hits.count(1)).isEqualTo("2 of 3");
    assertThat(Hits.of("Rim rim", "rim", true).all()).hasSize(1);
    assertThat(Hits.of("abc", "", false).next(0)).isEqualTo(-1);
  }

  @Property(seed = "20261125")
  void replacesAsTheLibraryDoes(
      @ForAll @StringLength(max = 30) @CharRange(from = 'a', to = 'c') String text,
      @ForAll @StringLength(min = 1, max = 2) @CharRange(from = 'a', to = 'c') String sought,
      @ForAll @StringLength(max = 3) @CharRange(from = 'a', to = 'd') String by) {
    assertThat(Hits.of(text, sought, true).replaced(text, by)).isEqualTo(text.replace(sought, by));
  }
}
