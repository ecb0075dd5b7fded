package facetwright.script.api;

import facetwright.words.Mend;
import facetwright.words.NearName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Which option a maker meant who called it by another word of the trade, or misspelt it. */
final class Cousins {
  /** Words that makers say for the same; in each the likelier ones first. */
  private static final List<List<String>> GROUPS =
      List.of(
          words("across diameter dia width size"),
          words("fold degrees angle bend turn twist bevel taper"),
          words("paper colour color tint"),
          words("colour color"),
          words("at place position centre center middle offset point"),
          words("border inset frame padding margin reveal"),
          words("base bottom floor foot"),
          words("top lid"),
          words("height tall length long depth deep high"),
          words("depth deep tab length height flap"),
          words("width wide length breadth"),
          words("sides columns count number corners"),
          words("side edge length"),
          words("corners points path vertices"),
          words("points corners path vertices"),
          words("caliper thickness thick"),
          words("weight gsm gram grams"),
          words("seam glue flap tab overlap"),
          words("from min minimum least lowest start"),
          words("to max maximum most highest end"),
          words("of options choices values words list"),
          words("step increment every"),
          words("whole integer int round"),
          words("units unit measure"),
          words("names labels name titles"),
          words("sense direction dir crest way"),
          words("as style way layout"),
          words("part name label title"),
          words("overlap lap"),
          words("hole punch"),
          words("perforated perforate perforation"),
          words("between span range stretch"),
          words("by amount distance"),
          words("rows heights row"),
          words("widths columns"),
          words("grain fibre fiber"),
          words("tabs tab flaps"),
          words("size sheet format"),
          words("ruler grid marks"));

  private Cousins() {}

  private static List<String> words(String all) {
    return List.of(all.split(" "));
  }

  /** The name meant; none where none is near. */
  static Optional<String> meant(String typed, Collection<String> names) {
    String plain = typed.toLowerCase(Locale.ROOT);
    List<String> found = new ArrayList<>();
    for (List<String> group : GROUPS) {
      if (group.contains(plain)) {
        group.stream().filter(names::contains).filter(n -> !n.equals(typed)).forEach(found::add);
      }
    }
    return found.isEmpty() ? NearName.nearest(typed, names) : Optional.of(found.getFirst());
  }

  /** It in the place of the one typed. */
  static List<Mend> mends(String typed, Collection<String> names) {
    return meant(typed, names).<Mend>map(n -> new Mend.Word(typed, n)).stream().toList();
  }
}
