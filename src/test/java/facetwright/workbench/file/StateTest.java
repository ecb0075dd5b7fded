package facetwright.workbench.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StateTest {
  @TempDir private Path folder;

  @Test
  void remembersFromOneSittingToTheNext() {
    State.in(folder).remember(Map.of("dark", "yes", "text", "15.5", "folder.own", "/tmp/own"));
    State next = State.in(folder);
    assertThat(next.isOn("dark")).isTrue();
    assertThat(next.number("text", 10, 30)).contains(15.5);
    assertThat(next.number("text", 20, 30)).isEmpty();
    assertThat(next.number("dark", 0, 1)).isEmpty();
    assertThat(next.path("folder.own")).contains(Path.of("/tmp/own"));
    next.remember("dark", "");
    assertThat(State.in(folder).text("dark")).isEmpty();
  }

  @Test
  void whatCannotBeReadIsIgnoredAndReplaced() throws Exception {
    for (String bad : new String[] {"", "{", "[1]", "{\"a\":1}", "\u0000\u0001", "{\"a\":\"b\""}) {
      Files.writeString(folder.resolve(State.FILE), bad);
      State state = State.in(folder);
      assertThat(state.text("a")).isEmpty();
      state.remember("a", "c");
      assertThat(State.in(folder).text("a")).contains("c");
    }
    Files.write(folder.resolve(State.FILE), new byte[] {(byte) 0xFF, (byte) 0xFE, 3});
    assertThat(State.in(folder).recent()).isEmpty();
  }

  @Test
  void twoWindowsDoNotUndoEachOther() {
    State one = State.in(folder);
    State two = State.in(folder);
    one.remember("dark", true);
    two.opened(folder.resolve("a.js"));
    one.remember("text", "16");
    State next = State.in(folder);
    assertThat(next.isOn("dark")).isTrue();
    assertThat(next.text("text")).contains("16");
    assertThat(next.recent()).containsExactly(folder.resolve("a.js"));
  }

  @Test
  void recentFilesAreFewAndNewestFirst() {
    State state = State.in(folder);
    for (int i = 0; i < 14; i++) {
      state.opened(folder.resolve(i + ".js"));
    }
    state.opened(folder.resolve("9.js"));
    assertThat(state.recent()).hasSize(10);
    assertThat(state.recent().getFirst()).isEqualTo(folder.resolve("9.js"));
    assertThat(state.recent()).doesNotHaveDuplicates();
    state.forget(folder.resolve("13.js"));
    assertThat(State.in(folder).recent()).hasSize(9).doesNotContain(folder.resolve("13.js"));
  }

  @Test
  void whereItCannotBeWrittenItLastsForTheSitting() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "");
    State state = State.in(file);
    state.remember("dark", true);
    assertThat(state.isOn("dark")).isTrue();
  }

  /**
   * The places are those of the XDG base directory specification and of the systems' own guides.
   */
  @Test
  void itsFolderIsWhereTheSystemWantsIt() {
    UnaryOperator<String> none = _ -> null;
    UnaryOperator<String> home = k -> k.equals("user.home") ? "/home/oake" : null;
    assertThat(StateFolder.find("Linux", home, none))
        .isEqualTo(Path.of("/home/oake/.local/state/facetwright"));
    assertThat(StateFolder.find("Linux", home, Map.of("XDG_STATE_HOME", "/var/s")::get))
        .isEqualTo(Path.of("/var/s/facetwright"));
    assertThat(StateFolder.find("Linux", home, Map.of("XDG_STATE_HOME", "s")::get))
        .isEqualTo(Path.of("/home/oake/.local/state/facetwright"));
    assertThat(StateFolder.find("Mac OS X", home, none))
        .isEqualTo(Path.of("/home/oake/Library/Application Support/Facetwright"));
    assertThat(StateFolder.find("Windows 11", home, Map.of("LOCALAPPDATA", "/local")::get))
        .isEqualTo(Path.of("/local/Facetwright"));
    assertThat(StateFolder.find("Linux", k -> "/named", none)).isEqualTo(Path.of("/named"));
  }

  /** The environment's home comes before the one in the table of users: POSIX, 8.3. */
  @Test
  void itsFolderFollowsTheHomeThatIsGiven() {
    UnaryOperator<String> table = k -> k.equals("user.home") ? "/home/oake" : null;
    UnaryOperator<String> given = Map.of("HOME", "/home/rill")::get;
    assertThat(StateFolder.find("Linux", table, given))
        .isEqualTo(Path.of("/home/rill/.local/state/facetwright"));
    assertThat(StateFolder.find("Mac OS X", table, given))
        .isEqualTo(Path.of("/home/rill/Library/Application Support/Facetwright"));
    assertThat(StateFolder.find("Windows 11", table, given))
        .isEqualTo(Path.of("/home/oake/AppData/Local/Facetwright"));
    for (String bad : new String[] {"", " ", "rill"}) {
      assertThat(StateFolder.find("Linux", table, Map.of("HOME", bad)::get))
          .isEqualTo(Path.of("/home/oake/.local/state/facetwright"));
    }
    assertThat(
            StateFolder.find(
                "Linux", table, Map.of("HOME", "/home/rill", "XDG_STATE_HOME", "/var/s")::get))
        .isEqualTo(Path.of("/var/s/facetwright"));
  }
}
