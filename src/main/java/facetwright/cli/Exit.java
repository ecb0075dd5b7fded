package facetwright.cli;

/** Exit codes. */
final class Exit {
  static final int SOUND = 0;
  static final int ERROR_FOUND = 1;
  static final int WRONG_CALL = 2;

  private Exit() {}
}
