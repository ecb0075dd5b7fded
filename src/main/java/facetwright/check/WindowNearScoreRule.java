package facetwright.check;

import java.util.List;

/** Windows and holes so near a score that the card folds there instead, or tears. */
final class WindowNearScoreRule implements Rule {
  /** Card to leave between a score and an opening, in mm; common practice, no source. */
  static final double LEAST = 5;

  @Override
  public List<Finding> find(Subject subject) {
    return Openings.near(subject, "window-near-score", subject.scoredSides(), LEAST, "a score");
  }
}
