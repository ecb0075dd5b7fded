package facetwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rooms and files stay small enough for a reader's head, and the map of the house is true. */
class RoomsTest {
  private static final Path MAIN = Path.of("src/main/java");
  private static final String TESTS = "src/test/java";
  private static final int LONGEST_FILE = 300;
  private static final int LARGEST_ROOM = 30;
  private static final Pattern NAMED = Pattern.compile("`([A-Z][a-z]\\w+)(?:[.(][^`]*)?`");
  private static final Pattern ROW = Pattern.compile("\\| `([a-z.]+)` \\|.*");

  @Test
  void noFileIsLongerThanAReadersHeadHolds() {
    Map<String, Integer> tooLong = new TreeMap<>();
    List<Path> all = new ArrayList<>(files());
    all.addAll(files(TESTS));
    for (Path file : all) {
      int lines = lines(file).size();
      if (lines > LONGEST_FILE) {
        tooLong.put(file.toString(), lines);
      }
    }
    assertThat(tooLong).isEmpty();
  }

  @Test
  void noRoomIsOverfull() {
    Map<String, Long> rooms = new TreeMap<>();
    for (Path file : files()) {
      rooms.merge(room(file), 1L, Long::sum);
    }
    rooms.values().removeIf(n -> n <= LARGEST_ROOM);
    assertThat(rooms).isEmpty();
  }

  @Test
  void theMapShowsEveryRoomAndNoOther() {
    Set<String> shown = new TreeSet<>();
    for (String line : lines(Path.of("DEVELOPERS.md"))) {
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        assertThat(shown.add(row.group(1))).as(line).isTrue();
      }
    }
    Set<String> there = new TreeSet<>();
    for (Path file : files()) {
      if (!room(file).isEmpty()) {
        there.add(room(file));
      }
    }
    assertThat(shown).isEqualTo(there);
  }

  /** A word in code face that begins like a class is one of ours. */
  @Test
  void whatTheGuideNamesIsThere() {
    Set<String> ours = new TreeSet<>();
    files().forEach(f -> ours.add(f.getFileName().toString().replace(".java", "")));
    files(TESTS).forEach(f -> ours.add(f.getFileName().toString().replace(".java", "")));
    Set<String> named = new TreeSet<>();
    for (String line : lines(Path.of("DEVELOPERS.md"))) {
      Matcher word = NAMED.matcher(line);
      while (word.find()) {
        named.add(word.group(1));
      }
    }
    assertThat(named).isNotEmpty();
    assertThat(ours).containsAll(named);
  }

  private static String room(Path file) {
    Path under = MAIN.resolve("facetwright").relativize(file.getParent());
    return under.toString().replace('/', '.').replace('\\', '.');
  }

  private static List<Path> files() {
    return files(MAIN.toString());
  }

  private static List<Path> files(String folder) {
    try (Stream<Path> all = Files.walk(Path.of(folder))) {
      return all.filter(f -> f.toString().endsWith(".java")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
