package facetwright.net;

import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.List;

/** A net that breaks an invariant: what is wrong, in a maker's words, and which script line did. */
public final class NetException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Message told;
  private final Site site;
  private final List<Mend> mends;

  public NetException(String message, Site site) {
    this(message, site, List.of());
  }

  public NetException(Message told, Site site) {
    this(told, site, List.of());
  }

  /**
   * @param mends changes of the script's text that would put it right
   */
  public NetException(String message, Site site, List<Mend> mends) {
    this(Message.text(message), site, mends);
  }

  /**
   * @param mends changes of the script's text that would put it right
   */
  public NetException(Message told, Site site, List<Mend> mends) {
    super(told.text(Unit.MM));
    this.told = told;
    this.site = site;
    this.mends = List.copyOf(mends);
  }

  /** What is wrong, with its values. */
  public Message told() {
    return told;
  }

  /** Changes of the script's text that would put it right; often none. */
  public List<Mend> mends() {
    return mends;
  }

  public Site site() {
    return site;
  }
}
