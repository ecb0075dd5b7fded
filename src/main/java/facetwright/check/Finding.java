package facetwright.check;

import facetwright.net.Site;
import java.io.Serializable;

/**
 * Something a maker should know before good paper is cut.
 *
 * @param rule short name of the rule, such as "off-sheet"
 * @param severity how bad it is
 * @param message what is wrong, where and why, in plain words
 * @param fix what to do about it
 * @param place where in the net
 * @param site where in the script
 */
public record Finding(
    String rule, Severity severity, String message, String fix, Place place, Site site)
    implements Serializable {

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
