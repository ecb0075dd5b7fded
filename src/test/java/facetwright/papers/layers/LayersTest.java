package facetwright.papers.layers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.papers.cutting.Paper;
import facetwright.papers.cutting.Verify;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Layers of whole designs. */
class LayersTest {
  private static final Paper A4 = new Paper("A4", 210, 297);

  private static LayerPaper paper(String name, boolean directed) {
    return new LayerPaper(name, List.of(A4), true, directed);
  }

  private static Design design(String script) throws Exception {
    return Facetwright.evaluate("test.js", script, Map.of(), Budget.USUAL);
  }

  private static Layers layers(Design d, LayerPaper... papers) {
    return Layers.of(d.net(), d.folded(), List.of(papers));
  }

  /** Four columns of 28 mm, two walls of 60 mm each; 1.5 mm are taken off each side. */
  @Test
  void theLanternHasOneKindOfLayer() throws Exception {
    Design lantern = design(LibraryDesigns.text("harbour-lantern"));
    List<LayerGroup> groups = layers(lantern).groups();
    assertThat(groups).hasSize(1);
    LayerGroup only = groups.getFirst();
    assertThat(only.kind()).isEqualTo(LayerGroup.Kind.RECTANGLE);
    assertThat(only.count()).isEqualTo(8);
    assertThat(only.width()).isCloseTo(57, within(1e-6));
    assertThat(only.height()).isCloseTo(25, within(1e-6));
    List<LayerPlan> plans =
        LayerCuts.plan(layers(lantern), 10, List.of(paper("wave paper", false)));
    assertThat(plans).hasSize(1);
    assertThat(plans.getFirst().plan().pieces()).containsExactly(80);
    assertThat(Verify.exactly(plans.getFirst().plan())).isEmpty();
  }

  /** A bauble of two pyramids on 8 sides has 16 equal facets. */
  @Test
  void theBaublesTrianglesAreOneGroup() throws Exception {
    Design bauble = design(LibraryDesigns.text("gull-bauble"));
    List<LayerGroup> groups = layers(bauble).groups();
    assertThat(groups).hasSize(1);
    assertThat(groups.getFirst().count()).isEqualTo(16);
    assertThat(groups.getFirst().kind()).isEqualTo(LayerGroup.Kind.TRIANGLE);
    LayerPlan plan =
        LayerCuts.plan(layers(bauble), 3, List.of(paper("layer paper", false))).getFirst();
    int triangles = plan.strips().stream().mapToInt(s -> s.count() * s.strip().triangles()).sum();
    assertThat(triangles).isEqualTo(48);
    assertThat(Verify.exactly(plan.plan())).isEmpty();
  }

  /** Upside down is not upright: the lower half of the bauble is a group of its own. */
  @Test
  void aDirectedPaperKeepsUpsideDownApart() throws Exception {
    Design bauble = design(LibraryDesigns.text("gull-bauble"));
    List<LayerGroup> groups = layers(bauble, paper("layer paper", true)).groups();
    assertThat(groups).hasSize(2);
    assertThat(groups).allMatch(g -> g.count() == 8);
  }

  /** The slanted ends of a skew box mirror each other. */
  @Test
  void mirroredLayersAreApartOnlyWithAFace() throws Exception {
    Design two =
        design(
            """
            design("Two fins");
            const left = panel("left", { corners: [[0, 0], [40, 0], [40, 30], [10, 30]] });
            left.layer({ reveal: 1 });
            const right = panel("right", { corners: [[100, 0], [140, 0], [130, 30], [100, 30]] });
            right.layer({ reveal: 1 });
            sheet("A4");
            """);
    List<LayerGroup> faced = layers(two).groups();
    assertThat(faced).hasSize(2);
    assertThat(faced.get(1).mirrorOf()).contains("a");
    assertThat(faced.get(0).mirrorOf()).isEmpty();
    LayerPaper plain = new LayerPaper("layer paper", List.of(A4), false, false);
    assertThat(layers(two, plain).groups()).hasSize(1);
  }

  @Test
  void aRevealThatTakesAllIsTold() throws Exception {
    Design thin =
        design(
            """
            design("Thin");
            panel("sliver", { width: 60, height: 3 }).layer({ reveal: 1.5 });
            sheet("A4");
            """);
    assertThat(layers(thin).groups()).isEmpty();
    assertThat(layers(thin).lost()).containsExactly("sliver");
  }

  static Stream<Path> library() throws Exception {
    return LibraryDesigns.files().stream();
  }

  /** Groups hold every layer once, and no two groups are one shape. */
  @ParameterizedTest
  @MethodSource("library")
  void libraryLayersAreCountedOnce(Path file) throws Exception {
    Design d = design(LibraryDesigns.text(file));
    Layers layers = layers(d);
    // What lies behind windows is cut as layers are.
    int panes = d.net().panels().stream().mapToInt(p -> p.panes().size()).sum();
    int counted = layers.groups().stream().mapToInt(LayerGroup::count).sum();
    assertThat(counted + layers.lost().size()).isEqualTo(d.net().layers().size() + panes);
    for (LayerGroup a : layers.groups()) {
      assertThat(layers.groups())
          .filteredOn(b -> !b.letter().equals(a.letter()) && b.paper().equals(a.paper()))
          .noneMatch(b -> Congruence.USUAL.turned(a.shape(), b.shape()));
    }
  }
}
