package facetwright.workbench;

import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;

/** How large the words of the window are; everything measured by them grows with them. */
final class TextSize {
  static final double USUAL = 14;
  static final double LEAST = 12;
  static final double MOST = 24;
  private static final double STEP = 1.5;

  private final DoubleProperty pixels = new SimpleDoubleProperty(USUAL);

  DoubleProperty pixels() {
    return pixels;
  }

  void larger() {
    pixels.set(Math.min(MOST, pixels.get() + STEP));
  }

  void smaller() {
    pixels.set(Math.max(LEAST, pixels.get() - STEP));
  }

  void usual() {
    pixels.set(USUAL);
  }
}
