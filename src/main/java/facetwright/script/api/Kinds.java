package facetwright.script.api;

import facetwright.geom.Length;
import facetwright.geom.Unit;
import facetwright.geom.Vec2;
import facetwright.geom.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.graalvm.polyglot.Value;

/** The kinds of value that functions take. Lengths are read into millimetres. */
public final class Kinds {
  /** The longest length a script may ask for: ten metres. */
  public static final double LONGEST = 10_000;

  /** The shortest length that is more than nothing: a hundredth of a millimetre. */
  public static final double SHORTEST = 0.01;

  private static final int MOST_ITEMS = 10_000;

  private Kinds() {}

  private record Simple<T>(String wanted, Reader<T> reader) implements Kind<T> {
    @Override
    public T read(Value value, Session session) throws Unfit {
      return reader.read(value, session);
    }
  }

  /** How a kind reads. */
  @FunctionalInterface
  interface Reader<T> {
    T read(Value value, Session session) throws Kind.Unfit;
  }

  static <T> Kind<T> of(String wanted, Reader<T> reader) {
    return new Simple<>(wanted, reader);
  }

  /** A whole number. */
  public static Kind<Integer> count(int from, int to) {
    return of(
        "a whole number from " + from + " to " + to,
        (value, _) -> {
          double n = number(value);
          if (n != Math.rint(n)) {
            throw new Kind.Unfit(Shown.plain(n) + " is not a whole number");
          }
          return (int) inRange(n, from, to, Shown.plain(n));
        });
  }

  /** A plain number. */
  public static Kind<Double> number(double from, double to) {
    return of(
        "a number from " + Shown.plain(from) + " to " + Shown.plain(to),
        (value, _) -> {
          double n = number(value);
          return inRange(n, from, to, Shown.plain(n));
        });
  }

  /** An angle in degrees. */
  public static Kind<Double> degrees(double from, double to) {
    return of(
        "an angle from " + Shown.plain(from) + " to " + Shown.plain(to) + " degrees",
        (value, _) -> {
          double n = number(value);
          return inRange(n, from, to, Shown.plain(n) + " degrees");
        });
  }

  /** A length over 0, up to ten metres, in mm. */
  public static Kind<Double> length() {
    return length(SHORTEST, LONGEST);
  }

  /** A length in mm, the range given in mm. */
  public static Kind<Double> length(double from, double to) {
    return of(
        "a length from "
            + Shown.plain(from)
            + " mm to "
            + Shown.plain(to)
            + " mm, as a number in the design's unit or as text such as \"1 7/8 in\" or \"48 mm\"",
        (value, session) -> {
          double mm = mm(value, session.unit());
          return inRange(mm, from, to, shown(value, mm));
        });
  }

  /** Any value, to be read by the function itself: a number or a length as text. */
  static Kind<Value> raw() {
    return of("a number, or a length as text", (value, _) -> value);
  }

  /** Text, numbers, or a list of them, as they are shown to a person. */
  static Kind<List<String>> shown() {
    return of(
        "text, a number, or a list of them",
        (value, _) -> {
          List<String> words = new ArrayList<>();
          long n = value.hasArrayElements() ? Math.min(value.getArraySize(), 100) : 1;
          for (long i = 0; i < n; i++) {
            Value word = value.hasArrayElements() ? value.getArrayElement(i) : value;
            words.add(word.isString() ? word.asString() : Shown.quote(word));
          }
          return words;
        });
  }

  /** Words, not empty. */
  public static Kind<String> text() {
    return of(
        "text in quotes",
        (value, _) -> {
          if (!value.isString() || value.asString().isBlank()) {
            throw new Kind.Unfit(Shown.quote(value) + " is not text");
          }
          String text = value.asString();
          if (text.length() > 2_000) {
            throw new Kind.Unfit(
                "a text of " + text.length() + " letters is over the 2000 allowed");
          }
          return text;
        });
  }

  public static Kind<Boolean> flag() {
    return of(
        "true or false",
        (value, _) -> {
          if (!value.isBoolean()) {
            throw new Kind.Unfit(Shown.quote(value) + " is neither true nor false");
          }
          return value.asBoolean();
        });
  }

  /** One word out of an enum's, in lower case. */
  public static <E extends Enum<E>> Kind<E> word(Class<E> type) {
    List<String> words = new ArrayList<>();
    for (E e : type.getEnumConstants()) {
      words.add(wordOf(e));
    }
    return of(
        "one of \"" + String.join("\", \"", words) + "\"",
        (value, _) -> {
          String word = value.isString() ? value.asString().strip().toLowerCase(Locale.ROOT) : "";
          int at = words.indexOf(word);
          if (at < 0) {
            throw new Kind.Unfit(Shown.quote(value) + " is not one of them");
          }
          return type.getEnumConstants()[at];
        });
  }

