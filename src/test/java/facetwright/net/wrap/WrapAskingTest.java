package facetwright.net.wrap;

import static facetwright.net.wrap.WrapDraftTest.AT;
import static facetwright.net.wrap.WrapDraftTest.wrap;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.FoldAngle;
import facetwright.net.NamedPanel;
import facetwright.net.Net;
import facetwright.net.NetException;
import facetwright.net.Opening;
import facetwright.net.Panel;
import facetwright.net.Sense;
import facetwright.net.Stance;
import facetwright.words.Site;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of cells of a wrap: openings, folds, and what is refused. */
class WrapAskingTest {
  @Test
  void aSingleRowIsPinchedAtItsTop() {
    WrapDraft wrap = wrap(6, 30, 40.0);
    wrap.all().columns("even", AT).gusset(Pinch.IN, null, AT).window(4, AT);
    Net net = wrap.build();
    assertThat(net.panels()).hasSize(3 + 9);
    Stance.Corner corner = net.stance().ring().getFirst();
    assertThat(net.panels().get(corner.panel()).outline().corner(corner.corner()))
        .isEqualTo(Vec2.ZERO);
    assertThat(NamedPanel.of(net, "wall 2").orElseThrow().openings()).hasSize(1);
  }

  @Test
  void cutoutsLieWhereTheyAreMeasured() {
    WrapDraft wrap = wrap(4, 30, 40.0);
    wrap.all()
        .columns(List.of(2), AT)
        .window(new Polygon2(List.of(new Vec2(-10, -15), new Vec2(0, -15), new Vec2(-10, 0))), AT)
        .hole(4, new Vec2(5, 10), AT);
    Panel wall = NamedPanel.of(wrap.build(), "wall 2").orElseThrow();
    assertThat(wall.openings().get(0).outline().corner(0)).isEqualTo(new Vec2(35, 5));
    assertThat(((Opening.Hole) wall.openings().get(1)).centre()).isEqualTo(new Vec2(50, 30));
  }

  @Test
  void toldFoldsAreKept() {
    WrapDraft wrap = wrap(6, 30, 10.0, 40.0, 10.0);
    wrap.all().rows("rim", AT).fold(FoldAngle.degrees(75), Sense.VALLEY, AT);
    wrap.all()
        .columns(List.of(1), AT)
        .rows("wall", AT)
        .fold(CellSide.RIGHT, FoldAngle.TO_SOLVE, null, AT);
    Net net = wrap.build();
    assertThat(
            net.scores().stream()
                .filter(s -> s.sense() == Sense.VALLEY)
                .filter(s -> s.angle().equals(FoldAngle.degrees(75)))
                .count())
        .isEqualTo(12);
    assertThat(net.scores().stream().filter(s -> s.angle().equals(FoldAngle.TO_SOLVE)).count())
        .isEqualTo(1);
  }

  @Test
  void nonsenseIsRefusedAtTheCall() {
    assertThatThrownBy(() -> wrap(2, 30, 40.0)).hasMessageContaining("3 to 64, not 2");
    assertThatThrownBy(() -> wrap(6, 0, 40.0)).hasMessageContaining("width");
    assertThatThrownBy(() -> wrap(6, 30, -1.0)).hasMessageContaining("height");
    WrapDraft wrap = wrap(6, 30, 10.0, 40.0, 10.0);
    assertThatThrownBy(() -> wrap.seam(30, AT)).hasMessageContaining("seam");
    assertThatThrownBy(() -> wrap.all().rows("walls", AT))
        .hasMessageContaining("\"wall\", \"rim\"");
    assertThatThrownBy(() -> wrap.all().columns("third", AT)).hasMessageContaining("\"third\"");
    assertThatThrownBy(() -> wrap.all().columns(List.of(7), AT))
        .hasMessageContaining("1 to 6, not 7");
    assertThatThrownBy(() -> wrap.all().columns("odd", AT).columns("even", AT))
        .hasMessageContaining("both selections");
    assertThatThrownBy(() -> wrap.all().window(5, AT)).hasMessageContaining("no window");
    assertThatThrownBy(() -> wrap.all().remove(AT)).hasMessageContaining("whole wrap");
    assertThatThrownBy(() -> wrap(6, 30, 40.0).all().tabs(40, AT)).hasMessageContaining("no tab");
  }

  @Test
  void whatDependsOnThePatternIsRefusedWithItsPlace() {
    WrapDraft wrap = wrap(6, 30, 10.0, 40.0, 10.0);
    wrap.all().rows("wall", AT).gusset(Pinch.IN, null, new Site(9, 5));
    assertThatThrownBy(wrap::build)
        .isInstanceOf(NetException.class)
        .hasMessageContaining("wall 1 can't be pinched")
        .extracting(e -> ((NetException) e).site())
        .isEqualTo(new Site(9, 5));
    WrapDraft tabs = wrap(6, 30, 10.0, 40.0, 10.0);
    tabs.all().rows("wall", AT).tabs(AT);
    assertThatThrownBy(tabs::build).hasMessageContaining("one free side");
    WrapDraft loose = wrap(6, 30, 40.0);
    loose.all().columns("odd", AT).tabs(AT);
    assertThatThrownBy(loose::build).hasMessageContaining("hangs on nothing");
  }
}
