package facetwright.form.unfold;

import facetwright.net.Net;
import java.io.Serializable;
import java.util.List;

/**
 * A form laid flat.
 *
 * @param net panel {@code i} is facet {@code i} of the form; the tabs follow
 * @param splits whether it takes more than one piece of card
 * @param tries how many trees of scores were tried
 * @param notes what a maker should know: pieces, tabs that shrank or were left out, a style that
 *     didn't work
 */
public record UnfoldResult(Net net, boolean splits, int tries, List<UnfoldNote> notes)
    implements Serializable {
  public UnfoldResult {
    notes = List.copyOf(notes);
  }
}
