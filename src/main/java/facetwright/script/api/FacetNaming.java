package facetwright.script.api;

import facetwright.form.Facet;
import facetwright.form.Form;
import facetwright.script.sandbox.CallException;
import facetwright.words.NearName;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** How a script names facets: one by one, by the word they share, or all. */
public final class FacetNaming {
  public static final String DOES =
      "a facet such as \"top\" or \"side 2\", several as a list, the word they share such as"
          + " \"side\", or \"all\"";
  public static final Kind<List<String>> KIND =
      Kinds.either(
          Kinds.map(Kinds.text(List.of("all", "side", "top", "base")), List::of),
          Kinds.list(Kinds.text(), 1, 1_000));

  private static final Pattern PARTS = Pattern.compile("(?: (?:side|\\d+|[ab]|\\(\\d+\\)))+");

  private FacetNaming() {}

  /** The names meant, in the form's order. */
  public static List<String> of(Form form, List<String> wanted, String function) {
    List<String> names = form.facets().stream().map(Facet::name).toList();
    List<String> meant = new ArrayList<>();
    for (String word : wanted) {
      List<String> found =
          names.stream()
              .filter(n -> word.equals("all") || isOf(n, word))
              .filter(n -> !meant.contains(n))
              .toList();
      if (found.isEmpty() && !meant.contains(word)) {
        String near =
            NearName.nearest(word, names).map(n -> "Did you mean \"" + n + "\"? ").orElse("");
        throw new CallException(
            function + ": no facet is called \"" + word + "\"",
            near + "Its facets are " + listed(names) + ".",
            NearName.mends(word, names));
      }
      meant.addAll(found);
    }
    return meant;
  }

  /**
   * Whether a facet is the one called by a word, or one of those: "side" means "side 2", "row 1"
   * means "row 1 side 2", also where it was raised ("side 2 1"), parted ("side 2 a") or stacked on
   * others ("side 2 (2)").
   */
  static boolean isOf(String facet, String word) {
    if (!facet.startsWith(word)) {
      return false;
    }
    return facet.length() == word.length()
        || PARTS.matcher(facet.substring(word.length())).matches();
  }

  private static String listed(List<String> names) {
    return names.size() <= 12
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, 12)) + " and " + (names.size() - 12) + " more";
  }
}
