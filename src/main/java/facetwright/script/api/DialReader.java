package facetwright.script.api;

import facetwright.measure.Degrees;
import facetwright.measure.Length;
import facetwright.measure.Quantity;
import facetwright.measure.Unit;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.script.sandbox.CallException;
import facetwright.words.Decimals;
import facetwright.words.Mend;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;

/**
 * Reads a dial's declaration and the value its user has turned it to. What its numbers count is
 * what its own texts say, such as "48 mm" or "50 deg"; where they are plain numbers, what the
 * script uses them as.
 */
public final class DialReader {
  /** More words than that fit no list to choose from. */
  public static final int MOST_WORDS = 40;

  private final Call call;
  private final String name;
  private final Declared declared;
  private final Unit unit;

  /**
   * A dial as the script declares it; null where something is left out.
   *
   * @param of the words it chooses from
   * @param whole whether it takes whole numbers only
   */
  public record Declared(
      Given start, List<String> of, Given from, Given to, Given step, Boolean whole) {

    private List<Given> numbers() {
      return Stream.of(start, from, to, step).filter(Objects::nonNull).toList();
    }
  }

  private DialReader(Call call, String name, Declared declared) {
    this.call = call;
    this.name = name;
    this.declared = declared;
    this.unit = call.session().unit();
  }

  /** A number, a length or an angle, to be read with the rest of the declaration. */
  public static Kind<Given> amount() {
    return Kinds.of("a number, or a length or an angle as text", (value, _) -> value);
  }

  /** What a dial may stand at, to be read with the rest of the declaration. */
  public static Kind<Given> dialValue() {
    return Kinds.of(
        "a number, a length or an angle as text, a word, or true or false", (value, _) -> value);
  }

  /** The dial's value now: a number, a word, or true or false. */
  public static Object read(Call call, String name, Declared declared) {
    return new DialReader(call, name, declared).read();
  }

  private Object read() {
    Dial dial = declared.start() instanceof Given.Flag || declared.of() != null ? word() : number();
    String set = call.session().settings().get(name);
    double now = set == null ? dial.usual() : set(dial, set);
    call.session().dial(dial.turned(now));
    return switch (dial.kind()) {
      case SWITCH -> now == 1;
      case CHOICE -> dial.words().get((int) now);
      case LENGTH, ANGLE, WHOLE, NUMBER -> now;
    };
  }

  private double set(Dial dial, String text) {
    if (call.session().yielding()) {
      return DialText.wanted(dial, Map.of(name, text), unit);
    }
    try {
      return allowed(dial, DialText.typed(dial, text, unit), "the value set", _ -> List.of());
    } catch (IllegalArgumentException e) {
      throw fault(e.getMessage(), "Set it " + range(dial) + ".");
    }
  }

  private Dial word() {
    if (declared.numbers().size() > 1 || declared.whole() != null) {
      throw fault(
          "what is a word, or on or off, has no from, to, step or whole", "Take these away.");
    }
    if (declared.start() instanceof Given.Flag(boolean on)) {
      if (declared.of() != null) {
        throw fault(
            "it is on or off, and yet has words to choose from",
            "Give one of the words as its value, or take away of.");
      }
      return Dial.choosing(name, Dial.Kind.SWITCH, Dial.SWITCH_WORDS, on ? 1 : 0, call.site());
    }
    List<String> words = declared.of();
    String twice =
        words.stream().filter(w -> Collections.frequency(words, w) > 1).findFirst().orElse("");
    if (!twice.isEmpty()) {
      throw fault('"' + twice + "\" stands twice among its words", "Give each word once.");
    }
    int at = declared.start() instanceof Given.Text(String text) ? words.indexOf(text) : -1;
    if (at < 0) {
      String told = GivenText.quote(declared.start());
      throw fault(
          "its own value, " + told + ", is not among its words",
          "Give one of \"" + String.join("\", \"", words) + "\".",
          List.of(new Mend.Value("", 1, List.of(), '"' + words.getFirst() + '"')));
    }
    return Dial.choosing(name, Dial.Kind.CHOICE, words, at, call.site());
  }

