package facetwright.adjust;

import facetwright.measure.Ruler;
import facetwright.papers.chart.Measure;
import facetwright.papers.chart.ToSet;
import facetwright.words.Sentence;

/** How many measures lie on a ruler's marks, before and after, in words. */
public final class OnMarks {
  private OnMarks() {}

  /**
   * A sentence or two on all of them.
   *
   * @param isTurned whether anything was turned, so that before is not after
   */
  public static String text(ToSet before, ToSet after, Ruler ruler, boolean isTurned) {
    int all = all(after);
    int on = on(after);
    String many =
        all == 1
            ? on == 1 ? "The one measure to set lies" : "The one measure to set does not lie"
            : (on == all ? "All " + all : on == 0 ? "None of " + all : on + " of " + all)
                + " different measures to set "
                + (on == 1 || on == 0 ? "lies" : "lie");
    String was =
        isTurned
            ? "; before, " + (on(before) == 0 ? "none" : on(before) + " of " + all(before)) + " did"
            : "";
    return many
        + " on the marks of a ruler of "
        + ruler.name()
        + was
        + "."
        + (on == all ? "" : " " + between(after) + " between marks.");
  }

  private static int all(ToSet set) {
    return ToSet.distinct(set.all()).size();
  }

  private static int on(ToSet set) {
    return (int) ToSet.distinct(set.all()).stream().filter(Measure::isOnRuler).count();
  }

  private static String between(ToSet set) {
    String form = counted(set.formOff()) + " of the form";
    String cuts = counted(set.cutsOff()) + " of the cuts";
    String which = set.formOff() == 0 ? cuts : set.cutsOff() == 0 ? form : form + " and " + cuts;
    return Sentence.capital(which) + (set.formOff() + set.cutsOff() == 1 ? " lies" : " lie");
  }

  private static String counted(int count) {
    return count == 1 ? "one" : Integer.toString(count);
  }
}
