package facetwright.workbench.card.text;

import facetwright.script.scope.Scope;
import facetwright.script.text.Call;
import facetwright.script.text.Edit;
import facetwright.script.text.Name;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import facetwright.script.text.Token.Kind;
import java.util.Optional;

/** Changes of the text round a chain of calls, whose last function's name is known. */
final class Chained {
  private final Reading reading;
  private final Scope scope;
  private final int called;

  /**
   * @param called the token of that name
   */
  Chained(Scope scope, int called) {
    this.reading = scope.reading();
    this.scope = scope;
    this.called = called;
  }

  /** What the chain comes to is given the name that it begins with; a const of it becomes a let. */
  Optional<Repair> keep(String name) {
    int first = first();
    if (first < 0 || !reading.word(first).equals(name) || end() < 0) {
      return Optional.empty();
    }
    int start = reading.token(first).start();
    String write = name + " = ";
    String label = "Put " + name + " = before it";
    int made = scope.names().named(name, start).map(Name::maker).orElse(-1);
    if (!reading.word(made).equals("const")) {
      return Optional.of(new Repair(label, at(), Edit.insert(start, write)));
    }
    int from = reading.token(made).start();
    String between = reading.text().substring(reading.token(made).end(), start);
    Edit edit = Edit.replace(from, start, "let" + between + write);
    return Optional.of(new Repair(label + ", with let", at(), edit));
  }

  /**
   * The form is unfolded.
   *
   * @param name by its name, in a line of its own; empty for the chain to go on
   */
  Optional<Repair> unfold(String name) {
    int end = end();
    if (end < 0) {
      return Optional.empty();
    }
    int last = reading.token(end).end();
    if (name.isEmpty()) {
      return Optional.of(
          new Repair("Put .unfold() behind it", at(), Edit.insert(last, ".unfold()")));
    }
    int semicolon = reading.forth(end);
    int stop = reading.is(semicolon, ';') ? reading.token(semicolon).end() : last;
    int first = first() < 0 ? called : first();
    int line = reading.lineStart(reading.line(reading.token(first).start()));
    int indent = line;
    while (indent < stop && Character.isWhitespace(reading.text().charAt(indent))) {
      indent++;
    }
    String text = name + ".unfold();";
    String whole = "\n" + reading.text().substring(line, indent) + text;
    return Optional.of(new Repair("Write " + text, at(), Edit.insert(stop, whole)));
  }

  private Stretch at() {
    return reading.token(called).stretch();
  }

  /** The token that the chain begins with. */
  private int first() {
    return Call.first(reading, called);
  }

  /** The bracket that ends the call; -1 for none. */
  private int end() {
    int open = reading.forth(called);
    return reading.is(called, Kind.NAME) && reading.is(open, '(') ? reading.partner(open) : -1;
  }
}
