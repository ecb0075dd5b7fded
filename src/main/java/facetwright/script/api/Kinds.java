package facetwright.script.api;

import facetwright.geom.RoundOff;
import facetwright.measure.Quantity;
import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Ask;
import facetwright.net.panel.CardPanel;
import facetwright.words.Decimals;
import facetwright.words.PlainText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The kinds of value that functions take. Lengths are read into millimetres. */
public final class Kinds {
  /** The shortest length that is more than nothing: a hundredth of a millimetre. */
  public static final double SHORTEST = 0.01;

  private Kinds() {}

  private record Simple<T>(
      Message wants, List<String> words, Optional<Quantity> counts, Reader<T> reader)
      implements Kind<T> {
    @Override
    public T read(Given value, Session session) throws Unfit {
      return reader.read(value, session);
    }
  }

  /** How a kind reads. */
  @FunctionalInterface
  public interface Reader<T> {
    T read(Given value, Session session) throws Kind.Unfit;
  }

  public static <T> Kind<T> of(String wanted, Reader<T> reader) {
    return of(Message.text(wanted), List.of(), reader);
  }

  public static <T> Kind<T> of(String wanted, List<String> words, Reader<T> reader) {
    return of(Message.text(wanted), words, reader);
  }

  /** One that is asked for in words with values. */
  public static <T> Kind<T> of(Message wants, List<String> words, Reader<T> reader) {
    return new Simple<>(wants, List.copyOf(words), Optional.empty(), reader);
  }

  /** One that takes numbers. */
  static <T> Kind<T> of(Optional<Quantity> counts, Message wants, Reader<T> reader) {
    return new Simple<>(wants, List.of(), counts, reader);
  }

  private static <T> Kind<T> of(Quantity counts, String wanted, Reader<T> reader) {
    return of(Optional.of(counts), Message.text(wanted), reader);
  }

  /** A whole number; what a script reckons may be off by rounding. */
  public static Kind<Integer> count(int from, int to) {
    return of(
        Quantity.WHOLE,
        "a whole number from " + from + " to " + to,
        (value, _) -> {
          double n = Amounts.number(value);
          double whole = Math.rint(n);
          if (Math.abs(n - whole) > RoundOff.PART * Math.max(1, Math.abs(whole))) {
            double near = Math.clamp(whole, from, to);
            throw new Kind.Unfit(
                Decimals.plain(n) + " is not a whole number", Decimals.plain(near));
          }
          return (int) Fit.inRange(whole, from, to, Decimals.plain(n), Decimals::plain);
        });
  }

  /** A plain number. */
  public static Kind<Double> number(double from, double to) {
    return of(
        Quantity.NUMBER,
        "a number from " + Decimals.plain(from) + " to " + Decimals.plain(to),
        (value, _) -> {
          double n = Amounts.number(value);
          return Fit.inRange(n, from, to, Decimals.plain(n), Decimals::plain);
        });
  }

  /** An angle in degrees. */
  public static Kind<Double> degrees(double from, double to) {
    return of(
        Quantity.ANGLE,
        "an angle from " + Decimals.plain(from) + " to " + Decimals.plain(to) + " degrees",
        (value, _) -> {
          double n = Amounts.degrees(value);
          return Fit.inRange(n, from, to, Decimals.plain(n) + " degrees", Decimals::plain);
        });
  }

  /** How a length is given, as it follows on what is wanted of it. */
  public static final String LENGTH_GIVEN =
      ", as a number in the design's unit or as text such as \"1 7/8 in\" or \"48 mm\"";

  /** A length over 0, up to ten metres, in mm. */
  public static Kind<Double> length() {
    return length(SHORTEST, Ask.LONGEST);
  }

  /** How wide a hole may be, in mm. */
  public static Kind<Double> punch() {
    return length(0.5, 200);
  }

  /** A length in mm, the range given in mm. */
  public static Kind<Double> length(double from, double to) {
    return of(
        Optional.of(Quantity.LENGTH),
        Message.of("a length from %s to %s%s", Value.given(from), Value.given(to), LENGTH_GIVEN),
        (value, session) -> {
          double mm = Amounts.mm(value, session.unit());
          return Fit.inRange(
              mm,
              from,
              to,
              Amounts.shown(value, mm),
              end -> Fit.bound(end, end == from, value, session));
        });
  }

  /** Text, numbers, or a list of them, as they are shown to a person. */
  public static Kind<List<String>> shown() {
    return of(
        "text, a number, or a list of them",
        (value, _) -> {
          List<Given> all =
              value instanceof Given.Items(_, List<Given> items) ? items : List.of(value);
          return all.stream()
              .limit(100)
              .map(word -> word instanceof Given.Text(String text) ? text : GivenText.quote(word))
              .toList();
        });
  }

  /** Words, not empty. */
  public static Kind<String> text() {
    return text(List.of());
  }

