package facetwright.workbench.card;

import org.fxmisc.richtext.CodeArea;

/** How large the script is written, beside the size of the words around it. */
final class TextSize {
  /** In fourteenths of the words around it. */
  private static final int USUAL = 14;

  private static final int LEAST = 12;
  private static final int MOST = 28;

  private final CodeArea area;
  private int size = USUAL;

  TextSize(CodeArea area) {
    this.area = area;
    set(USUAL);
  }

  /** Tests watch by it. */
  int size() {
    return size;
  }

  void step(int by) {
    set(size + by);
  }

  void usual() {
    set(USUAL);
  }

  private void set(int wanted) {
    size = Math.clamp(wanted, LEAST, MOST);
    area.setStyle("-fx-font-size: " + size / (double) USUAL + "em;");
  }
}
