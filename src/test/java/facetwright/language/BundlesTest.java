package facetwright.language;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.ibm.icu.text.MessagePattern;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every phrase is known in every language, takes the same values, and is said by the program. */
class BundlesTest {
  private static final Path BUNDLES = Path.of("src/main/resources/facetwright/language");
  private static final Path SOURCES = Path.of("src/main/java");

  /** A key in quotes, and no file's name. */
  private static final Pattern SAID =
      Pattern.compile("\"([a-z]+\\.(?!(?:pdf|svg|png|html|css|js|json|dxf)\")[a-z0-9-]+)\"");

  private static Properties read(Path file) throws IOException {
    Properties all = new Properties();
    try (Reader in = Files.newBufferedReader(file, UTF_8)) {
      all.load(in);
    }
    return all;
  }

  private static Map<String, String> phrases(Language language) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.list(BUNDLES)) {
      String end = "_" + language.tag() + ".properties";
      for (Path file : files.filter(f -> f.toString().endsWith(end)).toList()) {
        String bundle = file.getFileName().toString().replace(end, "");
        read(file)
            .forEach(
                (key, pattern) -> {
                  assertThat((String) key).startsWith(bundle + ".");
                  all.put((String) key, (String) pattern);
                });
      }
    }
    return all;
  }

  @ParameterizedTest
  @EnumSource
  void eachLanguageKnowsTheSamePhrasesOfTheSameValues(Language language) throws IOException {
    Map<String, String> english = phrases(Language.ENGLISH);
    Map<String, String> own = phrases(language);
    assertThat(own.keySet()).isEqualTo(english.keySet());
    own.forEach(
        (key, pattern) ->
            assertThat(values(pattern))
                .as("%s in %s", key, language)
                .isEqualTo(values(english.get(key))));
  }

  /** The names of all values, those within choices too; a pattern that is none is refused. */
  private static Set<String> values(String pattern) {
    MessagePattern parsed = new MessagePattern(pattern);
    Set<String> names = new TreeSet<>();
    for (int i = 0; i < parsed.countParts(); i++) {
      if (parsed.getPartType(i) == MessagePattern.Part.Type.ARG_NAME) {
        names.add(parsed.getSubstring(parsed.getPart(i)));
      }
    }
    return names;
  }

  /** An apostrophe before a brace would quote it: it is written as printers set it. */
  @ParameterizedTest
  @EnumSource
  void noPhraseHasATypewritersMarks(Language language) throws IOException {
    phrases(language)
        .forEach((key, pattern) -> assertThat(pattern).as(key).doesNotContain("'", "\"", "..."));
  }

  /** The same choices are told apart: what the program chooses, a translator can't leave out. */
  @ParameterizedTest
  @EnumSource
  void choicesAreTheSame(Language language) throws IOException {
    Map<String, String> english = phrases(Language.ENGLISH);
    phrases(language)
        .forEach(
            (key, pattern) ->
                assertThat(selectors(pattern))
                    .as("%s in %s", key, language)
                    .isSubsetOf(selectors(english.get(key))));
  }

  private static Set<String> selectors(String pattern) {
    Matcher select = Pattern.compile("(\\w+), select,").matcher(pattern);
    return select.results().map(m -> m.group(1)).collect(Collectors.toCollection(TreeSet::new));
  }

  /** French sets a space before double marks (Imprimerie nationale, Lexique, from memory). */
  @Test
  void frenchSetsRoomBeforeDoubleMarks() throws IOException {
    phrases(Language.FRENCH)
        .forEach(
            (key, pattern) -> {
              String plain = pattern.replaceAll("\\{\\w+, (select|plural),", "");
              assertThat(plain).as(key).doesNotContainPattern("[\\p{L}\\d}][;:!?»](?!\\w)");
              assertThat(plain).as(key).doesNotContainPattern("[\\p{L}\\d}] [;:!?»]");
            });
  }

  @Test
  void eachPhraseIsSaidAndEachSaidIsKnown() throws IOException {
    Set<String> known = phrases(Language.ENGLISH).keySet();
    Set<String> bundles =
        known.stream().map(k -> k.substring(0, k.indexOf('.'))).collect(Collectors.toSet());
    Set<String> said = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        SAID.matcher(Files.readString(file)).results().map(m -> m.group(1)).forEach(said::add);
      }
    }
    said.removeIf(key -> !bundles.contains(key.substring(0, key.indexOf('.'))));
    assertThat(said).isEqualTo(known);
  }

  static List<Language> others() {
    return List.of(Language.FRENCH, Language.GERMAN, Language.SPANISH);
  }

  /** A phrase that stayed English by oversight; a few read the same. */
  @ParameterizedTest
  @MethodSource("others")
  void isTranslated(Language language) throws IOException {
    Map<String, String> english = phrases(Language.ENGLISH);
    Map<String, String> same = new HashMap<>();
    phrases(language)
        .forEach(
            (key, pattern) -> {
              boolean hasWords = Pattern.compile("\\p{L}{4}").matcher(bare(pattern)).find();
              if (pattern.equals(english.get(key)) && hasWords) {
                same.put(key, pattern);
              }
            });
    assertThat(same).isEmpty();
  }

  /** Without the names of values and of choices. */
  private static String bare(String pattern) {
    return pattern.replaceAll("\\{\\w+(\\}|, (select|plural),)|=?\\w+ (?=\\{)", "");
  }

  @Test
  void numbersAndListsAreThoseOfTheLanguage() {
    Phrases german = Phrases.of(Language.GERMAN);
    assertThat(german.figures("12.5 × 40 mm, 1 1/2 in.")).isEqualTo("12,5 × 40 mm, 1 1/2 in.");
    assertThat(german.listed(List.of("A", "B", "C"))).isEqualTo("A, B und C");
    assertThat(Phrases.of(Language.ENGLISH).listed(List.of("A", "B", "C"))).isEqualTo("A, B and C");
    assertThat(Phrases.of(Language.FRENCH).either(List.of("6", "8"))).isEqualTo("6 ou 8");
    assertThat(Phrases.of(Language.ENGLISH).figures("12.5")).isEqualTo("12.5");
  }

  @Test
  void frenchElidesBeforeAMeasure() {
    Phrases french = Phrases.of(Language.FRENCH);
    String about = french.say("measure.about", "measure", "57 mm");
    assertThat(french.say("materials.strip", "count", 4, "size", about))
        .isEqualTo("4 d’environ 57 mm");
    assertThat(french.say("materials.strip", "count", 4, "size", "57 mm")).isEqualTo("4 de 57 mm");
  }

  @Test
  void whatIsNotKnownIsRefused() {
    Phrases english = Phrases.of(Language.ENGLISH);
    assertThatThrownBy(() -> english.say("ring.nothing"))
        .hasMessage("no phrase \"ring.nothing\" is known in English");
    assertThatThrownBy(() -> english.say("nowhere.nothing")).hasMessageContaining("no bundle");
    assertThatThrownBy(() -> english.say("ring.seats", "counts"))
        .hasMessage("\"ring.seats\" has a name without a value");
  }
}
