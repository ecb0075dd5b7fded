package facetwright.papers.cutting;

import java.util.Locale;

/** From which edge of a part a cut is measured. */
public enum FromEdge {
  /** The blade runs up the part; the measure is the width cut off. */
  LEFT,
  /** The blade runs across the part; the measure is the height cut off. */
  BOTTOM;

  /** Such as "left". */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
