package facetwright.form;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of facets: what they answer to, told apart, and listed in a message. */
public final class FacetNames {
  private static final int MOST_LISTED = 12;

  /** What stands before the number of one that is told apart. */
  private static final String APART = " (";

  private static final String PART = " (?:side|\\d+|[ab]|\\(\\d+\\))";
  private static final Pattern PARTS = Pattern.compile("(?:" + PART + ")+");
  private static final Pattern LAST = Pattern.compile(PART + "$");

  private FacetNames() {}

  static String listed(List<Facet> facets) {
    List<String> some =
        facets.stream().limit(MOST_LISTED).map(f -> "\"" + f.name() + "\"").toList();
    return String.join(", ", some) + (facets.size() > MOST_LISTED ? " and more" : "");
  }

  /**
   * Whether a facet is the one called by a word, or one of those: "side" means "side 2", "row 1"
   * means "row 1 side 2", also where it was raised ("side 2 1") or parted ("side 2 a"). A number in
   * brackets tells another facet apart that would have had the same name: "side 2" does not mean
   * "side 2 (2)".
   */
  public static boolean isOf(String facet, String word) {
    if (!facet.startsWith(word)) {
      return false;
    }
    String rest = facet.substring(word.length());
    return rest.isEmpty() || (PARTS.matcher(rest).matches() && !rest.startsWith(APART));
  }

  /** The name without its last part: "row 1" of "row 1 side"; empty where it has no parts. */
  public static Optional<String> shorter(String name) {
    Matcher last = LAST.matcher(name);
    return last.find() ? Optional.of(name.substring(0, last.start())) : Optional.empty();
  }

  /**
   * The facets of a changed form. Those that had their names before keep them; others whose name is
   * taken, or is the word for several, are numbered: "side 1 (2)".
   */
  public static List<Facet> apart(Form before, List<Facet> facets) {
    Set<String> known = new HashSet<>();
    before.facets().forEach(f -> known.add(f.name()));
    Set<String> taken = new HashSet<>();
    List<Facet> all = new ArrayList<>();
    for (Facet facet : facets) {
      String name = facet.name();
      boolean isKept = known.contains(name) && !taken.contains(name);
      for (int i = 2; !isKept && !isFree(name, known, taken); i++) {
        name = facet.name() + APART + i + ")";
      }
      taken.add(name);
      all.add(facet.named(name));
    }
    return all;
  }

  private static boolean isFree(String name, Set<String> known, Set<String> taken) {
    return known.stream().noneMatch(n -> isOf(n, name))
        && taken.stream().noneMatch(n -> isOf(n, name));
  }
}
