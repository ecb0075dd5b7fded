package facetwright.workbench.card.text;

import facetwright.geom.Unit;
import facetwright.net.Mend;
import facetwright.net.Site;
import facetwright.workbench.card.text.Token.Kind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds where in the text a fault's mends apply, and slips of writing that are easily mended. */
public final class Repairs {
  private static final int NEAR = 400;

  private final Reading reading;
  private final Scope scope;
  private final int start;

  private Repairs(Scope scope, int start) {
    this.reading = scope.reading();
    this.scope = scope;
    this.start = start;
  }

  /**
   * The changes that would put a fault right; none where the text has changed since.
   *
   * @param site where the fault stands
   */
  public static List<Repair> of(Scope scope, Site site, List<Mend> mends) {
    Optional<Integer> offset = scope.reading().offset(site);
    if (offset.isEmpty()) {
      Repairs anywhere = new Repairs(scope, 0);
      return mends.stream()
          .filter(m -> m instanceof Mend.Sheet)
          .flatMap(m -> anywhere.repair(m).stream())
          .toList();
    }
    int at = scope.reading().at(offset.get());
    int start = at < 0 ? Math.max(0, scope.reading().before(offset.get())) : at;
    Repairs repairs = new Repairs(scope, start);
    Stream<Repair> told = mends.stream().flatMap(m -> repairs.repair(m).stream());
    Stream<Repair> slips = mends.isEmpty() ? repairs.slip().stream() : Stream.empty();
    return Stream.concat(told, slips).toList();
  }

  private Optional<Repair> repair(Mend mend) {
    return switch (mend) {
      case Mend.Word(String written, String meant) -> word(written, meant);
      case Mend.Value value -> value(value);
      case Mend.Length length -> length(length);
      case Mend.Sheet(String name) -> sheet(name);
      case Mend.Keep(String name) -> new Chained(scope, start).keep(name);
      case Mend.Unfold(String name) -> new Chained(scope, start).unfold(name);
    };
  }

