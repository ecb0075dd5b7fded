package facetwright.workbench.card.text;

import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.scope.CallSite;
import facetwright.script.scope.Known;
import facetwright.script.scope.Scope;
import facetwright.script.text.Edit;
import facetwright.script.text.Name;
import facetwright.script.text.Reading;
import facetwright.script.text.Stretch;
import facetwright.script.text.Token;
import facetwright.script.text.Token.Kind;
import facetwright.script.vocabulary.Language;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What could be written at a place, the likeliest first.
 *
 * @param typed the stretch that an offer takes the place of
 */
public record Offers(Stretch typed, List<Offer> all) {
  private static final List<String> LANGUAGE =
      List.of("const", "let", "for", "if", "else", "function", "return", "true", "false");

  static final String FUNCTION = "function";

  public Offers {
    all = List.copyOf(all);
  }

  /**
   * The offers at an offset; none in a comment, and where nothing is known to fit.
   *
   * @param files what a file that the script uses holds, by its name; empty where it can't be had
   * @param names of the files that the script may use
   */
  public static Offers at(
      Scope scope, int offset, UnaryOperator<String> files, Supplier<List<String>> names) {
    FileOffers used = new FileOffers(scope, files, names);
    Reading reading = scope.reading();
    int i = reading.before(offset);
    Optional<CallSite> call = CallSite.at(scope, offset);
    if (reading.is(i, Kind.TEXT) && isInside(reading, i, offset)) {
      return inText(scope, i, offset, call, used);
    }
    boolean inComment =
        reading.is(i, Kind.COMMENT)
            && (offset < reading.token(i).end() || reading.word(i).startsWith("//"))
            && reading.line(offset) == reading.line(reading.token(i).end());
    boolean word =
        (reading.is(i, Kind.NAME) || reading.is(i, Kind.KEYWORD))
            && reading.token(i).end() >= offset;
    if (inComment || (reading.is(i, Kind.NUMBER) && reading.token(i).end() >= offset)) {
      return new Offers(new Stretch(offset, offset), List.of());
    }
    int start = word ? reading.token(i).start() : offset;
    Stretch typed = new Stretch(start, word ? reading.token(i).end() : offset);
    String prefix = reading.text().substring(start, offset);
    int before = word ? reading.back(i) : reading.is(i, Kind.COMMENT) ? reading.back(i) : i;
    List<Offer> found = new ArrayList<>();
    Optional<List<Offer>> ofFile =
        reading.isDot(before)
            ? used.members(reading.back(before))
            : used.inBraces(before, word ? i : -1);
    if (ofFile.isPresent()) {
      found.addAll(ofFile.get());
    } else if (reading.isDot(before)) {
      members(scope, reading.back(before), found);
    } else if (call.isPresent() && call.get().atOption()) {
      options(call.get(), reading, prefix, found);
    } else {
      call.flatMap(CallSite::arg).ifPresent(arg -> words(call.get().fn(), arg, true, found));
      names(scope, start, found);
    }
    return new Offers(typed, fitting(found, prefix));
  }

  /**
   * The edit that takes an offer. What stands right of the caret in the same word stays, unless the
   * offer ends so too; where a bracket already follows, none is written.
   */
  public Edit edit(Reading reading, Offer offer, int caret) {
    boolean inText = reading.is(reading.before(caret), Kind.TEXT);
    String rest = reading.text().substring(Math.min(caret, typed.end()), typed.end());
    Stretch gone =
        inText || offer.word().endsWith(rest) ? typed : new Stretch(typed.start(), caret);
    boolean called =
        gone.end() < reading.text().length() && reading.text().charAt(gone.end()) == '(';
    if (called && offer.sort().equals(FUNCTION)) {
      return Edit.replace(gone.start(), gone.end(), offer.word());
    }
    boolean named = reading.is(reading.forth(reading.before(gone.end())), ':');
    return named ? Edit.replace(gone.start(), gone.end(), offer.word()) : offer.edit(gone);
  }

  /** Whether offers should come up unasked while this is typed. */
  public static boolean comeUp(Reading reading, int offset) {
    int i = reading.before(offset);
    if (i < 0 || reading.is(i, Kind.COMMENT)) {
      return false;
    }
    Token token = reading.token(i);
    boolean ends = token.end() == offset;
    return (ends && reading.isDot(i))
        || (reading.is(i, Kind.TEXT) && offset == token.start() + 1)
        || (ends && reading.is(i, Kind.NAME) && token.length() >= 2);
  }

  private static boolean isInside(Reading reading, int i, int offset) {
    Token token = reading.token(i);
    String word = reading.word(i);
    boolean closed = word.length() > 1 && word.charAt(word.length() - 1) == word.charAt(0);
    return offset > token.start() && (offset < token.end() || (offset == token.end() && !closed));
  }

