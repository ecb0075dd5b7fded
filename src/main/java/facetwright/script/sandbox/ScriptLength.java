package facetwright.script.sandbox;

/** How long a script may be: as long as one can be written in without the window lagging behind. */
public final class ScriptLength {
  /** In letters; in bytes, where a file is looked at before it is read. */
  public static final int MOST = 200_000;

  /** Why a longer one is refused, after what it is called. */
  public static final String WRONG = " is longer than the 200,000 letters that a script may have";

  public static final String REMEDY =
      "A design's script is far shorter: is it the right one? Long lists can be made in a loop";

  private ScriptLength() {}
}
