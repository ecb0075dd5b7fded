package facetwright.workbench.desk;

/** Workers that are there while there is something to ask: pictures to make, dials to find. */
public interface Helpers extends Asking, AutoCloseable {
  @Override
  void close();
}
