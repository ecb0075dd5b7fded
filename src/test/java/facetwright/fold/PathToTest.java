package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.fold.walk.FoldPath;
import facetwright.geom.Motion3;
import facetwright.geom.Vec2;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The way to a form that is known is the way that is found by seeking the form. */
class PathToTest {
  /** Much less than a picture shows, in mm. */
  private static final double SAME = 0.05;

  static Stream<Path> library() {
    return LibraryDesigns.files().stream();
  }

  @ParameterizedTest
  @MethodSource("library")
  void panelsGoTheSameWay(Path file) throws Exception {
    Design d = LibraryDesigns.design(file);
    FoldPath sought = Folding.path(d.laid());
    FoldPath known = FoldPath.to(d.net(), d.folded()).orElse(sought);
    for (double t : new double[] {0, 0.3, 0.7, 0.9, 1}) {
      List<Motion3> one = sought.at(t);
      List<Motion3> other = known.at(t);
      for (int p = 0; p < one.size(); p++) {
        for (Vec2 c : d.net().panels().get(p).outline().corners()) {
          assertThat(other.get(p).apply(c).distance(one.get(p).apply(c)))
              .as(d.net().panels().get(p).name() + " at " + t)
              .isLessThan(SAME);
        }
      }
    }
  }
}
