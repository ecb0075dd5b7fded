package facetwright.fold.pose;

import java.io.Serializable;

/**
 * How far the two sides of one score would tear apart: the score closes a loop round a corner, and
 * the given fold angles do not agree with each other.
 *
 * @param score index of the score in its net
 * @param mm how far the corners of the panel across it stand from where this score alone would take
 *     them; where its angle is not known, how far the ends of its two sides are apart
 */
public record ScoreGap(int score, double mm) implements Serializable {}
