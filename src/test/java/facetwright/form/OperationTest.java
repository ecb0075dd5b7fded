package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import facetwright.form.change.Chamfer;
import facetwright.form.change.PlaneCut;
import facetwright.form.change.Reshape;
import facetwright.form.change.Stacking;
import facetwright.form.make.Solids;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.words.Site;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Operations against the solids they are known to give. */
class OperationTest {
  private static final double EDGE = 60;

  private static Form solid(String name) {
    return Reference.form(name, EDGE);
  }

  /** Same counts, volume and dihedrals when both have edge 1. */
  private static void alike(Form form, String name) {
    Form expected = Reference.form(name, 1);
    Form actual =
        form.changed(
            Reshape.scaled(
                1 / form.edges().stream().mapToDouble(form::length).min().orElseThrow()));
    assertThat(actual.facets()).hasSameSizeAs(expected.facets());
    assertThat(actual.corners()).hasSameSizeAs(expected.corners());
    assertThat(actual.edges()).hasSameSizeAs(expected.edges());
    assertThat(actual.volume()).isCloseTo(expected.volume(), within(1e-7 * expected.volume()));
    assertThat(dihedrals(actual)).isEqualTo(dihedrals(expected));
  }

  private static List<Long> dihedrals(Form form) {
    return form.edges().stream()
        .map(e -> Math.round(Math.toDegrees(Dihedral.of(form, e)) * 1e5))
        .sorted()
        .toList();
  }

  /** Rectification halves each edge: Cundy and Rollett, Mathematical Models, 3.7 (from memory). */
  @Test
  void cornersCutAtHalfAnEdge() {
    alike(solid("p-cube").changed(Chamfer.corners(EDGE / 2)), "a-cuboctahedron");
    alike(solid("p-octahedron").changed(Chamfer.corners(EDGE / 2)), "a-cuboctahedron");
    alike(solid("p-dodecahedron").changed(Chamfer.corners(EDGE / 2)), "a-icosidodecahedron");
    alike(solid("p-icosahedron").changed(Chamfer.corners(EDGE / 2)), "a-icosidodecahedron");
    alike(solid("p-tetrahedron").changed(Chamfer.corners(EDGE / 2)), "p-octahedron");
  }

  /** Truncation to regular facets: a third of a triangle's edge, 1/(2+√2) of a square's. */
  @Test
  void cornersCutToRegularFacets() {
    alike(solid("p-tetrahedron").changed(Chamfer.corners(EDGE / 3)), "a-truncated-tetrahedron");
    alike(solid("p-octahedron").changed(Chamfer.corners(EDGE / 3)), "a-truncated-octahedron");
    alike(solid("p-icosahedron").changed(Chamfer.corners(EDGE / 3)), "a-truncated-icosahedron");
    alike(solid("p-cube").changed(Chamfer.corners(EDGE / (2 + Math.sqrt(2)))), "a-truncated-cube");
    double golden = (1 + Math.sqrt(5)) / 2;
    alike(
        solid("p-dodecahedron").changed(Chamfer.corners(EDGE / (2 + golden))),
        "a-truncated-dodecahedron");
  }

  @Test
  void duals() {
    alike(solid("p-cube").changed(Reshape.dual()), "p-octahedron");
    alike(solid("p-octahedron").changed(Reshape.dual()), "p-cube");
    alike(solid("p-dodecahedron").changed(Reshape.dual()), "p-icosahedron");
    alike(solid("p-icosahedron").changed(Reshape.dual()), "p-dodecahedron");
    alike(solid("p-tetrahedron").changed(Reshape.dual()), "p-tetrahedron");
    Form rhombic = solid("a-cuboctahedron").changed(Reshape.dual());
    assertThat(rhombic.facets()).hasSize(12).allMatch(f -> f.size() == 4);
    // Rhombic dodecahedron: every dihedral 120° (handbook value, from memory).
    assertThat(rhombic.edges())
        .allMatch(e -> Math.abs(Math.toDegrees(Dihedral.of(rhombic, e)) - 120) < 1e-8);
  }

