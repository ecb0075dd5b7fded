package facetwright.papers.facets;

import facetwright.measure.Length;
import facetwright.measure.Unit;
import facetwright.net.PanelRole;
import facetwright.words.Count;
import java.util.ArrayList;
import java.util.List;

/** Facets in words. */
public final class FacetText {
  private FacetText() {}

  /** What a script calls it: the word that means it alone, or that there is none. */
  public static String own(FacetLine line) {
    return line.spoken().own().orElse("–");
  }

  /** How wide and high it is, as the ruler reads it. */
  public static String size(FacetLine line, Unit unit) {
    return new Length(line.width()).read(unit) + " × " + new Length(line.height()).read(unit);
  }

  /** Which way it faces. */
  public static String facing(FacetLine line) {
    return line.facing().map(Facing::text).orElse("not known");
  }

  /** What it is where it is no plain facet: "tab", "gusset"; else empty. */
  public static String role(FacetLine line) {
    return switch (line.role()) {
      case FACET -> "";
      case TAB -> "tab";
      case GUSSET -> "gusset";
    };
  }

  /** All of one facet but its number and its name, in one line. */
  public static String brief(FacetLine line, Unit unit) {
    List<String> parts = new ArrayList<>();
    if (line.role() != PanelRole.FACET) {
      parts.add(role(line));
    }
    parts.add(Count.of(line.corners(), "corner"));
    parts.add(size(line, unit));
    line.facing().ifPresent(f -> parts.add("faces " + f.text()));
    return String.join("; ", parts);
  }

  /** Whether a word means facets of several parts, each by itself. */
  public static boolean isOfParts(FacetList facets) {
    return facets.all().stream().anyMatch(f -> f.role() != PanelRole.GUSSET && !isAlone(facets, f));
  }

  private static boolean isAlone(FacetList facets, FacetLine line) {
    return line.spoken().own().isEmpty()
        || facets.all().stream()
            .filter(f -> f.role() != PanelRole.GUSSET)
            .filter(f -> f.spoken().own().equals(line.spoken().own()))
            .allMatch(f -> f.number() == line.number());
  }

  /** Numbers in runs: "1 to 4, 7". */
  public static String numbers(List<Integer> numbers) {
    List<String> runs = new ArrayList<>();
    int at = 0;
    while (at < numbers.size()) {
      int end = at;
      while (end + 1 < numbers.size() && numbers.get(end + 1) == numbers.get(end) + 1) {
        end++;
      }
      runs.add(
          end - at < 2
              ? join(numbers.subList(at, end + 1))
              : numbers.get(at) + " to " + numbers.get(end));
      at = end + 1;
    }
    return String.join(", ", runs);
  }

  private static String join(List<Integer> numbers) {
    return String.join(", ", numbers.stream().map(String::valueOf).toList());
  }
}
