package facetwright.adjust.sweep;

import facetwright.geom.RoundOff;
import facetwright.measure.Unit;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Which values of a dial are shown beside each other. */
public final class SweepValues {
  /** So many are made at most. */
  public static final int MOST = 100;

  private static final int MANY = 16;
  private static final int USUAL = 9;

  private SweepValues() {}

  /** Every step where there are few; else values spread over the range; the present one always. */
  public static List<Double> of(Dial dial, Unit unit) {
    TreeSet<Double> values = new TreeSet<>(between(dial, dial.from(), dial.to(), unit));
    values.removeIf(v -> Math.abs(v - dial.value()) < RoundOff.PART);
    values.add(dial.value());
    return List.copyOf(values);
  }

  /** Every step between two values where there are few; else values spread between them. */
  public static List<Double> between(Dial dial, double from, double to, Unit unit) {
    double steps = Math.floor((to - from) / DialText.step(dial, unit) + RoundOff.PART);
    int count = steps < MANY || dial.isWord() ? (int) steps + 1 : USUAL;
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double part = count == 1 ? 0 : i / (count - 1.0);
      double near = DialText.snapped(dial, from + part * (to - from), unit);
      if (values.stream().noneMatch(v -> Math.abs(v - near) < RoundOff.PART)) {
        values.add(near);
      }
    }
    return values;
  }

  /**
   * From one value to another in even steps.
   *
   * @param step over 0
   * @throws IllegalArgumentException when these are more than {@link #MOST}, without a full stop
   */
  public static List<Double> stepping(double from, double to, double step) {
    double count = Math.floor((to - from) / step + RoundOff.PART) + 1;
    if (!(step > 0) || !(count <= MOST)) {
      throw new IllegalArgumentException(
          "take a step over 0 that makes " + MOST + " values at most");
    }
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      values.add(from + i * step);
    }
    return values;
  }
}
