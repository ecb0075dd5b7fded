package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.script.sandbox.Budget;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every setting kept in a library design comes to a sound design. */
class LibrarySettingsTest {
  @TestFactory
  List<DynamicTest> settingsAreSound() throws Exception {
    try (Stream<Path> files = Files.list(Path.of("library"))) {
      List<DynamicTest> tests = files.sorted().flatMap(LibrarySettingsTest::of).toList();
      assertThat(tests).hasSizeGreaterThanOrEqualTo(6);
      return tests;
    }
  }

  private static Stream<DynamicTest> of(Path file) {
    String script = read(file);
    return DialSetting.read(script).stream()
        .map(
            s ->
                DynamicTest.dynamicTest(
                    file.getFileName() + ": " + s.name(),
                    () ->
                        assertThat(
                                Facetwright.evaluate(
                                        file.toString(), script, s.values(), Budget.USUAL)
                                    .isSound())
                            .isTrue()));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
