package facetwright.net.draft;

/** How a tab is cut where nothing else is asked for; common practice, no source. */
public final class UsualTab {
  /** How far it reaches under its neighbour, in mm. */
  public static final double DEPTH = 10;

  /** The angle between the glued edge and its slanted ends, in degrees. */
  public static final double BEVEL = 45;

  private UsualTab() {}
}
