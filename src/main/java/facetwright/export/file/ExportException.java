package facetwright.export.file;

/** Something could not be written; the message tells a maker what and what to do. */
public final class ExportException extends RuntimeException {
  private static final long serialVersionUID = 1;

  public ExportException(String message) {
    super(message);
  }

  public ExportException(String message, Throwable cause) {
    super(message, cause);
  }
}
