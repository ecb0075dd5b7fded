package facetwright.papers.materials;

import java.util.ArrayList;
import java.util.List;

/** The rules of thumb; common practice, no source. */
public final class Rules {
  /** Ribbon beyond what goes round the piece, for a bow, in mm. */
  static final double BOW = 400;

  /** How many finished heights of ribbon go through the holes. */
  static final double HEIGHTS = 3;

  /** Of each thing, this part more than needed. */
  static final double SPARE = 0.1;

  private static final double SET_UP = 10;
  private static final double SCORE = 0.4;
  private static final double CUT = 0.4;
  private static final double HOLE = 0.3;
  private static final double LAYER = 1;
  private static final double TRIM = 0.5;
  private static final double JOIN = 1.5;

  private Rules() {}

  /** In minutes, for one who has made it before; setting out the table is counted once. */
  static double minutes(int scores, int cuts, int holes, int layers, int joins, int trims) {
    return SET_UP
        + scores * SCORE
        + cuts * CUT
        + holes * HOLE
        + layers * LAYER
        + joins * JOIN
        + trims * TRIM;
  }

  /**
   * Each rule that so many pieces go by, in a sentence.
   *
   * @param of what they take
   */
  public static List<String> words(Materials of) {
    boolean isPunched = of.holes() > 0;
    List<String> words = new ArrayList<>();
    words.add(
        "Spare: one in ten more of everything, at least one sheet of each paper, rounded up to"
            + " whole sheets and whole metres; of lights and the like none until there are ten.");
    if (of.glueArea() > 0) {
      words.add(
          "Tape: one run of double-sided tape along every tab, lap and closing flap that is glued."
              + " Glue: the area of all tabs and of what lies under a lap.");
    }
    if (isPunched || of.needs().stream().anyMatch(n -> n.key().equals("ribbon"))) {
      words.add(
          "Ribbon: as long as the design says; where it says nothing, three finished heights and"
              + " 400 mm for a bow, for each piece that has holes.");
    }
    words.add(
        "Time, for one who has made it before: 10 minutes to set out; then 0.4 minutes a score or"
            + " a cut,"
            + (isPunched ? " 0.3 a hole," : "")
            + (of.isPapered() ? " 1 a layer glued on, 0.5 a trimmer cut," : "")
            + " 1.5 a join. A beginner takes twice as long.");
    return List.copyOf(words);
  }
}
