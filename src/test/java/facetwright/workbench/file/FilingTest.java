package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FilingTest {
  private static final String LANTERN = "design(\"Tall lantern\");\n";

  @TempDir private Path folder;
  private Path library;
  private Sitting now;

  @BeforeEach
  void sitDown() throws Exception {
    library = Files.createDirectories(folder.resolve("library"));
    Files.writeString(library.resolve("demo.js"), "design(\"Demo\");\n");
    now = new Sitting(folder.resolve("state"), library);
  }

  private Path script(String name, String text) throws Exception {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void beginsWithACopyOfTheDemoAndLaterWithTheLastFile() throws Exception {
    now.filing.begin(null, "demo.js");
    assertThat(now.desk.text().get()).isEqualTo("design(\"Demo\");\n");
    assertThat(now.desk.file().get()).isNull();
    assertThat(now.desk.changed().get()).isFalse();
    Path mine = script("mine.js", LANTERN);
    now.filing.open(mine);
    Sitting next = new Sitting(folder.resolve("state"), library);
    next.filing.begin(null, "demo.js");
    assertThat(next.desk.file().get()).isEqualTo(mine);
    Files.delete(mine);
    Sitting third = new Sitting(folder.resolve("state"), library);
    third.filing.begin(null, "demo.js");
    assertThat(third.desk.text().get()).contains("Demo");
  }

  @Test
  void savesAndOpensAgain() throws Exception {
    now.filing.fresh();
    now.desk.text().set(LANTERN);
    now.answers.add(folder.resolve("own").resolve("tall"));
    now.filing.save();
    Path saved = folder.resolve("own").resolve("tall.js");
    assertThat(now.asked).containsExactly("save tall-lantern.js");
    assertThat(saved).hasContent(LANTERN);
    assertThat(now.desk.changed().get()).isFalse();
    assertThat(now.state.recent()).containsExactly(saved);
    now.desk.text().set(LANTERN + "// more\n");
    now.filing.save();
    assertThat(saved).hasContent(LANTERN + "// more\n");
    assertThat(now.asked).hasSize(1);
  }

  @Test
  void linesAndMarksStayAsTheyWere() throws Exception {
    Path file = script("windows.js", "\uFEFFdesign(\"A\");\r\nsheet(\"A4\");\r\n");
    now.filing.open(file);
    assertThat(now.desk.text().get()).isEqualTo("design(\"A\");\nsheet(\"A4\");\n");
    now.desk.text().set("design(\"A\");\nsheet(\"A3\");\n");
    now.filing.save();
    assertThat(Files.readString(file)).isEqualTo("\uFEFFdesign(\"A\");\r\nsheet(\"A3\");\r\n");
  }

  @Test
  void asksBeforeUnsavedChangesAreLost() throws Exception {
    Path one = script("one.js", "design(\"One\");\n");
    Path two = script("two.js", "design(\"Two\");\n");
    now.filing.open(one);
    now.desk.text().set(LANTERN);
    now.filing.open(two);
    assertThat(now.said()).isEqualTo("Save the changes to one.js?");
    assertThat(now.desk.text().get()).isEqualTo(LANTERN);
    now.choose("Cancel");
    assertThat(now.desk.file().get()).isEqualTo(one);
    now.filing.open(two);
    now.choose("Save");
    assertThat(one).hasContent(LANTERN);
    assertThat(now.desk.file().get()).isEqualTo(two);
    now.desk.text().set(LANTERN);
    now.filing.fresh();
    now.choose("Don't save");
    assertThat(two).hasContent("design(\"Two\");\n");
    assertThat(now.desk.file().get()).isNull();
    assertThat(now.desk.changed().get()).isFalse();
  }

  @Test
  void closingGoesOnOnlyOnceTheTextIsSaved() {
    boolean[] closed = {false};
    now.filing.fresh();
    now.desk.text().set(LANTERN);
    now.filing.guard("closing", () -> closed[0] = true);
    now.choose("Save");
    assertThat(closed[0]).as("no place was chosen").isFalse();
    now.filing.guard("closing", () -> closed[0] = true);
    now.answers.add(folder.resolve("kept.js"));
    now.choose("Save");
    assertThat(closed[0]).isTrue();
    assertThat(folder.resolve("kept.js")).hasContent(LANTERN);
  }

  @Test
  void theLibraryIsNeverWritten() throws Exception {
    Path demo = library.resolve("demo.js");
    now.filing.open(demo);
    assertThat(now.desk.file().get()).isNull();
    now.desk.text().set(LANTERN);
    now.answers.add(demo);
    now.filing.save();
    assertThat(now.said()).isEqualTo("The library stays as it is");
    assertThat(demo).hasContent("design(\"Demo\");\n");
    assertThat(now.desk.changed().get()).isTrue();
  }

  @Test
  void refusesWhatIsNoScriptAndLosesNothing() throws Exception {
    now.filing.open(script("mine.js", LANTERN));
    record Case(String name, String bytes, String said) {}
    List<Case> cases =
        List.of(
            new Case("sea.png", "\u0001", "sea.png is not a design's script"),
            new Case("zero.js", "a\0", "zero.js is not text"),
            new Case("latin.js", "\u00E9a", "latin.js is not text in UTF-8"),
            new Case(
                "big.js",
                " ".repeat(200_001),
                "big.js is longer than the 200,000 letters that a script may have"));
    for (Case c : cases) {
      now.filing.dropped(
          List.of(Files.writeString(folder.resolve(c.name), c.bytes, StandardCharsets.ISO_8859_1)));
      assertThat(now.said()).isEqualTo(c.said);
      assertThat(now.notices.now().get().words()).isNotBlank();
      now.choose("Close");
    }
    now.filing.open(folder.resolve("gone.js"));
    assertThat(now.said()).isEqualTo("gone.js is not there any more");
    now.choose("Close");
    now.filing.open(Files.createDirectory(folder.resolve("box.js")));
    assertThat(now.said()).isEqualTo("box.js is a folder");
    assertThat(now.desk.text().get()).isEqualTo(LANTERN);
  }

  @Test
  void whatCannotBeSavedStaysUnsavedAndIsSaid() throws Exception {
    now.filing.open(script("mine.js", LANTERN));
    now.desk.text().set("x");
    now.answers.add(Files.writeString(folder.resolve("file"), "").resolve("in.js"));
    now.filing.saveAs();
    assertThat(now.said()).isEqualTo("in.js was not saved");
    assertThat(now.desk.changed().get()).isTrue();
    assertThat(now.desk.file().get()).isEqualTo(folder.resolve("mine.js"));
  }

  @Test
  void asksWhichGoesOnWhenAnotherProgramChangedTheFile() throws Exception {
    Path file = script("mine.js", LANTERN);
    now.filing.open(file);
    now.filing.lookOutside();
    assertThat(now.said()).isEmpty();
    Files.writeString(file, "design(\"Changed\");\n", StandardCharsets.UTF_8);
    now.filing.lookOutside();
    assertThat(now.said()).isEqualTo("mine.js was changed by another program");
    now.filing.save();
    assertThat(now.notices.now().get().isAwaited()).isTrue();
    now.choose("Cancel");
    assertThat(now.said())
        .as("the question stays")
        .isEqualTo("mine.js was changed by another program");
    now.choose("Keep mine");
    now.filing.lookOutside();
    assertThat(now.said()).as("it is asked once").isEmpty();
    now.desk.text().set(LANTERN + "//\n");
    now.filing.save();
    assertThat(now.said()).isEqualTo("mine.js was changed by another program");
    now.choose("Cancel");
    assertThat(file).hasContent("design(\"Changed\");\n");
    Files.writeString(file, "design(\"Again\");\n", StandardCharsets.UTF_8);
    now.filing.lookOutside();
    now.choose("Take theirs");
    assertThat(now.desk.text().get()).isEqualTo("design(\"Again\");\n");
    assertThat(now.desk.changed().get()).isFalse();
    now.keeping.bringBack();
    assertThat(now.desk.text().get()).as("mine").isEqualTo(LANTERN + "//\n");
    assertThat(now.desk.changed().get()).isTrue();
  }

  @Test
  void saysOnceThatTheFileIsGoneAndSavesItAnew() throws Exception {
    Path file = script("mine.js", LANTERN);
    now.filing.open(file);
    Files.delete(file);
    now.filing.lookOutside();
    assertThat(now.said()).isEqualTo("mine.js is gone");
    now.choose("Close");
    now.filing.lookOutside();
    assertThat(now.said()).isEmpty();
    now.filing.save();
    assertThat(file).hasContent(LANTERN);
    Files.delete(file);
    now.filing.lookOutside();
    now.choose("Save it again");
    assertThat(file).hasContent(LANTERN);
  }

  @Test
  void titlesMakePlainFileNames() {
    assertThat(FileName.of("Müllers Laterne, 2. Form!")).isEqualTo("mullers-laterne-2-form.js");
    assertThat(FileName.of(" … ")).isEqualTo("design.js");
    assertThat(FileName.title("// x\ndesign( 'Gull' , {})")).isEqualTo("Gull");
    assertThat(FileName.title("// design('Old')\nx.design('No'); design(`New`")).isEqualTo("New");
    assertThat(FileName.title("design(\"A \\\"tall\\\" box\")")).isEqualTo("A \"tall\" box");
    assertThat(FileName.title("say('design(\"No\")'); design(name)")).isEmpty();
  }
}
