package facetwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import facetwright.aim.Slopes;
import facetwright.cli.command.DialsCommand;
import facetwright.cli.desk.Exit;
import facetwright.pace.Pace;
import facetwright.pace.Stopped;
import facetwright.script.WhatIf;
import facetwright.script.sandbox.Budget;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What dials do, of many dials: told as it goes, stopped, and with a bound that is said. */
class DialsCommandTest {
  @TempDir private Path folder;

  private static String script(int dials) {
    return "design('Many', { units: 'mm' });\n"
        + IntStream.range(0, dials)
            .mapToObj(i -> "const d" + i + " = dial('d" + i + "', 30, { from: 10, to: 60 });")
            .collect(Collectors.joining("\n"))
        + "\nbox({ width: d0, depth: 30, height: 20 }).unfold();\nsheet('A3');\n";
  }

  private static WhatIf many(int dials) throws Exception {
    return WhatIf.of("many.js", script(dials), Map.of(), Budget.USUAL);
  }

  @Test
  void eachDesignIsToldAndCounted() throws Exception {
    WhatIf counted = DialsCommand.counted(many(3), 3);
    Pace pace = new Pace();
    Slopes slopes = pace.<Slopes, Exception>of(counted::slopes);
    assertThat(pace.doing()).isEqualTo("design " + slopes.trials() + " of about 12");
    // One step more for each time that it says what it does.
    assertThat(pace.steps()).isEqualTo(10_001L * slopes.trials());
  }

  @Test
  void itIsStoppedBeforeTheNextDesign() throws Exception {
    WhatIf counted = DialsCommand.counted(many(3), 3);
    Pace pace = new Pace();
    pace.stop();
    assertThatThrownBy(() -> pace.<Slopes, Exception>of(counted::slopes))
        .isInstanceOf(Stopped.class);
  }

  @Test
  void itSaysOfHowManyDialsItTells() throws Exception {
    Path file = folder.resolve("many.js");
    Files.writeString(file, script(DialsCommand.MOST + 1));
    StringWriter err = new StringWriter();
    int exit =
        Main.run(
            new String[] {"dials", file.toString()},
            new PrintWriter(new StringWriter()),
            new PrintWriter(err));
    assertThat(exit).isEqualTo(Exit.WRONG_CALL);
    assertThat(err.toString())
        .isEqualTo(
            "facetwright: dials tells what 1000 dials do at most, and this design has 1001. Write"
                + " as numbers what need not be turned.\n");
  }
}
