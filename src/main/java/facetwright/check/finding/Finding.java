package facetwright.check.finding;

import facetwright.measure.LengthWords;
import facetwright.measure.Unit;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.List;

/**
 * Something a maker should know before good paper is cut.
 *
 * @param rule short name of the rule, such as "off-sheet"
 * @param severity how bad it is
 * @param message what is wrong, where and why, in plain words
 * @param fix what to do about it
 * @param place where in the net
 * @param site where in the script
 * @param mends changes of the script's text that would put it right
 */
public record Finding(
    String rule,
    Severity severity,
    String message,
    String fix,
    Place place,
    Site site,
    List<Mend> mends)
    implements Serializable {
  public Finding {
    mends = List.copyOf(mends);
  }

  /** One that no change of the script's text is known for. */
  public Finding(
      String rule, Severity severity, String message, String fix, Place place, Site site) {
    this(rule, severity, message, fix, place, site, List.of());
  }

  /** The same with its lengths in the design's own unit. */
  public Finding in(Unit unit) {
    return new Finding(
        rule,
        severity,
        LengthWords.in(unit, message),
        LengthWords.in(unit, fix),
        place,
        site,
        mends);
  }

  /** How bad a finding is. */
  public enum Severity {
    /** The piece can't be made as it stands. */
    ERROR,
    /** It can be made, but may disappoint. */
    WARNING,
    /** Worth knowing. */
    NOTE
  }
}
