package facetwright.fold.touch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Card;
import facetwright.fold.Folding;
import facetwright.fold.walk.FoldPath;
import facetwright.geom.LengthTolerance;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.Sense;
import facetwright.net.draft.PanelDraft;
import org.junit.jupiter.api.Test;

class PathCollisionsTest {
  /** The wall folds to 90° on the left, a flap longer than the floor right over from the right. */
  private static Net swing() {
    Card card = new Card();
    PanelDraft floor = card.rectangle("floor", 0, 0, 60, 40);
    card.wall(floor.edge(3), "wall", 50);
    card.flap(floor.edge(1), "flap", 70, Sense.MOUNTAIN, FoldAngle.degrees(180));
    return card.net();
  }

  /**
   * At fold angles φ and 2φ the flap's end (60 + 70·cos 2φ, 70·sin 2φ) meets the wall's line
   * through (−cos φ, sin φ) where 60·sin φ + 70·sin 3φ = 0, that is sin² φ = 27/28.
   */
  @Test
  void flapSwingsThroughAWallThatItMissesWhenMade() {
    Net net = swing();
    assertThat(Collisions.of(net, Folding.fold(net).poses())).isEmpty();
    PathSampling fine = new PathSampling(new LengthTolerance(1e-6), 1, 4000);
    PathCollisions met = Collisions.onPath(net, Folding.path(net)::at, fine);
    assertThat(met.isClear()).isFalse();
    assertThat(met.first()).extracting(Collision::a).containsExactly(1);
    assertThat(met.first()).extracting(Collision::b).containsExactly(2);
    double phi = Math.asin(Math.sqrt(27.0 / 28));
    assertThat(met.t()).isCloseTo(phi / (Math.PI / 2), within(1e-6));
    assertThat(met.stride()).isPositive().isLessThanOrEqualTo(1);
    // The farther end of the flap goes 70·π·t for a step t.
    assertThat(met.step()).isLessThanOrEqualTo(1 / (70 * Math.PI) * 1.001);
  }

  @Test
  void aClearWaySaysHowCloselyItLooked() {
    Net net = Card.tray(60, 40, 25, Card.SQUARE).net();
    PathCollisions way = Collisions.onPath(net, Folding.path(net)::at, PathSampling.USUAL);
    assertThat(way.isClear()).isTrue();
    assertThat(way.t()).isEqualTo(1);
    assertThat(way.step()).isEqualTo(1.0 / 32);
    assertThat(way.stride()).isLessThanOrEqualTo(2);
  }

  @Test
  void tooFewSamplesAreOwnedUpTo() {
    Net net = Card.tray(600, 400, 250, Card.SQUARE).net();
    FoldPath path = Folding.path(net);
    PathCollisions way =
        Collisions.onPath(net, path::at, new PathSampling(Collisions.TOUCHING, 0.1, 64));
    assertThat(way.isClear()).isTrue();
    assertThat(way.stride()).isGreaterThan(1);
  }

  @Test
  void tabsAreTuckedInByHand() {
    Card card = new Card();
    PanelDraft floor = card.rectangle("floor", 0, 0, 60, 40);
    PanelDraft one = card.wall(floor.edge(0), "one", 30);
    PanelDraft two = card.wall(floor.edge(1), "two", 30);
    card.tab(one.edge(3), two.edge(1), 8, FoldAngle.TO_SOLVE);
    Net net = card.net();
    assertThat(Collisions.onPath(net, Folding.path(net)::at, PathSampling.USUAL).isClear())
        .isTrue();
  }

  @Test
  void refusesNonsense() {
    assertThatThrownBy(() -> new PathSampling(Collisions.TOUCHING, 0, 100))
        .hasMessageContaining("stride");
    assertThatThrownBy(() -> new PathSampling(Collisions.TOUCHING, 1, 10))
        .hasMessageContaining("64");
  }
}
