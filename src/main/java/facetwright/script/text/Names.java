package facetwright.script.text;

import facetwright.script.text.Token.Kind;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The names that a script makes, and where they are in force: what {@code const}, {@code let},
 * {@code var}, {@code function}, {@code class} and {@code catch} name, and what functions are
 * given. A name is in force from the end of its statement to the end of the brackets it is made in,
 * a function's all over them (ECMA-262, sections 14.2, 14.3 and 15.2). Not found are the arguments
 * of methods that a script makes.
 */
public final class Names {
  private static final Set<String> MAKING = Set.of("const", "let", "var");

  private final Reading reading;
  private final List<Name> all = new ArrayList<>();

  /** The closing brackets of those open at the token looked at, the innermost first. */
  private final Deque<Integer> open = new ArrayDeque<>();

  /** The expression whose end was looked for last, and the bracket it stands in. */
  private Span expression = new Span(0, -1);

  private int around = -1;

  private Names(Reading reading) {
    this.reading = reading;
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.partner(i) > i) {
        open.push(reading.partner(i));
      } else if (reading.partner(i) >= 0) {
        open.pop();
      } else if (reading.is(i, Kind.KEYWORD)) {
        made(i);
      } else if (reading.is(i, "=>")) {
        arrow(i);
      }
    }
  }

  public static Names of(Reading reading) {
    return new Names(reading);
  }

  /** All of them, in the order of the script. */
  public List<Name> all() {
    return all;
  }

  /** Those in force at an offset, the last first, each once. */
  public List<Name> before(int offset) {
    Map<String, Name> made = new LinkedHashMap<>();
    for (Name name : all.reversed()) {
      if (isInForce(name, offset)) {
        made.putIfAbsent(name.word(), name);
      }
    }
    return List.copyOf(made.values());
  }

  /** The name in force at an offset. */
  public Optional<Name> named(String word, int offset) {
    return all.reversed().stream()
        .filter(n -> n.word().equals(word) && isInForce(n, offset))
        .findFirst();
  }

  private static boolean isInForce(Name name, int offset) {
    return name.from() < offset && offset <= name.until();
  }

  private void made(int keyword) {
    int next = reading.forth(keyword);
    if (MAKING.contains(reading.word(keyword))) {
      declared(keyword);
    } else if (reading.is(keyword, "class")) {
      add(next, keyword, -1, end(next), until());
    } else if (reading.is(keyword, "catch")) {
      given(next);
    } else if (reading.is(keyword, "function")) {
      int name = reading.is(next, '*') ? reading.forth(next) : next;
      add(name, keyword, -1, open.isEmpty() ? -1 : start(reading.partner(open.peek())), until());
      given(reading.is(name, Kind.NAME) ? reading.forth(name) : name);
    }
  }

  /** Where the innermost open bracket ends; the names in the head of a loop hold in its body. */
  private int until() {
    if (open.isEmpty()) {
      return reading.text().length();
    }
    int close = open.peek();
    int head = reading.back(reading.partner(close));
    boolean isFor = reading.is(reading.is(head, "await") ? reading.back(head) : head, "for");
    return isFor && reading.is(close, ')') ? body(close) : start(close);
  }

  /** Where what follows a token ends, be it in braces or a single expression. */
  private int body(int before) {
    int first = reading.forth(before);
    boolean isBraces = reading.is(first, '{') && reading.partner(first) >= 0;
    return isBraces ? start(reading.partner(first)) : start(reading.forth(last(first)));
  }

  /** Where a token begins; the end of the script for none. */
  private int start(int token) {
    return token < reading.tokens().size() ? reading.token(token).start() : reading.text().length();
  }

  /** Where a token ends; the end of the script for none. */
  private int end(int token) {
    return token < reading.tokens().size() ? reading.token(token).end() : reading.text().length();
  }

  /** Where an expression is over; not yet behind a sign that something has to follow. */
  private int over(int last) {
    boolean isOpen = reading.is(last, Kind.MARK) && reading.partner(last) < 0;
    return isOpen ? start(reading.forth(last)) : end(last);
  }

  /** The names between {@code const} and the end of its statement. */
  private void declared(int maker) {
    int until = until();
    int i = reading.forth(maker);
    while (i < reading.tokens().size()) {
      int end = Math.max(i, reading.partner(i));
      int sign = reading.forth(end);
      boolean isValued = reading.is(sign, '=');
      int last = isValued ? last(reading.forth(sign)) : end;
      if (reading.is(i, Kind.NAME)) {
        add(i, maker, isValued ? reading.forth(sign) : -1, over(last), until);
      } else {
        targets(List.of(new Span(i, end)), maker, end(last), until);
      }
      if (!reading.is(reading.forth(last), ',')) {
        return;
      }
      i = reading.forth(reading.forth(last));
    }
  }

  /** The last token of the expression that begins with a token. */
  private int last(int first) {
    int here = open.isEmpty() ? -1 : open.peek();
    // Within an expression looked at already, in the same bracket, the end is the same.
    if (here == around && expression.first() <= first && first <= expression.last()) {
      return expression.last();
    }
    int i = first;
    while (i < reading.tokens().size()) {
      i = Math.max(i, reading.partner(i));
      int next = reading.forth(i);
      boolean closes = reading.partner(next) >= 0 && reading.partner(next) < next;
      if (reading.is(next, ',') || closes || reading.endsBehind(i)) {
        break;
      }
      i = next;
    }
    expression = new Span(first, i);
    around = here;
    return i;
  }

  /** What an arrow's function is given. */
  private void arrow(int arrow) {
    int before = reading.back(arrow);
    int until = body(arrow);
    if (reading.is(before, ')') && reading.partner(before) >= 0) {
      targets(Span.parts(reading, reading.partner(before)), -1, end(arrow), until);
    } else {
      add(before, -1, -1, end(arrow), until);
    }
  }

  /** What a function or a catch is given in its brackets. */
  private void given(int bracket) {
    int close = reading.partner(bracket);
    if (reading.is(bracket, '(') && close >= 0) {
      targets(Span.parts(reading, bracket), -1, end(bracket), body(close));
    }
  }

  /** Names, or patterns of them, with what holds where they are left out. */
  private void targets(List<Span> parts, int maker, int from, int until) {
    Deque<Span> left = new ArrayDeque<>(parts);
    while (!left.isEmpty()) {
      Span part = left.pop();
      int first = reading.is(part.first(), "...") ? reading.forth(part.first()) : part.first();
      boolean isFields = reading.is(first, '{');
      if (isFields || reading.is(first, '[')) {
        for (Span each : Span.parts(reading, first).reversed()) {
          left.push(isFields ? each.value(reading) : each);
        }
      } else {
        add(first, maker, -1, from, until);
      }
    }
  }

  private void add(int token, int maker, int value, int from, int until) {
    if (reading.is(token, Kind.NAME)) {
      all.add(new Name(reading.word(token), token, maker, value, from, until));
    }
  }
}
