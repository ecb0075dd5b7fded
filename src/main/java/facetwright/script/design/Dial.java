package facetwright.script.design;

import facetwright.geom.RoundOff;
import facetwright.measure.Degrees;
import facetwright.measure.Quantity;
import facetwright.measure.Unit;
import facetwright.words.Site;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/**
 * A parameter that a design's user may turn.
 *
 * @param name as the script and the command line call it
 * @param kind what it counts or chooses; lengths count in the design's unit, angles in degrees
 * @param words what it chooses from, where it chooses; its value is then the place of its word,
 *     from 0
 * @param value its value now
 * @param usual the value the script gives it
 * @param from least value allowed
 * @param to greatest value allowed
 * @param step distance between allowed values counted from {@code from}; 0 for no steps
 * @param site where the script declares it
 */
public record Dial(
    String name,
    Kind kind,
    List<String> words,
    double value,
    double usual,
    double from,
    double to,
    double step,
    Site site)
    implements Serializable {

  /** What a dial counts or chooses. */
  public enum Kind {
    LENGTH(Quantity.LENGTH),
    ANGLE(Quantity.ANGLE),
    WHOLE(Quantity.WHOLE),
    NUMBER(Quantity.NUMBER),
    /** One of several words. */
    CHOICE(null),
    /** On or off. */
    SWITCH(null);

    private final Quantity counts;

    Kind(Quantity counts) {
      this.counts = counts;
    }

    /** What its values count; empty for words. */
    public Optional<Quantity> counts() {
      return Optional.ofNullable(counts);
    }

    static Kind of(Quantity counts) {
      return switch (counts) {
        case LENGTH -> LENGTH;
        case ANGLE -> ANGLE;
        case WHOLE -> WHOLE;
        case NUMBER -> NUMBER;
      };
    }
  }

  /** The words of a dial that is on or off, by its value. */
  public static final List<String> SWITCH_WORDS = List.of("off", "on");

  public Dial {
    words = List.copyOf(words);
  }

  /** A dial that counts. */
  public static Dial counting(
      String name, Quantity counts, double value, double from, double to, double step, Site site) {
    return new Dial(name, Kind.of(counts), List.of(), value, value, from, to, step, site);
  }

  /** A dial that chooses one of two words or more. */
  public static Dial choosing(String name, Kind kind, List<String> words, int value, Site site) {
    return new Dial(name, kind, words, value, value, 0, words.size() - 1, 1, site);
  }

  /** Whether it chooses a word and counts nothing. */
  public boolean isWord() {
    return kind.counts().isEmpty();
  }

  /** What stands behind its values where people read them: the design's unit, or degrees. */
  public String sign(Unit unit) {
    return switch (kind) {
      case LENGTH -> unit.symbol();
      case ANGLE -> Degrees.SIGN;
      case WHOLE, NUMBER, CHOICE, SWITCH -> "";
    };
  }

  /** What a value may differ from one that is allowed, for rounding alone. */
  private double slack() {
    return RoundOff.PART * Math.max(1, Math.abs(to));
  }

  /** Whether a value lies in its range. */
  public boolean reaches(double wanted) {
    return wanted >= from - slack() && wanted <= to + slack();
  }

  /** Whether it may stand at a value: one in its range, and on its steps where it has any. */
  public boolean takes(double wanted) {
    return reaches(wanted)
        && Math.abs(nearest(wanted) - wanted) <= RoundOff.SOLVED * step + slack();
  }

  /** The value allowed that is nearest to one that need not be. */
  public double nearest(double wanted) {
    if (step == 0) {
      return Math.clamp(wanted, from, to);
    }
    double last = Math.floor((to - from + slack()) / step);
    return from + Math.clamp(Math.rint((wanted - from) / step), 0, last) * step;
  }

  /** The same dial turned to another value. */
  public Dial turned(double newValue) {
    return new Dial(name, kind, words, newValue, usual, from, to, step, site);
  }
}
