package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.check.finding.Finding;
import facetwright.script.api.Fn;
import facetwright.script.api.Things;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.vocabulary.Language;
import facetwright.words.Mend;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a script makes for nothing is found, and nothing else. */
class UnusedTest {
  private static final String HEAD =
      """
      design("Trial");
      const p = prism({ sides: 5, side: 30, height: 40 }), q = prism({ sides: 4, side: 9, height: 9 });
      const w = wrap({ columns: 6, width: 20, rows: [9, 20, 9] });
      """;
  private static final String FOOT = "\np.unfold(); q.unfold();\n";

  private static List<Finding> unused(String script) {
    try {
      return UsedFilesTest.evaluate(LibraryDesigns.whole(script)).findings().stream()
          .filter(f -> f.rule().equals("unused"))
          .toList();
    } catch (ScriptException e) {
      throw new AssertionError(script, e);
    }
  }

  /** Every function of a form that gives a new one. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "open(\"top\")",
        "window(\"side 1\", { border: 5 })",
        "hole(\"top\", { across: 3 })",
        "layer(\"top\", { reveal: 2 })",
        "chamferEdges(2)",
        "chamferCorners(2)",
        "cut({ at: [0, 0, 20], away: [0, 0, 1] })",
        "raise(\"top\", 9)",
        "twist(9)",
        "stack(prism({ sides: 5, side: 30, height: 10 }))",
        "dual()",
        "scale(2)",
        "tab(\"top\", \"side\")",
        "name(\"side 1\", \"front\")",
        "hook(\"side 1\", \"side 2\")",
        "tuck(\"top\", \"side 1\")",
        "hinge(\"top\", \"side 1\")",
        "label(\"side 1\", \"Bread\")",
        "backing(\"side 2\")",
        "notch(\"side 1\", { width: 8, depth: 4, edge: \"top\" })",
        "tongue(\"side 1\", \"side 2\")",
      })
  void aChangeOfAFormThatIsLost(String call) {
    String name = call.substring(0, call.indexOf('('));
    // What goes behind a window wants one, and what is cut into a free edge a free edge.
    String before =
        switch (name) {
          case "backing" -> ".window(\"side 2\", { border: 8 })";
          case "notch" -> ".open(\"top\")";
          default -> "";
        };
    String head = HEAD.replace("height: 40 })", "height: 40 })" + before);
    List<Finding> found = unused(head + "  p." + call + ";" + FOOT);
    assertThat(found)
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.message())
                  .isEqualTo(
                      name
                          + " makes a new form and leaves p as it was; nothing is done with the"
                          + " new one.");
              assertThat(f.fix())
                  .isEqualTo("Put p = before it, with let in place of const where p is made.");
              assertThat(f.severity()).isEqualTo(Finding.Severity.WARNING);
              assertThat(f.mends()).containsExactly(new Mend.Keep("p"));
              assertThat(f.site().line()).isEqualTo(4);
              assertThat(f.site().column()).isEqualTo(5);
            });
  }

  @TestFactory
  Stream<DynamicTest> noFunctionThatGivesANewFormIsLeftOut() throws Exception {
    ValueSource tried =
        UnusedTest.class
            .getDeclaredMethod("aChangeOfAFormThatIsLost", String.class)
            .getAnnotation(ValueSource.class);
    List<String> names =
        Stream.of(tried.strings()).map(s -> s.substring(0, s.indexOf('('))).toList();
    return Language.things().stream()
        .filter(t -> t.name().equals("form"))
        .flatMap(t -> t.functions().stream())
        .filter(f -> f.gives().filter(Things.FORM::equals).isPresent())
        .map(f -> DynamicTest.dynamicTest(f.name(), () -> assertThat(names).contains(f.name())));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          p.chamferEdges(2).open("top")               | open makes a new form and leaves p as it was
          if (q.height() > 3) p.open("top")         | open makes a new form and leaves p as it was
          for (const f of ["top"]) { p.open(f); }   | open makes a new form and leaves p as it was
          p\\n  .open("top") // lost                | open makes a new form and leaves p as it was
          box({ width: 9, depth: 9, height: 9 })    | The form that box makes here is never unfolded
          box({ width: 9, depth: 9, height: 9 }).open("top") | The form that open makes here is never
          const lid = p.open("top")                 | The form lid is never unfolded
          let lid = p.open("top"); lid = 0          | The form lid is never unfolded
          const lid = p.open("top") /* lid */       | The form lid is never unfolded
          function make() { return p.dual(); } make() | The form given back here is never unfolded
          const make = () => p.dual(); make()       | The form given back here is never unfolded
          w.rows("rim")                             | rows chooses cells here, and nothing is done
          w.rows("rim").columns("even")             | columns chooses cells here, and nothing is done
          const rim = w.rows("rim")                 | rows chooses cells here, and nothing is done
          """)
  void isFound(String line, String message) {
    List<Finding> found = unused(HEAD + line.replace("\\n", "\n") + FOOT);
    assertThat(found).singleElement().satisfies(f -> assertThat(f.message()).startsWith(message));
    assertThat(found.getFirst().fix()).isNotBlank();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "p.open('top').unfold();",
        "let r = p; r = r.open('top'); r.unfold();",
        "const lid = p.open('top'); if (q.height() > 99) lid.unfold();",
        "const kinds = { a: p.open('top'), b: p.dual() }; kinds.a.unfold();",
        "[p.open('top'), p.dual()][1].unfold();",
        "[1, 2, 3].map((n) => p.scale(n))[1].unfold();",
        "const model = p.scale(2); say(model.volume());",
        "const core = prism({ sides: 5, side: 3, height: 4 }); say(core.height());",
        "p.stack(prism({ sides: 5, side: 30, height: 10 })).unfold();",
        "w.rows('rim').tabs(); const walls = w.rows('wall'); walls.columns('odd').layer();",
        "try { p.open('nothing'); } catch (e) { say(e.message); }",
        "say('p.open(\"top\");'); // p.open('top');",
        "const lid = p.open('top'); say(`${lid.height()} mm`);",
        "const lid = p /* ; */ . open('top'); [lid][0].unfold();",
      })
  void isFine(String line) {
    assertThat(unused(HEAD + line + FOOT)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          prism({ sides: 5, side: 30, height: 40 });   | The form that prism makes here is never | 2 | 1
          const p = prism({ sides: 5, side: 3, height: 4 });  | The form p is never unfolded | 2 | 11
          """)
  void withNothingElseTheScriptIsRefusedThere(String line, String words, int at, int column) {
    ScriptException e =
        catchThrowableOfType(
            ScriptException.class,
            () ->
                Facetwright.evaluate(
                    "a.js", "design(\"Trial\");\n" + line, Map.of(), Budget.USUAL));
    assertThat(e.getMessage()).startsWith("the script makes no net: " + words);
    assertThat(e.remedy()).contains("unfold()");
    assertThat(e.line()).isEqualTo(at);
    assertThat(e.column()).isEqualTo(column);
    assertThat(e.mends()).hasSize(1);
  }

  /** The library, the examples of the reference, and every design in the docs. */
  @TestFactory
  Stream<DynamicTest> noDesignOfOursMakesAnythingForNothing() throws Exception {
    Stream<Path> library = list("library", ".js");
    Stream<String> docs =
        list("docs", ".md")
            .flatMap(
                file ->
                    Pattern.compile("```js\\R(.*?)```", Pattern.DOTALL)
                        .matcher(read(file))
                        .results()
                        .map(m -> m.group(1)))
            .filter(s -> s.contains("design("));
    Stream<String> examples =
        Language.things().stream().flatMap(t -> t.functions().stream()).map(Fn::example);
    return Stream.of(library.map(UnusedTest::read), docs, examples)
        .flatMap(s -> s)
        .distinct()
        .map(
            s ->
                DynamicTest.dynamicTest(
                    s.lines().filter(l -> l.contains("design(")).findFirst().orElse(""),
                    () -> assertThat(unused(s)).isEmpty()));
  }

  private static Stream<Path> list(String folder, String ending) throws Exception {
    try (Stream<Path> files = Files.list(Path.of(folder))) {
      return files.filter(f -> f.toString().endsWith(ending)).sorted().toList().stream();
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
