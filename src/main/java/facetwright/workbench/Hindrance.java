package facetwright.workbench;

/** Why the toolkit does not start, in a person's words. */
final class Hindrance {
  private Hindrance() {}

  static String of(Throwable fault) {
    StringBuilder all = new StringBuilder();
    for (Throwable t = fault; t != null; t = t.getCause()) {
      all.append(t.getMessage()).append('\n');
    }
    String said = all.toString();
    if (said.contains("DISPLAY")) {
      return "the display does not answer";
    }
    if (said.contains("GTK") || said.contains("glass") || said.contains(".so")) {
      return "libraries of the system are missing; on Debian install them with: sudo apt-get"
          + " install libgtk-3-0 libxtst6 libfreetype6 libpangoft2-1.0-0 fontconfig"
          + " fonts-dejavu-core";
    }
    String first = fault.getMessage();
    return first == null ? fault.getClass().getSimpleName() : first;
  }
}
