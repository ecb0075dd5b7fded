package facetwright.cli.desk;

/** Exit codes. */
public final class Exit {
  public static final int SOUND = 0;
  public static final int ERROR_FOUND = 1;
  public static final int WRONG_CALL = 2;

  private Exit() {}
}
