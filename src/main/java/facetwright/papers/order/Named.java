package facetwright.papers.order;

import facetwright.language.Telling;
import facetwright.words.Sentence;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * What the files of a design are called, and what they call themselves: by the design first, so
 * that those of several lie in one folder, then by what they are.
 *
 * @param design its title; may be empty
 */
public record Named(String design) {
  /** How the name of the template ends, and of the one over the printer's pages. */
  public static final String TEMPLATE = "template.pdf";

  public static final String TILES = "template-tiles.pdf";

  private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{M}\\p{Nd}]+");

  /** A longer title is cut: names of files may have 255 bytes, a letter takes 4 at most. */
  private static final int LONGEST = 48;

  private static final String NAMELESS = "design";

  /**
   * The name of a file: small letters and figures of any script, with hyphens between words.
   *
   * @param ending what it is, such as "handout.pdf"
   */
  public String file(String ending) {
    return stem() + "-" + ending;
  }

  /**
   * The name of one of several files; the first is called as if it were alone.
   *
   * @param number from 1
   */
  public String file(String ending, int number) {
    int dot = ending.lastIndexOf('.');
    return file(
        number == 1 ? ending : ending.substring(0, dot) + "-" + number + ending.substring(dot));
  }

  private String stem() {
    String plain = Normalizer.normalize(design, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    String words = BETWEEN.matcher(plain).replaceAll("-").replaceAll("^-|-$", "");
    int most = Math.min(LONGEST, words.codePointCount(0, words.length()));
    String cut = words.substring(0, words.offsetByCodePoints(0, most)).replaceAll("-$", "");
    return cut.isEmpty() ? NAMELESS : cut;
  }

  /**
   * What a paper is called within a sentence: "score chart".
   *
   * @param format by which it is asked for
   */
  public static String paper(String format, Telling tell) {
    return tell.say("page.paper", "paper", format.replace("-", ""));
  }

  /**
   * What a file says it is to its reader: "Harbour lantern: handout".
   *
   * @param paper what its reader calls it within a sentence, such as "handout"
   */
  public String title(String paper, Telling tell) {
    String of = design.replaceAll("\\p{Cntrl}+", " ").strip();
    return of.isEmpty()
        ? Sentence.capital(paper)
        : tell.say("page.title", "design", of, "paper", paper);
  }

  /**
   * What a file says it is: "Harbour lantern: handout".
   *
   * @param paper what a maker calls it, such as "Handout"
   */
  public String title(String paper) {
    String of = design.replaceAll("\\p{Cntrl}+", " ").strip();
    if (of.isEmpty()) {
      return paper;
    }
    // What begins with several capitals, such as a name of letters, keeps them.
    boolean isWord = paper.length() > 1 && !Character.isUpperCase(paper.charAt(1));
    return of
        + ": "
        + (isWord ? paper.substring(0, 1).toLowerCase(Locale.ROOT) : paper.charAt(0))
        + paper.substring(1);
  }
}
