package facetwright.script.sandbox;

import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.words.Mend;
import facetwright.words.Site;
import java.util.List;

/**
 * A call that the script got wrong, in a maker's words. Thrown by host functions; the script sees
 * an ordinary error with the same message.
 */
public final class CallException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Message told;
  private final Message remedy;
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
    this(Message.text(message), Message.text(fix), Site.NONE, mends);
  }

  /** One whose words have values in them. */
  public CallException(Message told, Message remedy, List<Mend> mends) {
    this(told, remedy, Site.NONE, mends);
  }

  /**
   * One that is not thrown in the call it is about.
   *
   * @param site where that call stands
   */
  public CallException(Message told, Message remedy, Site site, List<Mend> mends) {
    super(told.text(Unit.MM));
    this.told = told;
    this.remedy = remedy;
    this.site = site;
    this.mends = List.copyOf(mends);
  }

  /** What is wrong, with its values. */
  Message told() {
    return told;
  }

  /** What to do about it, with its values; or empty. */
  Message remedy() {
    return remedy;
  }

  /** What to do about it, as the script reads it: in millimetres. */
  String fix() {
    return remedy.text(Unit.MM);
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
