package facetwright.papers.materials;

import facetwright.language.Telling;
import facetwright.net.Net;
import java.util.Locale;

/**
 * How much practice a piece takes, as a rough estimate: by how many things hands do to it, folds,
 * cuts and places that are joined, each counted once. What is small or slanted is harder than that
 * tells. The bounds are common practice, no source.
 */
public enum Level {
  EASY(1),
  PRACTICE(2),
  PATIENCE(3);

  /** Nobody estimates a time more closely, in minutes. */
  private static final int QUARTER = 15;

  private static final int HOUR = 60;

  private static final int EASIEST = 45;
  private static final int HARDEST = 150;

  private final int number;

  Level(int number) {
    this.number = number;
  }

  /** Of one piece of this net. */
  public static Level of(Net net) {
    int all = net.scores().size() + net.cuts() + net.joins().size();
    return all < EASIEST ? EASY : all < HARDEST ? PRACTICE : PATIENCE;
  }

  /** A sentence, with what it comes from: "Level 2 of 3, for some practice: 60 folds, …". */
  public static String text(Net net, Telling tell) {
    Level level = of(net);
    return tell.say(
        "materials.level",
        "level",
        level.number,
        "levels",
        values().length,
        "which",
        level.name().toLowerCase(Locale.ROOT),
        "folds",
        net.scores().size(),
        "cuts",
        net.cuts(),
        "joins",
        net.joins().size());
  }

  /** How long one piece takes, a sentence: the estimate of {@link Rules}. */
  public static String time(Materials m, Telling tell) {
    long quarters = Math.max(1, Math.round(m.minutes() / m.pieces() / QUARTER));
    long minutes = quarters * QUARTER;
    return tell.say("materials.practised", "hours", minutes / HOUR, "minutes", minutes % HOUR);
  }
}
