package facetwright.aim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.measure.Quantity;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.SheetSizes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Goals and rulers as people type them, and values as they are told to type them. */
class WordsTest {

  /** An inch is 25.4 mm (1959 agreement); a millilitre is a cubic centimetre (SI brochure). */
  @ParameterizedTest
  @CsvSource({
    "height=120, MM, HEIGHT, 120",
    "Height = 4 3/4 in, MM, HEIGHT, 120.65",
    "width=2, INCH, WIDTH, 50.8",
    "depth=3cm, INCH, DEPTH, 30",
    "volume=250ml, MM, VOLUME, 250000",
    "volume=250, CM, VOLUME, 250000",
    "volume=1 in³, MM, VOLUME, 16387.064",
    "volume=2.5e5 mm3, INCH, VOLUME, 250000",
    "area=300 cm2, MM, AREA, 30000",
    "area=2, INCH, AREA, 1290.32",
    "gap=0, MM, GAP, 0"
  })
  void goalsAreRead(String text, Unit unit, Measure measure, double wanted) {
    assertThat(GoalReader.read(text, unit))
        .isInstanceOfSatisfying(
            Goal.Reach.class,
            g -> {
              assertThat(g.measure()).isEqualTo(measure);
              assertThat(g.wanted()).isCloseTo(wanted, within(1e-9 * Math.max(1, wanted)));
            });
  }

  @ParameterizedTest
  @CsvSource({
    "Letter, MM, 215.9, 279.4",
    "12x12, MM, 304.8, 304.8",
    "200 x 300, MM, 200, 300",
    "8 1/2 x 11 in, MM, 215.9, 279.4",
    "8 x 10, INCH, 203.2, 254",
    "20cm x 300 mm, INCH, 200, 300"
  })
  void sheetsAreRead(String text, Unit unit, double width, double height) {
    SheetSize sheet = SheetSizes.read(text, unit);
    assertThat(sheet.width()).isCloseTo(width, within(1e-9));
    assertThat(sheet.height()).isCloseTo(height, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "heigth=3|Did you mean height",
        "height|such as height=120",
        "height=tall|is not a length",
        "height=-3|over 0",
        "height=0|over 0",
        "volume=3 cm2|is not a volume",
        "area=3 ml|is not an area",
        "area=nothing|is not an area",
        "gap=2|only 0 makes sense",
        "fits=Leter|did you mean Letter",
        "fits=3 x x|no sheet is called",
      })
  void wrongGoalsAreExplained(String text, String told) {
    assertThatThrownBy(() -> GoalReader.read(text, Unit.MM))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(told);
  }

  @Test
  void rulersAreRead() {
    assertThat(Grid.read("1/16in", Unit.MM)).isEqualTo(new Grid.Marks(Ruler.SIXTEENTHS, false));
    assertThat(Grid.read("0.5 mm", Unit.INCH)).isEqualTo(new Grid.Marks(Ruler.HALF_MM, false));
    assertThat(Grid.read("1/8", Unit.INCH)).isEqualTo(new Grid.Marks(Ruler.EIGHTHS, false));
    assertThat(Grid.read("none", Unit.MM)).isEqualTo(Grid.none());
    assertThatThrownBy(() -> Grid.read("fine", Unit.MM)).hasMessageContaining("1/16 in");
    assertThatThrownBy(() -> Grid.read("0", Unit.MM)).hasMessageContaining("1/16 in");
    assertThatThrownBy(() -> Grid.read("0.3 mm", Unit.MM)).hasMessageContaining(", or none");
  }

  /** What is typed is the value itself, read by the rules for lengths. */
  @Test
  void valuesAreToldAsTheyAreTyped() {
    Grid inches = Grid.usual(Unit.INCH);
    Knob tall = new Knob("tall", Quantity.LENGTH, 1, 1, 3, 0);
    assertThat(inches.typed(tall, Unit.INCH, 1.4375)).isEqualTo("1-7/16");
    assertThat(inches.typed(tall, Unit.INCH, 0.9375)).isEqualTo("15/16");
    assertThat(inches.typed(tall, Unit.INCH, 2)).isEqualTo("2");
    assertThat(inches.typed(tall, Unit.INCH, 1.43)).isEqualTo("1.43");
    Knob plain = new Knob("angle", Quantity.NUMBER, 1, 1, 30, 0);
    assertThat(inches.typed(plain, Unit.INCH, 1.4375)).isEqualTo("1.4375");
    assertThat(new Grid.Marks(Ruler.HALF_MM, false).typed(tall, Unit.INCH, 50.5 / 25.4))
        .isEqualTo("50.5mm");
    assertThat(Grid.usual(Unit.MM).typed(tall, Unit.MM, 62.5)).isEqualTo("62.5");
  }

  @Test
  void aDialNarrowerThanTheRulerGoesByFinerMarks() {
    Grid inches = Grid.usual(Unit.INCH);
    assertThat(inches.apart(new Knob("slip", Quantity.LENGTH, 0.03, 0.02, 0.1, 0), Unit.INCH))
        .isEqualTo(1.0 / 64);
    assertThat(inches.apart(new Knob("tall", Quantity.LENGTH, 1, 1, 3, 0), Unit.INCH))
        .isEqualTo(1.0 / 16);
    assertThat(inches.apart(new Knob("sides", Quantity.NUMBER, 6, 6, 12, 2), Unit.INCH))
        .isEqualTo(2);
    // A proportion from 0.3 to 0.9 holds no half millimetres worth the name.
    assertThat(
            Grid.usual(Unit.MM).apart(new Knob("part", Quantity.NUMBER, 0.5, 0.3, 0.9, 0), Unit.MM))
        .isEqualTo(0.001);
    assertThat(Grid.usual(Unit.MM).apart(new Knob("wall", Quantity.NUMBER, 50, 30, 90, 0), Unit.MM))
        .isEqualTo(0.5);
    assertThat(Grid.usual(Unit.MM).apart(new Knob("side", Quantity.NUMBER, 27, 25, 30, 0), Unit.MM))
        .isEqualTo(0.5);
  }

  @Test
  void measuresAreShownInTheDesignsUnit() {
    assertThat(Measure.HEIGHT.text(50.8, Unit.INCH)).isEqualTo("2 in");
    assertThat(Measure.VOLUME.text(16387.064, Unit.INCH)).isEqualTo("1 in³");
    assertThat(Measure.AREA.text(12345.678, Unit.CM)).isEqualTo("123.46 cm²");
    assertThat(Measure.VOLUME.text(125_162.4, Unit.MM)).isEqualTo("125.16 cm³");
    assertThat(Measure.VOLUME.text(-161.7, Unit.MM)).isEqualTo("-0.162 cm³");
    assertThat(Measure.STRAIN.text(0.004, Unit.MM)).isEqualTo("0.4 %");
    assertThat(Measure.GAP.text(-1e-9, Unit.MM)).isEqualTo("0 mm");
  }
}
