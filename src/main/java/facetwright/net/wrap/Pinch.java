package facetwright.net.wrap;

/** Which way the middle of a pinched edge goes when its halves meet. */
public enum Pinch {
  /** Into the form: the diagonal scores are valleys, the scores beside the gusset mountains. */
  IN,
  /** Out of the form: the diagonal scores are mountains, the scores beside the gusset valleys. */
  OUT
}
