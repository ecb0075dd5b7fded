package facetwright.script.api;

import facetwright.net.fitting.Extra;
import facetwright.net.fitting.Moment;
import facetwright.words.Site;
import java.util.List;

/**
 * Something that goes in or on, as the script asks for it: panels are still named by words.
 *
 * @param of what it goes in: a wrap, a blank, a panel, or a form laid flat
 * @param thing what it is; a ribbon goes through no panels yet
 * @param through the panels whose holes a ribbon goes through; empty for all that have some
 * @param when its moment
 * @param names the panels that the moment is told by; empty for one that needs none
 */
public record FittingDraft(
    Object of, Extra thing, List<String> through, Moment.When when, List<String> names, Site site) {
  public FittingDraft {
    through = List.copyOf(through);
    names = List.copyOf(names);
  }

  /** The same in something else. */
  public FittingDraft of(Object other) {
    return new FittingDraft(other, thing, through, when, names, site);
  }
}
