package facetwright.aim;

/** What a trial came to. */
public sealed interface Tried permits Measured, Tried.Refused {

  /**
   * There is no design at these values.
   *
   * @param why in a maker's words
   */
  record Refused(String why) implements Tried {}
}
