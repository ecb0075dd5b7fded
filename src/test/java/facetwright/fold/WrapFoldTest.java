package facetwright.fold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.fold.pose.Closure;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.Net;
import facetwright.net.wrap.Pinch;
import facetwright.net.wrap.WrapDraft;
import facetwright.net.wrap.WrapRow;
import facetwright.words.Site;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Wraps as the net package draws them close when folded. */
class WrapFoldTest {
  private static final Site AT = Site.NONE;

  /** Area of the regular polygon of n sides a: n·a²/(4·tan(π/n)), handbook, from memory. */
  private static double plan(int n, double a) {
    return n * a * a / (4 * Math.tan(Math.PI / n));
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 8, 12, 16})
  void regularWrapsWithFlapAndRimTabsClose(int n) {
    WrapDraft wrap =
        WrapDraft.of(Collections.nCopies(n, 30.0), WrapRow.usual(List.of(8.0, 70.0, 8.0)), AT)
            .seam(10, AT);
    wrap.all().rows("rim", AT).tabs(AT);
    Net net = wrap.build();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.measures().height()).isCloseTo(70, within(1e-9));
    assertThat(form.measures().volume()).isCloseTo(plan(n, 30) * 70, within(1e-5));
    assertThat(form.measures().area()).isCloseTo(n * 30 * 70, within(1e-6));
  }

  @Test
  void twoRowsOfAPlainWrapDoNotTear() {
    Net net =
        WrapDraft.of(Collections.nCopies(6, 25.0), WrapRow.usual(List.of(40.0, 30.0)), AT)
            .seam(9, AT)
            .build();
    FoldedForm form = Folding.fold(net);
    assertThat(form.closure()).isEqualTo(Closure.CLOSES);
    assertThat(form.tears()).isNotEmpty();
    assertThat(form.measures().height()).isCloseTo(70, within(1e-9));
    assertThat(form.measures().volume()).isCloseTo(plan(6, 25) * 70, within(1e-5));
  }

  @Test
  void unequalColumnsStandOnACircle() {
    Net net =
        WrapDraft.of(List.of(60.0, 40.0, 60.0, 40.0), WrapRow.usual(List.of(90.0)), AT).build();
    FoldedForm form = Folding.fold(net);
    assertThat(form.measures().width()).isCloseTo(60, within(1e-6));
    assertThat(form.measures().depth()).isCloseTo(40, within(1e-6));
    assertThat(form.gap()).isLessThan(1e-6);
  }

  @Test
  void aPinchedWrapWaitsForItsAngles() {
    WrapDraft wrap =
        WrapDraft.of(
                Collections.nCopies(8, 28.0), WrapRow.usual(List.of(28.0, 60.0, 60.0, 28.0)), AT)
            .seam(12, AT);
    wrap.all().columns("even", AT).rows("rim", AT).remove(AT);
    wrap.all().columns("even", AT).rows("wall", AT).gusset(Pinch.IN, null, AT);
    assertThat(Folding.fold(wrap.build()).closure()).isEqualTo(Closure.NOT_SOLVED);
  }
}
