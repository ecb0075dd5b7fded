package facetwright.workbench.card.text;

import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Thing;
import facetwright.script.scope.CallSite;
import facetwright.script.scope.Known;
import facetwright.script.scope.Scope;
import facetwright.script.text.Reading;
import facetwright.script.text.Token.Kind;
import facetwright.script.vocabulary.Language;
import facetwright.words.Sentence;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What there is to say about a word of the script language.
 *
 * @param title how it is written
 * @param belongs what it belongs to, in a few words
 * @param does what it does or means
 * @param takes a line for each argument
 * @param returns what comes back; empty where nothing does
 * @param example a script that uses it; may be empty
 */
public record Help(
    String title, String belongs, String does, List<Row> takes, String returns, String example) {
  public Help {
    takes = List.copyOf(takes);
  }

  /**
   * An argument.
   *
   * @param name as the script writes it
   * @param does what it means
   * @param wanted what it takes, range included
   * @param left what holds when it is left out
   */
  public record Row(String name, String does, String wanted, String left) {
    static Row of(Arg<?> arg) {
      return new Row(arg.name(), arg.does(), arg.kind().wanted(), arg.leftOut());
    }
  }

  static Help of(Fn<?> fn) {
    Thing<?> owner = Known.owner(fn);
    return new Help(
        fn.signature(),
        owner == Language.TOP ? "called on its own" : "on a " + owner.name(),
        fn.does(),
        Stream.concat(fn.places().stream(), fn.options().stream()).map(Row::of).toList(),
        fn.returns().equals("nothing") ? "" : fn.returns(),
        fn.example().strip());
  }

  /** What there is to say about one argument of a function. */
  static Help of(Fn<?> fn, Arg<?> arg) {
    return new Help(
        arg.name(),
        (fn.options().contains(arg) ? "an option of " : "an argument of ") + fn.name(),
        Sentence.capital(arg.does()) + ".",
        List.of(new Row(arg.name(), "", arg.kind().wanted(), arg.leftOut())),
        "",
        "");
  }

  /** What there is to say about the word at an offset; empty where nothing is known of it. */
  public static Optional<Help> at(Scope scope, int offset) {
    Reading reading = scope.reading();
    int i = reading.at(offset);
    if (i < 0 || reading.is(i, Kind.COMMENT) || reading.is(i, Kind.MARK)) {
      return Optional.empty();
    }
    Optional<CallSite> call = CallSite.at(scope, reading.token(i).start());
    if (reading.is(i, Kind.NAME)) {
      if (reading.is(reading.forth(i), '(')) {
        return scope.called(i).stream().findFirst().map(Help::of);
      }
      String word = reading.word(i);
      Optional<Arg<?>> option =
          call.filter(CallSite::atOption).stream()
              .flatMap(c -> c.options().stream())
              .filter(o -> o.name().equals(word))
              .findFirst();
      if (option.isPresent()) {
        return option.map(o -> of(call.get().fn(), o));
      }
      return scope
          .names()
          .named(word, reading.token(i).start())
          .map(n -> own(word, scope.meaning(n)));
    }
    boolean value = reading.is(i, Kind.NUMBER) || reading.is(i, Kind.TEXT);
    return value ? call.flatMap(c -> c.arg().map(a -> of(c.fn(), a))) : Optional.empty();
  }

  /** What there is to say about a name of the script's own. */
  static Help own(String word, String meaning) {
    String does =
        meaning.equals("value") ? "A value of this script." : "A " + meaning + " of this script.";
    return new Help(word, "made in this script", does, List.of(), "", "");
  }

  /** What there is to say about a name that a used file offers. */
  static Help offered(String word, String file, boolean isFunction) {
    String does = isFunction ? "A function of that file." : "A value of that file.";
    return new Help(word, "made in " + file, does, List.of(), "", "");
  }
}
