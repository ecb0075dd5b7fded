package facetwright.workbench.desk;

import facetwright.words.Mend;
import facetwright.words.Site;
import facetwright.worker.Reply;
import java.util.List;

/**
 * What is wrong with the script as it stands.
 *
 * @param script the text that it is wrong with
 * @param message in a maker's words
 * @param site where; {@link Site#NONE} when that is not known
 * @param remedy what to do about it, or empty
 * @param mends changes of the script's text that would put it right
 * @param said what the script said before
 */
public record Fault(
    String script, String message, Site site, String remedy, List<Mend> mends, List<String> said) {
  public Fault {
    mends = List.copyOf(mends);
    said = List.copyOf(said);
  }

  /** What an evaluation of a script failed by. */
  static Fault of(String script, Reply.Failed why) {
    return new Fault(script, why.message(), why.site(), why.remedy(), why.mends(), why.said());
  }

  /** Whether it is wrong with a text, letter by letter: in no other text do its mends apply. */
  public boolean isOf(String text) {
    return text.equals(script);
  }
}
