package facetwright.language;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a learner reads papers in. */
public enum Language {
  /** As in Britain: "a, b and c". */
  ENGLISH("en", "English", Locale.UK),
  FRENCH("fr", "français", Locale.FRANCE),
  GERMAN("de", "Deutsch", Locale.GERMANY),
  SPANISH("es", "español", Locale.of("es", "ES"));

  private final String tag;
  private final String ownName;
  private final Locale locale;

  Language(String tag, String ownName, Locale locale) {
    this.tag = tag;
    this.ownName = ownName;
    this.locale = locale;
  }

  /** The language of a tag of two letters (ISO 639-1), such as "de". */
  public static Optional<Language> tagged(String tag) {
    return Arrays.stream(values()).filter(l -> l.tag.equals(tag)).findFirst();
  }

  /** The tags of all, in order. */
  public static List<String> tags() {
    return Arrays.stream(values()).map(Language::tag).toList();
  }

  /** Its tag of two letters (ISO 639-1). */
  public String tag() {
    return tag;
  }

  /** What its speakers call it. */
  public String ownName() {
    return ownName;
  }

  /** Whose numbers, lists and plurals it has. */
  public Locale locale() {
    return locale;
  }
}
