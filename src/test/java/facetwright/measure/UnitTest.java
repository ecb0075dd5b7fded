package facetwright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.LengthTolerance;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds of every unit, so that one more is whole when it is in {@link Unit}. */
class UnitTest {
  @ParameterizedTest
  @EnumSource
  void isKnownByItsSymbolAndByNoOther(Unit unit) {
    assertThat(Unit.named(unit.symbol())).contains(unit);
    assertThat(Length.parse("2 " + unit.symbol(), Unit.MM).mm()).isEqualTo(2 * unit.mm());
    assertThat(Length.unit("2", unit)).isEqualTo(unit);
    assertThat(unit.plural()).endsWith("s");
  }

  @ParameterizedTest
  @EnumSource
  void hasItsLikeAndTheOtherSystem(Unit unit) {
    assertThat(unit.counterpart().isMetric()).isNotEqualTo(unit.isMetric());
    assertThat(unit.forLarge().isMetric()).isEqualTo(unit.isMetric());
    assertThat(unit.forLarge().mm()).isGreaterThanOrEqualTo(unit.mm());
    assertThat(unit.forLarge().forLarge()).isEqualTo(unit.forLarge());
  }

  /** The last decimal moves by no more than 0.03 mm and no less than hands can set. */
  @ParameterizedTest
  @EnumSource
  void itsDecimalsAreAsFineAsHandsWork(Unit unit) {
    assertThat(unit.mm() * Math.pow(10, -unit.places())).isBetween(0.005, 0.03);
  }

  @ParameterizedTest
  @EnumSource
  void itsRulersAreReadInItAndNamedSoThatTheyAreFoundAgain(Unit unit) {
    for (Ruler ruler : Ruler.common(unit)) {
      Ruler again = Ruler.parse(ruler.name(), unit);
      assertThat(again.divisionMm()).isEqualTo(ruler.divisionMm());
      assertThat(again.unit().isMetric()).isEqualTo(unit.isMetric());
    }
    assertThat(Ruler.common(unit)).startsWith(Ruler.usual(unit));
    assertThat(Ruler.common()).containsAll(Ruler.common(unit));
    for (Ruler sizes : List.of(Ruler.forSizes(unit), Ruler.atAGlance(unit))) {
      assertThat(sizes.unit()).isEqualTo(unit);
      Ruler.Reading reading = sizes.read(new Length(127));
      assertThat(reading.text()).endsWith(" " + unit.symbol());
      assertThat(Length.parse(reading.text(), Unit.MM)).isEqualTo(reading.length());
      assertThat(Length.parse(reading.typed(), Unit.MM)).isEqualTo(reading.length());
      assertThat(reading.exact(LengthTolerance.FINE)).isTrue();
    }
  }

  /** Who compares units knows how many there are: a new one would be missed there. */
  @Test
  void unitsAreAskedNotCompared() throws IOException {
    Pattern compares = Pattern.compile("[!=]=\\s*Unit\\.(INCH|CM)\\b|case (MM|CM|INCH)\\b");
    Map<String, String> found = new TreeMap<>();
    try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
      for (Path file : all.filter(f -> f.toString().endsWith(".java")).toList()) {
        for (String line : Files.readAllLines(file)) {
          if (compares.matcher(line).find()) {
            found.put(file.toString(), line);
          }
        }
      }
    }
    assertThat(found).isEmpty();
  }
}
