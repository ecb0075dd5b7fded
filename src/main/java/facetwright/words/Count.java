package facetwright.words;

/** Things counted, in words. */
public final class Count {
  private Count() {}

  /**
   * "1 seam", "3 seams".
   *
   * @param one what one of them is called; more of them end in s
   */
  public static String of(long n, String one) {
    return of(n, one, one + "s");
  }

  /** The same where more of them are called otherwise, or do otherwise: "1 seam has". */
  public static String of(long n, String one, String more) {
    return n + " " + (n == 1 ? one : more);
  }
}
