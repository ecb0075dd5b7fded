package facetwright.script;

import facetwright.net.sheet.Laid;

/** What else has to hold for a net that lies whole on one sheet to count as fitting it. */
@FunctionalInterface
public interface Packing {
  /** That it lies there is enough. */
  Packing ONE = _ -> true;

  /**
   * Whether it fits.
   *
   * @param laid the net on the one sheet
   */
  boolean holds(Laid laid);
}
