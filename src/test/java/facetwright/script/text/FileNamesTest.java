package facetwright.script.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that name a plain file of the same folder on every system, and all others. */
class FileNamesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {"tubs.js", "golden ratio.js", "Lid-2_b.js", "2.js", "console.js", "com.js"})
  void aPlainNameMayBe(String name) {
    assertThat(FileNames.fault(name)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ".js",
        "tubs",
        "tubs.JS",
        "tubs.mjs",
        "tubs.js ",
        " tubs.js",
        "tubs .js",
        "../tubs.js",
        "..js",
        "a/b.js",
        "a\\b.js",
        "/etc/passwd.js",
        "C:tubs.js",
        "tubs.js:x",
        "~/a.js",
        "-a.js",
        "a\u0000.js",
        "a.js\u0000",
        "a\n.js",
        "t\u0443bs.js",
        "tubs\u2024js",
        "tub\u017F.js",
        "tu\u0308bs.js",
        "\u202Esj.js",
        "\uFF0E\uFF0E.js",
        "con.js",
        "CON.js",
        "nul.js",
        "Com1.js",
        "lpt9.js",
        "aux.js",
        "prn.js",
        "con .js",
        "a.b.js",
        "*.js",
        "a?.js",
        "file%2e.js",
        "__proto__",
        "http://a.b/c.js"
      })
  void allOthersAreRefusedWithAReason(String name) {
    assertThat(FileNames.fault(name)).isPresent();
  }

  @ParameterizedTest
  @ValueSource(ints = {61, 200, 100_000})
  void noNameIsEndless(int letters) {
    assertThat(FileNames.fault("a".repeat(letters - 3) + ".js")).isPresent();
  }
}
