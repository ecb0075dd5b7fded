package facetwright.workbench;

import javafx.scene.paint.Color;

/** The contrast of two colours. */
final class Contrast {
  private Contrast() {}

  /**
   * From 1 for the same colour to 21 for black and white.
   *
   * <p>By "contrast ratio" and "relative luminance" in the glossary of WCAG 2.2,
   * https://www.w3.org/TR/WCAG22, from memory.
   */
  static double of(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(double part) {
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }
}
