package facetwright.export;

import facetwright.check.Checks;
import facetwright.fold.making.GlueOrder;
import facetwright.fold.pose.FoldedForm;
import facetwright.net.sheet.Laid;
import facetwright.papers.handout.Judgement;
import facetwright.papers.order.Order;

/** Jobs of nets that no script made: what is found in them is what the rules find. */
final class Jobs {
  private Jobs() {}

  static Job of(String title, String author, Laid laid, FoldedForm form, Order order) {
    GlueOrder gluing = GlueOrder.of(laid.net(), form);
    return new Job(
        title, author, laid, gluing, order, Judgement.of(laid, form, Checks.all(laid, gluing)));
  }
}
