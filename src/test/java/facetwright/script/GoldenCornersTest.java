package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.script.design.Design;
import facetwright.script.sandbox.ScriptException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The corners that the library's golden.js gives make the forms they are called after. */
class GoldenCornersTest {
  /** Facets, and the volume by the cube of the edge: textbook values, from memory. */
  @ParameterizedTest
  @CsvSource({
    "icosahedron, 20, 2.181694990624912",
    "dodecahedron, 12, 7.663118960624632",
    "icosidodecahedron, 32, 13.835525936249405"
  })
  void theyMakeTheForm(String form, int facets, double volume) throws ScriptException {
    String script =
        "design(\"G\");\nconst form = skin(use(\"golden.js\")."
            + form
            + "(20));\nsay(form.volume() / 8000);\nform.unfold({ tabs: false });\n";
    Design design = UsedFilesTest.evaluate(LibraryDesigns.whole(script));
    assertThat(Double.parseDouble(design.said().getFirst())).isCloseTo(volume, within(1e-4));
    assertThat(design.net().panels()).hasSize(facets);
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
  }
}
