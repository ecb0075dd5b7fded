package facetwright.workbench.card.text;

import facetwright.measure.Unit;
import facetwright.script.scope.DesignCall;
import facetwright.script.scope.Scope;
import facetwright.script.text.Call;
import facetwright.script.text.Edit;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import facetwright.script.text.Stretch;
import facetwright.script.text.Token.Kind;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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
    OptionalInt offset = scope.reading().offset(site.line(), site.column());
    if (offset.isEmpty()) {
      Repairs anywhere = new Repairs(scope, 0);
      return mends.stream()
          .filter(m -> m instanceof Mend.Sheet)
          .flatMap(m -> anywhere.repair(m).stream())
          .toList();
    }
    int at = scope.reading().at(offset.getAsInt());
    int start = at < 0 ? Math.max(0, scope.reading().before(offset.getAsInt())) : at;
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
    List<Call> calls = Call.of(reading, "sheet");
    if (!calls.isEmpty()) {
      Call call = calls.getFirst();
      return call.arguments(reading).stream()
          .findFirst()
          .filter(s -> s.is(reading, Kind.TEXT))
          .map(
              s -> new Repair(label, s.stretch(reading), Edit.replace(s.stretch(reading), quoted)));
    }
    Edit more = Edit.append(reading.text(), "sheet(" + quoted + ");");
    return Optional.of(new Repair(label, new Stretch(more.from(), more.to()), more));
  }

  /** The word stands at the fault's place or behind it, in the same brackets and statement. */
  private Optional<Repair> word(String written, String meant) {
    int stop = Math.min(reading.tokens().size(), start + NEAR);
    int depth = 0;
    for (int i = start; i < stop; i++) {
      depth += reading.partner(i) > i ? 1 : reading.partner(i) >= 0 ? -1 : 0;
      if (depth < 0 || (depth == 0 && reading.is(i, ';'))) {
        break;
      }
      if (reading.is(i, Kind.NAME) && reading.word(i).equals(written)) {
        return Optional.of(replace(Span.of(i), meant));
      }
      if (reading.is(i, Kind.TEXT) && reading.inside(i).strip().equals(written)) {
        char quote = reading.word(i).charAt(0);
        return Optional.of(replace(Span.of(i), quote + meant + quote));
      }
    }
    return Optional.empty();
  }

  private Optional<Repair> value(Mend.Value mend) {
    Optional<Span> place = argument(mend.place());
    if (!mend.option().isEmpty()) {
      place = place.flatMap(p -> p.option(reading, mend.option()));
    }
    for (int item : mend.items()) {
      place = place.flatMap(scope::value).flatMap(p -> item(p, item));
    }
    return place.flatMap(scope::value).filter(this::isLiteral).map(p -> replace(p, mend.value()));
  }

  /** The number itself must stand in the call: elsewhere, more than this may hang on it. */
  private Optional<Repair> length(Mend.Length mend) {
    Optional<Span> place =
        mend.option().isEmpty()
            ? argument(mend.place())
            : arguments().stream()
                .filter(p -> p.isBetween(reading, '{'))
                .findFirst()
                .flatMap(p -> p.option(reading, mend.option()));
    for (int item : mend.items()) {
      place = place.flatMap(p -> item(p, item));
    }
    return place
        .filter(this::isLiteral)
        .flatMap(
            p ->
                TidyLength.write(p.text(reading), unit(), mend)
                    .map(
                        written -> {
                          Repair plain = replace(p, written);
                          String label = plain.label() + " in place of " + p.text(reading);
                          return new Repair(label, plain.at(), plain.edit());
                        }));
  }

  /** What a plain number counts in this script. */
  private Unit unit() {
    return DesignCall.in(scope)
        .flatMap(DesignCall::units)
        .flatMap(s -> reading.said(s.first()))
        .flatMap(Unit::named)
        .orElse(Unit.MM);
  }

  /** The arguments of the call at the fault. */
  private List<Span> arguments() {
    return Call.at(reading, start).map(c -> c.arguments(reading)).orElse(List.of());
  }

  private Optional<Span> argument(int place) {
    return at(arguments(), place);
  }

  private Optional<Span> item(Span list, int item) {
    return list.isBetween(reading, '[')
        ? at(Span.parts(reading, list.first()), item)
        : Optional.empty();
  }

  private static Optional<Span> at(List<Span> all, int place) {
    return place < all.size() ? Optional.of(all.get(place)) : Optional.empty();
  }

  private boolean isLiteral(Span span) {
    boolean isNegative = span.first() + 1 == span.last() && reading.is(span.first(), '-');
    return span.is(reading, Kind.NUMBER)
        || span.is(reading, Kind.TEXT)
        || (isNegative && reading.is(span.last(), Kind.NUMBER));
  }

  /** A slip of writing at the fault's place. */
  private Optional<Repair> slip() {
    int here = start;
    int before = reading.back(here);
    for (int i : new int[] {here, before}) {
      int next = reading.forth(i);
      boolean isWord = reading.is(next, Kind.NAME) || reading.is(next, "in");
      if (reading.is(i, Kind.NUMBER) && isWord && Unit.named(reading.word(next)).isPresent()) {
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
    Stretch at = new Span(first, last).stretch(reading);
    String words = reading.word(first) + " " + reading.word(last);
    return new Repair("Put " + words + " in quotes", at, Edit.replace(at, '"' + words + '"'));
  }

  /** Curled quotes on this line become straight. */
  private Optional<Repair> straight(int i) {
    int number = reading.line(reading.token(i).start());
    int from = reading.lineStart(number);
    int to = reading.lineEnd(number);
    String line = reading.text().substring(from, to);
    String mended = line.replace('“', '"').replace('”', '"').replace('„', '"');
    return Optional.of(
        new Repair(
            "Make the quotes straight",
            reading.token(i).stretch(),
            Edit.replace(from, to, mended)));
  }

  private Repair replace(Span span, String by) {
    Stretch at = span.stretch(reading);
    return new Repair("Write " + by, at, Edit.replace(at, by));
  }
}
