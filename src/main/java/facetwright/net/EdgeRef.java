package facetwright.net;

import java.io.Serializable;

/**
 * One side of a panel: side {@code edge} runs from corner {@code edge} of the outline to the next.
 *
 * @param panel index of the panel in its net
 * @param edge index of the side
 */
public record EdgeRef(int panel, int edge) implements Serializable {}