  private Dial number() {
    Quantity said = said();
    double usual = number("value", declared.start(), said);
    double least =
        declared.from() == null ? Math.min(0, usual) : number("from", declared.from(), said);
    double most =
        declared.to() == null ? Math.max(0, 2 * usual) : number("to", declared.to(), said);
    double apart = declared.step() == null ? 0 : number("step", declared.step(), said);
    boolean isWhole = Stream.of(usual, least, most, apart).allMatch(n -> n == Math.rint(n));
    boolean wants = Boolean.TRUE.equals(declared.whole());
    if (wants && (!isWhole || said == Quantity.LENGTH || said == Quantity.ANGLE)) {
      throw fault(
          "it takes whole numbers only, and yet one of its own is none",
          "Give whole numbers, without a unit.");
    }
    boolean whole = wants || (isWhole && said == Quantity.WHOLE);
    Quantity counts = whole ? Quantity.WHOLE : said == Quantity.WHOLE ? Quantity.NUMBER : said;
    double step = whole && apart == 0 ? 1 : apart;
    Dial dial = Dial.counting(name, counts, usual, least, most, step, call.site());
    String in = in(dial);
    if (!(least < most)) {
      throw fault(
          "it runs from "
              + Decimals.plain(least)
              + in
              + " to "
              + Decimals.plain(most)
              + in
              + ", which is "
              + (least == most ? "no range" : "the wrong way round"),
          "Give from the smaller and to the larger value.");
    }
    if (apart < 0 || apart > most - least) {
      throw fault(
          "a step of " + Decimals.plain(apart) + in + " does not fit between its ends",
          "Give a step from 0 to " + Decimals.plain(most - least) + in + ".");
    }
    allowed(dial, usual, "its own value", near -> own(dial, near));
    return dial;
  }

  /** What its numbers count: as its texts say, or else as the script uses them. */
  private Quantity said() {
    List<String> texts =
        declared.numbers().stream()
            .flatMap(g -> g instanceof Given.Text(String text) ? Stream.of(text) : Stream.empty())
            .toList();
    return texts.isEmpty()
        ? call.session().used(name)
        : texts.stream().anyMatch(t -> Degrees.parse(t).isPresent())
            ? Quantity.ANGLE
            : Quantity.LENGTH;
  }

  /** The change of the dial's own value to this one. */
  private List<Mend> own(Dial dial, double value) {
    String plain = Decimals.plain(value);
    String sign = dial.kind() == Dial.Kind.ANGLE ? "deg" : unit.symbol();
    boolean isText = declared.start() instanceof Given.Text;
    String written = isText ? '"' + plain + " " + sign + '"' : plain;
    return List.of(new Mend.Value("", 1, List.of(), written));
  }

  private double allowed(Dial dial, double value, String which, DoubleFunction<List<Mend>> mends) {
    if (dial.isWord()) {
      return value;
    }
    String told = which + ", " + Decimals.plain(value) + in(dial) + ", is ";
    if (!dial.reaches(value)) {
      throw fault(
          told + "outside its range",
          "Set it " + range(dial) + ".",
          mends.apply(dial.nearest(value)));
    }
    if (dial.step() == 0) {
      return value;
    }
    double nearest = dial.nearest(value);
    if (!dial.takes(value)) {
      throw fault(
          told + "not one of its steps of " + Decimals.plain(dial.step()) + in(dial),
          "The nearest is " + Decimals.plain(nearest) + in(dial) + ".",
          mends.apply(nearest));
    }
    return nearest;
  }

  private String range(Dial dial) {
    return dial.isWord()
        ? "to one of " + String.join(", ", dial.words())
        : "from " + Decimals.plain(dial.from()) + " to " + Decimals.plain(dial.to()) + in(dial);
  }

  /** What its values count, behind them; a plain number counts nothing. */
  private String in(Dial dial) {
    return dial.kind() == Dial.Kind.LENGTH ? " " + unit.symbol() : dial.sign(unit);
  }

  private double number(String what, Given value, Quantity counts) {
    try {
      double n =
          counts == Quantity.ANGLE
              ? Amounts.degrees(value)
              : new Length(Amounts.mm(value, unit)).in(unit);
      if (Math.abs(n) > 1e6) {
        throw new Kind.Unfit(Decimals.plain(n) + " is too large");
      }
      return n;
    } catch (Kind.Unfit e) {
      throw fault(
          what + ": " + e.getMessage(),
          counts == Quantity.ANGLE
              ? "Give all its numbers as angles, such as \"50 deg\"."
              : "Give a number, a length or an angle as text, true or false, or a word with"
                  + " of: [\"one\", \"another\"].");
    }
  }

  private CallException fault(String wrong, String fix) {
    return fault(wrong, fix, List.of());
  }

  private CallException fault(String wrong, String fix, List<Mend> mends) {
    return new CallException("dial \"" + name + "\": " + wrong, fix, mends);
  }
}
