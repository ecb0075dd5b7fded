package facetwright.script;

import facetwright.net.sheet.Laid;

/** What else has to hold for a net that lies whole on one sheet to count as fitting it. */
@FunctionalInterface
public interface Packing {
  /** That it lies there with the room round it that it should have. */
  Packing ONE = laid -> laid.kept().equals(laid.wanted());

  /**
   * Whether it fits.
   *
   * @param laid the net on the one sheet
   */
  boolean holds(Laid laid);
}
