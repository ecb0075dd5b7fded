package facetwright.workbench.focus;

/** A control in which something can be taken back before anything that was done at the desk. */
public interface OwnUndo {
  /**
   * Takes back what was done here and nowhere else.
   *
   * @return whether there was anything
   */
  boolean takeBack();
}
