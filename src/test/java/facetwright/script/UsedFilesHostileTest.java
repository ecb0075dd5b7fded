package facetwright.script;

import static facetwright.script.UsedFilesTest.TUB;
import static facetwright.script.UsedFilesTest.corners;
import static facetwright.script.UsedFilesTest.fault;
import static facetwright.script.UsedFilesTest.made;
import static org.assertj.core.api.Assertions.assertThat;

import facetwright.geom.Vec2;
import facetwright.script.sandbox.ScriptException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that mean harm, and scripts that use them otherwise than they should. */
class UsedFilesHostileTest {
  @Test
  void aNameThatIsNotOfferedIsNoSilentNothing() {
    for (String asks : List.of("const { tob } = use(\"tubs.js\");", "use(\"tubs.js\").tob();")) {
      ScriptException e = fault("design(\"T\");\n" + asks, "tubs.js", TUB);
      assertThat(e).hasMessage("tubs.js offers no tob");
      assertThat(e.remedy()).isEqualTo("Did you mean tub? It offers tub.");
      assertThat(e.line()).isEqualTo(2);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "t.tub = 3;",
        "delete t.tub;",
        "t.other = 3;",
        "Object.defineProperty(t, 'tub', {value: 1});",
        "Object.setPrototypeOf(t, {});"
      })
  void whatAFileOffersStaysAsItIs(String change) {
    ScriptException e =
        fault("design(\"T\");\nconst t = use(\"tubs.js\");\n" + change, "tubs.js", TUB);
    assertThat(e.kind()).isEqualTo(ScriptException.Kind.THROWN);
    assertThat(e.line()).isEqualTo(3);
  }

  /** Each is a whole script that has to come to an end with a message, inside the sandbox. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "const t = use(\"tubs.js\"); for (;;) use(\"tubs.js\");",
        "use({ toString() { return \"tubs.js\"; } });",
        "use();",
        "use(3);",
        "use(\"tubs.js\", 2);",
        "use(null);",
        "new use(\"tubs.js\");",
        "use(\"\\u0000\");",
        "use(\"__proto__\");",
        "use(\"constructor\");",
        "use(\"tubs.js\\u0000\");",
        "use(\"/dev/zero\");",
        "use(\"tubs.js\".repeat(20000));",
        "Reflect.apply(use, null, [\"../tubs.js\"]);",
        "use.constructor(\"return 1\")();",
        "use(\"tubs.js\").tub.constructor(\"return 1\")();",
        "`${use(\"tubs.js\")}`;",
        "use(\"tubs.js\").__proto__.x = 1;",
        "const o = Object.create(use(\"tubs.js\")); o.tob;",
        "prism(use(\"tubs.js\"));",
        "throw use(\"tubs.js\");"
      })
  void nothingOddGetsThrough(String line) {
    ScriptException e = fault("design(\"T\");\n" + line, "tubs.js", TUB);
    assertThat(e).isNotNull();
    assertThat(e.kind()).isNotEqualTo(ScriptException.Kind.INTERNAL);
    assertThat(e.line()).isEqualTo(2);
    assertThat(e.getMessage()).doesNotContain("org.graalvm", "facetwright.");
  }

  /** A file that can't be read can be read again; it is not taken for one that uses itself. */
  @Test
  void aFaultThatIsCaughtLeavesNothingBehind() {
    ScriptException e =
        fault(
            "design(\"T\");\ntry { use(\"a.js\"); } catch (e) {}\nuse(\"a.js\");",
            "a.js",
            "throw new Error(\"never\");\n");
    assertThat(e).hasMessage("never");
    assertThat(e.line()).isEqualTo(3);
  }

  /** The same text and dials give the same bytes, however the engine is warmed up. */
  @Test
  void filesHaveNoClockAndNoChance() throws ScriptException {
    String[] files = {
      "a.js", "const r = Math.random();\nfunction side() { return 20 + 5 * r; }\n" + TUB
    };
    String main = "design(\"T\");\nconst a = use(\"a.js\");\na.tub(\"x\", a.side());";
    List<List<Vec2>> nets = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      nets.add(corners(made(main, files)));
    }
    assertThat(nets.stream().distinct()).hasSize(1);
    assertThat(Arrays.asList("Date", "console", "setTimeout", "require"))
        .allSatisfy(
            word -> {
              ScriptException e = fault("design(\"T\");\nuse(\"a.js\");", "a.js", word + ";");
              assertThat(e.site().in().name()).isEqualTo("a.js");
            });
  }
}
