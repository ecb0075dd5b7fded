package facetwright.workbench.drawer;

import facetwright.geom.Length;
import facetwright.geom.Ruler;
import facetwright.geom.Unit;
import facetwright.script.Dial;
import facetwright.script.api.Shown;

/** Dial values as a person types them, and places of a slider as dial values. */
public final class DialText {
  private DialText() {}

  /** A value as it stands in the field: inches in fractions, the rest as numbers. */
  public static String of(Dial dial, double value, Unit unit) {
    if (dial.kind() == Dial.Kind.LENGTH && unit == Unit.INCH) {
      Ruler.Reading reading = Ruler.SIXTEENTHS.read(Length.of(value, Unit.INCH));
      if (Math.abs(reading.errorMm()) < 1e-6) {
        return reading.text().replace(" in", "");
      }
    }
    return Shown.plain(Math.round(value * 1e4) / 1e4);
  }

  /** The allowed value nearest to a place of the slider: on the dial's steps, or on the ruler. */
  public static double snapped(Dial dial, double value, Unit unit) {
    double step = step(dial, unit);
    double base = dial.step() > 0 ? dial.from() : 0;
    double near = base + Math.round((value - base) / step) * step;
    return Math.clamp(near, dial.from(), dial.to());
  }

  /** The distance between two values that a slider stops at. */
  public static double step(Dial dial, Unit unit) {
    if (dial.step() > 0) {
      return dial.step();
    }
    if (dial.kind() == Dial.Kind.LENGTH) {
      return switch (unit) {
        case INCH -> 1.0 / 16;
        case CM -> 0.05;
        default -> 0.5;
      };
    }
    double range = dial.to() - dial.from();
    return range > 0 ? Math.pow(10, Math.floor(Math.log10(range / 50))) : 1;
  }
}
