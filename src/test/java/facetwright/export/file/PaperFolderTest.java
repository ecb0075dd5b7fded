package facetwright.export.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaperFolderTest {
  @TempDir private Path folder;

  private PaperFolder of(String title, String script) {
    return new PaperFolder(folder, title, script);
  }

  private static SequencedMap<String, byte[]> files(String contents, String... names) {
    SequencedMap<String, byte[]> files = new LinkedHashMap<>();
    for (String name : names) {
      files.put(name, contents.getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }

  @Test
  void aDesignMayReplaceWhatItWroteItself() {
    PaperFolder gull = of("Gull", "gull.js");
    assertThat(gull.others(files("1", "a.pdf"))).isEmpty();
    gull.write(files("1", "a.pdf", "b.svg"));
    assertThat(gull.others(files("2", "a.pdf", "b.svg", "c.dxf"))).isEmpty();
    gull.write(files("2", "a.pdf"));
    assertThat(gull.others(files("3", "a.pdf", "b.svg"))).isEmpty();
    assertThat(folder.resolve("a.pdf")).hasContent("2");
  }

  /** Papers of a former shape among the new ones are told of: only its own, as it wrote them. */
  @Test
  void whatIsLeftOfAnEarlierMakingIsTold() throws Exception {
    PaperFolder gull = of("Gull", "gull.js");
    gull.write(files("1", "a.pdf", "layout.pdf", "drawn.pdf", "gone.pdf"));
    of("Tern", "tern.js").write(files("1", "tern.pdf"));
    Files.writeString(folder.resolve("old.pdf"), "unknown");
    Files.writeString(folder.resolve("drawn.pdf"), "drawn over");
    Files.delete(folder.resolve("gone.pdf"));
    assertThat(gull.ofEarlier(files("1", "a.pdf", "layout.pdf"))).isEmpty();
    gull.write(files("2", "a.pdf"));
    assertThat(gull.earlier(files("2", "a.pdf"))).containsExactly("layout.pdf");
    assertThat(gull.ofEarlier(files("2", "a.pdf"))).endsWith("of another shape: layout.pdf.");
    assertThat(folder.resolve("layout.pdf")).as("it is left alone").hasContent("1");
    gull.write(files("3", "layout.pdf", "a.pdf"));
    assertThat(gull.earlier(files("3", "layout.pdf", "a.pdf"))).isEmpty();
  }

  @Test
  void allElseIsOthers() throws Exception {
    Files.writeString(folder.resolve("old.pdf"), "unknown");
    PaperFolder gull = of("Gull", "gull.js");
    gull.write(files("1", "a.pdf", "b.pdf"));
    Files.writeString(folder.resolve("b.pdf"), "drawn over");
    assertThat(gull.others(files("2", "old.pdf", "a.pdf", "b.pdf")))
        .isEqualTo(List.of("old.pdf", "b.pdf"));
    assertThat(of("Gull", "other.js").others(files("2", "a.pdf"))).containsExactly("a.pdf");
    assertThat(of("Tern", "gull.js").others(files("2", "a.pdf"))).containsExactly("a.pdf");
    assertThat(of("Tern", "gull.js").others(files("1", "a.pdf")))
        .as("nothing is lost where the same is written")
        .isEmpty();
  }

  @Test
  void aDamagedRecordKnowsNothing() throws Exception {
    PaperFolder gull = of("Gull", "gull.js");
    gull.write(files("1", "a.pdf"));
    Files.write(folder.resolve(PaperFolder.RECORD), new byte[] {(byte) 0xFF, 10, 32, 32, 10});
    assertThat(gull.others(files("2", "a.pdf"))).containsExactly("a.pdf");
    gull.write(files("2", "a.pdf"));
    assertThat(gull.others(files("3", "a.pdf"))).isEmpty();
  }

  /** What is replaced because the user says so is found again, whole. */
  @Test
  void whatIsReplacedIsKept() throws Exception {
    Files.writeString(folder.resolve("old.pdf"), "unknown");
    PaperFolder gull = of("Gull", "gull.js");
    assertThat(gull.write(files("1", "a.pdf", "b.pdf"))).isEmpty();
    Files.writeString(folder.resolve("b.pdf"), "drawn over");
    Path kept = gull.write(files("2", "old.pdf", "a.pdf", "b.pdf")).orElseThrow();
    assertThat(kept).isEqualTo(folder.resolve("replaced-files"));
    assertThat(kept.resolve("old.pdf")).hasContent("unknown");
    assertThat(kept.resolve("b.pdf")).hasContent("drawn over");
    assertThat(kept.resolve("a.pdf")).as("its own can be made again").doesNotExist();
    assertThat(folder.resolve("b.pdf")).hasContent("2");
    // Its own papers from now on: nothing more is kept, and what is kept stays.
    assertThat(gull.write(files("3", "old.pdf", "b.pdf"))).isEmpty();
    assertThat(kept.resolve("b.pdf")).hasContent("drawn over");
    assertThat(of("Tern", "tern.js").write(files("4", "b.pdf"))).contains(kept);
    assertThat(kept.resolve("b.pdf")).hasContent("3");
  }

  /** Nothing is replaced that can't be kept. */
  @Test
  void whatCannotBeKeptIsNotReplaced() throws Exception {
    Files.writeString(folder.resolve("old.pdf"), "unknown");
    Files.writeString(folder.resolve(PaperFolder.KEPT), "a file in the way");
    PaperFolder gull = of("Gull", "gull.js");
    assertThatThrownBy(() -> gull.write(files("1", "old.pdf"))).isInstanceOf(ExportException.class);
    assertThat(folder.resolve("old.pdf")).hasContent("unknown");
  }
}
