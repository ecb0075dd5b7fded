package facetwright.script.design;

import facetwright.geom.LengthTolerance;
import facetwright.measure.Degrees;
import facetwright.measure.Length;
import facetwright.measure.Ruler;
import facetwright.measure.Unit;
import facetwright.words.Decimals;
import facetwright.words.NearName;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Dial values as a person types them, and places of a slider as dial values. */
public final class DialText {
  /** A plain number whose range has fewer ruler marks than this is no length, but a part or so. */
  private static final int MARKS = 8;

  /** Inches are written in the coarsest fraction that is exact, down to 1/64. */
  private static final List<Ruler> FRACTIONS = List.of(Ruler.SIXTEENTHS, Ruler.SIXTY_FOURTHS);

  private static final Pattern PLAIN = Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)");

  private static final Set<String> ON = Set.of("on", "yes", "true");
  private static final Set<String> OFF = Set.of("off", "no", "false");

  private DialText() {}

  /** A value as it stands in the field: its word, inches in fractions, the rest as numbers. */
  public static String text(Dial dial, double value, Unit unit) {
    if (dial.isWord()) {
      return dial.words().get((int) dial.nearest(value));
    }
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

  /** As {@link #text}, angles with their sign. */
  public static String angled(Dial dial, double value, Unit unit) {
    return text(dial, value, unit) + (dial.kind() == Dial.Kind.ANGLE ? Degrees.SIGN : "");
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
      return Optional.of(typed(dial, set, unit));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /**
   * The value that a person types.
   *
   * @throws IllegalArgumentException when it is none of the dial's kind; the message quotes it and
   *     says what is wanted, without a full stop
   */
  public static double typed(Dial dial, String text, Unit unit) {
    return switch (dial.kind()) {
      case LENGTH, NUMBER -> Length.parse(text, unit).in(unit);
      case ANGLE ->
          Degrees.parse(text)
              .or(() -> plain(text))
              .orElseThrow(() -> wrong(text, "an angle such as 50 or \"50 deg\""));
      case WHOLE -> plain(text).orElseThrow(() -> wrong(text, "a whole number"));
      case SWITCH -> {
        String said = text.strip().toLowerCase(Locale.ROOT);
        if (ON.contains(said) || OFF.contains(said)) {
          yield ON.contains(said) ? 1 : 0;
        }
        throw wrong(text, "on or off");
      }
      case CHOICE -> {
        int at = dial.words().stream().map(DialText::folded).toList().indexOf(folded(text));
        if (at < 0) {
          String meant =
              NearName.nearest(text, dial.words())
                  .map(n -> ". Did you mean \"" + n + "\"?")
                  .orElse("");
          throw wrong(text, "one of " + String.join(", ", dial.words()) + meant);
        }
        yield at;
      }
    };
  }

  private static IllegalArgumentException wrong(String text, String wanted) {
    return new IllegalArgumentException('"' + text.strip() + "\" is not " + wanted);
  }

  private static Optional<Double> plain(String text) {
    return PLAIN.matcher(text.strip()).matches()
        ? Optional.of(Double.valueOf(text.strip()))
        : Optional.empty();
  }

  /** Words are told apart by their letters, be they large or small. */
  private static String folded(String word) {
    return word.strip().toLowerCase(Locale.ROOT);
  }

  /** What a dial's field says: what the dial is turned to; arguments as for {@link #wanted}. */
  public static String standing(Dial dial, Map<String, String> settings, Unit unit) {
    return text(dial, wanted(dial, settings, unit), unit);
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
    double range = dial.to() - dial.from();
    if (dial.kind() == Dial.Kind.ANGLE) {
      return range >= MARKS ? 1 : Math.pow(10, Math.floor(Math.log10(range / MARKS)));
    }
    double mark = Ruler.usual(unit).divisionMm() / unit.mm();
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
