package facetwright.workbench.card.text;

import facetwright.script.api.Arg;
import facetwright.script.scope.CallSite;
import facetwright.script.scope.Scope;
import facetwright.script.text.Gathered;
import facetwright.script.text.Name;
import facetwright.script.text.Reading;
import facetwright.script.text.Token.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * What the files that a script uses offer it: in the braces of {@code const { tub } =
 * use("tubs.js")}, and behind the dot of {@code tubs.tub}.
 *
 * @param scope of the script
 * @param files what a file holds, by its name; empty where it can't be had
 * @param names of the files that the script may use
 */
record FileOffers(Scope scope, UnaryOperator<String> files, Supplier<List<String>> names) {
  private static final String USE = "use";

  /** In the quotes of {@code use("…")}: the files that may be used. */
  List<Offer> named(CallSite call, Arg<?> arg) {
    return call.fn().name().equals(USE)
        ? names.get().stream()
            .map(name -> Offer.plain(name, "file", name, Help.of(call.fn(), arg)))
            .toList()
        : List.of();
  }

  /** Behind the dot of what ends with a token; empty where that is no file's. */
  Optional<List<Offer>> members(int last) {
    Reading reading = scope.reading();
    if (reading.is(last, ')') && reading.partner(last) >= 0) {
      return said(reading.back(reading.partner(last))).map(file -> offers(file, true, List.of()));
    }
    return reading.isOwnName(last)
        ? scope
            .names()
            .named(reading.word(last), reading.token(last).start())
            .filter(name -> name.value() >= 0)
            .flatMap(name -> said(name.value()))
            .map(file -> offers(file, true, List.of()))
        : Optional.empty();
  }

  /**
   * In braces that take names from a file; empty where there are none.
   *
   * @param before the last token before what is typed
   * @param typed the token that is typed; -1 for none
   */
  Optional<List<Offer>> inBraces(int before, int typed) {
    Reading reading = scope.reading();
    List<String> given = new ArrayList<>();
    int open = before;
    while (reading.is(open, ',') || reading.is(open, Kind.NAME)) {
      if (reading.is(open, Kind.NAME)) {
        given.add(reading.word(open));
      }
      open = reading.back(open);
    }
    int close = open < 0 || !reading.is(open, '{') ? -1 : reading.partner(open);
    if (close < 0 || !reading.is(reading.forth(close), '=')) {
      return Optional.empty();
    }
    for (int i = Math.max(before, typed) + 1; i < close; i++) {
      if (reading.is(i, Kind.NAME)) {
        given.add(reading.word(i));
      }
    }
    return said(reading.forth(reading.forth(close))).map(file -> offers(file, false, given));
  }

  /** The name of the file where a call of {@code use} stands at a token. */
  private Optional<String> said(int use) {
    Reading reading = scope.reading();
    if (use < 0 || !reading.is(use, USE)) {
      return Optional.empty();
    }
    int open = reading.forth(use);
    return reading.is(open, '(') ? reading.said(reading.forth(open)) : Optional.empty();
  }

  private List<Offer> offers(String file, boolean called, List<String> given) {
    String text = files.apply(file);
    Reading reading = Reading.of(text);
    List<Offer> found = new ArrayList<>();
    for (Name name : Gathered.offered(text)) {
      String word = name.word();
      boolean isFunction = reading.is(name.maker(), Offers.FUNCTION);
      Help help = Help.offered(word, file, isFunction);
      if (given.contains(word)) {
        continue;
      }
      found.add(
          isFunction && called
              ? new Offer(word, Offers.FUNCTION, word + "()", word.length() + 1, help)
              : Offer.plain(word, isFunction ? Offers.FUNCTION : file, word, help));
    }
    return found;
  }
}
