package facetwright.net;

/** A net that breaks an invariant: what is wrong, in a maker's words, and which script line did. */
public final class NetException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Site site;

  public NetException(String message, Site site) {
    super(message);
    this.site = site;
  }

  public Site site() {
    return site;
  }
}
