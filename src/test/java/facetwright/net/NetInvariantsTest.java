package facetwright.net;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Motion2;
import facetwright.geom.Polygon2;
import facetwright.geom.Segment2;
import facetwright.geom.Vec2;
import facetwright.net.draft.EdgeDraft;
import facetwright.net.draft.NetDraft;
import facetwright.net.draft.PanelDraft;
import facetwright.words.Site;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class NetInvariantsTest {
  private static final Site AT = new Site(2, 7);
  private final NetDraft draft = new NetDraft();
  private final PanelDraft a = box("a", 0);
  private final PanelDraft b = box("b", 10);

  private PanelDraft box(String name, double x) {
    return draft.panel(
        name, PanelRole.FACET, Polygon2.rectangle(x, 0, 10, 10).corners(), Site.NONE);
  }

  private void refused(String message) {
    assertThatThrownBy(draft::build).isInstanceOf(NetException.class).hasMessageContaining(message);
  }

  private void score(EdgeDraft one, EdgeDraft two) {
    draft.score(one, two, Sense.VALLEY, FoldAngle.TO_SOLVE, AT);
  }

  @Test
  void sidesOfAScoreRunAlongOneLine() {
    score(a.edge(1), b.edge(1));
    refused("the two sides of a score between \"a\" and \"b\" do not lie on one line");
  }

  @Test
  void aSideBelongsToOneScoreOrSlit() {
    score(a.edge(1), b.edge(3));
    draft.slit(a.edge(1), b.edge(3), AT);
    refused("can't belong to two");
  }

  @Test
  void aScoreNeedsTwoPanels() {
    score(a.edge(1), a.edge(3));
    refused("two different panels");
  }

  @Test
  void outlinesAreSimple() {
    draft.panel(
        "knot",
        PanelRole.FACET,
        List.of(Vec2.ZERO, new Vec2(10, 0), new Vec2(2, 9), new Vec2(8, 10)),
        AT);
    refused("panel \"knot\" crosses or touches itself");
  }

  @Test
  void sidesHaveALength() {
    draft.panel(
        "twice",
        PanelRole.FACET,
        List.of(Vec2.ZERO, new Vec2(10, 0), new Vec2(10, 1e-7), new Vec2(8, 10)),
        AT);
    refused(
        "panel \"twice\" has two corners in one place, (10, 0) mm in the net: leave one of them"
            + " out");
  }

  @Test
  void panelsHaveAWidth() {
    draft.panel(
        "hair", PanelRole.FACET, List.of(Vec2.ZERO, new Vec2(10, 0), new Vec2(5, 1e-4)), AT);
    refused("panel \"hair\" is narrower than 0.001 mm, too little to be cut");
  }

  @Test
  void openingsLieInsideAndApart() {
    a.open(new Opening.Hole(new Vec2(1, 5), 2.1, AT));
    refused("a hole in panel \"a\" reaches 0.05 mm over the edge");
  }

  @Test
  void openingsDoNotMeet() {
    a.open(new Opening.Hole(new Vec2(4, 5), 2, AT));
    a.open(new Opening.Window(Polygon2.rectangle(4, 4, 3, 3), AT));
    refused("run into each other");
  }

  @Test
  void layersHaveNoNegativeReveal() {
    a.layer(-1, "p", AT);
    refused("reveal");
  }

  @Test
  void aLapNeedsTwoPanels() {
    draft.lap(a, a, AT);
    refused("two different panels");
  }

  @Test
  void anEmptyNetIsRefused() {
    assertThatThrownBy(() -> new NetDraft().build()).hasMessageContaining("at least one panel");
  }

  @Test
  void namesOfPartsThatDoNotExistAreRefused() {
    Net net = draft.build();
    Stance stance = net.stance();
    Join seam = new Join.Seam(new EdgeRef(0, 9), new EdgeRef(1, 0), Join.Seam.NO_TAB, AT);
    assertThatThrownBy(() -> with(net, List.of(seam), stance)).hasMessageContaining("seam");
    Join tab = new Join.Seam(new EdgeRef(0, 1), new EdgeRef(1, 0), 7, AT);
    assertThatThrownBy(() -> with(net, List.of(tab), stance)).hasMessageContaining("tab panel");
    Stance off =
        new Stance(
            List.of(new Stance.Corner(0, 0), new Stance.Corner(0, 1), new Stance.Corner(2, 0)));
    assertThatThrownBy(() -> with(net, List.of(), off)).hasMessageContaining("stance");
    assertThatThrownBy(() -> new Stance(List.of())).hasMessageContaining("three corners");
    assertThatThrownBy(() -> FoldAngle.degrees(181)).hasMessageContaining("0° to 180°");
    assertThatThrownBy(() -> new Opening.Hole(Vec2.ZERO, 0, AT)).hasMessageContaining("over 0");
  }

  private static Net with(Net net, List<Join> joins, Stance stance) {
    return new Net(
        net.panels(),
        net.scores(),
        net.slits(),
        joins,
        net.layers(),
        net.ticks(),
        net.cutaways(),
        stance);
  }

  @Test
  void everySideIsOneThing() {
    score(a.edge(1), b.edge(3));
    PanelDraft c = box("c", 20);
    draft.slit(b.edge(1), c.edge(3), AT);
    Net net = draft.build();
    assertThat(net.use(new EdgeRef(0, 1))).isInstanceOf(Net.EdgeUse.Scored.class);
    assertThat(net.use(new EdgeRef(2, 3))).isInstanceOf(Net.EdgeUse.SlitFrom.class);
    assertThat(net.use(new EdgeRef(0, 0))).isInstanceOf(Net.EdgeUse.Boundary.class);
    assertThat(net.boundary()).hasSize(12 - 4);
    assertThat(net.pieceOfPanel()).containsExactly(0, 0, 1);
    assertThat(net.scores().getFirst().across(1)).isZero();
    assertThat(net.pieces()).isEqualTo(2);
  }

  @Property(tries = 50, seed = "20261125")
  void movedPiecesAreCongruent(
      @ForAll @DoubleRange(min = -4, max = 4) double turn,
      @ForAll @DoubleRange(min = -300, max = 300) double x) {
    new NetInvariantsTest().staysCongruent(turn, x);
  }

  private void staysCongruent(double turn, double x) {
    score(a.edge(1), b.edge(3));
    PanelDraft c = box("c", 40);
    c.open(new Opening.Hole(new Vec2(45, 5), 3, AT));
    c.open(new Opening.Window(Polygon2.rectangle(41, 1, 2, 2), AT));
    draft.tick(c, new Segment2(new Vec2(40, 3), new Vec2(42, 3)), AT);
    Net net = draft.build();
    Motion2 m = Motion2.turn(turn).then(Motion2.shift(new Vec2(x, -x)));
    Net moved = net.moved(List.of(Motion2.NONE, m));
    assertThat(moved.panels().subList(0, 2)).isEqualTo(net.panels().subList(0, 2));
    Panel was = net.panels().get(2);
    Panel is = moved.panels().get(2);
    for (int i = 0; i < 4; i++) {
      assertThat(m.apply(was.outline().corner(i)).distance(is.outline().corner(i)))
          .isLessThan(1e-9);
    }
    assertThat(is.cardArea()).isCloseTo(was.cardArea(), within(1e-7));
    assertThat(moved.ticks().getFirst().mark().from().distance(m.apply(new Vec2(40, 3))))
        .isLessThan(1e-9);
    assertThat(moved.scores()).isEqualTo(net.scores());
  }
}
