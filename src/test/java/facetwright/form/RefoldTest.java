package facetwright.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.Folding;
import facetwright.fold.pose.FoldedForm;
import facetwright.form.change.Reshape;
import facetwright.form.make.Solids;
import facetwright.form.unfold.Nets;
import facetwright.form.unfold.UnfoldStyle;
import facetwright.form.unfold.Unfolding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An unfolded net folds up into the form it came from. */
class RefoldTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "p-tetrahedron",
        "p-icosahedron",
        "a-snub-cuboctahedron",
        "j-J63-tridiminished-icosahedron"
      })
  void solidsCloseAgain(String name) {
    closes(Reference.form(name, 50));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-20, 35})
  void raisedAndSunkFormsCloseAgain(double height) {
    closes(Solids.prism(5, 40, 60).changed(Reshape.raised("top", height)));
  }

  private static void closes(Form form) {
    for (UnfoldStyle style : UnfoldStyle.values()) {
      FoldedForm folded = Folding.fold(new Nets(form, Unfolding.as(style)).on(0, 0).net());
      assertThat(folded.gap()).isLessThan(1e-5);
      assertThat(folded.measures().volume()).isCloseTo(form.volume(), within(1e-6 * form.volume()));
      assertThat(folded.measures().area()).isCloseTo(form.area(), within(1e-6 * form.area()));
    }
  }
}
