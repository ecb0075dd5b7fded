package facetwright.message;

import facetwright.measure.Unit;
import facetwright.words.Decimals;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A value that a message tells of. */
public sealed interface Value extends Message.Part {

  /** As it is read in a unit, the unit's sign with it. */
  String text(Unit unit);

  /** What stands beside it in brackets for a reader of that unit. */
  default Optional<String> aside(Unit unit) {
    return Optional.empty();
  }

  /** A length as it was found: never 0 for what is not 0. */
  static Value length(double mm) {
    return new Lengths(List.of(mm), Rounding.FOUND);
  }

  /** A length that is enough: rounded up, so that who follows the message is done. */
  static Value atLeast(double mm) {
    return new Lengths(List.of(mm), Rounding.UP);
  }

  /** A length that is not too much: rounded down. */
  static Value atMost(double mm) {
    return new Lengths(List.of(mm), Rounding.DOWN);
  }

  /** The finest bound on a length: "0.003 mm", rounded up. */
  static Value within(double mm) {
    return new Lengths(List.of(mm), Rounding.FINE_UP);
  }

  /** A width and a height: "60.5 × 40 mm". */
  static Value size(double width, double height) {
    return new Lengths(List.of(width, height), Rounding.FOUND);
  }

  /** A length that somebody gave, or a limit: every digit of it. */
  static Value given(double mm) {
    return new Lengths(List.of(mm), Rounding.GIVEN);
  }

  /** A limit that was reckoned, or a length held against it: three decimals. */
  static Value limit(double mm) {
    return new Lengths(List.of(mm), Rounding.LIMIT);
  }

  /** A length to a tenth of a millimetre: "12.0 mm". */
  static Value rough(double mm) {
    return new Lengths(List.of(mm), Rounding.ROUGH);
  }

  static Value area(double mm2) {
    return new Surface(mm2);
  }

  static Value angle(double degrees) {
    return new Angle(degrees, false);
  }

  /** An angle as near as one folds: "30.0°". */
  static Value foldAngle(double degrees) {
    return new Angle(degrees, true);
  }

  static Value count(long number) {
    return new Count(number);
  }

  /** "0.12 %": two decimals at most, and never 0 for what is not 0. */
  static Value share(double part) {
    return new Share(part, false);
  }

  /** A share of what is allowed that is too much: rounded up, so that it reads as over. */
  static Value shareOver(double part) {
    return new Share(part, true);
  }

  /** A name that the script gave, which no unit changes. */
  static Name name(String name) {
    return new Name(name, 0, List.of());
  }

  /** How many digits of a length are told, and to which side it is rounded. */
  enum Rounding {
    FOUND,
    UP,
    DOWN,
    FINE_UP,
    ROUGH,
    LIMIT,
    GIVEN
  }

  /**
   * A length, or several across each other.
   *
   * @param mm each of them, in millimetres
   */
  record Lengths(List<Double> mm, Rounding rounding) implements Value {
    public Lengths {
      mm = List.copyOf(mm);
    }

    @Override
    public String text(Unit unit) {
      return Wording.of(mm, rounding, unit);
    }

    @Override
    public Optional<String> aside(Unit unit) {
      boolean isTold = rounding == Rounding.FINE_UP || Wording.isPlain(mm, rounding, unit);
      return isTold ? Optional.empty() : Optional.of(text(Unit.MM));
    }
  }

  /**
   * @param mm2 in square millimetres
   */
  record Surface(double mm2) implements Value {
    @Override
    public String text(Unit unit) {
      String in = Decimals.places(mm2 / (unit.mm() * unit.mm()), Wording.PLACES);
      return (unit == Unit.MM || in.equals("0")
              ? Wording.found(mm2) + " " + Unit.MM.symbol()
              : in + " " + unit.symbol())
          + "²";
    }

    @Override
    public Optional<String> aside(Unit unit) {
      String metric = text(Unit.MM);
      return unit.isMetric() || text(unit).equals(metric) ? Optional.empty() : Optional.of(metric);
    }
  }

  /**
   * @param degrees told with two decimals at most
   * @param isRough whether it is told to a tenth instead
   */
  record Angle(double degrees, boolean isRough) implements Value {
    @Override
    public String text(Unit unit) {
      return (isRough ? String.format(Locale.ROOT, "%.1f", degrees) : Wording.found(degrees)) + "°";
    }
  }

  /** A whole number of things. */
  record Count(long number) implements Value {
    @Override
    public String text(Unit unit) {
      return Long.toString(number);
    }
  }

  /**
   * @param part of 1, told in percent
   * @param isOver whether it is rounded up
   */
  record Share(double part, boolean isOver) implements Value {
    @Override
    public String text(Unit unit) {
      double percent = isOver ? Math.ceil(1e4 * part - 1e-6) / 100 : 100 * part;
      return Wording.found(percent) + " %";
    }
  }

  /**
   * @param name without quotes
   * @param line of the script that made what bears it; 0 where that is not told
   * @param spot a place in what bears it; none where the name alone tells which it is
   */
  record Name(String name, int line, List<Place> spot) implements Value {
    public Name {
      spot = List.copyOf(spot);
    }

    /** The same of what lies at a place. */
    public Name at(Place place) {
      return new Name(name, line, List.of(place));
    }

    /** The same of what a line of the script made. */
    public Name made(int by) {
      return new Name(name, by, spot);
    }

    @Override
    public String text(Unit unit) {
      List<String> where = new ArrayList<>();
      spot.forEach(p -> where.add("at " + p.bare(unit)));
      if (line > 0) {
        where.add("line " + line);
      }
      return "\"" + name + "\"" + (where.isEmpty() ? "" : " (" + String.join("; ", where) + ")");
    }
  }

  /**
   * A place, measured across and up from a corner.
   *
   * @param x across, in mm
   * @param y up, in mm
   * @param room how far from it will do as well, in mm; 0 for just there
   */
  record Place(double x, double y, double room) implements Value {
    @Override
    public String text(Unit unit) {
      return "(" + Wording.place(x, y, room, unit) + ") " + unit.symbol();
    }

    /** Without brackets: "80, 60 mm". */
    String bare(Unit unit) {
      return Wording.place(x, y, room, unit) + " " + unit.symbol();
    }
  }
}
