package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import facetwright.script.sandbox.ScriptException;
import facetwright.words.Mend;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells by name on a wrap itself, and words that were said otherwise before. */
class CellNamesTest {
  private static final String WRAP =
      "const w = wrap({ columns: 6, width: 40, rows: [14, 60, 50, 14], seam: 5 });\n";

  private static Design made(String lines) throws ScriptException {
    return Facetwright.evaluate("d.js", "design(\"D\");\n" + lines, Map.of(), Budget.USUAL);
  }

  private static String net(String lines) throws ScriptException {
    var net = made(lines).net();
    return (net.panels() + " " + net.layers()).replaceAll("Site\\[[^]]*]", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "w.window('wall', { border: 9 });|w.rows('wall').window({ border: 9 });",
        "w.window('odd wall', { border: 9 });|w.columns('odd').rows('wall').window({ border: 9 });",
        "w.window('wall 3 (row 2)', { sides: 6, across: 20 });"
            + "|w.columns(3).rows(2).window({ sides: 6, across: 20 });",
        "w.hole('column 3', { across: 4, at: [2, 1] });"
            + "|w.columns(3).hole([2, 1], { across: 4 });",
        "w.hole({ across: 4 });|w.columns('all').hole({ across: 4 });",
        "w.rows('rim').tabs(); w.hole({ across: 4 });"
            + "|w.rows('rim').tabs(); w.rows('wall').hole({ across: 4 });",
        "w.layer(['wall 1', 'wall 3'], { paper: 'waves' });"
            + "|w.rows('wall').columns([1, 3]).layer({ paper: 'waves' });",
        "w.layer('upper rim 2');|w.rows('upper rim').columns(2).layer();",
        "w.layer('even');|w.columns('even').layer();",
        "w.window('wall', { border: 12 }).backing('odd wall', { paper: 'vellum' });"
            + "|w.rows('wall').window({ border: 12 }); w.columns('odd').rows('wall')"
            + ".backing({ paper: 'vellum' });",
      })
  void aWrapTakesItsCellsByName(String named, String chosen) throws ScriptException {
    assertThat(net(WRAP + named.replace('\'', '"')))
        .isEqualTo(net(WRAP + chosen.replace('\'', '"')));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "w.window('wal', { border: 9 });|no cell of the wrap is called \"wal\"",
        "w.window('wall 7', { border: 9 });|must be 1 to 6, not 7",
        "w.window('odd roof', { border: 9 });|no cell of the wrap is called \"odd roof\"",
        "w.backing('wall', { paper: 'vellum' });|has no window to put a backing behind",
        "w.window('wall', { border: 30 });|leaves no window in",
      })
  void whatIsNoCellIsRefused(String said, String told) {
    ScriptException why =
        catchThrowableOfType(ScriptException.class, () -> made(WRAP + said.replace('\'', '"')));
    assertThat(why).isNotNull().hasMessageContaining(told);
    assertThat(why.line()).isEqualTo(3);
  }

  /**
   * One word has one meaning: a bevel is the slant of a tab's ends, a base what a form stands on.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "box({ width: 40, depth: 40, height: 40 }).@(5).unfold();|bevelEdges|chamferEdges",
        "box({ width: 40, depth: 40, height: 40 }).@(5).unfold();|bevelCorners|chamferCorners",
        "panel(\"a\", { width: 40, height: 40 }).@(1, 5);|bevel|chamfer",
        "box({ width: 40, depth: 40, height: 40 }).open(\"@\").unfold();|bottom|base",
        "box({ width: 40, depth: 40, height: 40 }).open(\"@\").unfold();|lid|top",
        "panel(\"a\", { width: 40, height: 40 }).attach(\"@\", \"b\", { depth: 9 });|base|bottom",
      })
  void anOldWordIsAnsweredWithTheNew(String line, String old, String now) throws ScriptException {
    ScriptException why =
        catchThrowableOfType(ScriptException.class, () -> made(line.replace("@", old)));
    assertThat(why).isNotNull();
    assertThat(why.mends()).containsExactly(new Mend.Word(old, now));
    assertThat(why.getMessage() + why.remedy()).contains(now);
    made(line.replace("@", now));
  }

  @Test
  void oneNumberDoesWhereAListOfOneWould() throws ScriptException {
    assertThat(net("wrap({ columns: 6, width: 40, rows: 60, names: \"side\" }).layer(\"side 2\");"))
        .isEqualTo(
            net(
                "wrap({ columns: 6, width: [40], rows: [60], names: [\"side\"] })"
                    + ".layer([\"side 2\"]);"));
  }
}
