package facetwright.turn.round;

import facetwright.net.Site;
import facetwright.turn.write.ScriptEdit;

/**
 * A number in a script that keeps measures between two marks, and what would bring them onto marks.
 *
 * @param site where it stands
 * @param start index of its first character in the script
 * @param text as it is written
 * @param becomes what to write instead
 * @param mm what it would then come to, in mm
 * @param fewer how many measures less would lie between marks
 */
public record Constant(Site site, int start, String text, String becomes, double mm, int fewer) {

  /** The change of the script. */
  ScriptEdit edit() {
    return new ScriptEdit(start, text.length(), becomes);
  }
}