  public static String wordOf(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The word a script uses for a unit. */
  public static Kind<Unit> unit() {
    return of(
        "one of \"mm\", \"cm\", \"in\"",
        (value, _) -> {
          for (Unit unit : Unit.values()) {
            if (value.isString() && value.asString().strip().equalsIgnoreCase(unit.symbol())) {
              return unit;
            }
          }
          throw new Kind.Unfit(Shown.quote(value) + " is not a unit");
        });
  }

  /** A point in the plane: [x, y], each a length. */
  public static Kind<Vec2> point() {
    Kind<List<Double>> two = list(length(-LONGEST, LONGEST), 2, 2);
    return of(
        "a point [x, y] of two lengths",
        (value, session) -> {
          List<Double> xy = two.read(value, session);
          return new Vec2(xy.get(0), xy.get(1));
        });
  }

  /** A point in space: [x, y, z], each a length. */
  public static Kind<Vec3> point3() {
    Kind<List<Double>> three = list(length(-LONGEST, LONGEST), 3, 3);
    return of(
        "a point [x, y, z] of three lengths",
        (value, session) -> {
          List<Double> xyz = three.read(value, session);
          return new Vec3(xyz.get(0), xyz.get(1), xyz.get(2));
        });
  }

  /** A direction in space: [x, y, z], plain numbers, not all 0. */
  public static Kind<Vec3> direction() {
    Kind<List<Double>> three = list(number(-1e6, 1e6), 3, 3);
    return of(
        "a direction [x, y, z] of three numbers, not all 0",
        (value, session) -> {
          List<Double> xyz = three.read(value, session);
          Vec3 v = new Vec3(xyz.get(0), xyz.get(1), xyz.get(2));
          if (v.length() < 1e-9) {
            throw new Kind.Unfit("[0, 0, 0] points nowhere");
          }
          return v.unit();
        });
  }

  /** A list of values of one kind. */
  public static <T> Kind<List<T>> list(Kind<T> item, int least, int most) {
    String size =
        least == most
            ? "" + least
            : most >= MOST_ITEMS ? least + " or more" : least + " to " + most;
    return of(
        "a list of " + size + " values, each " + item.wanted(),
        (value, session) -> {
          if (!value.hasArrayElements()) {
            throw new Kind.Unfit(Shown.quote(value) + " is not a list");
          }
          long n = value.getArraySize();
          if (n < least || n > Math.min(most, MOST_ITEMS)) {
            throw new Kind.Unfit("a list of " + n + " values is not that long");
          }
          List<T> all = new ArrayList<>();
          for (long i = 0; i < n; i++) {
            try {
              all.add(item.read(value.getArrayElement(i), session));
            } catch (Kind.Unfit e) {
              throw new Kind.Unfit("value " + (i + 1) + " of the list: " + e.getMessage());
            }
          }
          return List.copyOf(all);
        });
  }

  /** Either of two kinds, whichever reads. */
  public static <T> Kind<T> either(Kind<? extends T> first, Kind<? extends T> second) {
    return of(
        first.wanted() + ", or " + second.wanted(),
        (value, session) -> {
          try {
            return first.read(value, session);
          } catch (Kind.Unfit e) {
            try {
              return second.read(value, session);
            } catch (Kind.Unfit other) {
              boolean secondShape = value.hasArrayElements() || value.isString();
              throw secondShape ? other : e;
            }
          }
        });
  }

  /** The same kind, its value changed after reading. */
  public static <A, B> Kind<B> map(Kind<A> kind, Function<? super A, ? extends B> change) {
    return of(kind.wanted(), (value, session) -> change.apply(kind.read(value, session)));
  }

  /** A thing made by an earlier call, such as a panel or a form. */
  public static <T> Kind<T> thing(Thing<T> type) {
    return of(
        "a " + type.name() + " made before",
        (value, _) -> {
          Handle<?> handle =
              value.isProxyObject() && value.asProxyObject() instanceof Handle<?> h ? h : null;
          if (handle == null || handle.thing() != type) {
            throw new Kind.Unfit(Shown.quote(value) + " is not a " + type.name());
          }
          return type.type().cast(handle.receiver());
        });
  }

  static double mm(Value value, Unit unit) throws Kind.Unfit {
    if (value.isString()) {
      try {
        return Length.parse(value.asString(), unit).mm();
      } catch (IllegalArgumentException e) {
        throw new Kind.Unfit(e.getMessage());
      }
    }
    return number(value) * unit.mm();
  }

  private static double number(Value value) throws Kind.Unfit {
    if (!value.isNumber() || !value.fitsInDouble()) {
      throw new Kind.Unfit(Shown.quote(value) + " is not a number");
    }
    double n = value.asDouble();
    if (!Double.isFinite(n)) {
      throw new Kind.Unfit(
          Double.isNaN(n) ? "NaN is not a number" : "infinity is not a usable number");
    }
    return n;
  }

  private static double inRange(double n, double from, double to, String shown) throws Kind.Unfit {
    if (n < from || n > to) {
      throw new Kind.Unfit(shown + (n < from ? " is too small" : " is too large"));
    }
    return n;
  }

  private static String shown(Value value, double mm) {
    return value.isString() ? Shown.quote(value) : Shown.plain(mm) + " mm";
  }
}
