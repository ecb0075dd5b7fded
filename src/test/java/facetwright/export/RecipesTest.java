package facetwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.Verdict;
import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.papers.order.Order;
import facetwright.script.Facetwright;
import facetwright.script.LibraryDesigns;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each recipe closes, goes together, fits a sheet and makes its papers. */
class RecipesTest {

  private static Stream<String> recipes() throws Exception {
    return Pattern.compile("```js\\R(.*?)```", Pattern.DOTALL)
        .matcher(Files.readString(Path.of("docs/recipes.md")))
        .results()
        .map((MatchResult block) -> block.group(1));
  }

  @TestFactory
  Stream<DynamicTest> eachIsSound() throws Exception {
    return recipes()
        .map(s -> DynamicTest.dynamicTest(s.lines().findFirst().orElse(""), () -> sound(s, "")));
  }

  private static Design sound(String script, String steps) throws Exception {
    Map<String, String> set = steps.isEmpty() ? Map.of() : Map.of("steps", steps);
    String whole = LibraryDesigns.whole(script);
    Design design = Facetwright.evaluate("recipe.js", whole, set, Budget.USUAL);
    String verdict =
        Verdict.of(design.laid(), design.folded(), design.findings()).text(design.unit());
    assertThat(design.folded().closure()).as(verdict).isEqualTo(Closure.CLOSES);
    assertThat(design.laid().fits()).isTrue();
    assertThat(design.findings()).as(verdict).allMatch(f -> f.severity() == Finding.Severity.NOTE);
    Job job =
        Jobs.of(design.title(), "", design.laid(), design.folded(), Order.usual(design.unit()));
    for (Exporter exporter : Exporters.all().values()) {
      if (exporter.isUsual() || exporter.adds(job)) {
        assertThat(exporter.files(job))
            .isNotEmpty()
            .allSatisfy((_, f) -> assertThat(f).isNotEmpty());
      }
    }
    return design;
  }

  /** Two sentences said aloud; the steps may be even or odd, and stand as far out as they are. */
  @Test
  void theStairIsShortAndTurns() throws Exception {
    String stair = recipes().filter(s -> s.contains("Pop-out stair")).findFirst().orElseThrow();
    assertThat(stair.strip().lines().count()).isLessThanOrEqualTo(13);
    for (String steps : new String[] {"2", "3", "4", "5", "6"}) {
      assertThat(sound(stair, steps).net().scores()).hasSize(2 * Integer.parseInt(steps) + 3);
    }
  }
}
