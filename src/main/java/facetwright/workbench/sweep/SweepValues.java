package facetwright.workbench.sweep;

import facetwright.geom.Unit;
import facetwright.script.Dial;
import facetwright.workbench.drawer.DialText;
import java.util.List;
import java.util.TreeSet;

/** Which values of a dial are shown beside each other. */
final class SweepValues {
  private static final int MOST = 16;
  private static final int USUAL = 9;

  private SweepValues() {}

  /** Every step where there are few; else values spread over the range; the present one always. */
  static List<Double> of(Dial dial, Unit unit) {
    double step = DialText.step(dial, unit);
    double steps = Math.floor((dial.to() - dial.from()) / step + 1e-9);
    int count = steps < MOST ? (int) steps + 1 : USUAL;
    TreeSet<Double> values = new TreeSet<>(List.of(dial.value()));
    for (int i = 0; i < count; i++) {
      double part = count == 1 ? 0 : i / (count - 1.0);
      double at = dial.from() + part * (dial.to() - dial.from());
      double near = DialText.snapped(dial, at, unit);
      if (values.stream().noneMatch(v -> Math.abs(v - near) < 1e-9)) {
        values.add(near);
      }
    }
    return List.copyOf(values);
  }
}
