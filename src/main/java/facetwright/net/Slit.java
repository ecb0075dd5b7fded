package facetwright.net;

import facetwright.words.Site;
import java.io.Serializable;

/** A cut that two panels share: they lie side by side in the net but do not hang together. */
public record Slit(EdgeRef a, EdgeRef b, Site site) implements Serializable {}
