package facetwright.measure;

import facetwright.words.Decimals;

/** Volumes as they are poured: in millilitres for every reader. */
public final class Millilitres {
  /** In mm³. */
  public static final double ONE = Math.pow(Unit.CM.mm(), 3);

  private Millilitres() {}

  /** In whole millilitres, under ten to a tenth: "150 ml". */
  public static String rounded(double mm3) {
    double ml = mm3 / ONE;
    return Decimals.places(ml, ml < 10 ? 1 : 0) + " ml";
  }
}
