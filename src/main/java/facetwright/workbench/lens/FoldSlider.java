package facetwright.workbench.lens;

import facetwright.geom.Vec2;

/** The way from flat to made, as a slider drawn on the lens. Places are in pixels of the lens. */
sealed interface FoldSlider permits Rim, Rule {
  /** Whether a press there takes hold of it. */
  boolean isAt(double x, double y);

  /** The value nearest to a place, 0 flat to 1 made. */
  double value(double x, double y);

  /**
   * @param made 0 flat to 1 made
   * @return where the knob stands
   */
  Vec2 at(double made);
}
