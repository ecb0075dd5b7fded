package facetwright.fold.pose;

import facetwright.message.Message;
import facetwright.message.Value;
import facetwright.net.Parts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What several parts are called in one breath: those made alike by their number. */
public final class PartNames {
  private PartNames() {}

  /**
   * What is called by one name.
   *
   * @param times how many are meant
   * @param count how many there are
   */
  public record Alike(String name, int times, int count) {}

  /** Those that are made alike together, by the name of the first; a single one by its own. */
  public static List<Alike> alike(Parts parts, List<Integer> some) {
    Map<Integer, List<Integer>> alike = new LinkedHashMap<>();
    some.forEach(
        p -> alike.computeIfAbsent(parts.all().get(p).first(), _ -> new ArrayList<>()).add(p));
    List<Alike> all = new ArrayList<>();
    alike.forEach(
        (first, own) ->
            all.add(
                new Alike(
                    own.size() > 1 ? parts.called(first) : parts.all().get(own.getFirst()).name(),
                    own.size(),
                    parts.count(first))));
    return all;
  }

  /** "a", "a and b", "both of a", "all 4 of a and b". */
  public static Message of(Parts parts, List<Integer> some) {
    return Message.list(
        alike(parts, some).stream()
            .map(
                a ->
                    a.times() == 1
                        ? Message.of("%s", Value.name(a.name()))
                        : Message.of("%s %s", many(a), Value.name(a.name())))
            .toList());
  }

  private static String many(Alike a) {
    return a.times() < a.count()
        ? a.times() + " of"
        : a.times() == 2 ? "both of" : "all " + a.times() + " of";
  }
}
