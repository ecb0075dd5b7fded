package facetwright.script.scope;

import facetwright.script.text.Call;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import java.util.List;
import java.util.Optional;

/** What a script says of its design as a whole, in its call of {@code design}. */
public final class DesignCall {
  private final Scope scope;
  private final Reading reading;
  private final Call call;

  private DesignCall(Scope scope, Call call) {
    this.scope = scope;
    this.reading = scope.reading();
    this.call = call;
  }

  /** The call; empty where the script has none, or more than one. */
  public static Optional<DesignCall> in(Scope scope) {
    List<Call> calls = Call.of(scope.reading(), "design");
    return calls.size() == 1
        ? Optional.of(new DesignCall(scope, calls.getFirst()))
        : Optional.empty();
  }

  public Call call() {
    return call;
  }

  /**
   * The title that a script gives its design, where it is written as a text; the script may be half
   * written.
   */
  public static Optional<String> title(Reading reading) {
    for (int i = 0; i < reading.tokens().size(); i++) {
      int open = reading.forth(i);
      if (reading.is(i, "design") && reading.isOwnName(i) && reading.is(open, '(')) {
        return reading.said(reading.forth(open));
      }
    }
    return Optional.empty();
  }

  /** Whether a script, be it half written, names a design; a file that others use does not. */
  public static boolean isIn(String script) {
    Reading reading = Reading.of(script);
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.is(i, "design") && reading.isOwnName(i) && reading.is(reading.forth(i), '(')) {
        return true;
      }
    }
    return false;
  }

  /** The options behind the title. */
  public Optional<Span> options() {
    List<Span> arguments = call.arguments(reading);
    return arguments.size() < 2 ? Optional.empty() : Optional.of(arguments.get(1));
  }

  /** What is written for the unit of plain numbers. */
  public Optional<Span> units() {
    return options()
        .flatMap(scope::value)
        .flatMap(s -> s.option(reading, "units"))
        .flatMap(scope::value);
  }
}
