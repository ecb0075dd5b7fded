package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.fold.solve.SolverSettings;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.NetMerge;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Nets that only bending closes.
 *
 * <p>A point has distances a, b, c, d from the corners of a rectangle, in order, only where a² + c²
 * = b² + d² (the British flag theorem, a handbook's): four ridges over a flat rectangle meet in one
 * point by no other lengths, whatever the angles.
 */
class StrainTest {
  private static final double SIDE = 60;
  private static final double RIDGE = 70;
  private static final double FORGIVEN = SolverSettings.USUAL.card().forgivenStrain();

  private static Net off(double part, FoldAngle angle) {
    return Card.pyramid(SIDE, SIDE, new double[] {RIDGE, RIDGE, RIDGE, RIDGE * (1 + part)}, angle);
  }

  /** Its sides lean on a height √(r² − s²/2), s/2 from the middle. */
  private static FoldAngle upright() {
    double height = Math.sqrt(RIDGE * RIDGE - SIDE * SIDE / 2);
    return FoldAngle.degrees(180 - Math.toDegrees(Math.atan2(height, SIDE / 2)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {66, 70, 75})
  void ridgesThatAgreeNeedNoBending(double third) {
    double fourth = Math.sqrt(RIDGE * RIDGE + third * third - 68 * 68);
    Net net = Card.pyramid(60, 50, new double[] {RIDGE, 68, third, fourth}, FoldAngle.TO_SOLVE);
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.strains()).isEmpty();
    assertThat(form.strain()).isZero();
  }

  @Test
  void aRidgeATenthOfAPercentLongIsForgiven() {
    for (FoldAngle angle : List.of(FoldAngle.TO_SOLVE, upright())) {
      Net net = off(0.001, angle);
      FoldedForm form = Folding.fold(net);
      assertThat(form.closure()).isEqualTo(Closure.CLOSES_WITH_STRAIN);
      assertThat(form.strain()).isBetween(1e-5, FORGIVEN);
      assertThat(form.worst().orElseThrow().part()).isEqualTo(form.strain());
      // Every join meets, since the card bends.
      assertThat(form.gap()).isLessThan(1e-9);
      assertThat(form.gaps()).hasSize(4);
      // The poses are the flat panels nearest to the bent ones: their tips are as near as it tells.
      List<Vec3> tips = new ArrayList<>();
      for (int p = 1; p <= 4; p++) {
        tips.add(form.corners(net, p).get(2));
      }
      double most = 2 * form.strain() * RIDGE * 1.001;
      assertThat(tips).allSatisfy(t -> assertThat(t.distance(tips.getFirst())).isLessThan(most));
      assertThat(form.measures().height())
          .isCloseTo(Math.sqrt(RIDGE * RIDGE - SIDE * SIDE / 2), within(0.1));
      // A third of base times height, give or take what bends.
      assertThat(form.measures().volume())
          .isCloseTo(
              SIDE * SIDE * Math.sqrt(RIDGE * RIDGE - SIDE * SIDE / 2) / 3, withinPercentage(0.5));
    }
  }

  /** Least squares of small misses are linear: so much more error, so much more strain. */
  @Property(tries = 60, seed = "20261125")
  void strainGrowsWithTheError(@ForAll @DoubleRange(min = 1, max = 10) double times) {
    double once = Folding.fold(off(0.001, FoldAngle.TO_SOLVE)).strain();
    double more = Folding.fold(off(0.001 * times, FoldAngle.TO_SOLVE)).strain();
    assertThat(more / once / times).isCloseTo(1, within(0.02));
  }

  @Test
  void beyondWhatCardForgivesItIsOpenAndTellsWhatItWouldTake() {
    for (FoldAngle angle : List.of(FoldAngle.TO_SOLVE, upright())) {
      Net net = off(0.015, angle);
      FoldedForm form = Folding.fold(net);
      assertThat(form.closure()).isEqualTo(Closure.OPEN);
      assertThat(form.worst().orElseThrow().part()).isGreaterThan(FORGIVEN);
      assertThat(form.strain()).isZero();
      // Flat, its panels miss by about what the ridges differ: 1.05 mm.
      assertThat(form.gap()).isBetween(0.3, 2.1);
    }
  }

  @Test
  void aTrayFoldedALittleShortOfSquareIsPressedClosed() {
    FoldedForm nearly = Folding.fold(Card.tray(60, 40, 25, FoldAngle.degrees(89.9)).net());
    assertThat(nearly.closure()).isEqualTo(Closure.CLOSES_WITH_STRAIN);
    // 25·sin 0.1° = 0.044 mm at the rim, on a wall 65 mm across its corners.
    assertThat(nearly.strain()).isBetween(1e-5, 0.044 / 47);
    FoldedForm far = Folding.fold(Card.tray(60, 40, 25, FoldAngle.degrees(88)).net());
    assertThat(far.closure()).isEqualTo(Closure.OPEN);
    // 25·cos 88°·√2 mm (by hand).
    assertThat(far.gap()).isCloseTo(25 * Math.cos(Math.toRadians(88)) * Math.sqrt(2), within(1e-9));
  }

  /**
   * A regular tetrahedron's dihedral angle is 70.5288° (handbook), so that its scores fold by
   * 109.4712°. Who types two decimals is off by 0.0012°: less than any hand feels.
   */
  @Test
  void anglesTypedToTwoDecimalsClose() {
    Card card = new Card();
    double high = 40 * Math.sqrt(3) / 2;
    PanelDraft base = card.panel("base", 0, 0, 40, 0, 20, high);
    List<PanelDraft> sides = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      var foot = base.edge(i).segment();
      var tip = foot.middle().plus(foot.direction().left().times(-high));
      PanelDraft side =
          card.panel(
              "side " + (i + 1),
              foot.to().x(),
              foot.to().y(),
              foot.from().x(),
              foot.from().y(),
              tip.x(),
              tip.y());
      card.draft.score(
          base.edge(i), side.edge(0), Sense.MOUNTAIN, FoldAngle.degrees(109.47), Site.NONE);
      sides.add(side);
    }
    for (int i = 0; i < 3; i++) {
      card.seam(sides.get(i).edge(2), sides.get((i + 1) % 3).edge(1));
    }
    card.draft.standOn(base);
    FoldedForm form = Folding.fold(card.net());
    assertThat(form.closure()).isEqualTo(Closure.CLOSES_WITH_STRAIN);
    assertThat(form.strain()).isLessThan(Math.toRadians(0.0012));
    // √2/12 of the cube of its edge (handbook).
    assertThat(form.measures().volume()).isCloseTo(Math.sqrt(2) / 12 * 64_000, within(5.0));
  }

  @Test
  void aWallATenthOfAPercentTooHighIsForgivenAndOnePercentIsNot() {
    assertThat(Folding.fold(tray(25.025, Card.SQUARE)).closure())
        .isEqualTo(Closure.CLOSES_WITH_STRAIN);
    assertThat(Folding.fold(tray(25.025, FoldAngle.TO_SOLVE)).closure())
        .isEqualTo(Closure.CLOSES_WITH_STRAIN);
    for (FoldAngle angle : List.of(Card.SQUARE, FoldAngle.TO_SOLVE)) {
      FoldedForm form = Folding.fold(tray(25.25, angle));
      assertThat(form.closure()).isEqualTo(Closure.OPEN);
      assertThat(form.gap()).isCloseTo(0.25, within(1e-6));
    }
  }

  private static Net tray(double third, FoldAngle angle) {
    Card card = new Card();
    PanelDraft base = card.rectangle("base", 0, 0, 60, 40);
    List<PanelDraft> walls = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      walls.add(
          card.flap(base.edge(i), "wall " + (i + 1), i == 2 ? third : 25, Sense.MOUNTAIN, angle));
    }
    for (int i = 0; i < 4; i++) {
      card.seam(walls.get(i).edge(3), walls.get((i + 1) % 4).edge(1));
    }
    card.draft.standOn(base);
    return card.net();
  }

  /** One body bends and closes; another beside it, of known angles, does not close at all. */
  @Test
  void anotherBodyThatIsOpenKeepsTheWholeOpen() {
    Net bends = off(0.001, FoldAngle.TO_SOLVE);
    Net gapes = Card.tray(60, 40, 25, FoldAngle.degrees(60)).net();
    Net both = NetMerge.of(List.of(bends, gapes));
    FoldedForm form = Folding.fold(both);
    assertThat(form.closure()).isEqualTo(Closure.OPEN);
    // The tray's seams: 25·cos 60°·√2 mm; those of the pyramid meet.
    assertThat(form.gap()).isCloseTo(25 * 0.5 * Math.sqrt(2), within(1e-6));
    assertThat(form.gaps().subList(0, 4)).allSatisfy(g -> assertThat(g.mm()).isLessThan(1e-9));
  }
}
