package facetwright.script.api;

import facetwright.net.Net;
import facetwright.net.Panel;
import facetwright.net.PanelRole;
import facetwright.words.Site;
import java.util.function.Supplier;

/** Where a net of the design comes from. */
public sealed interface Source {
  /** What it is made of, by which it is told from others. */
  Object of();

  /**
   * Made by the script.
   *
   * @param net asked for when the script has ended
   * @param speaking how the script speaks of its panels
   */
  record Own(Object of, Supplier<Net> net, Speaking speaking) implements Source {
    /** Where the maker named a panel of it; nowhere for one that got its name by itself. */
    @SuppressWarnings("ReferenceEquality") // One way of speaking is no other, however alike.
    public Site named(Panel panel) {
      boolean isNamed = speaking == Speaking.BY_NAME && panel.role() != PanelRole.TAB;
      return isNamed ? panel.site() : Site.NONE;
    }
  }

  /**
   * The mirror image of a part.
   *
   * @param like the part, which comes of a source before
   */
  record Image(Object of, PartDraft like) implements Source {}
}
