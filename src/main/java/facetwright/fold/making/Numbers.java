package facetwright.fold.making;

import facetwright.net.Join;
import facetwright.net.Net;
import facetwright.net.Parts;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The numbers by which words, pictures and templates tell what is glued, from 1 in the order of
 * gluing. Parts made alike bear the same numbers, those of the first.
 */
public final class Numbers {
  /** Where nothing is glued. */
  public static final Numbers NONE = new Numbers(Map.of(), List.of());

  private final Map<Bond, Integer> numbers;
  private final List<Bond> bonds;

  private Numbers(Map<Bond, Integer> numbers, List<Bond> bonds) {
    this.numbers = numbers;
    this.bonds = List.copyOf(bonds);
  }

  static Numbers of(Net net, List<Gluing.Stage> stages) {
    List<Bond> bonds = Gluing.numbered(stages);
    Map<Integer, Integer> likeness = likeness(net);
    Map<List<Integer>, Integer> known = new HashMap<>();
    Map<Bond, Integer> numbers = new HashMap<>();
    for (int pass = 0; pass < 2; pass++) {
      for (Bond bond : bonds) {
        List<Integer> own = key(net, bond);
        List<Integer> like = own.stream().map(p -> likeness.getOrDefault(p, p)).toList();
        if (pass == 0 && own.equals(like)) {
          known.put(own, known.size() + 1);
        }
        if (pass == 1) {
          int next = known.size() + 1;
          numbers.put(bond, known.computeIfAbsent(like, _ -> next));
        }
      }
    }
    return new Numbers(numbers, bonds);
  }

  /** The numbers of tabs, flaps and what lies under a lap, by the panel that bears them. */
  public Map<Integer, Integer> ofPanels(Net net) {
    Map<Integer, Integer> found = new TreeMap<>();
    for (Bond bond : bonds) {
      int panel =
          switch (bond) {
            case Bond.Closing(int tab) -> tab;
            case Bond.Joined(int join) ->
                switch (net.joins().get(join)) {
                  case Join.Seam s -> s.tab();
                  case Join.Lap l -> l.under();
                };
          };
      if (panel != Join.Seam.NO_TAB) {
        found.put(panel, of(bond));
      }
    }
    return found;
  }

  /** All that has a number, in order of gluing. */
  public List<Bond> bonds() {
    return bonds;
  }

  /** The number of one of {@link #bonds}. */
  public int of(Bond bond) {
    return numbers.get(bond);
  }

  /** For each panel of a part made like another, the panel of the first. */
  private static Map<Integer, Integer> likeness(Net net) {
    Map<Integer, Integer> of = new HashMap<>();
    for (Parts.Part part : net.parts().all()) {
      List<Integer> first = net.parts().all().get(part.first()).panels();
      for (int i = 0; i < Math.min(first.size(), part.panels().size()); i++) {
        of.put(part.panels().get(i), first.get(i));
      }
    }
    return of;
  }

  private static List<Integer> key(Net net, Bond bond) {
    return switch (bond) {
      case Bond.Closing(int tab) -> List.of(tab);
      case Bond.Joined(int join) ->
          switch (net.joins().get(join)) {
            case Join.Seam s when s.tab() == Join.Seam.NO_TAB ->
                List.of(s.a().panel(), s.a().edge(), s.b().panel(), s.b().edge());
            case Join.Seam s -> List.of(s.tab());
            case Join.Lap l -> List.of(l.under(), l.over());
          };
    };
  }
}
