package facetwright.cli.desk;

/** Exit codes. */
public final class Exit {
  public static final int SOUND = 0;
  public static final int ERROR_FOUND = 1;
  public static final int WRONG_CALL = 2;

  private Exit() {}

  /** For a design, or an answer, that is sound, or is not. */
  public static int of(boolean isSound) {
    return isSound ? SOUND : ERROR_FOUND;
  }
}
