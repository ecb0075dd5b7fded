package facetwright.aim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.measure.Quantity;
import facetwright.measure.Unit;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Aims at designs whose formulas are known, so that the answers can be told beforehand. */
class AimTest {
  private static final Grid RULER = Grid.usual(Unit.MM);

  private static Outcome solve(Sham sham, Grid grid, List<Knob> knobs, Goal... goals) {
    return new Aim(List.of(goals), knobs, grid, Unit.MM, Aim.USUAL_MOST)
        .solve(sham.now(knobs), sham::at);
  }

  private static Goal reach(Measure measure, double wanted) {
    return new Goal.Reach(measure, wanted);
  }

  private static Sham box() {
    return new Sham()
        .with(Measure.WIDTH, List::getFirst)
        .with(Measure.HEIGHT, v -> v.get(1))
        .with(Measure.VOLUME, v -> v.get(0) * v.get(0) * v.get(1))
        .with(Measure.AREA, v -> 2 * v.get(0) * v.get(0) + 4 * v.get(0) * v.get(1));
  }

  private static List<Knob> boxKnobs() {
    return List.of(Sham.knob("side", 40, 20, 80), Sham.knob("tall", 50, 20, 90));
  }

  /** Two unknowns, two goals: V = s²h and A = 2s² + 4sh; any box within the ends can be had. */
  @Property(tries = 40, seed = "20261125")
  void twoGoalsFindTwoDials(
      @ForAll @DoubleRange(min = 25, max = 75) double side,
      @ForAll @DoubleRange(min = 25, max = 85) double tall) {
    Sham sham = box();
    Measured wanted = sham.at(List.of(side, tall));
    Outcome outcome =
        solve(
            sham,
            Grid.none(),
            boxKnobs(),
            reach(Measure.VOLUME, wanted.get(Measure.VOLUME)),
            reach(Measure.AREA, wanted.get(Measure.AREA)));
    assertThat(outcome.isMet()).as(side + ", " + tall + ": " + outcome).isTrue();
    for (Measure m : List.of(Measure.VOLUME, Measure.AREA)) {
      assertThat(outcome.exact().get(m) / wanted.get(m)).isCloseTo(1, within(1e-6));
    }
    assertThat(outcome.trials()).isLessThanOrEqualTo(Aim.USUAL_MOST);
  }

  /**
   * One goal, two dials: the least change against the ranges. For s + h = c the change (ds, dh)
   * that makes (ds/60)² + (dh/70)² least has ds : dh = 60² : 70² (Lagrange's rule).
   */
  @Test
  void changesAsLittleAsItCan() {
    Sham sham = new Sham().with(Measure.HEIGHT, v -> v.get(0) + v.get(1));
    Outcome outcome = solve(sham, Grid.none(), boxKnobs(), reach(Measure.HEIGHT, 107));
    double ds = outcome.turns().get(0).exact() - 40;
    double dh = outcome.turns().get(1).exact() - 50;
    assertThat(ds + dh).isCloseTo(17, within(1e-6));
    assertThat(ds / dh).isCloseTo(3600.0 / 4900, within(1e-5));
  }

  @Test
  void aDialAtItsEndLeavesTheRestToTheOthers() {
    Sham sham = new Sham().with(Measure.HEIGHT, v -> v.get(0) + v.get(1));
    Outcome outcome = solve(sham, RULER, boxKnobs(), reach(Measure.HEIGHT, 168));
    assertThat(outcome.isMet()).isTrue();
    assertThat(outcome.stops()).isEmpty();
    assertThat(outcome.turns().get(0).exact()).isBetween(77.9, 80.0);
    assertThat(outcome.turns().get(1).exact()).isBetween(87.9, 90.0);
  }

  @Test
  void outOfReachIsSaidWithTheNearestAndTheEndThatStops() {
    Outcome outcome = solve(box(), RULER, boxKnobs(), reach(Measure.HEIGHT, 120));
    assertThat(outcome.isMet()).isFalse();
    assertThat(outcome.goals().getFirst().status()).isEqualTo(Outcome.Status.NEAREST);
    assertThat(outcome.set().get(Measure.HEIGHT)).isEqualTo(90);
    assertThat(outcome.stops())
        .singleElement()
        .satisfies(s -> assertThat(s.knob().name()).isEqualTo("tall"))
        .satisfies(s -> assertThat(s.value()).isEqualTo(90))
        .satisfies(s -> assertThat(s.isUpper()).isTrue());
    assertThat(OutcomeText.goals(outcome).getFirst())
        .contains("120 mm can't be reached", "nearest found is 90 mm", "30 mm less");
    assertThat(OutcomeText.stops(outcome)).contains("tall is at its greatest (90).");
  }

