package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.geom.Vec2;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.script.text.Gathered;
import facetwright.script.text.Piece;
import facetwright.words.InFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a script and the files it uses may do, and where their faults are told. */
class UsedFilesTest {
  static final String TUB =
      "function tub(part, side) {\n"
          + "  return prism({ sides: 6, side, height: side }).open(\"top\").unfold({ part });\n"
          + "}\n";

  /** A script and its files, each as a name and a text. */
  static String text(Piece.State state, String main, String... files) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < files.length; i += 2) {
      pieces.add(new Piece(files[i], state, files[i + 1]));
    }
    return new Gathered(main, pieces).text();
  }

  static Design made(String main, String... files) throws ScriptException {
    return evaluate(text(Piece.State.READ, main, files));
  }

  static Design evaluate(String text) throws ScriptException {
    return Facetwright.evaluate("design.js", text, Map.of(), Budget.USUAL);
  }

  static ScriptException fault(String main, String... files) {
    return catchThrowableOfType(ScriptException.class, () -> made(main, files));
  }

  static List<Vec2> corners(Design design) {
    return design.net().panels().stream().flatMap(p -> p.outline().corners().stream()).toList();
  }

  private static final String USES_TUB =
      "design(\"T\");\nconst { tub } = use(\"tubs.js\");\ntub(\"a\", 30);\n";

  @Test
  void theNetIsThatOfOneScript() throws ScriptException {
    Design one = evaluate("design(\"T\");\n" + TUB + "tub(\"a\", 30);\n");
    for (Piece.State state : List.of(Piece.State.READ, Piece.State.GATHERED)) {
      Design used = evaluate(text(state, USES_TUB, "tubs.js", TUB));
      assertThat(corners(used)).isEqualTo(corners(one));
      assertThat(used.findings()).hasSameSizeAs(one.findings());
    }
  }

  @Test
  void aFileIsReadOnceHoweverOftenItIsUsed() throws ScriptException {
    Design design =
        made(
            "design(\"T\");\nuse(\"a.js\"); use(\"b.js\"); use(\"a.js\").tub(\"x\", 20);",
            "a.js",
            "say(\"a is read\");\nconst { list } = use(\"b.js\");\n" + TUB,
            "b.js",
            "say(\"b is read\");\nconst list = [1];\n");
    assertThat(design.said()).containsExactly("a is read", "b is read");
  }

  /** Line and column as an editor counts them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "const a = 1;\\n  const q = (;|2|14",
        "let a;\\nlet b; let a;|2|12",
        "return 3;|1|1",
        "const a = late;\\nconst late = 1;|1|11",
        "const a = 1;\\nconst b = # 2;|2|11",
        "const a = mistake;|1|11",
        "const a = 1; a.b.c();|1|14",
        "const a = 1;\\n\\n   throw new Error('x');|3|10",
        "prism({ sides: 2, side: 3, height: 3 });|1|1",
        "const f = prism({ sides: 4, side: 3, height: 3 });\\nf.open('lid');|2|3",
        "const a = 1;\\ndial('a', 3);|2|1",
        "design('a');|1|1",
        "const x = 1;\\n sheet('A4');|2|2",
        "aim({ height: 3 });|1|1",
        "const a = 1;\\nuse('no.js');|2|1",
        "use('../a.js');|1|1",
        "panel('x', { width: 10, height: 10 });|1|1",
        "wrap({ columns: 4, width: 10, rows: [10] });|1|1",
        "blank({ width: 10, height: 10 });|1|1",
        "box({ width: 9, depth: 9, height: 9 }).unfold();|1|40",
        "import a from 'b.js';|1|1",
        "}); say('out'); (function () {|1|1"
      })
  void aFaultInAFileNamesItsPlace(String file, int line, int column) {
    String text = file.replace("\\n", "\n");
    String main = "design(\"T\");\n\n  use(\"tubs.js\");\n";
    ScriptException read = fault(main, "tubs.js", text);
    assertThat(read.site().in()).isEqualTo(new InFile("tubs.js", line, column, false));
    assertThat(read.line()).isEqualTo(3);
    assertThat(read.mends()).isEmpty();
    ScriptException gathered =
        catchThrowableOfType(
            ScriptException.class,
            () -> evaluate(text(Piece.State.GATHERED, main, "tubs.js", text)));
    assertThat(gathered.site().in()).isEqualTo(new InFile("tubs.js", line + 4, column, true));
    assertThat(gathered.getMessage()).isEqualTo(read.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\nfunction deep() { return deep() + 1; }\n\ndeep();", "\nfor (;;) {}"})
  void oneThatRunsOnIsStoppedInItsLine(String file) {
    ScriptException e = fault("design(\"T\");\n\n  use(\"tubs.js\");\n", "tubs.js", file);
    assertThat(e.kind()).isIn(ScriptException.Kind.TIME, ScriptException.Kind.RECURSION);
    assertThat(e.site().in().line()).isEqualTo(2);
    assertThat(e.line()).isEqualTo(3);
  }

  @Test
  void aFaultInAFunctionOfAFileNamesBothPlaces() {
    ScriptException e =
        fault(
            "design(\"T\");\n"
                + "const t = use(\"tubs.js\");\n"
                + "function mine() {\n"
                + "  t.tub(\"a\", -1);\n"
                + "}\n"
                + "mine();",
            "tubs.js",
            TUB);
    assertThat(e.line()).isEqualTo(4);
    assertThat(e.column()).isEqualTo(5);
    assertThat(e.site().in()).isEqualTo(new InFile("tubs.js", 2, 10, false));
  }

  /** A function of the script that a file calls is the script's: there its dials may be. */
  @Test
  void whatTheScriptGivesToAFileIsStillTheScripts() throws ScriptException {
    Design design =
        made(
            "design(\"T\");\nuse(\"a.js\").each((i) => {\n"
                + "  const s = dial(\"s\" + i, 20, { from: 10, to: 30 });\n"
                + "  prism({ sides: 4, side: s, height: s }).unfold({ part: \"p\" + i });\n});",
            "a.js",
            "function each(work) { for (let i = 0; i < 2; i++) work(i); }\n");
    assertThat(design.dials()).hasSize(2);
    ScriptException e =
        fault(
            "design(\"T\");\nuse(\"a.js\").each((i) => nothing);",
            "a.js",
            "function each(work) { work(1); }\n");
    assertThat(e.site().isInFile()).isFalse();
    assertThat(e.line()).isEqualTo(2);
  }

  /** However deep a file's own calls go, the line of the script is told. */
  @Test
  void theScriptsLineIsToldThroughManyCalls() {
    ScriptException e =
        fault(
            "design(\"T\");\nconst { down } = use(\"a.js\");\n\ndown(40);",
            "a.js",
            "function down(n) {\n  return n > 0 ? down(n - 1) : prism({ sides: 1 });\n}\n");
    assertThat(e.line()).isEqualTo(4);
    assertThat(e.site().in().line()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "use('a.js');|a.js uses itself",
        "use('b.js');|the files use each other in a ring: a.js uses b.js uses c.js uses a.js"
      })
  void aRingIsToldAsAChain(String first, String message) {
    ScriptException e =
        fault(
            "design(\"T\");\nuse(\"a.js\");",
            "a.js",
            first,
            "b.js",
            "\nuse('c.js');",
            "c.js",
            "\n\nuse('a.js');");
    assertThat(e).hasMessage(message);
    assertThat(e.line()).isEqualTo(2);
  }

  @Test
  void aFileMayMakeFormsAsItIsReadAndNothingIsSaidOfThem() throws ScriptException {
    Design design =
        made(
            "design(\"T\");\nuse(\"a.js\").block.unfold();",
            "a.js",
            "const block = box({ width: 30, depth: 30, height: 30 });\n"
                + "const spare = block.open(\"top\");\n"
                + "const six = regular({ sides: 6, side: 9 });\n");
    assertThat(design.findings()).noneMatch(f -> f.rule().equals("unused"));
  }

  @Test
  void aFormThatAFileMakesAndLosesIsFoundThere() throws ScriptException {
    Design design =
        made(
            "design(\"T\");\nuse(\"a.js\").go();\nbox({ width: 9, depth: 9, height: 9 }).unfold();",
            "a.js",
            "function go() {\n  prism({ sides: 4, side: 30, height: 30 });\n}\n");
    assertThat(design.findings())
        .filteredOn(f -> f.rule().equals("unused"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.site().line()).isEqualTo(2);
              assertThat(f.site().in()).isEqualTo(new InFile("a.js", 2, 3, false));
              assertThat(f.mends()).isEmpty();
            });
  }

  @Test
  void aCheckOfAFileQuotesTheFile() throws ScriptException {
    Design design =
        made(
            "design(\"T\");\n"
                + "use(\"a.js\").go(3);\n"
                + "box({ width: 9, depth: 9, height: 9 }).unfold();",
            "a.js",
            "\nfunction go(n) {\n  must(n > 4, \"More.\");\n}\n");
    assertThat(design.findings())
        .anySatisfy(f -> assertThat(f.message()).isEqualTo("What must hold does not: n > 4."));
  }
}
