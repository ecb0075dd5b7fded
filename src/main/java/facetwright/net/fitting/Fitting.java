package facetwright.net.fitting;

import facetwright.words.Site;
import java.io.Serializable;
import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * A thing with its place and its moment.
 *
 * @param panels of the body that it goes in or on
 * @param site where the script asks for it
 */
public record Fitting(Extra thing, List<Integer> panels, Moment moment, Site site)
    implements Serializable {
  public Fitting {
    panels = List.copyOf(panels);
  }

  /** The same where panels have other numbers. */
  Fitting numbered(IntUnaryOperator now) {
    Extra same =
        thing instanceof Extra.Ribbon r
            ? new Extra.Ribbon(r.length(), r.width(), numbered(r.through(), now), r.tied())
            : thing;
    return new Fitting(
        same,
        numbered(panels, now),
        new Moment(moment.when(), numbered(moment.panels(), now)),
        site);
  }

  private static List<Integer> numbered(List<Integer> panels, IntUnaryOperator now) {
    return panels.stream().map(now::applyAsInt).toList();
  }
}