  /** Words, not empty; some are usual and offered while one writes. */
  public static Kind<String> text(List<String> usual) {
    return of(
        "text in quotes",
        usual,
        (value, _) -> {
          if (!(value instanceof Given.Text(String text)) || text.isBlank()) {
            throw new Kind.Unfit(
                GivenText.quote(value)
                    + (value instanceof Given.Braces ? " are" : " is")
                    + " not text");
          }
          if (text.length() > 2_000) {
            throw new Kind.Unfit(
                "a text of " + text.length() + " letters is over the 2000 allowed");
          }
          return PlainText.line(text);
        });
  }

  /** The name of a panel, or the panel itself. */
  public static Kind<String> panelOrName() {
    return either(text(), map(thing(Things.PANEL), CardPanel::name));
  }

  public static Kind<Boolean> flag() {
    return of(
        "true or false",
        (value, _) -> {
          if (!(value instanceof Given.Flag(boolean flag))) {
            throw new Kind.Unfit(GivenText.quote(value) + " is neither true nor false");
          }
          return flag;
        });
  }

  /** One word out of an enum's, in lower case. */
  public static <E extends Enum<E>> Kind<E> word(Class<E> type) {
    List<String> words = new ArrayList<>();
    for (E e : type.getEnumConstants()) {
      words.add(wordOf(e));
    }
    return map(oneOf(words), word -> type.getEnumConstants()[words.indexOf(word)]);
  }

  /** One of these words. */
  public static Kind<String> oneOf(List<String> words) {
    return of(
        "one of \"" + String.join("\", \"", words) + "\"",
        words,
        (value, _) -> {
          String word = Amounts.text(value).toLowerCase(Locale.ROOT);
          if (!words.contains(word)) {
            throw Fit.noneOf(value, words);
          }
          return word;
        });
  }

  static String wordOf(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** A list of values of one kind; where one is enough, it may stand without brackets. */
  public static <T> Kind<List<T>> list(Kind<T> item, int least, int most) {
    String size =
        least == most
            ? "" + least
            : most >= Given.MOST_ITEMS ? least + " or more" : least + " to " + most;
    return new Simple<>(
        Message.of(
            "a list of %s values, each %s%s",
            size, item.wants(), least <= 1 ? "; one may stand without brackets" : ""),
        item.words(),
        item.counts(),
        (value, session) -> {
          if (!(value instanceof Given.Items(long n, List<Given> items))) {
            if (least <= 1) {
              return List.of(item.read(value, session));
            }
            throw new Kind.Unfit(GivenText.quote(value) + " is not a list");
          }
          if (n < least || n > Math.min(most, Given.MOST_ITEMS)) {
            throw Kind.Unfit.ofSize(n, n < least);
          }
          List<T> all = new ArrayList<>();
          for (int i = 0; i < items.size(); i++) {
            try {
              all.add(item.read(items.get(i), session));
            } catch (Kind.Unfit e) {
              throw e.ofItem(i);
            }
          }
          return List.copyOf(all);
        });
  }

  /** Either of two kinds, whichever reads. */
  public static <T> Kind<T> either(Kind<? extends T> first, Kind<? extends T> second) {
    return new Simple<>(
        Message.of("%s, or %s", first.wants(), second.wants()),
        Stream.concat(first.words().stream(), second.words().stream()).distinct().toList(),
        first.counts().or(second::counts),
        (value, session) -> {
          try {
            return first.read(value, session);
          } catch (Kind.Unfit e) {
            try {
              return second.read(value, session);
            } catch (Kind.Unfit other) {
              boolean secondShape =
                  (value instanceof Given.Items && !e.isOfSize())
                      || value instanceof Given.Text
                      || (value instanceof Given.Amount && first.counts().isEmpty());
              throw secondShape ? other : e;
            }
          }
        });
  }

  /** The same kind, its value changed after reading. */
  public static <A, B> Kind<B> map(Kind<A> kind, Function<? super A, ? extends B> change) {
    return new Simple<>(
        kind.wants(),
        kind.words(),
        kind.counts(),
        (value, session) -> change.apply(kind.read(value, session)));
  }

  /** A thing made by an earlier call, such as a panel or a form. */
  public static <T> Kind<T> thing(Thing<T> type) {
    return of(
        type.one() + " made before",
        (value, _) -> {
          if (value instanceof Given.Text) {
            throw new Kind.Unfit(
                GivenText.quote(value)
                    + " is a text in quotes, not "
                    + type.one()
                    + "; write the name it was made with, without quotes");
          }
          if (!(value instanceof Given.Held(Handle<?> handle)) || handle.thing() != type) {
            throw new Kind.Unfit(GivenText.quote(value) + " is not " + type.one());
          }
          handle.use();
          return type.type().cast(handle.receiver());
        });
  }
}
