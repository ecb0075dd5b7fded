package facetwright.script.scope;

import facetwright.script.text.Name;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import facetwright.script.text.Token.Kind;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a script reckons: the products and sums that a value stands in. */
final class Reckoning {
  /** What multiplies or divides a measure and leaves one, and what turns degrees into radians. */
  private static final Set<String> SMALL = Set.of("0.5", "1.5", "2", "3", "4", "180");

  private static final int DEEPEST = 40;

  private final Scope scope;
  private final Reading reading;

  /** Which names hold what turns degrees into radians, as far as it was asked. */
  private final Map<Name, Boolean> radians = new HashMap<>();

  /** How many names that stand for others are being followed. */
  private int deep;

  Reckoning(Scope scope) {
    this.scope = scope;
    this.reading = scope.reading();
  }

  /** Whether a bracket behind a token calls it. */
  boolean isCalled(int before) {
    return reading.is(before, Kind.NAME) || reading.is(before, ')') || reading.is(before, ']');
  }

  /** Whether a comma follows a token. */
  boolean isListed(int last) {
    return reading.is(reading.forth(last), ',');
  }

  /**
   * The product that a factor stands in; empty where it is divided by, or multiplied by what is no
   * plain number, for then it need not count what the product does.
   */
  Optional<Span> product(Span factor) {
    int first = factor.first();
    int last = factor.last();
    while (reading.is(reading.forth(last), '*') || reading.is(reading.forth(last), '/')) {
      int next = reading.forth(reading.forth(last));
      int end = constant(next);
      if (end < 0) {
        return Optional.empty();
      }
      last = end;
    }
    while (reading.is(reading.back(first), '*')) {
      int before = reading.back(reading.back(first));
      int start = constantBefore(before);
      if (start < 0) {
        return Optional.empty();
      }
      first = start;
    }
    int sign = reading.back(first);
    boolean isPart =
        reading.is(sign, '/')
            || reading.is(sign, '%')
            || reading.is(sign, "**")
            || reading.isDot(reading.forth(last))
            || reading.is(reading.forth(last), '%')
            || reading.is(reading.forth(last), "**");
    return isPart ? Optional.empty() : Optional.of(new Span(first, last));
  }

  /** The last token of a small number, of PI, or of what turns degrees into radians; or -1. */
  private int constant(int first) {
    if (isSmall(first)) {
      return first;
    }
    if (reading.is(first, '(') && isConstant(first)) {
      return reading.partner(first);
    }
    if (reading.is(first, "Math") && reading.isDot(reading.forth(first))) {
      int member = reading.forth(reading.forth(first));
      return reading.is(member, "PI") ? member : -1;
    }
    return isRadians(Span.of(first)) ? first : -1;
  }

  private int constantBefore(int last) {
    if (isSmall(last)) {
      return last;
    }
    if (reading.is(last, ')') && reading.partner(last) >= 0 && isConstant(reading.partner(last))) {
      return reading.partner(last);
    }
    if (reading.is(last, "PI") && reading.isDot(reading.back(last))) {
      int owner = reading.back(reading.back(last));
      return reading.is(owner, "Math") ? owner : -1;
    }
    return isRadians(Span.of(last)) ? last : -1;
  }

  /**
   * Whether a number is one that halves or doubles; a larger one may be a measure to take part of.
   */
  private boolean isSmall(int token) {
    return reading.is(token, Kind.NUMBER) && SMALL.contains(reading.word(token));
  }

  /** Whether brackets hold numbers alone, PI among them, and no call. */
  private boolean isConstant(int open) {
    for (int i = open + 1; i < reading.partner(open); i++) {
      boolean isNamed = reading.is(i, Kind.NAME);
      if (isNamed && !reading.is(i, "Math") && !reading.is(i, "PI")) {
        return false;
      }
    }
    return !isCalled(reading.back(open));
  }

  /** The sum that a product is a part of. */
  Span sum(Span product) {
    int first = product.first();
    int last = product.last();
    while (isSign(reading.forth(last))) {
      int next = reading.forth(reading.forth(last));
      int end = next;
      while (!isEnd(reading.forth(end)) && !isSign(reading.forth(end))) {
        end = Math.max(reading.forth(end), reading.partner(reading.forth(end)));
      }
      last = end;
    }
    while (isSign(reading.back(first))) {
      int before = reading.back(reading.back(first));
      if (isEnd(before) || before < 0 || reading.is(before, "return")) {
        first = reading.back(first);
        break;
      }
      int start = before;
      while (!isStart(reading.back(start)) && !isSign(reading.back(start))) {
        int one = reading.back(start);
        start =
            reading.partner(one) >= 0 && reading.partner(one) < one ? reading.partner(one) : one;
      }
      int partner = reading.partner(before);
      first = partner >= 0 && partner < start ? partner : start;
    }
    return new Span(first, last);
  }

  private boolean isSign(int i) {
    return reading.is(i, '+') || reading.is(i, '-');
  }

  /** Whether an expression is over before a token. */
  private boolean isEnd(int i) {
    return i >= reading.tokens().size() || "),]};:?([{,=".contains(reading.word(i));
  }

  /** Whether an expression begins behind a token. */
  private boolean isStart(int i) {
    return i < 0
        || "([{,;:?=}".contains(reading.word(i))
        || reading.is(i, "=>")
        || reading.is(i, Kind.KEYWORD);
  }

  /** Whether something holds what turns degrees into radians: PI and 180. */
  boolean isRadians(Span span) {
    if (span.first() == span.last() && reading.isOwnName(span.first())) {
      Optional<Name> name =
          scope.names().named(reading.word(span.first()), reading.token(span.first()).start());
      return name.isPresent() && name.get().value() >= 0 && makesRadians(name.get());
    }
    boolean hasPi = false;
    boolean has180 = false;
    for (int i = span.first(); i <= span.last(); i++) {
      boolean isOther = reading.isOwnName(i) && isRadians(Span.of(i));
      hasPi |= isOther || reading.is(i, "PI");
      has180 |= isOther || reading.is(i, "180");
    }
    return hasPi && has180;
  }

  private boolean makesRadians(Name name) {
    Boolean known = deep > DEEPEST ? Boolean.FALSE : radians.putIfAbsent(name, false);
    if (known != null) {
      return known;
    }
    deep++;
    int last = name.value();
    while (!reading.endsBehind(last) && !isListed(last)) {
      last = Math.max(reading.forth(last), reading.partner(reading.forth(last)));
    }
    boolean makes = name.value() < last && isRadians(new Span(name.value(), last));
    radians.put(name, makes);
    deep--;
    return makes;
  }
}
