package facetwright.script.api;

import facetwright.form.Facet;
import facetwright.form.FacetNames;
import facetwright.form.Form;
import facetwright.script.sandbox.CallException;
import facetwright.script.text.Edit;
import facetwright.words.Mend;
import facetwright.words.NearName;
import facetwright.words.Spoken;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** How a script names facets: one by one, by the word they share, or all. */
public final class FacetNaming {
  public static final String DOES =
      "a facet such as \"top\" or \"side 2\", several as a list, the word they share such as"
          + " \"side\", or \"all\"";
  public static final Kind<List<String>> KIND =
      Kinds.either(
          Kinds.map(Kinds.text(List.of("all", "side", "top", "base")), List::of),
          Kinds.list(Kinds.text(), 1, 1_000));

  private static final String ALL = "all";

  /** What makers call facets, by what forms call them: a panel has a bottom edge, a form a base. */
  private static final Map<String, String> COUSINS =
      Map.of(
          "bottom", "base", "floor", "base", "foot", "base", "lid", "top", "roof", "top", "wall",
          "side", "walls", "side", "sides", "side");

  private FacetNaming() {}

  /** The names meant, in the form's order. */
  public static List<String> of(Form form, List<String> wanted, String function) {
    List<String> names = form.facets().stream().map(Facet::name).toList();
    List<String> meant = new ArrayList<>();
    for (String word : wanted) {
      List<String> found = meant(names, word).stream().filter(n -> !meant.contains(n)).toList();
      if (found.isEmpty() && !meant.contains(word)) {
        Optional<String> near =
            Optional.ofNullable(COUSINS.get(word))
                .filter(n -> !meant(names, n).isEmpty())
                .or(() -> NearName.nearest(word, names));
        throw new CallException(
            function + ": no facet is called \"" + word + "\"",
            near.map(n -> "Did you mean \"" + n + "\"? ").orElse("")
                + "Its facets are "
                + listed(names)
                + (form.isClosed() ? "." : "; what was left out by open is gone."),
            near.<Mend>map(n -> new Mend.Word(word, n)).stream().toList());
      }
      meant.addAll(found);
    }
    return meant;
  }

  /** What a word means: the facet of that very name, or else all that share it. */
  private static List<String> meant(List<String> names, String word) {
    if (word.equals(ALL)) {
      return names;
    }
    return names.contains(word)
        ? List.of(word)
        : names.stream().filter(n -> FacetNames.isOf(n, word)).toList();
  }

  /**
   * How a script speaks of the panels of a form laid flat: of a facet by its name, and by the words
   * that it shares with others, each the shortest that means the same facets.
   */
  public static Speaking speaking(Form form) {
    Function<String, Spoken> words = words(form);
    return (net, p) -> words.apply(net.panels().get(p).name());
  }

  /** By a facet's name; none for what is no facet. */
  static Function<String, Spoken> words(Form form) {
    List<String> names = form.facets().stream().map(Facet::name).toList();
    Set<String> known = new HashSet<>(names);
    Map<String, List<String>> meant = new HashMap<>();
    return facet ->
        known.contains(facet)
            ? spoken(names, facet, word -> meant.computeIfAbsent(word, w -> meant(names, w)))
            : Spoken.NONE;
  }

  private static Spoken spoken(
      List<String> names, String facet, Function<String, List<String>> meaning) {
    List<String> words = new ArrayList<>(List.of(facet));
    List<String> shared = new ArrayList<>();
    for (Optional<String> word = FacetNames.shorter(facet);
        word.isPresent();
        word = word.flatMap(FacetNames::shorter)) {
      List<String> meant = meaning.apply(word.get());
      if (meant.equals(shared)) {
        words.removeLast();
      }
      if (meant.size() > 1 && meant.contains(facet)) {
        words.add(word.get());
        shared = meant;
      }
    }
    if (names.size() > Math.max(1, shared.size())) {
      words.add(ALL);
    }
    return new Spoken(words.stream().map(Edit::inQuotes).toList());
  }

  private static String listed(List<String> names) {
    return names.size() <= 12
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, 12)) + " and " + (names.size() - 12) + " more";
  }
}
