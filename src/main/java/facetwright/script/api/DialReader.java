package facetwright.script.api;

import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.script.sandbox.CallException;
import facetwright.words.Decimals;
import facetwright.words.Mend;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;

/** Reads a dial's declaration and the value its user has turned it to. */
public final class DialReader {
  private DialReader() {}

  public static double read(Call call, String name, Given start, Given from, Given to, Given step) {
    Session session = call.session();
    Unit unit = session.unit();
    boolean length = isText(start) || isText(from) || isText(to) || isText(step);
    double usual = number(name, "value", start, unit);
    double least = from == null ? Math.min(0, usual) : number(name, "from", from, unit);
    double most = to == null ? Math.max(0, 2 * usual) : number(name, "to", to, unit);
    double apart = step == null ? 0 : number(name, "step", step, unit);
    String in = in(length, unit);
    if (!(least < most)) {
      throw fault(
          name,
          "from " + Decimals.plain(least) + in + " is not below to " + Decimals.plain(most) + in,
          "Give from the smaller and to the larger value.");
    }
    if (apart < 0 || apart > most - least) {
      throw fault(
          name,
          "a step of " + Decimals.plain(apart) + in + " does not fit between its ends",
          "Give a step from 0 to " + Decimals.plain(most - least) + in + ".");
    }
    Dial dial =
        new Dial(
            name,
            length ? Dial.Kind.LENGTH : Dial.Kind.NUMBER,
            usual,
            usual,
            least,
            most,
            apart,
            call.site());
    allowed(dial, usual, unit, "its own value", near -> own(near, start, unit));
    String set = session.settings().get(name);
    double now =
        set == null
            ? usual
            : session.yielding()
                ? DialText.wanted(dial, Map.of(name, set), unit)
                : typed(dial, set, unit);
    session.dial(dial.turned(now));
    return now;
  }

  private static double typed(Dial dial, String text, Unit unit) {
    double value;
    try {
      value = Length.parse(text, unit).in(unit);
    } catch (IllegalArgumentException e) {
      throw fault(dial.name(), e.getMessage(), "Set it from " + range(dial, unit) + ".");
    }
    return allowed(dial, value, unit, "the value set", _ -> List.of());
  }

  /** The change of the dial's own value to this one. */
  private static List<Mend> own(double value, Given start, Unit unit) {
    String plain = Decimals.plain(value);
    String written = isText(start) ? '"' + plain + " " + unit.symbol() + '"' : plain;
    return List.of(new Mend.Value("", 1, List.of(), written));
  }

  private static double allowed(
      Dial dial, double value, Unit unit, String which, DoubleFunction<List<Mend>> mends) {
    String told = which + ", " + Decimals.plain(value) + in(dial, unit) + ", is ";
    if (!dial.reaches(value)) {
      throw fault(
          dial.name(),
          told + "outside its range",
          "Set it from " + range(dial, unit) + ".",
          mends.apply(dial.nearest(value)));
    }
    if (dial.step() == 0) {
      return value;
    }
    double nearest = dial.nearest(value);
    if (!dial.takes(value)) {
      throw fault(
          dial.name(),
          told + "not one of its steps of " + Decimals.plain(dial.step()) + in(dial, unit),
          "The nearest is " + Decimals.plain(nearest) + in(dial, unit) + ".",
          mends.apply(nearest));
    }
    return nearest;
  }

  private static String range(Dial dial, Unit unit) {
    return Decimals.plain(dial.from()) + " to " + Decimals.plain(dial.to()) + in(dial, unit);
  }

  /** What its values count, behind them; a plain number counts nothing. */
  private static String in(Dial dial, Unit unit) {
    return in(dial.kind() == Dial.Kind.LENGTH, unit);
  }

  private static String in(boolean length, Unit unit) {
    return length ? " " + unit.symbol() : "";
  }

  private static boolean isText(Given value) {
    return value instanceof Given.Text;
  }

  private static double number(String dial, String what, Given value, Unit unit) {
    try {
      double n = new Length(Amounts.mm(value, unit)).in(unit);
      if (Math.abs(n) > 1e6) {
        throw new Kind.Unfit(Decimals.plain(n) + " is too large");
      }
      return n;
    } catch (Kind.Unfit e) {
      throw fault(dial, what + ": " + e.getMessage(), "Give a number, or a length as text.");
    }
  }

  private static CallException fault(String dial, String wrong, String fix) {
    return fault(dial, wrong, fix, List.of());
  }

  private static CallException fault(String dial, String wrong, String fix, List<Mend> mends) {
    return new CallException("dial \"" + dial + "\": " + wrong, fix, mends);
  }
}
