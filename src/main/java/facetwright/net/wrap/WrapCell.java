package facetwright.net.wrap;

import facetwright.geom.Polygon2;
import facetwright.geom.Vec2;
import facetwright.net.Backing;
import facetwright.net.draft.PanelDraft;
import facetwright.net.fitting.Lettered;
import facetwright.words.Site;
import java.util.ArrayList;
import java.util.List;

/** What has been asked of one cell of a wrap. */
final class WrapCell {
  final int row;
  final int column;
  boolean removed;
  Site removedSite = Site.NONE;
  Pinch gusset;

  /** Which edge is pinched; null where that is not said. */
  CellSide gussetEdge;

  Site gussetSite = Site.NONE;
  Tab tab;
  final List<Cutout> cutouts = new ArrayList<>();
  final List<Lettered> labels = new ArrayList<>();
  PanelDraft.LayerDraft layer;
  Backing backing;

  boolean hasWindow() {
    return cutouts.stream().anyMatch(c -> !(c instanceof Cutout.Punch));
  }

  WrapCell(int row, int column) {
    this.row = row;
    this.column = column;
  }

  /**
   * A cell made a tab.
   *
   * @param bevel degrees each end is cut back from square; below 0 for the usual
   */
  record Tab(double bevel, Site site) {}

  /** What is taken out of the cell; places are measured from its middle. */
  sealed interface Cutout {
    Site site();

    record Border(double inset, Site site) implements Cutout {}

    record Shape(Polygon2 outline, Site site) implements Cutout {}

    /**
     * @param at null for the middle of the panel
     */
    record Punch(double diameter, Vec2 at, Site site) implements Cutout {}
  }
}
