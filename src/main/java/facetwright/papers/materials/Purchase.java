package facetwright.papers.materials;

import java.util.Optional;

/**
 * A line of the shopping list.
 *
 * @param need what it is for
 * @param buy how many whole units
 * @param cost for all of them, where a price is known
 */
public record Purchase(Need need, int buy, Optional<Double> cost) {}
