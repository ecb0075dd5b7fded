package facetwright.draw.page;

import facetwright.draw.Drawing;
import facetwright.draw.picture.CutPicture;
import facetwright.language.Telling;
import facetwright.papers.cutting.SheetPlan;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.materials.LayersText;
import facetwright.papers.materials.Works;
import facetwright.papers.order.Named;
import facetwright.papers.order.Order;
import facetwright.words.Sentence;
import java.util.List;

/** How layers are cut: for each sheet its picture, not to scale, and its numbered cuts. */
public final class CutPages {
  /** How much of the page's height the picture of a sheet takes. */
  private static final double TALL = 0.46;

  private CutPages() {}

  /**
   * @param title of the design
   * @return pages on each sheet that is cut in a way of its own; none where there are no layers
   */
  public static List<Drawing> of(String title, Order order, Works works) {
    if (works.plans().isEmpty()) {
      return List.of();
    }
    double tall = TALL * order.page().height();
    LayersText words = new LayersText(order);
    Telling tell = order.telling();
    Flow flow = new Flow(order.page(), title, Named.paper("layers", tell), tell);
    flow.title(title, Sentence.capital(Named.paper("layers", tell)) + ".");
    flow.words(words.caution());
    for (LayerPlan plan : works.plans()) {
      flow.heading(words.paper(plan.paper()));
      flow.words(words.summary(plan));
      words.groups(plan).forEach(g -> flow.item("–", g));
      words.lost(works).ifPresent(flow::words);
      List<SheetPlan> sheets = plan.plan().sheets();
      for (SheetPlan sheet : sheets) {
        flow.heading(words.sheet(sheet), tall + 20);
        flow.words(words.given(sheet, plan));
        flow.words(tell.say("cuts.picture"));
        flow.gap(2);
        flow.putCentred(CutPicture.of(sheet, plan, flow.width(), tall, tell));
        flow.gap(3);
        words.steps(sheet, plan).forEach(flow::words);
      }
    }
    return flow.pages();
  }
}
