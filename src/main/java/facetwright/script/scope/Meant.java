package facetwright.script.scope;

import facetwright.script.api.Arg;
import facetwright.script.api.Fn;
import facetwright.script.api.Thing;
import facetwright.script.sandbox.Spot;
import facetwright.script.text.Name;
import facetwright.script.text.Names;
import facetwright.script.text.Reading;
import facetwright.script.vocabulary.Language;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What may be meant by a name that is not defined. A name of the language's own spelling, or one
 * that a script says more than once, be it in a comment, is no slip: what makes it is missing.
 */
public final class Meant {
  private static final Set<String> OPTIONS =
      Language.things().stream()
          .flatMap(thing -> Meant.functions(thing))
          .flatMap(fn -> fn.options().stream())
          .map(Arg::name)
          .collect(Collectors.toUnmodifiableSet());

  private Meant() {}

  private static Stream<Fn<?>> functions(Thing<?> thing) {
    return thing.functions().stream().map(f -> f);
  }

  /**
   * The names that could stand at a place: those in force there and, where the name is called, the
   * functions.
   *
   * @param unknown the name that stands there and is not defined
   */
  public static List<String> at(Spot spot, String unknown) {
    String source = spot.text();
    Pattern word = Pattern.compile("(?<![\\w$])" + Pattern.quote(unknown) + "(?![\\w$])");
    if (OPTIONS.contains(unknown) || word.matcher(source).results().limit(2).count() > 1) {
      return List.of();
    }
    Reading reading = Reading.of(source);
    int offset = reading.offset(spot.site().line(), spot.site().column()).orElse(source.length());
    List<String> names =
        new ArrayList<>(Names.of(reading).before(offset).stream().map(Name::word).toList());
    if (reading.is(reading.forth(reading.at(offset)), '(')) {
      Language.TOP.functions().stream().map(Fn::name).forEach(names::add);
    }
    return names;
  }
}
