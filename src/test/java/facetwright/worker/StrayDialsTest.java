package facetwright.worker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.adjust.propose.Question;
import facetwright.aim.GoalReader;
import facetwright.aim.Grid;
import facetwright.measure.Unit;
import facetwright.script.Facetwright;
import facetwright.script.StrayDials;
import facetwright.script.WhatIf;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Dials that are set and that a script has or has not, every subset of three against another. */
class StrayDialsTest {
  private static final List<String> NAMES = List.of("side", "tall", "tab");
  private static final Map<String, String> SET = Map.of("side", "32", "tall", "47", "tab", "7");
  private static final Map<String, String> USUAL = Map.of("side", "30", "tall", "50", "tab", "6");

  private static List<String> subset(int bits) {
    List<String> some = new ArrayList<>();
    for (int i = 0; i < NAMES.size(); i++) {
      if ((bits & 1 << i) != 0) {
        some.add(NAMES.get(i));
      }
    }
    return some;
  }

  record Case(List<String> set, List<String> declared) {
    Map<String, String> settings() {
      Map<String, String> settings = new LinkedHashMap<>();
      set.forEach(name -> settings.put(name, SET.get(name)));
      return settings;
    }

    /** A dial that is not declared is a plain number. */
    String script(String more) {
      String lines =
          NAMES.stream()
              .map(
                  n ->
                      declared.contains(n)
                          ? "const %s = dial(\"%s\", %s, { from: 2, to: 90 });"
                              .formatted(n, n, USUAL.get(n))
                          : "const %s = %s;".formatted(n, USUAL.get(n)))
              .collect(Collectors.joining("\n"));
      return "design(\"Box\");\n"
          + lines
          + "\n"
          + more
          + "\nprism({ sides: 4, side, height: tall }).unfold({ tab });\nsheet(\"A2\");\n";
    }

    /** What the dials declared are to stand at. */
    Map<String, Double> values() {
      return declared.stream()
          .collect(
              Collectors.toMap(
                  n -> n, n -> Double.valueOf(set.contains(n) ? SET.get(n) : USUAL.get(n))));
    }
  }

  static Stream<Case> cases() {
    return Stream.iterate(0, i -> i < 64, i -> i + 1)
        .map(i -> new Case(subset(i / 8), subset(i % 8)));
  }

  private static Map<String, Double> values(Design design) {
    return design.dials().stream().collect(Collectors.toMap(Dial::name, Dial::value));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void areLeftOutOrRefused(Case given) throws Exception {
    String script = given.script("");
    Design design =
        Facetwright.evaluate("box.js", script, given.settings(), StrayDials.YIELDING, Budget.USUAL);
    assertThat(values(design)).isEqualTo(given.values());
    if (given.declared.containsAll(given.set)) {
      assertThat(values(Facetwright.evaluate("box.js", script, given.settings(), Budget.USUAL)))
          .isEqualTo(given.values());
    } else {
      assertThatThrownBy(
              () -> Facetwright.evaluate("box.js", script, given.settings(), Budget.USUAL))
          .isInstanceOf(ScriptException.class)
          .hasMessageContaining("has no dial called");
      assertThatThrownBy(() -> WhatIf.of("box.js", script, given.settings(), Budget.USUAL))
          .isInstanceOf(ScriptException.class)
          .hasMessageContaining("has no dial called");
    }
  }

  /** An aim turns what is not set; what is set and left out does not count as set. */
  @ParameterizedTest
  @MethodSource("cases")
  void doNotHinderAnAim(Case given) throws Exception {
    if (!given.declared.contains("tall") || given.set.contains("tall")) {
      return;
    }
    Design design =
        Facetwright.evaluate(
            "box.js",
            given.script("aim({ height: 66, turn: \"tall\" });"),
            given.settings(),
            StrayDials.YIELDING,
            Budget.USUAL);
    assertThat(values(design)).containsEntry("tall", 66.0).containsOnlyKeys(given.declared);
  }

  /**
   * Every value in and out of a range, with steps and without: each gives way to the nearest that
   * the dial can take, whoever set it by name is told what is wrong, and answers to questions are
   * found from where it stands.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 1, 20", "0, 20, 20", "0, 33.3, 33.3", "0, 60, 60", "0, 60.001, 60", "0, 999, 60",
    "7, 1, 20", "7, 20, 20", "7, 33.3, 34", "7, 60, 55", "7, 999, 55", "7, -999, 20",
  })
  void giveWayToTheNearest(double step, String set, double stands) throws Exception {
    String script =
        """
        design("Box");
        const tall = dial("tall", 27, { from: 20, to: 60, step: %s });
        const side = dial("side", 30, { from: 20, to: 90 });
        prism({ sides: 4, side, height: tall }).unfold({ tab: 6 });
        sheet("A2");
        """
            .formatted(step);
    Map<String, String> settings = Map.of("tall", set);
    Design design =
        Facetwright.evaluate("box.js", script, settings, StrayDials.YIELDING, Budget.USUAL);
    assertThat(values(design)).containsEntry("tall", stands);
    boolean fits = Double.parseDouble(set) == stands;
    if (fits) {
      assertThat(values(Facetwright.evaluate("box.js", script, settings, Budget.USUAL)))
          .containsEntry("tall", stands);
    } else {
      assertThatThrownBy(() -> Facetwright.evaluate("box.js", script, settings, Budget.USUAL))
          .isInstanceOf(ScriptException.class)
          .hasMessageContaining("tall");
    }
    WhatIf what = WhatIf.of("box.js", script, settings, StrayDials.YIELDING, Budget.USUAL);
    assertThat(what.turned(Map.of("side", 40.0))).isPresent();
    assertThat(Double.parseDouble(what.settings().get("tall"))).isEqualTo(stands);
  }

  /** An answer to a question keeps them, so that taking it does not forget how they were turned. */
  @ParameterizedTest
  @MethodSource("cases")
  void areKeptByAnswers(Case given) throws Exception {
    if (!given.declared.contains("tall")) {
      return;
    }
    Request request = new Request("box.js", given.script(""), given.settings());
    Reply reply =
        request
            .asking(
                new Question.Aim(
                    List.of(GoalReader.read("height=66", Unit.MM)),
                    List.of("tall"),
                    Grid.usual(Unit.MM)))
            .answer(Budget.USUAL, () -> {});
    assertThat(reply)
        .isInstanceOfSatisfying(
            Reply.Proposed.class,
            came ->
                assertThat(came.proposal().ways())
                    .filteredOn(way -> way.source().equals(request.source()))
                    .isNotEmpty()
                    .allSatisfy(
                        way ->
                            given.set.stream()
                                .filter(n -> !given.declared.contains(n))
                                .forEach(
                                    n -> assertThat(way.settings()).containsEntry(n, SET.get(n)))));
  }
}
