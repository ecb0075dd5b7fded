package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.net.Overlaps;
import facetwright.script.api.Fn;
import facetwright.script.api.Thing;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.vocabulary.Language;
import facetwright.script.vocabulary.Reference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The reference says what the language does: its text is current and each example runs. */
class ReferenceTest {

  @Test
  void isCurrent() throws Exception {
    assertThat(Files.readString(Path.of("docs/script-reference.md")))
        .as("docs/script-reference.md differs from the language; run scripts/docs")
        .isEqualTo(Reference.markdown());
  }

  @TestFactory
  Stream<DynamicTest> everyExampleRunsAndUsesItsFunction() {
    return Language.things().stream().flatMap(ReferenceTest::examples);
  }

  @TestFactory
  Stream<DynamicTest> everyDesignInTheGuideRuns() throws Exception {
    Matcher blocks =
        Pattern.compile("```js\\R(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(Path.of("docs/writing-a-design.md")));
    return blocks
        .results()
        .map(b -> b.group(1))
        .map(s -> DynamicTest.dynamicTest(s.lines().findFirst().orElse(""), () -> sound(s)));
  }

  private static void sound(String script) throws Exception {
    Design design = Facetwright.evaluate("guide.js", script, Map.of(), Budget.USUAL);
    assertThat(Overlaps.find(design.net())).isEmpty();
    assertThat(design.laid().fits()).isTrue();
  }

  private static Stream<DynamicTest> examples(Thing<?> thing) {
    return thing.functions().stream()
        .map(fn -> DynamicTest.dynamicTest(thing.name() + "." + fn.name(), () -> run(thing, fn)));
  }

  private static void run(Thing<?> thing, Fn<?> fn) throws Exception {
    String call = (thing == Language.TOP ? "" : ".") + fn.name() + "(";
    assertThat(fn.example()).contains(call);
    sound(fn.example());
  }
}
