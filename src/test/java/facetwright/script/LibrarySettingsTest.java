package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding.Severity;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Every library design, as it comes and at every setting kept in it, is sound and opens without a
 * finding: what a design intends is none.
 */
class LibrarySettingsTest {
  @TestFactory
  List<DynamicTest> settingsAreSound() throws Exception {
    List<DynamicTest> tests =
        LibraryDesigns.files().stream().flatMap(LibrarySettingsTest::of).toList();
    assertThat(tests).hasSizeGreaterThanOrEqualTo(6);
    return tests;
  }

  private static Stream<DynamicTest> of(Path file) {
    String script = LibraryDesigns.text(file);
    return Stream.concat(
            Stream.of(Map.entry("as it comes", Map.<String, String>of())),
            DialSetting.read(script).stream().map(s -> Map.entry(s.name(), s.values())))
        .map(
            s ->
                DynamicTest.dynamicTest(
                    file.getFileName() + ": " + s.getKey(),
                    () -> {
                      Design design =
                          Facetwright.evaluate(file.toString(), script, s.getValue(), Budget.USUAL);
                      assertThat(design.isSound()).isTrue();
                      // What an aim came to is the answer that the script asks for.
                      assertThat(design.findings())
                          .allMatch(f -> f.rule().equals("aim") && f.severity() == Severity.NOTE);
                    }));
  }
}
