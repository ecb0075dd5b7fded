package facetwright.script.scope;

import facetwright.script.api.Fn;
import facetwright.script.api.Thing;
import facetwright.script.vocabulary.Language;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the script language knows: its functions, by name and by the thing they belong to. */
public final class Known {
  private static final Map<String, List<Fn<?>>> MEMBERS = gather();

  private Known() {}

  private static Map<String, List<Fn<?>>> gather() {
    Map<String, List<Fn<?>>> all = new LinkedHashMap<>();
    for (Thing<?> thing : Language.things()) {
      if (thing != Language.TOP) {
        for (Fn<?> fn : thing.functions()) {
          all.merge(fn.name(), List.of(fn), Known::joined);
        }
      }
    }
    return all;
  }

  private static List<Fn<?>> joined(List<Fn<?>> a, List<Fn<?>> b) {
    return Stream.<Fn<?>>concat(a.stream(), b.stream()).toList();
  }

  /** The function of a thing. */
  public static Optional<Fn<?>> function(Thing<?> thing, String name) {
    return thing.function(name).map(f -> f);
  }

  /** The functions of this name that some thing has. */
  public static List<Fn<?>> members(String name) {
    return MEMBERS.getOrDefault(name, List.of());
  }

  /** The thing a function belongs to. */
  public static Thing<?> owner(Fn<?> fn) {
    return Language.things().stream()
        .filter(t -> t.functions().stream().anyMatch(f -> f.equals(fn)))
        .findFirst()
        .orElseThrow();
  }

  /** One function for each name that some thing has. */
  public static List<Fn<?>> anyMembers() {
    return MEMBERS.values().stream().<Fn<?>>map(List::getFirst).toList();
  }
}
