package facetwright.measure;

import java.util.regex.Pattern;

/**
 * Measures as one word that no line breaks: the blanks between a whole number, its fraction and its
 * unit, and between the two numbers of a place, are made such that lines do not end at them. Pages
 * and windows set their words through it; what is read by programs, scripts and terminals keeps
 * plain blanks.
 */
public final class Unbroken {
  /** The no-break space. */
  public static final char BLANK = '\u00A0';

  private static final String UNIT = "(?:mm|cm|in|g)(?![\\p{L}\\d])";

  private static final String NUMBER = "-?[\\d.]+(?: \\d+/\\d+|/\\d+)?";

  private static final Pattern WITHIN =
      Pattern.compile(
          "(?<=\\d) (?=\\d+/\\d|"
              + UNIT
              + "|%)|(?<=\\d\\)) (?="
              + UNIT
              + ")|(?<=\\d,) (?="
              + NUMBER
              + "\\)? "
              + UNIT
              + ")");

  private Unbroken() {}

  /** The words with no blank in a measure at which a line may end. */
  public static String measures(String words) {
    return WITHIN.matcher(words).replaceAll(String.valueOf(BLANK));
  }

  /** The words with plain blanks in place of those at which no line ends. */
  public static String plain(String words) {
    return words.replace(BLANK, ' ').replace('\u202F', ' ').replace('\u2009', ' ');
  }
}
