package facetwright.form;

/** What makes another form of a form; the one it is made of stays as it is. */
@FunctionalInterface
public interface Change {
  /**
   * The changed form.
   *
   * @throws FormException when the form can't be changed so
   */
  Form of(Form form);
}
