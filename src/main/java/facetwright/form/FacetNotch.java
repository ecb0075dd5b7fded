package facetwright.form;

import facetwright.net.panel.Notch;
import facetwright.words.Site;
import java.io.Serializable;

/**
 * A notch in a side of a facet that nothing is joined along.
 *
 * @param side the facet's side, from 0
 * @param site where it was said
 */
public record FacetNotch(int side, Notch notch, Site site) implements Serializable {}
