package facetwright.papers.materials;

import facetwright.fold.making.GlueOrder;
import facetwright.measure.Unit;
import facetwright.net.sheet.CommonSheets;
import facetwright.net.sheet.Laid;
import facetwright.net.sheet.SheetSize;
import facetwright.papers.cutting.Paper;
import facetwright.papers.layers.LayerCuts;
import facetwright.papers.layers.LayerGroup;
import facetwright.papers.layers.LayerPaper;
import facetwright.papers.layers.LayerPlan;
import facetwright.papers.layers.Layers;
import java.util.ArrayList;
import java.util.List;

/**
 * Layers, their cuts and the materials of so many pieces, reckoned together.
 *
 * @param layers the layers of one piece
 * @param plans how they are cut, one a paper
 * @param materials what all takes
 */
public record Works(Layers layers, List<LayerPlan> plans, Materials materials) {
  public Works {
    plans = List.copyOf(plans);
  }

  /**
   * Papers that layers name and nothing is known of are taken to come in the usual sheet, with a
   * face and without a direction.
   *
   * @param gluing how the net is made up
   * @param pieces of the design, 1 or more
   * @throws IllegalArgumentException when a layer fits no sheet of its paper; the message says
   *     which
   */
  public static Works of(
      Laid laid, GlueOrder gluing, Unit unit, List<LayerPaper> papers, int pieces) {
    Layers layers = Layers.of(laid.net(), gluing.form(), papers);
    List<LayerPaper> known = new ArrayList<>(papers);
    for (String name : layers.papers()) {
      if (papers.stream().noneMatch(p -> p.name().equals(name))) {
        List<LayerGroup> groups =
            layers.groups().stream().filter(g -> g.paper().equals(name)).toList();
        known.add(new LayerPaper(name, List.of(holding(groups, unit)), true, false));
      }
    }
    List<LayerPlan> plans = LayerCuts.plan(layers, pieces, known);
    return new Works(layers, plans, Materials.of(laid, gluing, plans, pieces));
  }

  /** What the sheet of a layer is called that no usual sheet holds. */
  static final String AS_LARGE = "a sheet as large as the layers";

  /** The usual sheet, or where a layer is larger, the first size that holds all. */
  private static Paper holding(List<LayerGroup> groups, Unit unit) {
    double wide = 0;
    double high = 0;
    for (LayerGroup g : groups) {
      wide = Math.max(wide, Math.min(g.width(), g.height()));
      high = Math.max(high, Math.max(g.width(), g.height()));
    }
    for (SheetSize size : CommonSheets.forLayers(unit)) {
      if (wide <= size.width() && high <= size.height()) {
        return new Paper(size.name(), size.width(), size.height());
      }
    }
    return new Paper(AS_LARGE, wide, high);
  }

  /** The usual sheet of layer paper. */
  public static Paper usual(Unit unit) {
    SheetSize size = CommonSheets.forLayers(unit).getFirst();
    return new Paper(size.name(), size.width(), size.height());
  }
}