  @Test
  void aGoalThatNoDialChangesIsSaid() {
    Outcome outcome =
        solve(box().with(Measure.DEPTH, _ -> 33), RULER, boxKnobs(), reach(Measure.DEPTH, 40));
    assertThat(outcome.goals().getFirst().status()).isEqualTo(Outcome.Status.NO_DIAL);
    assertThat(OutcomeText.goals(outcome).getFirst())
        .isEqualTo("depth: none of the dials turned (side, tall) changes it; it stays 33 mm.");
  }

  @Test
  void aMeasureThatIsNotKnownIsSaid() {
    Outcome outcome = solve(box(), RULER, boxKnobs(), reach(Measure.DEPTH, 40));
    assertThat(outcome.goals().getFirst().status()).isEqualTo(Outcome.Status.NOT_KNOWN);
    assertThat(outcome.trials()).isZero();
    assertThat(OutcomeText.goals(outcome).getFirst()).contains("left open");
  }

  /** On half millimetres; no neighbouring mark comes nearer, unless it is within 0.02 % already. */
  @Property(tries = 25, seed = "20261125")
  void gridAnswersAreOnTheGridAndTheBestAround(
      @ForAll @DoubleRange(min = 40_000, max = 400_000) double volume) {
    Sham sham = box();
    Outcome outcome = solve(sham, RULER, boxKnobs(), reach(Measure.VOLUME, volume));
    assertThat(outcome.isMet()).isTrue();
    double s = outcome.turns().get(0).value();
    double h = outcome.turns().get(1).value();
    assertThat(2 * s).isEqualTo(Math.rint(2 * s));
    assertThat(2 * h).isEqualTo(Math.rint(2 * h));
    double miss = Math.abs(outcome.miss((Goal.Reach) outcome.goals().getFirst().goal()));
    assertThat(outcome.set().get(Measure.VOLUME)).isEqualTo(s * s * h);
    for (double ds : new double[] {-0.5, 0, 0.5}) {
      double w = Math.clamp(s + ds, 20, 80);
      assertThat(Math.abs(w * w * h - volume))
          .isGreaterThanOrEqualTo(Math.min(miss, 2e-4 * volume));
    }
  }

  @Test
  void aSingleDialIsFoundOverABend() {
    // Rises to 5, falls again: from 9 the way down leads to the end, but 4.5 lies at 2.25 and 7.25.
    Sham sham =
        new Sham()
            .with(
                Measure.HEIGHT,
                v -> v.getFirst() < 5 ? 2 * v.getFirst() : 10 - 2 * (v.getFirst() - 4.75));
    List<Knob> knobs = List.of(Sham.knob("lean", 1, 0, 10));
    Outcome outcome = solve(sham, Grid.none(), knobs, reach(Measure.HEIGHT, 4.5));
    assertThat(outcome.isMet()).isTrue();
    assertThat(outcome.turns().getFirst().exact()).isCloseTo(2.25, within(1e-4));
  }

  @Test
  void aJumpOverTheGoalIsNoAnswer() {
    Sham sham = new Sham().with(Measure.HEIGHT, v -> v.getFirst() < 3.3 ? 10 : 20);
    List<Knob> knobs = List.of(Sham.knob("lean", 1, 0, 10));
    Outcome outcome = solve(sham, RULER, knobs, reach(Measure.HEIGHT, 16));
    assertThat(outcome.isMet()).isFalse();
    assertThat(outcome.set().get(Measure.HEIGHT)).isEqualTo(20);
  }

  @Test
  void stepsAreTriedOneByOne() {
    Sham sham = new Sham().with(Measure.GAP, v -> v.getFirst() == 8 ? 0 : 5 + v.getFirst() % 3);
    List<Knob> knobs = List.of(Sham.stepped("columns", 13, 5, 20, 1));
    Outcome outcome = solve(sham, RULER, knobs, reach(Measure.GAP, 0));
    assertThat(outcome.isMet()).isTrue();
    assertThat(outcome.settings()).containsOnlyKeys("columns").containsValue("8");
  }

