package facetwright.script.design;

import facetwright.geom.LengthTolerance;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.words.Decimals;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Dial values as a person types them, and places of a slider as dial values. */
public final class DialText {
  /** A plain number whose range has fewer ruler marks than this is no length, but a part or so. */
  private static final int MARKS = 8;

  /** Inches are written in the coarsest fraction that is exact, down to 1/64. */
  private static final List<Ruler> FRACTIONS = List.of(Ruler.SIXTEENTHS, Ruler.SIXTY_FOURTHS);

  private DialText() {}

  /** A value as it stands in the field: inches in fractions, the rest as numbers. */
  public static String of(Dial dial, double value, Unit unit) {
    if (dial.kind() == Dial.Kind.LENGTH && unit.isInFractions()) {
      for (Ruler ruler : FRACTIONS) {
        Ruler.Reading reading = ruler.read(Length.of(value, unit));
        if (Math.abs(reading.errorMm()) < LengthTolerance.FINE.mm()) {
          return reading.number();
        }
      }
    }
    return Decimals.plain(Math.round(value * 1e4) / 1e4);
  }

  /**
   * What a dial is turned to, by settings that its design may not have come to yet: the nearest
   * that it can take; its value in the design where they do not name it, or name no number.
   *
   * @param settings dial values by name, as a person types them
   */
  public static double wanted(Dial dial, Map<String, String> settings, Unit unit) {
    return read(dial, settings, unit).map(dial::nearest).orElse(dial.value());
  }

  /**
   * What settings would have a dial turned to that it can't take, as typed; empty where they do not
   * name it or it takes that. Arguments as for {@link #wanted}.
   */
  public static Optional<String> yielded(Dial dial, Map<String, String> settings, Unit unit) {
    return Optional.ofNullable(settings.get(dial.name()))
        .filter(_ -> read(dial, settings, unit).filter(dial::takes).isEmpty());
  }

  /** What settings would have a dial turned to; empty where they do not name it or no number. */
  private static Optional<Double> read(Dial dial, Map<String, String> settings, Unit unit) {
    String set = settings.get(dial.name());
    if (set == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(Length.parse(set, unit).in(unit));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** What a dial's field says: what the dial is turned to; arguments as for {@link #wanted}. */
  public static String standing(Dial dial, Map<String, String> settings, Unit unit) {
    return of(dial, wanted(dial, settings, unit), unit);
  }

  /** The allowed value nearest to a place of the slider: on the dial's steps, or on the ruler. */
  public static double snapped(Dial dial, double value, Unit unit) {
    double step = step(dial, unit);
    return dial.nearest(dial.step() > 0 ? value : Math.round(value / step) * step);
  }

  /** The distance between two values that a slider stops at. */
  public static double step(Dial dial, Unit unit) {
    if (dial.step() > 0) {
      return dial.step();
    }
    double mark = Ruler.usual(unit).divisionMm() / unit.mm();
    double range = dial.to() - dial.from();
    return dial.kind() == Dial.Kind.LENGTH
        ? unit.isInFractions() ? fineEnough(mark, range, unit) : mark
        : range >= MARKS * mark
            ? mark
            : range > 0 ? Math.pow(10, Math.floor(Math.log10(range / 50))) : mark;
  }

  /** A division with some marks in the range, or the finest there is. */
  private static double fineEnough(double mark, double range, Unit unit) {
    double finest = Ruler.SIXTY_FOURTHS.divisionMm() / unit.mm();
    double fine = mark;
    while (range > 0 && range < MARKS * fine && fine > finest) {
      fine /= 2;
    }
    return fine;
  }
}
