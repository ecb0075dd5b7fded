package facetwright.form;

import facetwright.words.Mend;
import java.util.List;

/** A form that can't be made: what is wrong, with which facet, and what to do. */
public final class FormException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final List<Mend> mends;

  public FormException(String message) {
    this(message, List.of());
  }

  /**
   * @param mends changes of the script's text that would put it right
   */
  public FormException(String message, List<Mend> mends) {
    super(message);
    this.mends = List.copyOf(mends);
  }

  /** Changes of the script's text that would put it right; often none. */
  public List<Mend> mends() {
    return mends;
  }
}
