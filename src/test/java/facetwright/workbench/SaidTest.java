package facetwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.control.TextInputControl;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a script says is read at its foot. */
class SaidTest {
  private static final String BOX =
      "design(\"Box\");\nprism({ sides: 4, side: 30, height: 30 }).unfold();\n";

  @TempDir private Path folder;
  private Visit visit;

  @AfterEach
  void leave() throws Exception {
    visit.close();
  }

  private String said() {
    var strip = visit.house.lookup(".said");
    return strip.isVisible() ? ((TextInputControl) strip.lookup(".text-area")).getText() : "";
  }

  private void write(String more) throws Exception {
    Fx.run(() -> visit.house.desk().text().set(BOX + more));
    Fx.until("it is made", () -> !visit.house.desk().working().get());
    Fx.pulse();
  }

  @Test
  void isShownWithControlCodesSeenAndLongOutputCut() throws Exception {
    visit = Visit.at(folder, "box.js", BOX);
    assertThat(Fx.get(this::said)).isEmpty();
    write("say([\"side\", 30]);\nsay(\"a\\u001b[2Jb\\u202ec\");\n");
    assertThat(Fx.get(this::said)).isEqualTo("side 30\na^[[2Jb<U+202E>c");
    write("for (let i = 0; i < 5000; i++) say(i);\n");
    assertThat(Fx.get(this::said))
        .startsWith("0\n1\n")
        .endsWith("199\n… and 801 more lines, which check prints");
    write("say(\"x\".repeat(9000));\n");
    assertThat(Fx.get(this::said)).endsWith("… (8500 more characters)");
    write("");
    assertThat(Fx.get(this::said)).isEmpty();
  }

  @Test
  void whatWasSaidBeforeAFaultIsShownBesideIt() throws Exception {
    visit = Visit.at(folder, "box.js", BOX);
    write("say(\"so far\");\nprism({ sides: 2, side: 9, height: 9 }).unfold();\nsay(\"never\");\n");
    assertThat(visit.house.desk().fault().get().message()).contains("sides: 2 is too small");
    assertThat(Fx.get(this::said)).isEqualTo("so far");
    write("say(\"mended\");\n");
    assertThat(Fx.get(this::said)).isEqualTo("mended");
  }
}
