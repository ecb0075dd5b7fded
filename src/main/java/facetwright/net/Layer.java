package facetwright.net;

import java.io.Serializable;

/**
 * A decorative paper glued on a panel, smaller by the reveal all round.
 *
 * @param panel the panel it is glued on
 * @param reveal the border of card left showing, in mm, 0 or more
 * @param paper the name of the paper, for sorting
 */
public record Layer(int panel, double reveal, String paper, Site site) implements Serializable {}
