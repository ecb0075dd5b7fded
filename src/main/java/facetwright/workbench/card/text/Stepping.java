package facetwright.workbench.card.text;

import facetwright.measure.Ruler;
import facetwright.script.api.Arg;
import facetwright.script.scope.CallSite;
import facetwright.script.scope.Scope;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import facetwright.script.text.Token.Kind;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number in a script that can be turned by steps: a plain number, or the number of a length in
 * quotes. A plain number goes by its last decimal, an inch measure by sixteenths (common practice,
 * no source) or by its own finer part. One that is not below zero does not go there.
 *
 * @param at where it stands, quotes left out
 * @param written as it stands there
 * @param whole whether only whole numbers make sense here
 */
public record Stepping(Stretch at, String written, boolean whole) {
  private static final Pattern PLAIN = Pattern.compile("(-?(?:\\d+\\.?\\d*|\\.\\d+))(\\D*)");
  private static final Pattern PARTS =
      Pattern.compile("(?:(\\d+)(\\s+|\\s*-\\s*))?(\\d+)\\s*/\\s*(\\d+)(.*)");
  private static final Pattern INCHES = Pattern.compile("\\s*(?:in|inch|inches|\"|″)\\.?");
  private static final int SIXTEENTHS = Ruler.SIXTEENTHS.parts();
  private static final int FINER = 4;
  private static final long FINEST = 1024;

  /** The number at an offset or ending there, if one stands there. */
  public static Optional<Stepping> at(Scope scope, int offset) {
    Reading reading = scope.reading();
    int i = reading.touching(offset);
    if (reading.is(i, Kind.TEXT)) {
      int start = reading.token(i).start() + 1;
      String inside = reading.inside(i);
      boolean length = isPlain(inside) || PARTS.matcher(inside).matches();
      return length
          ? Optional.of(new Stepping(new Stretch(start, start + inside.length()), inside, false))
          : Optional.empty();
    }
    if (!reading.is(i, Kind.NUMBER) || !isPlain(reading.word(i))) {
      return Optional.empty();
    }
    int start = reading.token(i).start();
    int sign = reading.back(i);
    int before = reading.back(sign);
    boolean negative =
        reading.is(sign, '-')
            && reading.token(sign).end() == start
            && (before < 0
                || (reading.is(before, Kind.MARK)
                    && !reading.is(before, ')')
                    && !reading.is(before, ']'))
                || reading.is(before, Kind.KEYWORD));
    int from = negative ? start - 1 : start;
    boolean whole =
        CallSite.at(scope, start)
            .flatMap(CallSite::arg)
            .map(Arg::kind)
            .map(k -> k.wanted().contains("whole number"))
            .orElse(false);
    Stretch place = new Stretch(from, reading.token(i).end());
    return Optional.of(
        new Stepping(place, reading.text().substring(place.start(), place.end()), whole));
  }

  private static boolean isPlain(String text) {
    Matcher m = PLAIN.matcher(text);
    return m.matches()
        && m.group(1).length() < 16
        && (m.group(2).isBlank() || m.group(2).strip().matches("mm|cm|in|inch|inches|\"|″"));
  }

  /**
   * The number so many steps on.
   *
   * @param steps less than 0 for down
   * @param fine whether by a tenth of a step, or by a quarter of an inch measure's
   */
  public String turned(long steps, boolean fine) {
    Matcher parts = PARTS.matcher(written);
    if (parts.matches()) {
      return inches(parts, steps, fine);
    }
    Matcher plain = PLAIN.matcher(written);
    if (!plain.matches()) {
      return written;
    }
    BigDecimal value = new BigDecimal(plain.group(1).replaceFirst("\\.$", ""));
    if (value.scale() <= 0 && INCHES.matcher(plain.group(2)).matches()) {
      long over = fine ? SIXTEENTHS * FINER : SIXTEENTHS;
      return fraction(value.longValue() * over + steps, over, " ", plain.group(2));
    }
    int decimals = Math.max(0, value.scale()) + (fine && !whole ? 1 : 0);
    BigDecimal turned = value.add(BigDecimal.valueOf(steps, decimals)).setScale(decimals);
    boolean below = turned.signum() < 0 && value.signum() >= 0;
    return (below ? BigDecimal.ZERO.setScale(decimals) : turned).toPlainString() + plain.group(2);
  }

  private static String inches(Matcher parts, long steps, boolean fine) {
    long whole = parts.group(1) == null ? 0 : Long.parseLong(parts.group(1));
    long top = Long.parseLong(parts.group(3));
    long bottom = Long.parseLong(parts.group(4));
    long coarse = Math.max(SIXTEENTHS, bottom);
    long over = fine ? coarse * FINER : coarse;
    if (bottom == 0 || bottom > FINEST || over % bottom != 0) {
      over = Math.max(1, bottom);
    }
    long value = bottom == 0 ? 0 : (whole * bottom + top) * (over / bottom) + steps;
    String gap = parts.group(2) == null ? " " : parts.group(2);
    return fraction(value, over, gap, parts.group(5));
  }

  private static String fraction(long value, long over, String gap, String rest) {
    long held = Math.max(0, value);
    long whole = held / over;
    long top = held % over;
    if (top == 0) {
      return whole + rest;
    }
    long common = BigInteger.valueOf(top).gcd(BigInteger.valueOf(over)).longValue();
    String part = top / common + "/" + over / common;
    return (whole == 0 ? part : whole + gap + part) + rest;
  }
}
