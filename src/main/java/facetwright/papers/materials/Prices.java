package facetwright.papers.materials;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What things cost where the maker buys.
 *
 * @param currency as the maker writes it, such as "EUR"
 * @param each by {@link Need#key}: a sheet, or a metre
 */
public record Prices(String currency, Map<String, Double> each) {
  public static final Prices NONE = new Prices("", Map.of());

  /**
   * @throws IllegalArgumentException when a price is below 0
   */
  public Prices {
    for (Map.Entry<String, Double> price : new TreeMap<>(each).entrySet()) {
      if (!(price.getValue() >= 0) || price.getValue().isInfinite()) {
        throw new IllegalArgumentException(
            "the price of \"" + price.getKey() + "\" must be 0 or more, not " + price.getValue());
      }
    }
    each = Map.copyOf(each);
  }

  Optional<Double> of(String key) {
    return Optional.ofNullable(each.get(key));
  }
}
