package facetwright.cli;

import static facetwright.cli.Run.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import facetwright.cli.desk.Rulers;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.ObjectMapper;

/** What a wrong call is told, and that nothing raw goes to a terminal. */
class CallWordsTest {
  private static final String LANTERN = "library/harbour-lantern.js";

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          check ~~                           | no file is named. See the library with: facetwright shelf
          make ~~                            | no file is named
          check library                      | library is a folder. Name a script in it
          make /                             | / is a folder
          check nowhere.js                   | there is no file nowhere.js
          materials LANTERN --class 0        | --class: 1 to 10000 pieces can be planned, not 0
          materials LANTERN --class=0        | --class: 1 to 10000 pieces
          materials LANTERN --count 0        | --count: 1 to 10000 pieces can be planned, not 0
          ring LANTERN --count 1.5           | "1.5" is not a whole number. Write it in digits alone, such as 4
          make LANTERN --class x             | "x" is not a whole number
          help chek                          | there is no command "chek". There are open, make, check
          """)
  void isTold(String call, String words) {
    String[] all = call.split(" ");
    for (int i = 0; i < all.length; i++) {
      all[i] = all[i].replace("LANTERN", LANTERN).replace("~~", "");
    }
    assertThat(run(2, all)).contains(words).doesNotContain("inside the program", "an int");
  }

  @Test
  void theUsualRulersAreThoseThatHelpNames() {
    assertThat(Rulers.USUAL)
        .isEqualTo(
            "usual: %s for designs in inches, else %s",
            Ruler.usual(Unit.INCH).name(), Ruler.usual(Unit.MM).name());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "check", "ring"})
  void helpIsShownForTheAsking(String command) {
    String shown = command.isEmpty() ? run(0, "help") : run(0, "help", command);
    assertThat(shown).isEqualTo(command.isEmpty() ? run(0, "--help") : run(0, command, "--help"));
  }

  @Test
  @Timeout(60)
  void aPipeIsRefusedBeforeItIsRead() throws Exception {
    Path pipe = folder.resolve("pipe.js");
    int made;
    try {
      made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();
    } catch (java.io.IOException e) {
      made = -1;
    }
    assumeTrue(made == 0, "this system has no pipes");
    assertThat(run(2, "check", pipe.toString())).contains("pipe.js is a pipe or a device");
    assertThat(run(2, "make", pipe.toString())).contains("pipe.js is a pipe or a device");
  }

  @Test
  @Timeout(60)
  void aDeviceWithoutEndIsRefusedBeforeItIsRead() {
    assumeTrue(Files.exists(Path.of("/dev/zero")), "this system has no such device");
    assertThat(run(2, "check", "/dev/zero")).contains("/dev/zero is a pipe or a device");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          design("ESC[2JCrate"); dial("siBELde", 3, { from: 1, to: 9 }); box({ width: 40, depth: 40, height: 40 }).unfold({ part: "lESC]0;id" }) | ^[[2JCrate
          design("Crate"); say("ESC[31mred"); box({ width: 40, depth: 40, height: 40 }).unfold() | ^[[31mred
          design("Crate"); throw new Error("ESC[31mredBELCSI2J") | ^[[31mred^G<U+009B>2J
          design("Crate"); prism({ "siESCdes": 3 })                | has no option "si^[des"
          design("Crate"); dial("aESC", 3, { from: 1, to: 2 })     | dial "a^["
          design("Crate"); sheet("AESC4")                          | A^[4
          /* author: MiESCra */ design("Crate"); box({ width: 40, depth: 40, height: 40 }).window("ESCtop", { border: 3 }) | ^[top
          design("Crate", ESC)                                     | a sign that means nothing
          """)
  void nothingRawReachesATerminal(String script, String shown) throws Exception {
    String raw = script.replace("ESC", "\u001b").replace("BEL", "\u0007").replace("CSI", "\u009b");
    Path file = Files.writeString(folder.resolve("crate.js"), raw);
    for (String[] call :
        new String[][] {
          {"check", file.toString()},
          {"check", file.toString(), "--json"},
          {"dials", file.toString()},
          {"chart", file.toString()},
          {"check", file.toString(), "--set", "si\u001bde=2"}
        }) {
      Run run = run(call);
      assertThat(run.out() + run.err())
          .as(String.join(" ", call))
          .matches(s -> s.chars().noneMatch(c -> Character.isISOControl(c) && c != '\n'));
    }
    Run check = run("check", file.toString());
    assertThat(check.out() + check.err()).contains(shown);
  }

  @Test
  void aNameOfAFileIsMarkedToo() {
    assertThat(run(2, "check", "a\u001b[2J.js")).contains("there is no file a^[[2J.js");
  }

  @Test
  void aLongMessageIsCut() throws Exception {
    Path file = folder.resolve("long.js");
    Files.writeString(file, "design('A'); throw new Error('x'.repeat(150000));");
    assertThat(run(2, "check", file.toString())).contains("xxx… (149500 more characters)");
    Files.writeString(
        file,
        "design('A'); say('y'.repeat(150000)); box({ width: 40, depth: 40, height: 40"
            + " }).unfold();");
    assertThat(run(0, "check", file.toString())).contains("yyy… (149500 more characters)");
  }

  @Test
  void jsonStaysJson() throws Exception {
    Path file = folder.resolve("crate.js");
    Files.writeString(
        file, "design('Cr\u001bate'); box({ width: 40, depth: 40, height: 40 }).unfold();");
    Run run = run("check", file.toString(), "--json");
    assertThat(new ObjectMapper().readTree(run.out()).path("title").asString())
        .isEqualTo("Cr^[ate");
  }
}
