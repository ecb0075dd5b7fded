package facetwright.papers.materials;

import facetwright.net.Net;
import facetwright.words.Count;

/**
 * How much practice a piece takes, as a rough estimate: by how many things hands do to it, folds,
 * cuts and places that are joined, each counted once. What is small or slanted is harder than that
 * tells. The bounds are common practice, no source.
 */
public enum Level {
  EASY(1, "for a first piece"),
  PRACTICE(2, "for some practice"),
  PATIENCE(3, "for patient hands");

  /** Nobody estimates a time more closely, in minutes. */
  private static final int QUARTER = 15;

  private static final int HOUR = 60;

  private static final int EASIEST = 45;
  private static final int HARDEST = 150;

  private final int number;
  private final String words;

  Level(int number, String words) {
    this.number = number;
    this.words = words;
  }

  /** Of one piece of this net. */
  public static Level of(Net net) {
    int all = net.scores().size() + net.cuts() + net.joins().size();
    return all < EASIEST ? EASY : all < HARDEST ? PRACTICE : PATIENCE;
  }

  /** In words, with what it comes from: "2 of 3, for some practice: 60 folds, …". */
  public static String text(Net net) {
    Level level = of(net);
    return level.number
        + " of "
        + values().length
        + ", "
        + level.words
        + ": "
        + Count.of(net.scores().size(), "fold")
        + ", "
        + Count.of(net.cuts(), "cut")
        + ", "
        + Count.of(net.joins().size(), "join");
  }

  /** How long one piece takes, to follow on a colon: the estimate of {@link Rules}. */
  public static String time(Materials m) {
    long quarters = Math.max(1, Math.round(m.minutes() / m.pieces() / QUARTER));
    long minutes = quarters * QUARTER;
    String text =
        minutes < HOUR
            ? minutes + " minutes"
            : minutes / HOUR + " h" + (minutes % HOUR == 0 ? "" : " " + minutes % HOUR + " min");
    return "about " + text + " for practised hands, twice as long the first time";
  }
}
