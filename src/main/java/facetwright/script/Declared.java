package facetwright.script;

import facetwright.net.Net;
import facetwright.script.text.Known;
import facetwright.script.text.Reading;
import facetwright.script.text.Token;
import facetwright.words.Site;
import facetwright.words.Spoken;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The variables of a script that hold panels: {@code const front = panel("front", …)} speaks of
 * "front" by {@code front}.
 */
final class Declared {
  private static final Known<Reading> READ = new Known<>(Reading::of);

  private Declared() {}

  /** The words for panels, those that a variable holds alone by that variable. */
  static List<Spoken> in(String source, Net net, List<Spoken> spoken) {
    Map<Integer, Integer> holds = new HashMap<>();
    Map<Integer, String> names = new HashMap<>();
    Map<Site, Integer> made = new HashMap<>();
    net.panels().forEach(p -> made.merge(p.site(), 1, Integer::sum));
    for (int p = 0; p < spoken.size(); p++) {
      Site site = net.panels().get(p).site();
      if (!spoken.get(p).isHeld() || !site.isKnown() || made.get(site) > 1) {
        continue;
      }
      Reading reading = READ.of(source);
      Optional<Integer> variable = variable(reading, site);
      if (variable.isPresent()) {
        // Of several that one line attaches to each other it holds the last.
        holds.put(variable.get(), p);
        names.put(variable.get(), reading.word(variable.get()));
      }
    }
    List<Spoken> all = new ArrayList<>(spoken);
    holds.forEach((token, p) -> all.set(p, new Spoken(List.of(names.get(token)))));
    return all;
  }

  /** The name that a declaration gives to what is made at a place; in a loop there are many. */
  private static Optional<Integer> variable(Reading reading, Site site) {
    int at = reading.before(reading.offset(site.line(), site.column()).orElse(0) + 1);
    for (int i = at; i >= 2; i--) {
      if (reading.is(i, ';') || reading.is(i, '{') || reading.is(i, '}')) {
        return Optional.empty();
      }
      if (reading.is(i, '=')
          && reading.is(i - 1, Token.Kind.NAME)
          && (reading.is(i - 2, "const") || reading.is(i - 2, "let"))) {
        return Optional.of(i - 1);
      }
    }
    return Optional.empty();
  }
}
