package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.form.make.Ring;
import facetwright.form.make.Solids;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The makers of solids against handbook formulas, n = 3 to 12 (see the file for their sources). */
class SolidFormulaTest {
  private static final double S = 10;

  @Test
  void prisms() {
    for (JsonNode e : Reference.formula("uniform-prism")) {
      int n = e.get("n").asInt();
      Form form = Solids.prismBySide(n, S, S);
      near(form.volume(), e.get("volume").asDouble() * S * S * S);
      near(form.area(), e.get("surfaceArea").asDouble() * S * S);
      near(dihedral(form, "side 1", "side 2"), e.get("dihedralSideSideDeg").asDouble());
      near(dihedral(form, "side 1", "base"), e.get("dihedralSideBaseDeg").asDouble());
    }
  }

  /** Its triangles are equilateral; height h = s·√(1 − 1/(4·cos²(π/2n))). */
  private static Form uniformAntiprism(int sides) {
    double half = Math.cos(Math.PI / (2 * sides));
    return Solids.antiprismBySide(sides, S, S * Math.sqrt(1 - 1 / (4 * half * half)));
  }

  @Test
  void antiprisms() {
    for (JsonNode e : Reference.formula("uniform-antiprism")) {
      Form form = uniformAntiprism(e.get("n").asInt());
      near(form.bounds().size().z(), e.get("height").asDouble() * S);
      near(form.volume(), e.get("volume").asDouble() * S * S * S);
      near(form.area(), e.get("surfaceArea").asDouble() * S * S);
      near(dihedral(form, "side 1", "side 2"), e.get("dihedralTriTriDeg").asDouble());
      near(dihedral(form, "side 1", "base"), e.get("dihedralTriBaseDeg").asDouble());
    }
  }

  @Test
  void pyramids() {
    for (JsonNode e : Reference.formula("regular-pyramid")) {
      Form form = Solids.pyramidBySide(e.get("n").asInt(), S, e.get("height").asDouble() * S);
      near(form.volume(), e.get("volume").asDouble() * S * S * S);
      near(dihedral(form, "side 1", "base"), e.get("dihedralLateralBaseDeg").asDouble());
      near(dihedral(form, "side 1", "side 2"), e.get("dihedralLateralLateralDeg").asDouble());
    }
  }

  @Test
  void frusta() {
    for (JsonNode e : Reference.formula("regular-frustum")) {
      double a = e.get("bottomEdge").asDouble() * S;
      double b = e.get("topEdge").asDouble() * S;
      Form form = Solids.frustumBySide(e.get("n").asInt(), a, b, e.get("height").asDouble() * S);
      near(form.volume(), e.get("volume").asDouble() * S * S * S);
      near(form.area(), e.get("surfaceArea").asDouble() * S * S);
      near(dihedral(form, "side 1", "base"), e.get("dihedralLateralBottomDeg").asDouble());
    }
  }

  /** A frustum-like hull between two polygons turned against each other. */
  @Test
  void prismatoids() {
    for (JsonNode e : Reference.formula("prismatoid")) {
      int n = e.get("n").asInt();
      double twist = e.get("twistDeg").asDouble() / 360 * n;
      List<Vec3> points = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        points.add(Ring.corner(n, Ring.radius(n, e.get("bottomEdge").asDouble()), 0, i, 0));
        points.add(
            Ring.corner(
                n,
                Ring.radius(n, e.get("topEdge").asDouble()),
                e.get("height").asDouble(),
                i,
                twist));
      }
      near(Solids.hull(points).volume(), e.get("volume").asDouble());
    }
  }

  @Test
  void cupolas() {
    for (JsonNode e : Reference.formula("cupola")) {
      int n = e.get("n").asInt();
      List<Vec3> points = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        points.add(Ring.corner(n, Ring.radius(n, 1), e.get("height").asDouble(), i, 0));
      }
      for (int i = 0; i < 2 * n; i++) {
        points.add(Ring.corner(2 * n, Ring.radius(2 * n, 1), 0, i, 0));
      }
      Form cupola = Solids.hull(points);
      near(cupola.volume(), e.get("volume").asDouble());
      assertThat(cupola.facets()).hasSize(2 * n + 2);
    }
  }

  @Test
  void turnedProfileIsTheSumOfItsFrusta() {
    Form vase =
        Solids.turned(
            List.of(
                new facetwright.geom.Vec2(20, 0),
                new facetwright.geom.Vec2(40, 30),
                new facetwright.geom.Vec2(0, 70)),
            7);
    near(
        vase.volume(), Solids.frustum(7, 20, 40, 30).volume() + Solids.pyramid(7, 40, 40).volume());
    assertThat(vase.facets()).hasSize(15);
    near(Solids.bipyramid(5, 20, 15).volume(), 2 * Solids.pyramid(5, 20, 15).volume());
    near(Solids.box(30, 20, 10).volume(), 6000);
  }

  private static double dihedral(Form form, String a, String b) {
    int fa = form.facet(a);
    int fb = form.facet(b);
    for (FormEdge e : form.edges()) {
      if ((e.left() == fa && e.right() == fb) || (e.left() == fb && e.right() == fa)) {
        return Math.toDegrees(Dihedral.of(form, e));
      }
    }
    throw new AssertionError(a + " and " + b + " share no edge");
  }

  private static void near(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(1e-9 * Math.max(1, Math.abs(expected))));
  }
}
