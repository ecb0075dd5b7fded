package facetwright.adjust.round;

import facetwright.adjust.write.Literal;
import facetwright.script.text.Edit;
import facetwright.words.Site;

/**
 * A number in a script that keeps measures between two marks, and what would bring them onto marks.
 *
 * @param site where it stands
 * @param literal as it is written
 * @param becomes what to write instead
 * @param mm what it would then come to, in mm
 * @param fewer how many measures less would lie between marks
 */
public record Constant(Site site, Literal literal, String becomes, double mm, int fewer) {
  /** As it is written. */
  public String text() {
    return literal.text();
  }

  /** Whether it stays a plain number, for the script reckons with it. */
  boolean staysPlain() {
    return !literal.isText() && !literal.isArgument();
  }

  /** The change of the script. */
  Edit edit() {
    return literal.edit(becomes);
  }
}
