package facetwright.check;

import java.util.List;

/** Windows and holes so near a cut edge that the strip between may tear. */
final class HoleNearEdgeRule implements Rule {
  /** Card to leave between an opening and the edge, in mm; common practice, no source. */
  static final double LEAST = 3;

  @Override
  public List<Finding> find(Subject subject) {
    return Openings.near(subject, "hole-near-edge", subject.cutSides(), LEAST, "the edge");
  }
}
