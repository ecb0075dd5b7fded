package facetwright.fold.pose;

import java.io.Serializable;

/**
 * How far one join misses closing.
 *
 * @param join index of the join in its net
 * @param mm the largest distance between places that should meet
 */
public record JoinGap(int join, double mm) implements Serializable {}
