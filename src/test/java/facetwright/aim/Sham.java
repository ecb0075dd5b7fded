package facetwright.aim;

import facetwright.measure.Quantity;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** A design that is nothing but formulas. */
final class Sham {
  private final Map<Measure, ToDoubleFunction<List<Double>>> formulas =
      new EnumMap<>(Measure.class);

  Sham with(Measure measure, ToDoubleFunction<List<Double>> formula) {
    formulas.put(measure, formula);
    return this;
  }

  /** The net is an upright rectangle that may be turned a quarter. */
  Measured at(List<Double> values) {
    Map<Measure, Double> measured = new EnumMap<>(Measure.class);
    formulas.forEach((m, f) -> measured.put(m, f.applyAsDouble(values)));
    double w = measured.getOrDefault(Measure.NET_WIDTH, 10.0);
    double h = measured.getOrDefault(Measure.NET_HEIGHT, 10.0);
    measured.put(Measure.NET_WIDTH, w);
    measured.put(Measure.NET_HEIGHT, h);
    return new Measured(
        measured,
        s ->
            new Lie(
                Math.min(w, h) <= Math.min(s.width(), s.height())
                    && Math.max(w, h) <= Math.max(s.width(), s.height()),
                w,
                h),
        _ -> Optional.empty());
  }

  Measured now(List<Knob> knobs) {
    return at(knobs.stream().map(Knob::now).toList());
  }

  static Knob knob(String name, double now, double from, double to) {
    return new Knob(name, Quantity.LENGTH, now, from, to, 0);
  }

  static Knob stepped(String name, double now, double from, double to, double step) {
    return new Knob(name, Quantity.NUMBER, now, from, to, step);
  }
}
