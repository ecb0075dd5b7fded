package facetwright.script.api;

import facetwright.measure.Unit;
import java.util.Arrays;
import java.util.List;

/** The kind of value that names a unit. */
public final class UnitKind {
  private static final List<String> UNITS = Arrays.stream(Unit.values()).map(Unit::symbol).toList();

  private UnitKind() {}

  /** The word a script uses for a unit. */
  public static Kind<Unit> unit() {
    return Kinds.of(
        "one of " + String.join(", ", UNITS.stream().map(u -> "\"" + u + "\"").toList()),
        UNITS,
        (value, _) -> {
          for (Unit unit : Unit.values()) {
            if (Amounts.text(value).equalsIgnoreCase(unit.symbol())) {
              return unit;
            }
          }
          String typed = Amounts.text(value);
          String meant =
              UNITS.stream()
                  .filter(u -> typed.startsWith(u))
                  .findFirst()
                  .map(Fit::inQuotes)
                  .orElse(Fit.near(typed, UNITS));
          throw new Kind.Unfit(GivenText.quote(value) + " is not a unit", meant);
        });
  }
}
