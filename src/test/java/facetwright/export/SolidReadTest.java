package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import facetwright.fold.Card;
import facetwright.fold.pose.Closure;
import facetwright.geom.Vec3;
import facetwright.net.FoldAngle;
import facetwright.net.Net;
import facetwright.net.PanelRole;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Models read back; volumes by the divergence theorem, a sum over outward triangles. */
class SolidReadTest {
  private static List<List<Vec3>> stl(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    in.position(80);
    int count = in.getInt();
    List<List<Vec3>> triangles = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Vec3 normal = vec(in);
      List<Vec3> triangle = List.of(vec(in), vec(in), vec(in));
      in.getShort();
      Vec3 square =
          triangle.get(1).minus(triangle.get(0)).cross(triangle.get(2).minus(triangle.get(0)));
      assertThat(square.unit().distance(normal)).isLessThan(1e-5);
      triangles.add(triangle);
    }
    assertThat(in.remaining()).isZero();
    return triangles;
  }

  private static Vec3 vec(ByteBuffer in) {
    return new Vec3(in.getFloat(), in.getFloat(), in.getFloat());
  }

  /** Faces of one group, or of all for an empty name. */
  private static List<List<Vec3>> obj(byte[] bytes, String group) {
    List<Vec3> vertices = new ArrayList<>();
    List<List<Vec3>> faces = new ArrayList<>();
    String now = "";
    for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n")) {
      String[] words = line.split(" ");
      switch (words[0]) {
        case "v" ->
            vertices.add(
                new Vec3(
                    Double.parseDouble(words[1]),
                    Double.parseDouble(words[2]),
                    Double.parseDouble(words[3])));
        case "g" -> now = words[1];
        case "f" -> {
          List<Vec3> face = new ArrayList<>();
          for (int i = 1; i < words.length; i++) {
            face.add(vertices.get(Integer.parseInt(words[i]) - 1));
          }
          if (group.isEmpty() || group.equals(now)) {
            faces.add(face);
          }
        }
        default -> assertThat(words[0]).isEqualTo("#");
      }
    }
    return faces;
  }

  private static double volume(List<List<Vec3>> faces) {
    double six = 0;
    for (List<Vec3> face : faces) {
      for (int i = 1; i + 1 < face.size(); i++) {
        six += face.get(0).dot(face.get(i).cross(face.get(i + 1)));
      }
    }
    return six / 6;
  }

  private static double area(List<List<Vec3>> faces) {
    double twice = 0;
    for (List<Vec3> face : faces) {
      for (int i = 1; i + 1 < face.size(); i++) {
        twice += face.get(i).minus(face.get(0)).cross(face.get(i + 1).minus(face.get(0))).length();
      }
    }
    return twice / 2;
  }

  @Test
  void cubeHoldsAMillionCubicMillimetres() {
    Job job = Papers.job("Cube", Papers.cube(100, 15), Papers.A2);
    assertThat(volume(stl(new StlWriter().write(job)))).isCloseTo(1e6, within(1.0));
    assertThat(volume(obj(new ObjWriter().write(job), "facets"))).isCloseTo(1e6, within(1e-3));
  }

  @Test
  void cubeIsAClosedBodyOfTwelveTriangles() {
    List<List<Vec3>> triangles =
        stl(new StlWriter().write(Papers.job("Cube", Papers.cube(100, 15), Papers.A2)));
    assertThat(triangles).hasSize(12);
    assertClosed(triangles);
  }

  /**
   * A pyramid one of whose ridges is 0.3 % long: flat panels do not meet, yet the body is closed.
   */
  @Test
  void aBodyThatOnlyBendingClosesIsClosedToo() {
    Net net = Card.pyramid(60, 60, new double[] {70, 70, 70, 70 * 1.003}, FoldAngle.TO_SOLVE);
    Job job = Papers.job("Pyramid", net, Papers.A2);
    assertThat(job.form().closure()).isEqualTo(Closure.CLOSES_WITH_STRAIN);
    List<List<Vec3>> triangles = stl(new StlWriter().write(job));
    assertClosed(triangles);
    // A third of base times height, √(70² − 60²/2).
    assertThat(volume(triangles)).isCloseTo(3600 * Math.sqrt(3100) / 3, withinPercentage(0.5));
  }

  private static void assertClosed(List<List<Vec3>> triangles) {
    Map<List<Vec3>, Integer> edges = new HashMap<>();
    for (List<Vec3> t : triangles) {
      for (int i = 0; i < 3; i++) {
        edges.merge(List.of(t.get(i), t.get((i + 1) % 3)), 1, Integer::sum);
      }
    }
    // Each edge is run along once each way.
    assertThat(edges.values()).allMatch(n -> n == 1);
    assertThat(edges.keySet()).allMatch(e -> edges.containsKey(e.reversed()));
  }

  @Test
  void groupsFacetsAndTabs() {
    byte[] obj = new ObjWriter().write(Papers.job("Cube", Papers.cube(100, 15), Papers.A2));
    assertThat(obj(obj, "facets")).hasSize(6).allMatch(f -> f.size() == 4);
    assertThat(obj(obj, "tabs")).hasSize(7);
    assertThat(obj(obj, "").stream().flatMap(List::stream).mapToDouble(Vec3::z).min())
        .hasValueCloseTo(0.0, within(1e-9));
  }

  @Test
  void windowsAndHolesAreOpen() {
    Job job = Papers.job("Tray", Papers.tray(60, 20), Papers.A4);
    double cards =
        job.laid().net().panels().stream()
            .filter(p -> p.role() == PanelRole.FACET)
            .mapToDouble(p -> p.cardArea())
            .sum();
    // A hexagonal window of circumradius 10 mm: 3√3/2 · 10², and four walls of 60 by 20.
    double byHand = 3600 - 1.5 * Math.sqrt(3) * 100 - Math.PI * 9 + 4 * 1200 + 57 * 10;
    assertThat(cards).isCloseTo(byHand, within(0.1));
    assertThat(area(obj(new ObjWriter().write(job), "facets"))).isCloseTo(cards, within(1e-4));
  }
}
