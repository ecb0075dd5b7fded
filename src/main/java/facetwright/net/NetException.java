package facetwright.net;

import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.List;

/** A net that breaks an invariant: what is wrong, in a maker's words, and which script line did. */
public final class NetException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Site site;
  private final List<Mend> mends;

  public NetException(String message, Site site) {
    this(message, site, List.of());
  }

  /**
   * @param mends changes of the script's text that would put it right
   */
  public NetException(String message, Site site, List<Mend> mends) {
    super(message);
    this.site = site;
    this.mends = List.copyOf(mends);
  }

  /** Changes of the script's text that would put it right; often none. */
  public List<Mend> mends() {
    return mends;
  }

  public Site site() {
    return site;
  }
}
