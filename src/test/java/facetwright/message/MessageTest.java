package facetwright.message;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import facetwright.measure.Length;
import facetwright.measure.Unit;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An inch is exactly 25.4 mm (international yard and pound agreement, 1959). */
class MessageTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          9.525  | 9.53 mm           | 3/8 in               | 0.953 cm
          50.8   | 50.8 mm           | 2 in                 | 5.08 cm
          34.925 | 34.93 mm          | 1 3/8 in             | 3.493 cm
          -12.7  | -12.7 mm          | -1/2 in              | -1.27 cm
          0.2    | 0.2 mm            | 0.008 in (0.2 mm)    | 0.02 cm
          5.08   | 5.08 mm           | 0.2 in (5.08 mm)     | 0.508 cm
          0.001  | less than 0.01 mm | less than 0.001 in   | less than 0.001 cm
          0      | 0 mm              | 0 in                 | 0 cm
          """)
  void lengthsThatWereFound(double mm, String metric, String inches, String centimetres) {
    Message told = Message.of("It is %s long.", Value.length(mm));
    assertThat(told.text(Unit.MM)).isEqualTo("It is " + metric + " long.");
    assertThat(told.text(Unit.INCH)).isEqualTo("It is " + inches + " long.");
    assertThat(told.text(Unit.CM)).isEqualTo("It is " + centimetres + " long.");
  }

  @Test
  void boundsAreRoundedToTheirSafeSideInEveryUnit() {
    assertThat(Message.of("%s", Value.atLeast(5.0801)).text(Unit.MM)).isEqualTo("5.09 mm");
    assertThat(Message.of("%s", Value.atLeast(5.0801)).text(Unit.INCH))
        .isEqualTo("0.201 in (5.09 mm)");
    assertThat(Message.of("%s", Value.atMost(5.0999)).text(Unit.MM)).isEqualTo("5.09 mm");
    assertThat(Message.of("%s", Value.atMost(5.0999)).text(Unit.INCH))
        .isEqualTo("0.2 in (5.09 mm)");
    assertThat(Message.of("%s", Value.atMost(0.01)).text(Unit.INCH))
        .isEqualTo("0.0003 in (0.01 mm)");
    assertThat(Message.of("%s", Value.given(0.01)).text(Unit.INCH))
        .isEqualTo("0.0004 in (0.01 mm)");
    assertThat(Message.of("%s", Value.within(0.0004)).text(Unit.MM)).isEqualTo("0.001 mm");
    assertThat(Message.of("%s", Value.within(0.0004)).text(Unit.INCH)).isEqualTo("0.0001 in");
  }

  /** But for a ruler's mark, which is told where it is off by less than any ruler shows. */
  @Property
  void whoFollowsABoundInInchesIsDone(@ForAll @DoubleRange(min = 0.1, max = 5000) double mm) {
    assertThat(inches(Value.atLeast(mm))).isGreaterThanOrEqualTo(mm - 0.00501);
    assertThat(inches(Value.atMost(mm))).isLessThanOrEqualTo(mm + 0.00501);
  }

  private static double inches(Value value) {
    return Length.parse(value.text(Unit.INCH), Unit.INCH).mm();
  }

  @Test
  void sizesAreToldInOneWay() {
    assertThat(Value.size(304.8, 203.2).text(Unit.INCH)).isEqualTo("12 × 8 in");
    assertThat(Value.size(304.8, 203).text(Unit.INCH)).isEqualTo("12 × 7.992 in");
    assertThat(Message.of("%s", Value.size(304.8, 203)).text(Unit.INCH))
        .isEqualTo("12 × 7.992 in (304.8 × 203 mm)");
  }

  @Test
  void areasAreSquare() {
    Message told = Message.of("They share %s.", Value.area(1234.5));
    assertThat(told.text(Unit.MM)).isEqualTo("They share 1234.5 mm².");
    assertThat(told.text(Unit.CM)).isEqualTo("They share 12.345 cm².");
    assertThat(told.text(Unit.INCH)).isEqualTo("They share 1.913 in² (1234.5 mm²).");
    assertThat(Value.area(0.1).text(Unit.INCH)).isEqualTo("0.1 mm²");
  }

  @Test
  void millimetresStandInBracketsOnce() {
    assertThat(Message.of("(%s off) and %s", Value.length(2), Value.length(2)).text(Unit.INCH))
        .isEqualTo("(0.079 in off) and 0.079 in (2 mm)");
  }

  @Test
  void limitsAndWhatWasGiven() {
    Message told = Message.of("at most %s, not %s", Value.given(5000), Value.given(5000.00004));
    assertThat(told.text(Unit.MM)).isEqualTo("at most 5000 mm, not 5000 mm");
    assertThat(told.text(Unit.INCH))
        .isEqualTo("at most 196.85 in (5000 mm), not 196.85 in (5000 mm)");
    assertThat(Value.limit(14.98501).text(Unit.MM)).isEqualTo("14.985 mm");
    assertThat(Value.rough(12).text(Unit.MM)).isEqualTo("12.0 mm");
  }

  /** What a maker called a thing is never taken for a measure. */
  @Test
  void namesAndOtherValuesReadAlikeInEveryUnit() {
    Message told =
        Message.of(
            "%s: %s, %s of %s", Value.name("48 mm"), Value.angle(12.345), 3, Value.share(0.1234));
    assertThat(told.text(Unit.MM)).isEqualTo("\"48 mm\": 12.35°, 3 of 12.34 %");
    assertThat(told.text(Unit.INCH)).isEqualTo(told.text(Unit.MM));
    assertThat(Value.shareOver(0.00201).text(Unit.MM)).isEqualTo("0.21 %");
    assertThat(Value.foldAngle(30).text(Unit.MM)).isEqualTo("30.0°");
    assertThat(Value.name("lid").made(3).text(Unit.CM)).isEqualTo("\"lid\" (line 3)");
  }

  @Test
  void messagesAreJoinedFlat() {
    Message one = Message.of("%s wide", Value.length(2));
    Message all = Message.join(" and ", List.of(one, Value.length(3))).capital().plus(".");
    assertThat(all.text(Unit.MM)).isEqualTo("2 mm wide and 3 mm.");
    assertThat(Message.of("%s%s%s", "a", "", "b")).isEqualTo(Message.text("ab"));
    assertThat(Message.text("so").plus(".").capital()).isEqualTo(Message.text("So."));
    assertThat(Message.text("")).isEqualTo(Message.EMPTY);
    assertThat(one.with(v -> Value.length(25.4))).hasToString("25.4 mm wide");
  }

  @Test
  void everyPlaceHasItsValue() {
    assertThatIllegalArgumentException().isThrownBy(() -> Message.of("%s and %s", 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Message.of("%s", 1, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> Message.of("%s", 1.5));
  }
}
