package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which folder a dialog offers first. */
class FoldersTest {
  @TempDir private Path folder;
  private final List<Path> offered = new ArrayList<>();
  private Optional<Path> answer = Optional.empty();
  private State state;

  @BeforeEach
  void begin() {
    state = State.in(folder.resolve("state"));
  }

  /** A run of the program. */
  private Folders folders() {
    return new Folders(
        state,
        new Choosing() {
          @Override
          public Optional<Path> toOpen(Path startingIn) {
            throw new AssertionError();
          }

          @Override
          public Optional<Path> toSave(Path startingIn, String name) {
            throw new AssertionError();
          }

          @Override
          public Optional<Path> folder(String title, Path startingIn) {
            offered.add(startingIn);
            return answer;
          }
        });
  }

  @Test
  void papersGoWhereTheyWentLastAndAtFirstWhereScriptsAre() throws Exception {
    Path scripts = Files.createDirectory(folder.resolve("scripts"));
    Path papers = folder.resolve("papers");
    folders().choosePapers("Save");
    folders().remember(Folders.SAVE, scripts.resolve("a.js"));
    folders().choosePapers("Save");
    answer = Optional.of(papers);
    assertThat(folders().choosePapers("Save")).contains(papers);
    answer = Optional.empty();
    assertThat(folders().choosePapers("Save")).isEmpty();
    state = State.in(folder.resolve("state"));
    folders().choosePapers("Save");
    assertThat(offered)
        .containsExactly(folders().own(), scripts, scripts, papers.toAbsolutePath(), papers);
  }
}
