package facetwright.net.blank;

import facetwright.net.FoldAngle;
import facetwright.net.Sense;

/** How a stretch of a score is folded. */
public record LineFold(Sense sense, FoldAngle angle) {
  /** Found by closing the form. */
  static final LineFold FREE = new LineFold(Sense.MOUNTAIN, FoldAngle.TO_SOLVE);
}
