package facetwright.language;

import com.ibm.icu.text.ListFormatter;
import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The phrases of one language. They are messages as ICU formats them, with named places, plurals
 * and choices; each bundle of them is a file of its own, told by the first word of a phrase's key.
 */
public final class Phrases {
  /** A decimal point between figures, as numbers are written for every reader alike. */
  private static final Pattern POINT = Pattern.compile("(?<=\\d)\\.(?=\\d)");

  /** French drops the vowel of "de" and "que" before a measure that begins with one. */
  private static final Pattern ELIDED = Pattern.compile("\\b(d|qu)e (?=environ\\b)");

  private static final Map<Language, Phrases> OF = new ConcurrentHashMap<>();

  private final Language language;
  private final Map<String, Properties> bundles = new ConcurrentHashMap<>();
  private final Map<String, MessageFormat> formats = new ConcurrentHashMap<>();
  private final String decimalMark;

  private Phrases(Language language) {
    this.language = language;
    this.decimalMark = language == Language.ENGLISH ? "." : ",";
  }

  public static Phrases of(Language language) {
    return OF.computeIfAbsent(language, Phrases::new);
  }

  public Language language() {
    return language;
  }

  /**
   * A phrase with its values.
   *
   * @param key "bundle.phrase"
   * @param named the name and the value of each place in turn; whole numbers as such, so that they
   *     can be counted, all else as text
   * @throws IllegalArgumentException where no such phrase is known, or names and values are odd
   */
  public String say(String key, Object... named) {
    if (named.length % 2 != 0) {
      throw new IllegalArgumentException("\"" + key + "\" has a name without a value");
    }
    Map<String, Object> values = HashMap.newHashMap(named.length / 2);
    for (int i = 0; i < named.length; i += 2) {
      values.put((String) named[i], named[i + 1]);
    }
    MessageFormat format = formats.computeIfAbsent(key, this::format);
    // A format keeps to one caller at a time.
    String said;
    synchronized (format) {
      said = format.format(values);
    }
    return language == Language.FRENCH ? ELIDED.matcher(said).replaceAll("$1’") : said;
  }

  /** Numbers as this language writes them: of "12.5 mm" in French "12,5 mm". */
  public String figures(String plain) {
    Matcher point = POINT.matcher(plain);
    return decimalMark.equals(".") ? plain : point.replaceAll(decimalMark);
  }

  /** "a", "a and b", "a, b and c". */
  public String listed(Collection<String> words) {
    return list(words, ListFormatter.Type.AND);
  }

  /** "a", "a or b", "a, b or c". */
  public String either(Collection<String> words) {
    return list(words, ListFormatter.Type.OR);
  }

  /** "a; b; c", of what has commas in it. */
  public String apart(Collection<String> words) {
    return String.join(semicolon() + " ", words);
  }

  /**
   * Numbers one after another: "28, 56 and 84 mm"; where one of them has a comma as its decimal
   * mark, "28,5; 56 und 84 mm".
   */
  public String numbers(List<String> numbers) {
    if (decimalMark.equals(".") || numbers.stream().noneMatch(n -> n.contains(decimalMark))) {
      return listed(numbers);
    }
    int last = numbers.size() - 1;
    return last < 2
        ? listed(numbers)
        : listed(
            List.of(String.join(semicolon() + " ", numbers.subList(0, last)), numbers.get(last)));
  }

  /** A semicolon as it stands after a word. */
  public String semicolon() {
    return language == Language.FRENCH ? "\u00a0;" : ";";
  }

  private String list(Collection<String> words, ListFormatter.Type type) {
    return ListFormatter.getInstance(language.locale(), type, ListFormatter.Width.WIDE)
        .format(words);
  }

  private MessageFormat format(String key) {
    String pattern = bundle(key).getProperty(key);
    if (pattern == null) {
      throw new IllegalArgumentException(
          "no phrase \"" + key + "\" is known in " + language.ownName());
    }
    return new MessageFormat(pattern, ULocale.forLocale(language.locale()));
  }

  private Properties bundle(String key) {
    int end = key.indexOf('.');
    if (end < 1) {
      throw new IllegalArgumentException("\"" + key + "\" names no bundle");
    }
    return bundles.computeIfAbsent(key.substring(0, end), this::read);
  }

  private Properties read(String bundle) {
    String file = bundle + "_" + language.tag() + ".properties";
    try (InputStream in = Phrases.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("no bundle \"" + file + "\" is known");
      }
      Reader text = new InputStreamReader(in, StandardCharsets.UTF_8);
      Properties all = new Properties();
      all.load(text);
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
