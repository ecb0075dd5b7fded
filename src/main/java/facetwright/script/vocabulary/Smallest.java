package facetwright.script.vocabulary;

import facetwright.form.Form;
import facetwright.form.unfold.UnfoldResult;
import facetwright.form.unfold.Unfolding;
import facetwright.geom.Box2;
import facetwright.measure.Unit;
import facetwright.net.Net;
import facetwright.net.sheet.CommonSheets;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.SheetLayout;
import facetwright.net.sheet.SheetSize;
import facetwright.net.sheet.Stock;

/**
 * Unfolds a form for the smallest common sheet that holds any of its nets, where no sheet is named.
 * The net that packs small may be a strip too long for a sheet that another net lies on.
 */
final class Smallest {
  private Smallest() {}

  /** The net that packs small where none lies on a smaller sheet than it does. */
  static UnfoldResult unfold(Form form, Unfolding unfolding, Unit unit) {
    UnfoldResult packed = unfolding.unfold(form);
    for (SheetSize size : CommonSheets.forNets(unit)) {
      if (liesOn(packed.net(), size)) {
        return packed;
      }
      UnfoldResult other = unfolding.fitting(size.width(), size.height()).unfold(form);
      if (!other.splits() && liesOn(other.net(), size)) {
        return other;
      }
    }
    return packed;
  }

  private static boolean liesOn(Net net, SheetSize size) {
    Box2 box = net.box();
    if (Math.max(box.width(), box.height()) <= Math.max(size.width(), size.height())
        && Math.min(box.width(), box.height()) <= Math.min(size.width(), size.height())) {
      return true;
    }
    Laid laid = SheetLayout.lay(net, size.stock(Stock.USUAL_WEIGHT));
    return laid.fits() && laid.sheets() == 1;
  }
}
