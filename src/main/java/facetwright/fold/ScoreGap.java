package facetwright.fold;

import java.io.Serializable;

/**
 * How far the two sides of one score would tear apart: the score closes a loop round a corner, and
 * the given fold angles do not agree with each other.
 *
 * @param score index of the score in its net
 * @param mm the larger distance between the two ends of its sides
 */
public record ScoreGap(int score, double mm) implements Serializable {}
