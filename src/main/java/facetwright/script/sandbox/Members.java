package facetwright.script.sandbox;

import facetwright.words.Mend;
import facetwright.words.NearName;
import facetwright.words.Site;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.graalvm.polyglot.Value;

/** What is told of a function that a thing does not have. */
final class Members {
  /** What functions were called before, or makers call them, by what they are called. */
  private static final Map<String, String> FORMER =
      Map.ofEntries(
          Map.entry("bevel", "chamfer"),
          Map.entry("bevelEdges", "chamferEdges"),
          Map.entry("bevelCorners", "chamferCorners"),
          Map.entry("truncate", "chamferCorners"),
          Map.entry("in", "into"),
          Map.entry("inside", "into"),
          Map.entry("mirror", "mirrored"),
          Map.entry("flip", "mirrored"));

  private Members() {}

  /** What a value is called that is a thing of the host's, by the functions that it has. */
  static Optional<String> thing(Value value, Host<?> host) {
    if (value == null || !value.hasMembers()) {
      return Optional.empty();
    }
    Set<String> has = value.getMemberKeys();
    return host.functions().entrySet().stream()
        .filter(e -> has.equals(Set.copyOf(e.getValue())))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /**
   * @param thing what it is called, such as "a wrap"
   * @param name the function that was asked of it
   */
  static ScriptException lacking(String thing, String name, Site site, Host<?> host) {
    List<String> has = host.functions().getOrDefault(thing, host.names());
    Optional<String> near =
        Optional.ofNullable(FORMER.get(name))
            .filter(has::contains)
            .or(() -> NearName.nearest(name, has));
    List<String> owners =
        host.functions().entrySet().stream()
            .filter(e -> e.getValue().contains(name))
            .map(Map.Entry::getKey)
            .toList();
    String others =
        thing.equals("a part") && owners.contains("a form")
            ? "Put ." + name + " before .unfold: a form is changed before it is laid flat. "
            : owners.isEmpty()
                ? ""
                : "It is a function of " + String.join(" and of ", owners) + ". ";
    String all =
        Character.toUpperCase(thing.charAt(0))
            + thing.substring(1)
            + " has "
            + String.join(", ", has)
            + ".";
    return new ScriptException(
        ScriptException.Kind.UNKNOWN_NAME,
        thing + " has no function " + name,
        site,
        near.map(n -> "Did you mean " + n + "?").orElse(others + all),
        near.<Mend>map(n -> new Mend.Word(name, n)).stream().toList());
  }
}
