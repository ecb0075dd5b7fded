package facetwright.workbench.table;

import facetwright.draw.NetDrawing.Content;
import java.util.EnumSet;
import java.util.Set;

/**
 * What the table shows of a net.
 *
 * @param inside whether the inside of the card lies up
 * @param layers whether decorative layers are shown
 * @param names whether panels are named
 * @param glue whether glued areas are hatched
 */
public record TableLook(boolean inside, boolean layers, boolean names, boolean glue) {
  public static final TableLook USUAL = new TableLook(false, true, true, true);

  Set<Content> content() {
    Set<Content> shown = EnumSet.of(Content.CARD, Content.TICKS);
    if (!inside) {
      shown.add(Content.LABELS);
    }
    if (layers) {
      shown.add(Content.LAYERS);
    }
    if (names) {
      shown.add(Content.NAMES);
    }
    if (glue) {
      shown.add(Content.GLUE);
    }
    return shown;
  }
}
