package facetwright.script;

import facetwright.script.text.Call;
import facetwright.script.text.Gathered;
import facetwright.script.text.Known;
import facetwright.script.text.Piece;
import facetwright.script.text.Reading;
import facetwright.script.text.Span;
import facetwright.script.text.Token.Kind;
import facetwright.words.InFile;
import facetwright.words.Site;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What is written twice where the later silently takes the place of the earlier: an option in the
 * same braces, and a function in the same block. The engine takes both (ECMA-262, sections 13.2.5
 * and 16.1.7).
 */
final class WrittenTwice {
  /** Behind these marks braces hold options, not statements. */
  private static final List<Character> BEFORE_OPTIONS = List.of('(', ',', '=', ':', '?', '[');

  private static final Known<List<Found>> KNOWN = new Known<>(WrittenTwice::read);

  private final Reading reading;

  /** Makes a place in the script of one in the text that is read. */
  private final UnaryOperator<Site> place;

  private final List<Found> found;

  private WrittenTwice(String text, UnaryOperator<Site> place, List<Found> found) {
    this.reading = Reading.of(text);
    this.place = place;
    this.found = found;
  }

  /**
   * Something written twice.
   *
   * @param isFunction whether it is a function, not an option
   */
  record Found(String word, boolean isFunction, Site first, Site again) {}

  /** All of it in a script and the files that it uses. */
  static List<Found> in(String source) {
    return KNOWN.of(source);
  }

  private static List<Found> read(String source) {
    Gathered all = Gathered.of(source);
    List<Found> found = new ArrayList<>();
    WrittenTwice main = new WrittenTwice(all.main(), at -> at, found);
    main.look();
    for (Piece piece : all.pieces()) {
      if (piece.state() != Piece.State.LACKING) {
        boolean isGathered = piece.state() == Piece.State.GATHERED;
        int above = isGathered ? piece.line() - 1 : 0;
        Site use = main.use(piece.name());
        UnaryOperator<Site> inFile =
            at ->
                new Site(
                    use.line(),
                    use.column(),
                    new InFile(piece.name(), at.line() + above, at.column(), isGathered));
        new WrittenTwice(piece.text(), inFile, found).look();
      }
    }
    return List.copyOf(found);
  }

  /** Where the script says that it uses a file; its first line where it does not say so. */
  private Site use(String file) {
    for (Call call : Call.of(reading, "use")) {
      boolean isIt =
          call.arguments(reading).stream()
              .anyMatch(given -> reading.said(given.first()).filter(file::equals).isPresent());
      if (isIt) {
        return site(call.name());
      }
    }
    return new Site(1, 1);
  }

  private void look() {
    Deque<Integer> open = new ArrayDeque<>();
    Map<List<Object>, Integer> functions = new HashMap<>();
    for (int i = 0; i < reading.tokens().size(); i++) {
      if (reading.partner(i) > i) {
        if (reading.is(i, '{') && isOfOptions(i)) {
          options(i);
        }
        open.push(i);
      } else if (reading.partner(i) >= 0) {
        open.pop();
      } else if (reading.is(i, "function") && begins(i)) {
        int name = reading.forth(i);
        if (reading.is(name, Kind.NAME)) {
          int block = open.isEmpty() ? -1 : open.peek();
          Integer first = functions.put(List.of(block, reading.word(name)), name);
          if (first != null) {
            add(name, true, first);
          }
        }
      }
    }
  }

  private boolean isOfOptions(int brace) {
    int before = reading.back(brace);
    return BEFORE_OPTIONS.stream().anyMatch(mark -> reading.is(before, mark))
        || reading.is(before, "return");
  }

  private void options(int brace) {
    Map<String, Integer> seen = new HashMap<>();
    for (Span part : Span.parts(reading, brace)) {
      int key = part.first();
      boolean isKey = part.last() == key || reading.is(reading.forth(key), ':');
      String name = reading.is(key, Kind.TEXT) ? reading.said(key).orElse("") : reading.word(key);
      if (isKey && !name.isEmpty()) {
        Integer first = seen.put(name, key);
        if (first != null) {
          add(key, false, first);
        }
      }
    }
  }

  /** Whether a statement begins at a token. */
  private boolean begins(int i) {
    int before = reading.back(i);
    return before < 0
        || reading.is(before, ';')
        || reading.is(before, '{')
        || reading.is(before, '}')
        || reading.endsBehind(before);
  }

  private void add(int again, boolean isFunction, int first) {
    String word =
        reading.is(again, Kind.TEXT) ? reading.said(again).orElse("") : reading.word(again);
    found.add(new Found(word, isFunction, site(first), site(again)));
  }

  private Site site(int token) {
    int start = reading.token(token).start();
    return place.apply(new Site(reading.line(start), reading.column(start)));
  }
}
