package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.form.make.Solids;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** Forms against the published values of the convex solids with regular faces. */
class ReferenceSolidTest {
  private static final double EDGE = 100;

  static List<String> solids() {
    return Reference.solids();
  }

  @Test
  void allEightySolidsAreThere() {
    assertThat(solids()).hasSize(80);
  }

  @ParameterizedTest
  @MethodSource("solids")
  void volumeAreaAndDihedrals(String name) {
    Form form = Reference.form(name, EDGE);
    JsonNode expected = Reference.solid(name).get("computed");
    assertThat(form.isClosed()).isTrue();
    assertThat(form.isConvex()).isTrue();
    double volume = expected.get("volume").asDouble() * EDGE * EDGE * EDGE;
    assertThat(form.volume()).isCloseTo(volume, within(1e-9 * volume));
    double area = expected.get("surfaceArea").asDouble() * EDGE * EDGE;
    assertThat(form.area()).isCloseTo(area, within(1e-9 * area));
    List<Double> dihedrals = new ArrayList<>();
    for (FormEdge e : form.edges()) {
      assertThat(form.length(e)).isCloseTo(EDGE, within(1e-9));
      dihedrals.add(Math.toDegrees(Dihedral.of(form, e)));
    }
    for (JsonNode d : expected.get("dihedrals")) {
      double degrees = d.get("degrees").asDouble();
      assertThat(dihedrals.stream().filter(x -> Math.abs(x - degrees) < 1e-8).count())
          .as(degrees + "°")
          .isGreaterThanOrEqualTo(d.get("count").asInt());
    }
    assertThat(form.edges()).hasSize(Reference.solid(name).get("counts").get("E").asInt());
  }

  /** Descartes, Progymnasmata de solidorum elementis (about 1630): the defects sum to 4π. */
  @ParameterizedTest
  @MethodSource("solids")
  void angleDefectsSumToFourPi(String name) {
    Form form = Reference.form(name, EDGE);
    double sum = 2 * Math.PI * form.corners().size();
    for (int f = 0; f < form.facets().size(); f++) {
      for (int c = 0; c < form.facets().get(f).size(); c++) {
        sum -= form.flat(f).angle(c);
      }
    }
    assertThat(sum).isCloseTo(4 * Math.PI, within(1e-9));
  }

  /** The hull of a solid's corners is the solid again. */
  @ParameterizedTest
  @MethodSource("solids")
  void hullOfItsCornersIsTheSolid(String name) {
    Form form = Reference.form(name, EDGE);
    List<Vec3> points = new ArrayList<>(form.corners());
    points.add(form.centre());
    points.add(form.frame(0).origin());
    points.add(form.corners().getFirst());
    Form hull = Solids.hull(points);
    assertThat(hull.facets()).hasSameSizeAs(form.facets());
    assertThat(hull.corners()).hasSameSizeAs(form.corners());
    assertThat(hull.volume()).isCloseTo(form.volume(), within(1e-9 * form.volume()));
  }

  @Test
  void publishedVolumesAndDihedrals() {
    for (JsonNode entry : Reference.read("solids/_published-values.json").get("entries")) {
      Form form = Reference.form(entry.get("solid").asString(), EDGE);
      double volume = entry.get("publishedVolume").asDouble() * 1e6;
      // Seven published decimals for the snub and sphenoid solids, closed forms for the others.
      assertThat(form.volume())
          .as(entry.get("solid").asString())
          .isCloseTo(volume, within(1e-6 * volume));
      for (JsonNode d : entry.path("dihedrals")) {
        double degrees = d.get("publishedDeg").asDouble();
        assertThat(form.edges())
            .as(entry.get("solid").asString() + " " + degrees)
            .anyMatch(e -> Math.abs(Math.toDegrees(Dihedral.of(form, e)) - degrees) < 1e-3);
      }
    }
  }
}