  /** Steps find their place and the smooth dial makes up for the rest. */
  @Test
  void stepsAndSmoothDialsTogether() {
    Sham sham =
        new Sham()
            .with(Measure.WIDTH, v -> v.get(0) * v.get(1) / Math.PI)
            .with(Measure.HEIGHT, v -> v.get(1) * 2);
    List<Knob> knobs = List.of(Sham.stepped("sides", 8, 4, 30, 2), Sham.knob("side", 30, 10, 40));
    Outcome outcome = solve(sham, Grid.none(), knobs, reach(Measure.WIDTH, 130));
    assertThat(outcome.isMet()).isTrue();
    double sides = outcome.turns().get(0).value();
    assertThat(sides % 2).isZero();
    assertThat(sides * outcome.turns().get(1).exact() / Math.PI).isCloseTo(130, within(2e-4));
  }

  /** A gap is a distance: zero in one point only, and rising straight from it on every side. */
  @Property(tries = 20, seed = "20261125")
  void aGapOfTwoDialsCloses(
      @ForAll @DoubleRange(min = 22, max = 78) double side,
      @ForAll @DoubleRange(min = 22, max = 88) double tall) {
    Sham sham =
        new Sham()
            .with(
                Measure.GAP,
                v ->
                    Math.hypot(v.get(0) - side, 0.3 * (v.get(0) + v.get(1)) - 0.3 * (side + tall)));
    Outcome outcome = solve(sham, Grid.none(), boxKnobs(), reach(Measure.GAP, 0));
    assertThat(outcome.isMet()).as(outcome.toString()).isTrue();
    assertThat(outcome.turns().get(0).exact()).isCloseTo(side, within(0.01));
  }

  @Test
  void neverMakesMoreDesignsThanAllowed() {
    int[] made = {0};
    Sham sham = box();
    List<Knob> knobs = boxKnobs();
    Outcome outcome =
        new Aim(List.of(reach(Measure.VOLUME, 1e9)), knobs, RULER, Unit.MM, 20)
            .solve(
                sham.now(knobs),
                v -> {
                  made[0]++;
                  return sham.at(v);
                });
    assertThat(made[0]).isLessThanOrEqualTo(20).isEqualTo(outcome.trials());
    assertThat(outcome.isMet()).isFalse();
  }

  /** Nobody said steps, but half a column makes no design. */
  @Test
  void whatTakesWholeNumbersOnlyIsTurnedByWholeNumbers() {
    Sham sham = new Sham().with(Measure.WIDTH, v -> v.get(0) * v.get(1));
    List<Knob> knobs =
        List.of(new Knob("columns", Quantity.NUMBER, 7, 5, 12, 0), Sham.knob("side", 30, 28, 32));
    Trial trial =
        v -> v.get(0) % 1 == 0 ? sham.at(v) : new Tried.Refused("columns: not a whole number");
    Outcome outcome =
        new Aim(List.of(reach(Measure.WIDTH, 306)), knobs, RULER, Unit.MM, 200)
            .solve(sham.now(knobs), trial);
    assertThat(outcome.isMet()).isTrue();
    assertThat(outcome.turns().get(0).value()).isEqualTo(10);
    assertThat(outcome.turns().get(1).value()).isCloseTo(30.5, within(0.11));
    assertThat(Slopes.of(knobs, sham.now(knobs), trial).all().getFirst().of(Measure.WIDTH))
        .hasValueSatisfying(s -> assertThat(s.value()).isEqualTo(30));
  }

  @Test
  void whereTheScriptRefusesItsWordsAreTold() {
    List<Knob> knobs = boxKnobs();
    Sham sham = box();
    Outcome outcome =
        new Aim(List.of(reach(Measure.HEIGHT, 80)), knobs, RULER, Unit.MM, 200)
            .solve(
                sham.now(knobs),
                v -> v.get(1) > 60 ? new Tried.Refused("it would tip over") : sham.at(v));
    assertThat(outcome.isMet()).isFalse();
    assertThat(outcome.set().get(Measure.HEIGHT)).isCloseTo(60, within(1.5));
    assertThat(OutcomeText.hurdles(outcome))
        .anySatisfy(h -> assertThat(h).startsWith("There is no design at ").contains("tip over"));
  }

  @Test
  void placesWithoutADesignAreGoneRound() {
    Sham sham = box();
    List<Knob> knobs = boxKnobs();
    Outcome outcome =
        new Aim(List.of(reach(Measure.HEIGHT, 80)), knobs, RULER, Unit.MM, 200)
            .solve(
                sham.now(knobs), v -> v.get(0) > 41 ? new Tried.Refused("too wide") : sham.at(v));
    assertThat(outcome.isMet()).isTrue();
    assertThat(outcome.settings()).containsOnlyKeys("tall").containsValue("80");
  }
}
