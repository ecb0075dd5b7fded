package facetwright.draw;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unbroken;
import facetwright.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** No line ends within a measure, and blanks that keep it together are read as blanks. */
class UnbrokenLinesTest {
  private static final Ruler[] RULERS = {Ruler.SIXTEENTHS, Ruler.THIRTY_SECONDS, Ruler.HALF_MM};

  @Property(tries = 300)
  void linesKeepMeasures(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 1, max = 300) Double> lengths,
      @ForAll @IntRange(min = 30, max = 90) int width) {
    List<String> told = new ArrayList<>();
    StringBuilder words = new StringBuilder("Score at");
    for (int i = 0; i < lengths.size(); i++) {
      told.add(RULERS[i % RULERS.length].read(new Length(lengths.get(i))).text());
      words.append(" then ").append(told.getLast());
    }
    List<String> lines = Lettering.wrap(words.toString(), Mark.Weight.REGULAR, 4, width);
    assertThat(String.join(" ", lines)).isEqualTo(words.toString());
    for (String measure : told) {
      assertThat(lines).as(words.toString()).anyMatch(line -> line.contains(measure));
    }
    assertThat(lines).allMatch(l -> Lettering.width(l, Mark.Weight.REGULAR, 4) <= width);
  }

  @Property(tries = 300)
  void readsWhatItSets(@ForAll @DoubleRange(min = -300, max = 300) double mm) {
    for (Ruler ruler : RULERS) {
      Ruler.Reading reading = ruler.read(new Length(mm));
      String set = Unbroken.measures(reading.text());
      assertThat(set).doesNotContain(" ");
      assertThat(Length.parse(set, Unit.CM)).isEqualTo(reading.length());
      assertThat(Unbroken.plain(set)).isEqualTo(reading.text());
    }
  }

  @Test
  void onlyMeasures() {
    assertThat(Unbroken.measures("Step 8 inside 3 instead of 2 minutes, 5 of 6 mmm"))
        .doesNotContain("\u00a0");
    assertThat(Unbroken.measures("60.5 × 40 mm, 1 3/8 in."))
        .isEqualTo("60.5 × 40\u00a0mm, 1\u00a03/8\u00a0in.");
    assertThat(Unbroken.measures("from (3 1/8, 1) in to (41, 59.5) mm, at 1/2, 2 1/2 in"))
        .isEqualTo(
            "from (3\u00a01/8,\u00a01)\u00a0in to (41,\u00a059.5)\u00a0mm, at"
                + " 1/2,\u00a02\u00a01/2\u00a0in");
    // The thin and the narrow one are typed by other programs.
    assertThat(Length.parse("1\u20093/8\u202fin", Unit.MM).mm()).isEqualTo(34.925);
  }
}
