package facetwright.aim;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.measure.Quantity;
import facetwright.measure.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The turn of one dial that helps most, for gaps whose formulas are known. */
class KnobMendTest {
  private static Optional<KnobMend> find(Sham sham, Knob... knobs) {
    return KnobMend.find(List.of(knobs), sham.now(List.of(knobs)), Unit.MM, sham::at);
  }

  private static Sham gap(double columns, double side) {
    return new Sham()
        .with(Measure.GAP, v -> 4 * Math.abs(v.get(0) - columns) + Math.abs(v.get(1) - side))
        .with(Measure.STRAIN, _ -> 0);
  }

  private static final Knob COLUMNS = Sham.stepped("columns", 7, 5, 12, 1);
  private static final Knob SIDE = Sham.knob("side", 30, 20, 40);

  @Test
  void aStepThatClosesIsNamedWithBothGaps() {
    assertThat(find(gap(8, 30), COLUMNS, SIDE).orElseThrow().text(Unit.MM))
        .isEqualTo("Turn columns from 7 to 8: the gap goes from 4 mm to 0 mm.");
  }

  @Test
  void theDialThatTakesMoreAwayIsNamed() {
    assertThat(find(gap(8, 36.5), COLUMNS, SIDE).orElseThrow().text(Unit.MM))
        .isEqualTo("Turn side from 30 to 36.5: the gap goes from 10.5 mm to 4 mm.");
    assertThat(find(gap(8, 31), COLUMNS, SIDE).orElseThrow().text(Unit.MM))
        .isEqualTo("Turn columns from 7 to 8: the gap goes from 5 mm to 1 mm.");
  }

  @Test
  void aPlainWholeNumberIsTriedBesideItself() {
    Sham sham =
        new Sham().with(Measure.GAP, v -> v.getFirst() == 6 ? 0 : 9).with(Measure.STRAIN, _ -> 0);
    Knob columns = new Knob("columns", Quantity.NUMBER, 7, 5, 12, 0);
    assertThat(find(sham, columns).orElseThrow().typed()).isEqualTo("6");
  }

  @Test
  void whereNoTurnHelpsNoneIsNamed() {
    Sham stays = new Sham().with(Measure.GAP, _ -> 3).with(Measure.STRAIN, _ -> 0);
    assertThat(find(stays, COLUMNS, SIDE)).isEmpty();
  }

  @Test
  void ofClosingWaysTheOneWithoutBendingIsNamed() {
    Sham sham =
        new Sham()
            .with(Measure.GAP, v -> v.get(0) == 7 && v.get(1) == 8 ? 2 : 0)
            .with(Measure.STRAIN, v -> v.get(0) == 8 ? 0.001 : 0);
    KnobMend mend = find(sham, COLUMNS, Sham.stepped("rows", 8, 5, 12, 1)).orElseThrow();
    assertThat(mend.then().get(Measure.STRAIN)).isZero();
    Sham bends = sham.with(Measure.STRAIN, _ -> 0.001);
    assertThat(find(bends, COLUMNS, Sham.stepped("rows", 8, 5, 12, 1)).orElseThrow().text(Unit.MM))
        .endsWith("the gap goes from 2 mm to 0 mm, and the card bends by 0.1 %.");
  }

  @Test
  void aBendIsEasedWhereThereIsNoGap() {
    Sham sham =
        new Sham()
            .with(Measure.GAP, _ -> 0)
            .with(Measure.STRAIN, v -> 1e-4 * Math.abs(v.getFirst() - 33));
    assertThat(find(sham, SIDE).orElseThrow().text(Unit.MM))
        .isEqualTo("Turn side from 30 to 33: then the card need not bend.");
    Sham narrow = sham.with(Measure.STRAIN, v -> 1e-4 * Math.abs(v.getFirst() - 45));
    assertThat(find(narrow, SIDE).orElseThrow().text(Unit.MM))
        .isEqualTo("Turn side from 30 to 40: the card bends by 0.05 % instead of 0.15 %.");
  }

  /** A gap that is not known now: named only when the turn closes it. */
  @Test
  void whereNobodyKnowsATurnMustClose() {
    Measured unknown = new Measured(Map.of(), _ -> new Lie(true, 1, 1), _ -> Optional.empty());
    Optional<KnobMend> closes =
        KnobMend.find(
            List.of(COLUMNS), unknown, Unit.MM, v -> gap(8, 30).at(List.of(v.get(0), 30.0)));
    assertThat(closes.orElseThrow().text(Unit.MM))
        .isEqualTo("Turn columns from 7 to 8: then it closes.");
    assertThat(
            KnobMend.find(
                List.of(COLUMNS), unknown, Unit.MM, v -> gap(10, 30).at(List.of(v.get(0), 30.0))))
        .isEmpty();
  }
}
