package facetwright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.LengthTolerance;
import java.io.IOException;
import java.io.InputStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.ObjectMapper;

class LengthTest {
  /** 1 in is 25.4 mm exactly: yard and pound agreement of 1959; NIST SP 811 (2008). */
  @Test
  void theInchIsExact() throws IOException {
    try (InputStream in = LengthTest.class.getResourceAsStream("/standards/standards.json")) {
      assertThat(Unit.INCH.mm())
          .isEqualTo(new ObjectMapper().readTree(in).get("inch").get("mm").asDouble());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          1 7/8 in  | 47.625
          1-7/8     | 47.625
          1 - 7/8 in| 47.625
          7/8"      | 22.225
          15/8 inch | 47.625
          48 mm     | 48
          4.8cm     | 48
          4.8 CM    | 48
          2 inches  | 50.8
          2.5″      | 63.5
          3         | 76.2
          .5 in.    | 12.7
          -1 1/2 in | -38.1
          -3 mm     | -3
          1e2 mm    | 100
          1¼        | 31.75
          1 ¼ in    | 31.75
          1-¼"      | 31.75
          ¾ in      | 19.05
          -⅞        | -22.225
          1⅝”       | 41.275
          1 1⁄4 in  | 31.75
          1 1/4"    | 31.75
          1 1/4''   | 31.75
          1.25in    | 31.75
          1½ mm     | 1.5
          """)
  void whatMakersWrite(String text, double mm) {
    assertThat(Length.parse(text, Unit.INCH).mm()).isCloseTo(mm, within(1e-9));
  }

  @Test
  void plainNumbersTakeTheDesignsUnit() {
    assertThat(Length.parse("48", Unit.MM).mm()).isEqualTo(48);
    assertThat(Length.parse(" 48 ", Unit.CM).mm()).isEqualTo(480);
    assertThat(Length.of(2, Unit.INCH).in(Unit.CM)).isCloseTo(5.08, within(1e-12));
    for (int n = 1; n <= 4096; n++) {
      for (Unit unit : Unit.values()) {
        assertThat(Length.of(n, unit).in(unit)).isEqualTo(n);
        assertThat(Length.of(n / 64.0, unit).in(unit)).isEqualTo(n / 64.0);
      }
    }
    assertThat(Length.of(1 / 3.0, Unit.INCH).in(Unit.INCH)).isCloseTo(1 / 3.0, within(1e-15));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "in", "1 7/8 ft", "1 2 3", "seven", "1//2", "1.5/2 in", "--3"})
  void whatIsNoLengthIsQuoted(String text) {
    assertThatThrownBy(() -> Length.parse(text, Unit.MM))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("\"" + text + "\" is not a length");
  }

  @Test
  void faultsAreNamed() {
    assertThatThrownBy(() -> Length.parse("1/0 in", Unit.MM)).hasMessageContaining("divides by 0");
    assertThatThrownBy(() -> Length.parse("9".repeat(80), Unit.MM)).hasMessageContaining("...");
    assertThatThrownBy(() -> new Length(Double.NaN)).hasMessageContaining("finite");
    assertThatThrownBy(() -> new Ruler(Unit.MM, 0)).hasMessageContaining("1 to 1000");
    assertThatThrownBy(() -> Ruler.MM.read(new Length(1e15))).hasMessageContaining("no ruler");
  }

  @ParameterizedTest
  @CsvSource({
    "47.625,16,1 7/8 in,0",
    "47.625,8,1 7/8 in,0",
    "47.0,16,1 7/8 in,0.625",
    "12.7,32,1/2 in,0",
    "50.8,16,2 in,0",
    "0,16,0 in,0",
    "-47.625,16,-1 7/8 in,0"
  })
  void inchRulersReadFractionsAndTellTheError(double mm, int parts, String text, double error) {
    Ruler.Reading reading = new Ruler(Unit.INCH, parts).read(new Length(mm));
    assertThat(reading.text()).isEqualTo(text);
    assertThat(reading.errorMm()).isCloseTo(error, within(1e-9));
    assertThat(reading.exact(LengthTolerance.FINE)).isEqualTo(error == 0);
  }

  @Test
  void millimetreRulers() {
    assertThat(Ruler.MM.read(new Length(48.4)).text()).isEqualTo("48 mm");
    assertThat(Ruler.HALF_MM.read(new Length(48.4)).text()).isEqualTo("48.5 mm");
    assertThat(Ruler.HALF_MM.divisionMm()).isEqualTo(0.5);
    assertThat(Ruler.MM.read(new Length(48.5)).text()).isEqualTo("49 mm");
    assertThat(Ruler.MM.read(new Length(48.5 - 1e-13)).text()).isEqualTo("49 mm");
    assertThat(Ruler.MM.read(new Length(48.499)).text()).isEqualTo("48 mm");
  }

  @ParameterizedTest
  @CsvSource({
    "5mm, 5 mm, 45 mm, 0.2",
    "2.5 mm, 2.5 mm, 45 mm, 0.2",
    "1cm, 10 mm, 4 cm, -4.8",
    "10 mm, 10 mm, 40 mm, -4.8",
    "0.5 cm, 5 mm, 4.5 cm, 0.2",
    "0.1 cm, 1 mm, 4.5 cm, 0.2",
    "3 mm, 3 mm, 45 mm, 0.2",
    "25 mm, 25 mm, 50 mm, 5.2",
    "12.7 mm, 1/2 in, 2 in, 6",
    "2 in, 2 in, 2 in, 6",
    "0.5 mm, 0.5 mm, 45 mm, 0.2"
  })
  void wideMarksReadTheUnitTheyAreWrittenIn(String text, String name, String reads, double error) {
    Ruler ruler = Ruler.parse(text, Unit.INCH);
    assertThat(ruler.name()).isEqualTo(name);
    assertThat(ruler.read(new Length(44.8)).text()).isEqualTo(reads);
    assertThat(ruler.read(new Length(44.8)).errorMm()).isCloseTo(error, within(1e-9));
    assertThat(ruler.read(new Length(-44.8)).text()).isEqualTo("-" + reads);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1 mm", "0.3 mm", "0.005 mm", "101 mm", "4 1/2 in", "blue", ""})
  void whatIsNoRulerIsToldSo(String text) {
    assertThatThrownBy(() -> Ruler.parse(text, Unit.MM))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("\"" + text + "\" is no ruler: give the distance");
  }

  /** Every ruler that is offered reads as what it is called, so that a choice can be typed. */
  @ParameterizedTest
  @EnumSource(Unit.class)
  void offeredRulersAreWhatTheyAreCalled(Unit unit) {
    assertThat(Ruler.common(unit)).startsWith(Ruler.usual(unit)).doesNotHaveDuplicates();
    for (Ruler ruler : Ruler.common(unit)) {
      assertThat(Ruler.parse(ruler.name(), unit)).isEqualTo(ruler);
    }
    double mm = Ruler.forSizes(unit).divisionMm();
    assertThat(Ruler.atAGlance(unit).divisionMm()).isBetween(mm, 10 * mm);
    assertThat(Ruler.forSizes(unit).unit()).isEqualTo(unit);
  }

  /** A fraction that a length does not lie on is "about": 4.476 in is no 4 1/2 in. */
  @Property(seed = "20261130")
  void whatLiesBetweenTheMarksIsTheOnlyAbout(
      @ForAll @DoubleRange(min = 0, max = 2000) double mm,
      @ForAll @IntRange(min = 0, max = 500) int sixteenths) {
    Length any = new Length(mm);
    assertThat(any.read(Unit.MM)).doesNotContain("about");
    double off = Math.abs(Math.rint(mm / 25.4 * 16) / 16 * 25.4 - mm);
    Assume.that(Math.abs(off - 0.05) > 0.001);
    String mark = Ruler.SIXTEENTHS.read(any).text();
    assertThat(any.read(Unit.INCH)).isEqualTo((off > 0.05 ? "about " : "") + mark);
    assertThat(any.atAGlance(Unit.INCH)).isEqualTo(any.read(Unit.INCH));
    double whole = Math.abs(Math.rint(mm) - mm);
    assertThat(any.atAGlance(Unit.MM).startsWith("about ")).isEqualTo(whole > 0.0501);
    Length marked = Length.of(sixteenths / 16.0, Unit.INCH);
    assertThat(marked.read(Unit.INCH)).isEqualTo(Ruler.SIXTEENTHS.read(marked).text());
    assertThat(Length.of(4.476, Unit.INCH).read(Unit.INCH)).isEqualTo("about 4 1/2 in");
  }

  @Property(seed = "20261125")
  void aReadingIsTheNearestAndReadsBack(
      @ForAll @DoubleRange(min = -2000, max = 2000) double mm,
      @ForAll @IntRange(min = 1, max = 5) int power,
      @ForAll boolean inches) {
    Ruler ruler = new Ruler(inches ? Unit.INCH : Unit.MM, inches ? 1 << power : power);
    Ruler.Reading reading = ruler.read(new Length(mm));
    assertThat(Math.abs(reading.errorMm())).isLessThanOrEqualTo(ruler.divisionMm() / 2 + 1e-9);
    assertThat(Length.parse(reading.text(), Unit.CM).mm())
        .isCloseTo(reading.length().mm(), within(2e-4));
  }
}