  private static Offers inText(
      Scope scope, int i, int offset, Optional<CallSite> call, FileOffers used) {
    Reading reading = scope.reading();
    Token token = reading.token(i);
    String word = reading.word(i);
    int start = token.start() + 1;
    List<Offer> found = new ArrayList<>();
    call.flatMap(CallSite::arg)
        .ifPresent(
            arg -> {
              words(call.get().fn(), arg, false, found);
              found.addAll(used.named(call.get(), arg));
            });
    if (call.isPresent() && call.get().fn().name().equals("rows")) {
      rowNames(scope, call.get().fn(), found);
    }
    // A text just begun runs on to the next quote: what holds brackets is not of this text.
    int end = start + reading.inside(i).length();
    boolean closed =
        word.length() > 1
            && word.charAt(word.length() - 1) == word.charAt(0)
            && reading.text().substring(offset, end).matches("[\\w .-]*");
    Stretch typed = new Stretch(start, closed ? end : offset);
    List<Offer> fit = fitting(found, reading.text().substring(start, offset));
    if (closed) {
      return new Offers(typed, fit);
    }
    String quote = word.substring(0, 1);
    return new Offers(
        typed,
        fit.stream()
            .map(o -> Offer.plain(o.word(), o.sort(), o.word() + quote, o.help()))
            .toList());
  }

  /** The names that a wrap of the script gives its rows. */
  private static void rowNames(Scope scope, Fn<?> rows, List<Offer> found) {
    Reading reading = scope.reading();
    for (int i = 0; i + 2 < reading.tokens().size(); i++) {
      if (reading.word(i).equals("names") && reading.is(i + 1, ':') && reading.is(i + 2, '[')) {
        for (int k = i + 3; k < reading.partner(i + 2); k++) {
          String name = reading.inside(k);
          if (reading.is(k, Kind.TEXT) && found.stream().noneMatch(o -> o.word().equals(name))) {
            found.add(Offer.plain(name, "row", name, Help.of(rows)));
          }
        }
      }
    }
  }

  private static void members(Scope scope, int last, List<Offer> found) {
    List<? extends Fn<?>> fns =
        scope
            .thingEnding(last)
            .<List<? extends Fn<?>>>map(t -> t.functions())
            .orElseGet(Known::anyMembers);
    boolean known = scope.reading().is(last, ')') || scope.reading().is(last, Kind.NAME);
    if (known && !scope.reading().word(last).equals("Math")) {
      fns.forEach(fn -> found.add(function(fn)));
    }
  }

  private static void options(CallSite call, Reading reading, String prefix, List<Offer> found) {
    List<String> given = call.given(reading);
    for (Arg<?> option : call.options()) {
      if (!given.contains(option.name()) || option.name().equals(prefix)) {
        String sort = option.needed() ? "needed" : "option";
        Help help = Help.of(call.fn(), option);
        found.add(Offer.plain(option.name(), sort, option.name() + ": ", help));
      }
    }
  }

  private static void words(Fn<?> fn, Arg<?> arg, boolean quotes, List<Offer> found) {
    for (String word : arg.kind().words()) {
      String written = quotes ? '"' + word + '"' : word;
      found.add(Offer.plain(word, arg.name(), written, Help.of(fn, arg)));
    }
  }

  private static void names(Scope scope, int offset, List<Offer> found) {
    for (Name name : scope.names().before(offset)) {
      String meaning = scope.meaning(name);
      found.add(Offer.plain(name.word(), meaning, name.word(), Help.own(name.word(), meaning)));
    }
    Language.TOP.functions().forEach(fn -> found.add(function(fn)));
    for (String word : LANGUAGE) {
      found.add(Offer.plain(word, "JavaScript", word, Help.own(word, "word of JavaScript")));
    }
  }

  private static Offer function(Fn<?> fn) {
    boolean takes = !fn.places().isEmpty() || !fn.options().isEmpty();
    boolean braces = fn.places().isEmpty() && !fn.options().isEmpty();
    String written = fn.name() + (braces ? "({  })" : "()");
    int caret = written.length() - (braces ? 3 : takes ? 1 : 0);
    return new Offer(fn.name(), FUNCTION, written, caret, Help.of(fn));
  }

  /** Those that begin with what is typed, then those that hold it. */
  private static List<Offer> fitting(List<Offer> found, String prefix) {
    String typed = prefix.toLowerCase(Locale.ROOT);
    Comparator<Offer> order =
        Comparator.comparing(o -> !o.word().toLowerCase(Locale.ROOT).startsWith(typed));
    Stream<Offer> fit =
        found.stream().filter(o -> o.word().toLowerCase(Locale.ROOT).contains(typed));
    return fit.sorted(order).toList();
  }
}
