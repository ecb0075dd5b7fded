package facetwright.script.sandbox;

import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.List;

/**
 * A call that the script got wrong, in a maker's words. Thrown by host functions; the script sees
 * an ordinary error with the same message.
 */
public final class CallException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String fix;
  private final Site site;
  private final List<Mend> mends;

  /**
   * @param message what is wrong
   * @param fix what to do about it, or empty
   */
  public CallException(String message, String fix) {
    this(message, fix, List.of());
  }

  /**
   * @param message what is wrong
   * @param fix what to do about it, or empty
   * @param mends changes of the script's text that would put it right
   */
  public CallException(String message, String fix, List<Mend> mends) {
    this(message, fix, Site.NONE, mends);
  }

  /**
   * One that is not thrown in the call it is about.
   *
   * @param site where that call stands
   */
  public CallException(String message, String fix, Site site, List<Mend> mends) {
    super(message);
    this.fix = fix;
    this.site = site;
    this.mends = List.copyOf(mends);
  }

  public CallException(String message) {
    this(message, "");
  }

  /** What to do about it, or empty. */
  String fix() {
    return fix;
  }

  /** Where in the script; {@link Site#NONE} for the call that throws it. */
  Site site() {
    return site;
  }

  /** Changes of the script's text that would put it right; often none. */
  List<Mend> mends() {
    return mends;
  }
}
