package facetwright.form;

import facetwright.measure.Unit;
import facetwright.message.Message;
import facetwright.words.Mend;
import java.util.List;

/** A form that can't be made: what is wrong, with which facet, and what to do. */
public final class FormException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Message told;
  private final List<Mend> mends;

  public FormException(String message) {
    this(message, List.of());
  }

  public FormException(Message told) {
    this(told, List.of());
  }

  /**
   * @param mends changes of the script's text that would put it right
   */
  public FormException(String message, List<Mend> mends) {
    this(Message.text(message), mends);
  }

  /**
   * @param mends changes of the script's text that would put it right
   */
  public FormException(Message told, List<Mend> mends) {
    super(told.text(Unit.MM));
    this.told = told;
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
}
