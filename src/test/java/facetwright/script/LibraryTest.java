package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import facetwright.check.finding.Finding;
import facetwright.fold.pose.Closure;
import facetwright.net.Overlaps;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.sandbox.Budget;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every library design is sound, as it comes and with its dials at their ends. */
class LibraryTest {
  private static List<Path> scripts() throws IOException {
    return LibraryDesigns.files();
  }

  private static Design evaluate(Path script, Map<String, String> settings) throws Exception {
    return Facetwright.evaluate(
        script.getFileName().toString(), LibraryDesigns.text(script), settings, Budget.USUAL);
  }

  @Test
  void holdsTheDesignsItPromises() throws IOException {
    assertThat(scripts()).hasSizeGreaterThanOrEqualTo(8);
  }

  @TestFactory
  Stream<DynamicTest> everyDesignAtItsDialsEnds() throws Exception {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path script : scripts()) {
      for (Map<String, String> settings : turns(evaluate(script, Map.of()).dials())) {
        tests.add(
            DynamicTest.dynamicTest(
                script.getFileName() + " " + settings, () -> sound(evaluate(script, settings))));
      }
    }
    return tests.stream();
  }

  /** As it comes; each dial alone at either end; all at their least; all at their most. */
  private static List<Map<String, String>> turns(List<Dial> dials) {
    List<Map<String, String>> turns = new ArrayList<>();
    turns.add(Map.of());
    Map<String, String> least = new LinkedHashMap<>();
    Map<String, String> most = new LinkedHashMap<>();
    for (Dial dial : dials) {
      turns.add(Map.of(dial.name(), Double.toString(dial.from())));
      turns.add(Map.of(dial.name(), Double.toString(dial.to())));
      least.put(dial.name(), Double.toString(dial.from()));
      most.put(dial.name(), Double.toString(dial.to()));
    }
    turns.add(least);
    turns.add(most);
    return turns;
  }

  private static void sound(Design design) {
    assertThat(Overlaps.find(design.net())).as("panels overlapping").isEmpty();
    assertThat(design.laid().fits()).as("fits " + design.laid().stock().name()).isTrue();
    assertThat(design.findings())
        .as("errors and warnings")
        .noneMatch(f -> f.severity() == Finding.Severity.ERROR);
    assertThat(design.folded().collisions()).as("panels passing through each other").isEmpty();
    assertThat(design.folded().closure()).isEqualTo(Closure.CLOSES);
    assertThat(design.folded().gap()).isLessThan(1e-6);
    assertThat(design.folded().measures().height()).isPositive();
  }

  /**
   * Each half of the lantern leans in from a ring of n columns to a ring of n/2, so that its height
   * is a side of a right triangle: the wall is the longest, the difference of the two rings' inner
   * radii (apothems) the third. Derived here, no other source.
   */
  @TestFactory
  Stream<DynamicTest> theLanternStandsAsTallAsItsTriangleSays() throws Exception {
    Path script = LibraryDesigns.file("harbour-lantern");
    return turns(evaluate(script, Map.of()).dials()).stream()
        .map(
            settings ->
                DynamicTest.dynamicTest(
                    settings.toString(),
                    () -> {
                      Design design = evaluate(script, settings);
                      double n = value(design, "sides");
                      double side = value(design, "side");
                      double wall = value(design, "wall");
                      double in =
                          side / 2 / Math.tan(Math.PI / n) - side / 2 / Math.tan(2 * Math.PI / n);
                      assertThat(design.folded().measures().height())
                          .isCloseTo(2 * Math.sqrt(wall * wall - in * in), within(1e-6));
                    }));
  }

  private static double value(Design design, String dial) {
    return design.dials().stream()
        .filter(d -> d.name().equals(dial))
        .findFirst()
        .orElseThrow()
        .value();
  }

  @TestFactory
  Stream<DynamicTest> sameBytesTwice() throws Exception {
    return scripts().stream()
        .map(
            script ->
                DynamicTest.dynamicTest(
                    script.getFileName().toString(),
                    () ->
                        assertThat(evaluate(script, Map.of()))
                            .isEqualTo(evaluate(script, Map.of()))));
  }

  @Test
  void headersSayWhoAndHow() throws IOException {
    for (Path script : scripts()) {
      Design.Header header = ScriptHeader.read(LibraryDesigns.text(script));
      assertThat(header.author()).as(script + ": author").isNotBlank();
      assertThat(header.licence()).as(script + ": licence").isNotBlank();
      assertThat(header.tags()).as(script + ": tags").isNotEmpty();
      assertThat(header.notes()).as(script + ": notes").isNotBlank();
    }
  }
}