  /** The sheet's name is written in its call; where there is no call, one is put at the end. */
  private Optional<Repair> sheet(String name) {
    String quoted = '"' + name + '"';
    String label = "Take " + name;
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.is(i, Kind.NAME) && reading.word(i).equals("sheet")) {
        int open = reading.forth(i);
        int first = reading.forth(open);
        boolean literal = reading.is(open, '(') && reading.is(first, Kind.TEXT);
        return literal
            ? Optional.of(replace(first, first, quoted))
                .map(r -> new Repair(label, r.at(), r.edit()))
            : Optional.empty();
      }
    }
    String text = reading.text();
    String line = (text.isEmpty() || text.endsWith("\n") ? "" : "\n") + "sheet(" + quoted + ");\n";
    Stretch end = new Stretch(text.length(), text.length());
    return Optional.of(new Repair(label, end, Edit.insert(text.length(), line)));
  }

  /** The word stands at the fault's place or behind it, in the same call. */
  private Optional<Repair> word(String written, String meant) {
    int stop = Math.min(reading.tokens().size(), start + NEAR);
    for (int i = start; i < stop; i++) {
      if (reading.is(i, Kind.NAME) && reading.word(i).equals(written)) {
        return Optional.of(replace(i, i, meant));
      }
      if (reading.is(i, Kind.TEXT) && reading.inside(i).strip().equals(written)) {
        char quote = reading.word(i).charAt(0);
        return Optional.of(replace(i, i, quote + meant + quote));
      }
    }
    return Optional.empty();
  }

  private Optional<Repair> value(Mend.Value mend) {
    Span place = argument(mend.place());
    if (!mend.option().isEmpty()) {
      place = isBetween(place, '{') ? option(place, mend.option()) : Span.NONE;
    }
    for (int item : mend.items()) {
      place = item(follow(place), item);
    }
    place = follow(place);
    return isLiteral(place)
        ? Optional.of(replace(place.first(), place.last(), mend.value()))
        : Optional.empty();
  }

  /** The number itself must stand in the call: elsewhere, more than this may hang on it. */
  private Optional<Repair> length(Mend.Length mend) {
    Span place = mend.option().isEmpty() ? argument(mend.place()) : option(braces(), mend.option());
    for (int item : mend.items()) {
      place = item(place, item);
    }
    Span literal = place;
    return isLiteral(literal)
        ? TidyLength.write(words(literal), unit(), mend)
            .map(
                written -> {
                  Repair plain = replace(literal.first(), literal.last(), written);
                  String label = plain.label() + " in place of " + words(literal);
                  return new Repair(label, plain.at(), plain.edit());
                })
        : Optional.empty();
  }

  /** The braces among the call's arguments. */
  private Span braces() {
    for (int k = 0; ; k++) {
      Span each = argument(k);
      if (each.isNone() || isBetween(each, '{')) {
        return each;
      }
    }
  }

  /** What a plain number counts in this script. */
  private Unit unit() {
    for (int i = 0; i < reading.tokens().size(); i++) {
      int colon = reading.forth(i);
      if (reading.word(i).equals("units") && reading.is(colon, ':')) {
        return Unit.named(reading.inside(reading.forth(colon))).orElse(Unit.MM);
      }
    }
    return Unit.MM;
  }

  /** Tokens from one to another; the last before the first for none. */
  private record Span(int first, int last) {
    static final Span NONE = new Span(0, -1);

    boolean isNone() {
      return last < first;
    }
  }

  private String words(Span span) {
    return reading
        .text()
        .substring(reading.token(span.first()).start(), reading.token(span.last()).end());
  }

  /** Whether a bracket opens it and its partner ends it. */
  private boolean isBetween(Span span, char bracket) {
    return !span.isNone()
        && reading.is(span.first(), bracket)
        && reading.partner(span.first()) == span.last();
  }

  /** An argument of the call at the fault. */
  private Span argument(int place) {
    int open = reading.forth(start);
    int close = reading.partner(open);
    return reading.is(open, '(') && close >= 0 ? part(open, close, place) : Span.NONE;
  }

  private Span item(Span list, int item) {
    return isBetween(list, '[') ? part(list.first(), list.last(), item) : Span.NONE;
  }

  /** One of the parts between commas inside brackets. */
  private Span part(int open, int close, int wanted) {
    int first = reading.forth(open);
    int part = 0;
    for (int i = first; i < close; i = reading.forth(i)) {
      if (reading.is(i, ',')) {
        if (part == wanted) {
          return new Span(first, reading.back(i));
        }
        part++;
        first = reading.forth(i);
      } else if (reading.isBracket(i) && reading.partner(i) > i) {
        i = reading.partner(i);
      }
    }
    return part == wanted && first < close ? new Span(first, reading.back(close)) : Span.NONE;
  }

  private Span option(Span braces, String name) {
    if (braces.isNone()) {
      return Span.NONE;
    }
    for (int k = 0; ; k++) {
      Span each = part(braces.first(), braces.last(), k);
      if (each.isNone()) {
        return Span.NONE;
      }
      if (reading.word(each.first()).equals(name)) {
        int colon = reading.forth(each.first());
        return reading.is(colon, ':') ? new Span(reading.forth(colon), each.last()) : each;
      }
    }
  }

  /** Where a lone name is made from a value of its own, that value. */
  private Span follow(Span span) {
    if (span.first() != span.last() || !reading.is(span.first(), Kind.NAME)) {
      return span;
    }
    return scope
        .named(reading.word(span.first()), reading.token(span.first()).start())
        .filter(n -> n.value() >= 0)
        .map(
            n -> {
              int value = n.value();
              int last = reading.is(value, '[') ? reading.partner(value) : value;
              return reading.is(value, '-')
                  ? new Span(value, reading.forth(value))
                  : new Span(value, last);
            })
        .filter(s -> reading.is(reading.forth(s.last()), ';') || isLineEnd(s.last()))
        .orElse(Span.NONE);
  }

  private boolean isLineEnd(int i) {
    int next = reading.forth(i);
    return next >= reading.tokens().size()
        || reading.line(reading.token(next).start()) > reading.line(reading.token(i).end());
  }

  private boolean isLiteral(Span span) {
    boolean one = span.first() == span.last();
    boolean negative = span.first() + 1 == span.last() && reading.is(span.first(), '-');
    return (one || negative)
        && (reading.is(span.last(), Kind.NUMBER) || (one && reading.is(span.last(), Kind.TEXT)));
  }

  /** A slip of writing at the fault's place. */
  private Optional<Repair> slip() {
    int here = start;
    int before = reading.back(here);
    for (int i : new int[] {here, before}) {
      int next = reading.forth(i);
      if (reading.is(i, Kind.NUMBER) && Reading.UNITS.contains(reading.word(next))) {
        return Optional.of(quote(i, next));
      }
      char c = reading.word(i).isEmpty() ? ' ' : reading.word(i).charAt(0);
      if (c == '“' || c == '”' || c == '„') {
        return straight(i);
      }
    }
    boolean key = reading.is(here, Kind.NAME) && reading.is(reading.forth(here), ':');
    boolean ended =
        reading.is(before, Kind.NUMBER)
            || reading.is(before, Kind.TEXT)
            || reading.is(before, Kind.NAME)
            || reading.is(before, ']');
    if (key && ended) {
      int end = reading.token(before).end();
      Stretch at = new Stretch(reading.token(before).start(), reading.token(here).end());
      return Optional.of(
          new Repair("Put a comma after " + reading.word(before), at, Edit.insert(end, ",")));
    }
    return Optional.empty();
  }

  private Repair quote(int first, int last) {
    Repair plain = replace(first, last, "");
    String words = reading.word(first) + " " + reading.word(last);
    return new Repair(
        "Put " + words + " in quotes",
        plain.at(),
        Edit.replace(plain.at().start(), plain.at().end(), '"' + words + '"'));
  }

  /** Curled quotes on this line become straight. */
  private Optional<Repair> straight(int i) {
    int line = reading.line(reading.token(i).start());
    int from = reading.lineStart(line);
    int to = reading.lineEnd(line);
    String mended = reading.text().substring(from, to).replaceAll("[“”„]", "\"");
    Stretch at = new Stretch(reading.token(i).start(), reading.token(i).end());
    return Optional.of(new Repair("Make the quotes straight", at, Edit.replace(from, to, mended)));
  }

  private Repair replace(int first, int last, String by) {
    Stretch at = new Stretch(reading.token(first).start(), reading.token(last).end());
    return new Repair("Write " + by, at, Edit.replace(at.start(), at.end(), by));
  }
}
