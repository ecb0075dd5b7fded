package facetwright.papers.materials;

import facetwright.language.Telling;
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

  /** For a score or a cut. */
  private static final double CUT = 0.4;

  private static final double HOLE = 0.3;
  private static final double LAYER = 1;
  private static final double TRIM = 0.5;
  private static final double JOIN = 1.5;

  private Rules() {}

  /** In minutes, for one who has made it before; setting out the table is counted once. */
  static double minutes(int scores, int cuts, int holes, int layers, int joins, int trims) {
    return SET_UP
        + scores * CUT
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
  public static List<String> words(Materials of, Telling tell) {
    boolean isPunched = of.holes() > 0;
    List<String> words = new ArrayList<>();
    words.add(tell.say("materials.rule-spare"));
    if (of.glueArea() > 0) {
      words.add(tell.say("materials.rule-tape"));
    }
    if (isPunched || of.needs().stream().anyMatch(n -> n.key().equals("ribbon"))) {
      words.add(tell.say("materials.rule-ribbon", "bow", tell.number(BOW, 0)));
    }
    words.add(
        tell.say(
            "materials.rule-time",
            "start",
            tell.number(SET_UP, 1),
            "cut",
            tell.number(CUT, 1),
            "punched",
            String.valueOf(isPunched),
            "hole",
            tell.number(HOLE, 1),
            "papered",
            String.valueOf(of.isPapered()),
            "layer",
            tell.number(LAYER, 1),
            "trim",
            tell.number(TRIM, 1),
            "join",
            tell.number(JOIN, 1)));
    return List.copyOf(words);
  }
}
