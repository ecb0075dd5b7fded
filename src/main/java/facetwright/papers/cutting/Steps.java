package facetwright.papers.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A sheet's tree of cuts as numbered steps. Equal cuts that follow each other are one step, and
 * equal parts are cut in one step, so that a stop is set once.
 */
public final class Steps {
  private final List<Wanted> wanted;
  private final List<Step> steps = new ArrayList<>();
  private final Map<Part.Cut, Ready> ready = new LinkedHashMap<>();
  private int letters;
  private int number = 1;

  /** Equal parts that lie ready to be cut on. */
  private record Ready(String letter, int count) {}

  private Steps(List<Wanted> wanted) {
    this.wanted = wanted;
  }

  /** In the order in which they are done. */
  public static List<Step> of(SheetPlan sheet, List<Wanted> wanted) {
    Steps all = new Steps(wanted);
    if (sheet.whole() instanceof Part.Cut whole) {
      all.cut(whole, "", 1);
      // A part comes out of larger ones only: taken by size, all equal ones lie ready.
      for (Part.Cut next = all.largest(); next != null; next = all.largest()) {
        Ready ready = all.ready.remove(next);
        all.cut(next, ready.letter, ready.count);
      }
    }
    return List.copyOf(all.steps);
  }

  private Part.Cut largest() {
    Part.Cut largest = null;
    for (Part.Cut part : ready.keySet()) {
      largest = largest == null || part.area() > largest.area() ? part : largest;
    }
    return largest;
  }

  private void cut(Part.Cut part, String name, int of) {
    int times = 0;
    Part rest = part;
    while (rest instanceof Part.Cut next
        && next.way() == part.way()
        && next.at() == part.at()
        && next.first().equals(part.first())) {
      times++;
      rest = next.second();
    }
    Step.Name off = name(part.first(), of * times);
    steps.add(new Step(number, times, name, of, part.way(), part.at(), off, name(rest, of)));
    number += times;
  }

  private Step.Name name(Part part, int count) {
    return switch (part) {
      case Part.Waste _ -> new Step.Name.Waste();
      case Part.Piece piece -> new Step.Name.Piece(wanted.get(piece.kind()).name());
      case Part.Cut cut -> {
        Ready known = ready.get(cut);
        String letter = known == null ? letter(letters++) : known.letter;
        ready.put(cut, new Ready(letter, count + (known == null ? 0 : known.count)));
        yield new Step.Name.Part(letter);
      }
    };
  }

  /** A to Z, then AA and so on. */
  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }
}
