package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Faces on the sides of a base, two of them joined by sides that hang on corners of it: where that
 * is one corner the form closes, where it is two it does not, for they would have to meet.
 */
class WrongSidesTest {
  private static final double SIDE = 40;

  static Stream<Arguments> joins() {
    List<Arguments> all = new ArrayList<>();
    for (int n = 3; n <= 6; n++) {
      for (int other = 2; other <= n; other++) {
        for (int one : new int[] {2, 3}) {
          all.add(Arguments.of(n, other, one, 5 - one, true));
          all.add(Arguments.of(n, other, one, 5 - one, false));
        }
      }
    }
    return all.stream();
  }

  @ParameterizedTest
  @MethodSource("joins")
  void isJudged(int n, int other, int one, int two, boolean tab) throws ScriptException {
    String script =
        """
        design("Faces");
        const base = panel("base", { sides: %d, side: %s });
        const one = base.attach("1", "one", { sides: 3 });
        const other = base.attach("%d", "other", { sides: 3 });
        one.join("%d", other, "%d", { %s });
        sheet("A3");
        """
            .formatted(n, SIDE, other, one, two, tab ? "depth: 6" : "tab: false");
    Design design = Facetwright.evaluate("faces.js", script, Map.of(), Budget.USUAL);
    // Side 1 of a face lies on the base; its side 2 begins where the base's side begins.
    int cornerOne = one == 2 ? 0 : 1;
    int cornerOther = (two == 2 ? other - 1 : other) % n;
    boolean meet = cornerOne == cornerOther;
    assertThat(design.folded().closes()).isEqualTo(meet);
  }
}
