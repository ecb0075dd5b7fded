package facetwright.script.api;

import facetwright.aim.GoalReader;
import facetwright.words.Decimals;

/** The kind of value that is a volume. */
public final class VolumeKind {
  private VolumeKind() {}

  /** A volume in mm³: text such as "250 ml" or "15 in3", or a number of the unit cubed. */
  public static Kind<Double> volume() {
    return Kinds.of(
        "a volume such as \"250 ml\", \"15 in3\" or \"250 cm3\", or a number of the design's unit"
            + " cubed",
        (value, session) -> {
          String written =
              value instanceof Given.Amount(double n) ? Decimals.plain(n) : Amounts.text(value);
          try {
            return GoalReader.volume(written, session.unit());
          } catch (IllegalArgumentException e) {
            throw new Kind.Unfit(GivenText.quote(value) + " is no volume over 0");
          }
        });
  }
}
