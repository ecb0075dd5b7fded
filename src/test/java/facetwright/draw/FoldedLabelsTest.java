package facetwright.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.geom.Box2;
import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import facetwright.net.fitting.Label;
import facetwright.script.Facetwright;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Labels lie flat on their facets in pictures of the folded form, and are hidden with them. */
class FoldedLabelsTest {
  private static final String BOX =
      """
      design("Labels");
      const box = prism({ sides: %d, side: 60, height: 50 });
      box.label("side 1", "%s"%s).unfold();
      sheet("A2");
      """;

  private static Design design(int sides, String words, String options) throws Exception {
    return Facetwright.evaluate(
        "labels.js", BOX.formatted(sides, words, options), Map.of(), Budget.USUAL);
  }

  private static FoldedDrawing drawing(Design design, boolean withLayers) {
    return new FoldedDrawing(design.net(), design.folded().whole(), withLayers);
  }

  private static LabelSetting set(Design design) {
    return LabelSetting.all(design.net()).getFirst();
  }

  /** Straight at the outside of the labelled panel, or at its inside. */
  private static Viewpoint at(Design design, boolean outside) {
    int panel = set(design).label().panel();
    Vec3 normal = design.folded().whole().get(panel).ez();
    Vec3 to = outside ? normal : normal.times(-1);
    Viewpoint there = new Viewpoint(Math.atan2(to.y(), to.x()), Math.asin(to.z()));
    assertThat(there.toward().dot(to)).isGreaterThan(0.99);
    return there;
  }

  /** Patches with a hole or several parts, or darker than card ever is. */
  private static Stream<Mark.Patch> words(List<Mark.Patch> seen) {
    return seen.stream().filter(p -> p.ink().red() < 90);
  }

  private static double area(Stream<Mark.Patch> patches) {
    return patches.mapToDouble(FoldedLabelsTest::inked).sum();
  }

  /** What an odd number of rings encloses; letters of one label do not touch. */
  private static double inked(Mark.Patch patch) {
    double area = 0;
    for (Polygon2 ring : patch.rings()) {
      long around =
          patch.rings().stream()
              .filter(other -> !other.equals(ring) && other.contains(ring.corner(0)))
              .count();
      area += around % 2 == 0 ? ring.area() : -ring.area();
    }
    return area;
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 8})
  void wordsLieFlatOnTheirFacet(int sides) throws Exception {
    Design design = design(sides, "Tidewell", "");
    List<Mark.Patch> seen = drawing(design, true).seen(at(design, true));
    double size = set(design).size();
    // Two ways to the ink: its outlines on the screen, and the share of an em that a face takes.
    double em = size * size;
    assertThat(area(words(seen))).isBetween(0.5 * em, 3 * em);
    Label label = set(design).label();
    List<Vec2> panel = drawing(design, true).outline(label.panel(), at(design, true));
    Box2 box = Box2.around(panel);
    words(seen)
        .flatMap(p -> p.rings().stream())
        .flatMap(r -> r.corners().stream())
        .forEach(c -> assertThat(box.union(Box2.around(List.of(c)))).isEqualTo(box));
    assertThat(words(seen)).allMatch(p -> p.part() == label.panel());
  }

  /** An l is a bar 1 : 7 or so, an M wide: read from left to right, the wide one comes last. */
  @Test
  void theyAreReadUprightFromLeftToRight() throws Exception {
    Design design = design(6, "lM", "");
    List<Polygon2> letters =
        words(drawing(design, true).seen(at(design, true)))
            .flatMap(p -> p.rings().stream())
            .toList();
    assertThat(letters).hasSize(2);
    Box2 left = Box2.around(letters.getFirst().corners());
    Box2 right = Box2.around(letters.getLast().corners());
    if (left.minX() > right.minX()) {
      Box2 other = left;
      left = right;
      right = other;
    }
    assertThat(left.width()).isLessThan(right.width() / 3);
    assertThat(left.height()).isGreaterThan(3 * left.width());
    // Both stand on one base line.
    assertThat(left.minY()).isCloseTo(right.minY(), within(0.1 * right.height()));
  }

  @Test
  void fromBehindAndWithoutLayersThereAreNone() throws Exception {
    Design design = design(6, "Tidewell", "");
    assertThat(words(drawing(design, true).seen(at(design, false)))).isEmpty();
    assertThat(words(drawing(design, false).seen(at(design, true)))).isEmpty();
  }

  @Test
  void aLabelOfPaperHasItsOutline() throws Exception {
    Design design = design(6, "Tidewell", ", { cut: true }");
    List<Mark.Patch> seen = drawing(design, true).seen(at(design, true));
    List<Mark.Patch> edged =
        seen.stream()
            .filter(p -> p.edges().stream().anyMatch(e -> e.kind() == LineKind.LAYER))
            .toList();
    assertThat(edged).hasSize(1);
    double slant =
        at(design, true)
            .toward()
            .dot(design.folded().whole().get(set(design).label().panel()).ez());
    assertThat(edged.getFirst().rings().getFirst().area())
        .isCloseTo(set(design).outline().area() * slant, within(1e-6));
    assertThat(seen.indexOf(edged.getFirst()))
        .isLessThan(seen.indexOf(words(seen).findFirst().orElseThrow()));
  }
}
