package facetwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What is small enough to be nothing has a name and a reason: a number such as 1e-6 stands in a
 * constant whose words say what it is for, and one that is a length or an angle is a tolerance of
 * that type.
 */
class TolerancesTest {
  private static final Path MAIN = Path.of("src/main/java");
  private static final int FEW = 20;

  private static final Pattern SMALL = Pattern.compile("\\d[eE]-\\d");
  private static final Pattern WORDS = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);

  /** A documented constant: its words, its type, and what it is. */
  private static final Pattern NAMED =
      Pattern.compile(
          "/\\*\\*(?<words>(?:(?!\\*/).)*)\\*/\\s*"
              + "(?:public |private |)(?:static final )(?<type>[\\w\\[\\]]+) \\w+ =[^;]*;",
          Pattern.DOTALL);

  private static final Pattern OF_A_TYPE = Pattern.compile("\\bin (?:mm|radians)(?![\\w²³])");

  @Test
  void smallNumbersHaveANameAndAReason() throws IOException {
    List<String> bare = new ArrayList<>();
    int all = 0;
    try (Stream<Path> files = Files.walk(MAIN)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        String text = Files.readString(file);
        all += (int) SMALL.matcher(blanked(WORDS, text)).results().count();
        bare.addAll(bare(file.getFileName().toString(), text));
      }
    }
    assertThat(all).as("small numbers in all").isGreaterThan(FEW);
    assertThat(bare).hasSizeLessThan(FEW);
  }

  @Test
  void theyAreFoundWhereTheyStand() {
    String text =
        """
        /** A note of 1e-1. */
        class A {
          /** Nearer than this is there. */
          private static final double NEAR = 1e-2;

          private static final double SAME = 1e-3;

          /** Thinner, in mm, is rounding. */
          static final double THIN = 1e-4;

          /** Smaller, in mm², is rounding. */
          static final double SMALL = 1e-5;

          double x = y + 1E-6; // not 1e-7
        }
        """;
    assertThat(bare("A", text)).containsExactly("A:6", "A:9", "A:14");
  }

  /** Files and lines of those that have no name, no reason, or not the type they should. */
  private static List<String> bare(String file, String text) {
    String left = text;
    Matcher named = NAMED.matcher(text);
    while (named.find()) {
      boolean isTyped =
          !named.group("type").equals("double") || !OF_A_TYPE.matcher(named.group("words")).find();
      if (isTyped) {
        left = left.replace(named.group(), blanked(Pattern.compile("[^\\n]"), named.group()));
      }
    }
    List<String> found = new ArrayList<>();
    Matcher small = SMALL.matcher(blanked(WORDS, left));
    while (small.find()) {
      found.add(
          file
              + ":"
              + (1 + left.substring(0, small.start()).chars().filter(c -> c == '\n').count()));
    }
    return found;
  }

  /** The text with all that a pattern finds made blanks, lines kept. */
  private static String blanked(Pattern pattern, String text) {
    return pattern.matcher(text).replaceAll(m -> m.group().replaceAll("[^\\n]", " "));
  }
}
