package facetwright.form;

/** A form that can't be made: what is wrong, with which facet, and what to do. */
public final class FormException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public FormException(String message) {
    super(message);
  }
}
