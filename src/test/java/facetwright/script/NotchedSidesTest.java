package facetwright.script;

import static org.assertj.core.api.Assertions.assertThat;

import facetwright.check.finding.Finding;
import facetwright.script.design.Design;
import facetwright.script.sandbox.Budget;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sides are told as a script calls them, whatever was cut out of their panel since. */
class NotchedSidesTest {
  private static final Pattern MEND =
      Pattern.compile("side \\d+ \\((\\w+)\\) of \"(\\w+)\" with side \\d+ \\((\\w+)\\)");

  private static Design tray(String notches, String of, String with) throws Exception {
    return Facetwright.evaluate(
        "tray.js",
        """
        design("Tray");
        const floor = panel("floor", { width: 100, height: 80 });
        const edges = ["bottom", "right", "top", "left"];
        const walls = edges.map((edge) => floor.attach(edge, edge, { depth: 30, fold: 90 }));
        %s
        walls.forEach((wall, k) => wall.join("%s", walls[(k + 1) %% 4], "%s", { depth: 8 }));
        sheet("A3");
        """
            .formatted(notches, of, with),
        Map.of(),
        Budget.USUAL);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "walls[0].notch('top', { at: 50, width: 25, depth: 12, shape: 'round' });",
        "walls.forEach((w) => w.notch('top', { at: 40, width: 20, depth: 10 }));",
        "walls[2].notch('top', { at: 30, width: 10, depth: 10 });",
      })
  void theSidesToJoinAreWordsOfTheScript(String notches) throws Exception {
    Design wrong = tray(notches, "right", "left");
    List<Finding> errors =
        wrong.findings().stream().filter(f -> f.severity() == Finding.Severity.ERROR).toList();
    assertThat(errors).isNotEmpty();
    String remedy = errors.getFirst().remedy().toString();
    Matcher mend = MEND.matcher(remedy);
    assertThat(mend.find()).as(remedy).isTrue();
    Design right = tray(notches, mend.group(1), mend.group(3));
    assertThat(right.isSound()).as(right.findings().toString()).isTrue();
    assertThat(right.folded().closes()).isTrue();
  }
}
