package facetwright.fold.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Box2;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** Forms are squared up on the table, alike forms alike. */
class StandingTest {
  private static Box2 stood(List<Vec3> points) {
    return Standing.seenFromAbove(
        points.stream().map(Standing.of(points, Vec3.Z, Vec3.X)::apply).toList());
  }

  /** Against another library's least rectangle. */
  @Test
  void itTakesTheLeastRectangle() {
    Random chance = new Random(1);
    for (int i = 0; i < 200; i++) {
      int n = 3 + chance.nextInt(12);
      List<Vec3> points = new ArrayList<>();
      for (int k = 0; k < n; k++) {
        points.add(
            new Vec3(100 * chance.nextDouble(), 60 * chance.nextDouble(), 9 * chance.nextDouble()));
      }
      Coordinate[] shadow =
          points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
      double least =
          MinimumAreaRectangle.getMinimumRectangle(
                  new GeometryFactory().createMultiPointFromCoords(shadow))
              .getArea();
      Box2 box = stood(points);
      assertThat(box.width() * box.height()).isCloseTo(least, within(1e-5 * least));
    }
  }

  /** Rings of two alternating radii have many least rectangles: their noise does not choose. */
  @Test
  void alikeFormsStandAlike() {
    Random chance = new Random(2);
    for (int n = 3; n <= 9; n++) {
      for (int i = 0; i < 20; i++) {
        double inner = 0.7 + 0.3 * chance.nextDouble();
        double apart = Math.PI / n * (0.2 + 0.8 * chance.nextDouble());
        double[] wide = new double[12];
        double[] deep = new double[12];
        for (int k = 0; k < wide.length; k++) {
          double radius = 20 + k * 1.37;
          List<Vec3> points = new ArrayList<>();
          for (int c = 0; c < n; c++) {
            points.add(on(radius, 2 * Math.PI * c / n - Math.PI / 2 - Math.PI / n, chance));
            points.add(
                on(
                    inner * radius,
                    2 * Math.PI * c / n - Math.PI / 2 - Math.PI / n + apart,
                    chance));
          }
          Box2 box = stood(points);
          wide[k] = box.width() / radius;
          deep[k] = box.height() / radius;
        }
        assertThat(Arrays.stream(wide).max().orElseThrow())
            .as("%s corners", n)
            .isCloseTo(Arrays.stream(wide).min().orElseThrow(), within(1e-6));
        assertThat(Arrays.stream(deep).max().orElseThrow())
            .isCloseTo(Arrays.stream(deep).min().orElseThrow(), within(1e-6));
      }
    }
  }

  /** A point on a circle, off it by what folding leaves over. */
  private static Vec3 on(double radius, double angle, Random chance) {
    double off = 1 + 1e-10 * (chance.nextDouble() - 0.5);
    return new Vec3(off * radius * Math.cos(angle), off * radius * Math.sin(angle), 0);
  }
}
