package facetwright.fold.touch;

import facetwright.geom.LengthTolerance;

/**
 * How closely the way from flat to made is looked at.
 *
 * @param touching how deep still counts as touching
 * @param stride a step is halved until no corner moves farther in it than this, in mm, over 0
 * @param most at most so many samples, at least 64; where they do not suffice the answer tells the
 *     longer stride
 */
public record PathSampling(LengthTolerance touching, double stride, int most) {
  /** Corners move 2 mm or less from sample to sample, where 4000 samples suffice. */
  public static final PathSampling USUAL = new PathSampling(Collisions.TOUCHING, 2, 4000);

  static final int LEAST = 64;

  /**
   * @throws IllegalArgumentException when the stride or the number of samples is too small
   */
  public PathSampling {
    if (!(stride > 0)) {
      throw new IllegalArgumentException("a stride must be over 0 mm, not " + stride);
    }
    if (most < LEAST) {
      throw new IllegalArgumentException("at least " + LEAST + " samples, not " + most);
    }
  }
}
