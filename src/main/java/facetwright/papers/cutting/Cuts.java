package facetwright.papers.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A sheet's tree of cuts as numbered steps. Equal cuts that follow each other are one step, and
 * equal parts are cut in one step, so that a stop is set once.
 */
public final class Cuts {
  private final List<Wanted> wanted;
  private final List<Cut> steps = new ArrayList<>();
  private final Map<Part.Cut, Ready> ready = new LinkedHashMap<>();
  private final Map<Part.Cut, Integer> firsts = new HashMap<>();
  private int letters;
  private int number = 1;

  /** Equal parts that lie ready to be cut on. */
  private record Ready(String letter, int count) {}

  private Cuts(List<Wanted> wanted) {
    this.wanted = wanted;
  }

  /** In the order in which they are done. */
  public static List<Cut> of(SheetPlan sheet, List<Wanted> wanted) {
    return List.copyOf(done(sheet, wanted).steps);
  }

  /**
   * The number of the cut that first divides a part, by the part; equal parts are cut in one go.
   * The equal cuts that follow it in the same step count on from there.
   */
  static Map<Part.Cut, Integer> firsts(SheetPlan sheet, List<Wanted> wanted) {
    return Map.copyOf(done(sheet, wanted).firsts);
  }

  /** How many equal cuts, each of what the one before left, begin with this one. */
  static int times(Part.Cut part) {
    int times = 0;
    Part rest = part;
    while (rest instanceof Part.Cut next
        && next.way() == part.way()
        && next.at() == part.at()
        && next.first().equals(part.first())) {
      times++;
      rest = next.second();
    }
    return times;
  }

  private static Cuts done(SheetPlan sheet, List<Wanted> wanted) {
    Cuts all = new Cuts(wanted);
    if (sheet.whole() instanceof Part.Cut whole) {
      all.cut(whole, "", 1);
      // A part comes out of larger ones only: taken by size, all equal ones lie ready.
      for (Part.Cut next = all.largest(); next != null; next = all.largest()) {
        Ready ready = all.ready.remove(next);
        all.cut(next, ready.letter, ready.count);
      }
    }
    return all;
  }

  private Part.Cut largest() {
    Part.Cut largest = null;
    for (Part.Cut part : ready.keySet()) {
      largest = largest == null || part.area() > largest.area() ? part : largest;
    }
    return largest;
  }

  private void cut(Part.Cut part, String name, int of) {
    int times = times(part);
    Part rest = part;
    for (int i = 0; i < times; i++) {
      rest = ((Part.Cut) rest).second();
    }
    firsts.put(part, number);
    Cut.Name off = name(part.first(), of * times);
    steps.add(new Cut(number, times, name, of, part.way(), part.at(), off, name(rest, of)));
    number += times;
  }

  private Cut.Name name(Part part, int count) {
    return switch (part) {
      case Part.Waste _ -> new Cut.Name.Waste();
      case Part.Piece piece -> new Cut.Name.Piece(wanted.get(piece.kind()).name());
      case Part.Cut cut -> {
        Ready known = ready.get(cut);
        String letter = known == null ? letter(letters++) : known.letter;
        ready.put(cut, new Ready(letter, count + (known == null ? 0 : known.count)));
        yield new Cut.Name.Part(letter);
      }
    };
  }

  /** A to Z, then AA and so on. */
  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }
}
