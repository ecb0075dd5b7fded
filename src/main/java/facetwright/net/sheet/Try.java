package facetwright.net.sheet;

import facetwright.geom.Motion2;

/**
 * A way to lay pieces on sheets.
 *
 * @param stock the sheet as it lies
 * @param room kept free round the pieces
 * @param motions for each piece of the net that is laid, from where it lay to where it lies
 */
@SuppressWarnings("ArrayRecordComponent") // Read alone, and never compared.
record Try(Stock stock, Room room, Motion2[] motions, int sheets, boolean fits) {
  boolean betterThan(Try other) {
    return fits == other.fits ? fits && sheets < other.sheets : fits;
  }

  boolean isOneSheet() {
    return fits && sheets == 1;
  }
}