  /** Square on its corner: the plane through the middle of the cube's diagonal cuts a hexagon. */
  @Test
  void planeThroughACubeCutsAHexagon() {
    Form cube = solid("p-cube");
    Form half = cube.changed(PlaneCut.under(Vec3.ZERO, new Vec3(1, 1, 1)));
    assertThat(half.volume()).isCloseTo(cube.volume() / 2, within(1e-6));
    int cut = half.facet("cut");
    assertThat(half.flat(cut).size()).isEqualTo(6);
    // A regular hexagon of side edge/√2: area 3√3/4 of the edge's square.
    assertThat(half.flat(cut).area()).isCloseTo(3 * Math.sqrt(3) / 4 * EDGE * EDGE, within(1e-6));
    assertThat(half.facets()).hasSize(7);
  }

  @Test
  void planeThroughCornersAndEdges() {
    Form cube = solid("p-cube");
    Form corner = cube.changed(PlaneCut.under(new Vec3(30, 30, -30), new Vec3(1, 1, 1)));
    // Through three corners: the cut-off corner is a sixth of the cube.
    assertThat(corner.volume()).isCloseTo(cube.volume() * 5 / 6, within(1e-6));
    Form wedge = cube.changed(PlaneCut.under(Vec3.ZERO, new Vec3(1, 1, 0)));
    assertThat(wedge.volume()).isCloseTo(cube.volume() / 2, within(1e-6));
    assertThat(wedge.facets()).hasSize(5);
    assertThatThrownBy(() -> cube.changed(PlaneCut.under(new Vec3(0, 0, 30), Vec3.Z)))
        .isInstanceOf(FormException.class)
        .hasMessageContaining("misses");
    Form shade =
        Solids.prism(6, 30, 50)
            .withoutFacet("top")
            .changed(PlaneCut.under(new Vec3(0, 0, 20), Vec3.Z));
    assertThat(shade.isClosed()).isTrue();
    assertThat(shade.volume()).isCloseTo(Solids.prism(6, 30, 20).volume(), within(1e-6));
  }

  /** A hollow star-like body: the cut of a cube with a raised and a sunk facet. */
  @Test
  void raisedAndSunk() {
    Form cube = Solids.box(60, 60, 60);
    double cap = 60 * 60 * 20 / 3.0;
    assertThat(cube.changed(Reshape.raised("top", 20)).volume())
        .isCloseTo(216_000 + cap, within(1e-6));
    Form sunk = cube.changed(Reshape.raised("top", -20));
    assertThat(sunk.volume()).isCloseTo(216_000 - cap, within(1e-6));
    assertThat(sunk.isConvex()).isFalse();
    assertThat(sunk.edges()).anyMatch(e -> Dihedral.of(sunk, e) > Math.PI + 0.1);
    assertThatThrownBy(() -> sunk.changed(PlaneCut.under(new Vec3(0, 0, 50), Vec3.Z)))
        .isInstanceOf(FormException.class)
        .hasMessageContaining("ring round a hollow");
    // Raising all six facets by half the edge gives the rhombic dodecahedron's volume, 2a³.
    Form six = cube;
    for (String f : List.of("base", "top", "side 1", "side 2", "side 3", "side 4")) {
      six = six.changed(Reshape.raised(f, 30));
    }
    assertThat(six.volume()).isCloseTo(2 * 216_000, within(1e-6));
  }

  @Test
  void twistingAPrismByHalfAStepGivesTheAntiprism() {
    for (int n : new int[] {3, 4, 5, 8}) {
      Form twisted = Solids.prism(n, 40, 50).changed(Reshape.twisted(180.0 / n));
      Form antiprism = Solids.antiprism(n, 40, 50);
      assertThat(twisted.volume()).isCloseTo(antiprism.volume(), within(1e-6));
      assertThat(twisted.facets()).hasSize(2 * n + 2);
      assertThat(twisted.isConvex()).isTrue();
    }
    Form turned = Solids.prism(4, 40, 50).changed(Reshape.twisted(0));
    assertThat(turned.facets()).hasSize(6);
    assertThatThrownBy(() -> solid("p-cube").changed(Reshape.twisted(10)))
        .isInstanceOf(FormException.class)
        .hasMessageContaining("named \"base\"");
  }

  @Test
  void stacking() {
    Form tower =
        Solids.box(60, 60, 60)
            .changed(Stacking.with(Solids.pyramidBySide(4, 60, 60 / Math.sqrt(2))));
    assertThat(tower.facets()).hasSize(9);
    // Elongated square pyramid, J8: V = 1 + √2/6 of the edge's cube.
    assertThat(tower.volume()).isCloseTo((1 + Math.sqrt(2) / 6) * 216_000, within(1e-6));
    Form two = Solids.prism(5, 30, 20).changed(Stacking.with(Solids.prism(5, 30, 25)));
    assertThat(two.volume()).isCloseTo(Solids.prism(5, 30, 45).volume(), within(1e-6));
    assertThat(two.hasFacet("side 1 (2)")).isTrue();
    assertThat(two.bounds().size().z()).isCloseTo(45, within(1e-9));
    assertThatThrownBy(
            () -> Solids.prism(5, 30, 20).changed(Stacking.with(Solids.prism(5, 31, 25))))
        .isInstanceOf(FormException.class)
        .hasMessageContaining("doesn't match");
  }

  /** Chamfered cube: 6 squares, 12 hexagons, and where the bevels meet, the 8 old corner places. */
  @Test
  void beveledEdges() {
    Form cube = Solids.box(60, 60, 60);
    Form chamfered = cube.changed(Chamfer.edges(10));
    assertThat(chamfered.facets()).hasSize(18);
    assertThat(chamfered.corners()).hasSize(32);
    int top = chamfered.facet("top");
    assertThat(chamfered.flat(top).area()).isCloseTo(40 * 40, within(1e-6));
    assertThat(chamfered.edges())
        .anyMatch(e -> Math.abs(Math.toDegrees(Dihedral.of(chamfered, e)) - 135) < 1e-8);
    // Twelve right prisms with legs of 10 go, with three meeting at each corner (inclusion and
    // exclusion: pairs share b³/3, all three share b³/4 at a corner).
    double b3 = 1000;
    double gone = 12 * 60 * 50 - 8 * (3 * b3 / 3 - b3 / 4);
    assertThat(chamfered.volume()).isCloseTo(216_000 - gone, within(1e-6));
    assertThatThrownBy(() -> cube.changed(Chamfer.edges(30))).isInstanceOf(FormException.class);
    assertThatThrownBy(() -> cube.changed(Reshape.raised("top", -20)).changed(Chamfer.edges(3)))
        .isInstanceOf(FormException.class)
        .hasMessageContaining("hollows");
  }

  @Test
  void openingsStayInPlace() {
    Form box =
        Solids.box(60, 60, 60)
            .withHole("side 1", new Vec2(0, -20), 6, Site.NONE)
            .withWindowInset("side 2", 15, Site.NONE)
            .withLayer("side 3", 1.5, "blue", Site.NONE);
    Form low = box.changed(PlaneCut.under(new Vec3(0, 0, 50), Vec3.Z));
    int side = low.facet("side 1");
    Vec3 centre =
        low.frame(side).space(low.facets().get(side).openings().getFirst().outline().centroid());
    assertThat(centre.distance(new Vec3(0, -30, 10))).isLessThan(1e-9);
    assertThat(low.facets().get(low.facet("side 3")).layers()).hasSize(1);
    assertThatThrownBy(() -> box.changed(PlaneCut.under(new Vec3(0, 0, 40), Vec3.Z)))
        .isInstanceOf(FormException.class)
        .hasMessageContaining("side 2");
    Form twice = box.changed(Reshape.scaled(2));
    assertThat(twice.facets().get(twice.facet("side 2")).openings().getFirst().outline().area())
        .isCloseTo(60 * 60, within(1e-6));
  }
}
