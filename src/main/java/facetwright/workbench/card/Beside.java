package facetwright.workbench.card;

import java.util.function.DoubleSupplier;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;

/**
 * Something that takes the room there is, and something beside it that needs its own. Where there
 * is none for both, the second stands under the first.
 */
final class Beside extends Region {
  private static final double GAP = 6;
  private static final double BETWEEN = 4;

  private final Region wide;
  private final Region firm;
  private final DoubleSupplier least;

  /**
   * @param wide what takes the room there is
   * @param firm what is as wide as it needs to be; nothing while it is not managed
   * @param least how wide, in pixels, the first has to be beside the second
   */
  Beside(Region wide, Region firm, DoubleSupplier least) {
    this.wide = wide;
    this.firm = firm;
    this.least = least;
    getChildren().addAll(wide, firm);
  }

  /** How wide the first is beside the second; 0 where it stands over it. */
  private double beside(double width) {
    double left = width - Math.ceil(firm.prefWidth(-1)) - GAP;
    return left < least.getAsDouble() ? 0 : left;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return 0;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected double computePrefWidth(double height) {
    return wide.prefWidth(-1) + (firm.isManaged() ? GAP + firm.prefWidth(-1) : 0);
  }

  @Override
  protected double computePrefHeight(double width) {
    double all = width < 0 ? prefWidth(-1) : width;
    if (!firm.isManaged()) {
      return wide.prefHeight(all);
    }
    double left = beside(all);
    return left > 0
        ? Math.max(wide.prefHeight(left), firm.prefHeight(-1))
        : wide.prefHeight(all) + BETWEEN + firm.prefHeight(-1);
  }

  @Override
  protected void layoutChildren() {
    double all = getWidth();
    double left = firm.isManaged() ? beside(all) : all;
    if (left > 0) {
      place(wide, 0, left, (getHeight() - wide.prefHeight(left)) / 2);
      place(
          firm,
          all - firm.prefWidth(-1),
          firm.prefWidth(-1),
          (getHeight() - firm.prefHeight(-1)) / 2);
    } else {
      place(wide, 0, all, 0);
      place(firm, 0, Math.min(all, firm.prefWidth(-1)), wide.prefHeight(all) + BETWEEN);
    }
  }

  private static void place(Region part, double x, double width, double y) {
    part.resizeRelocate(
        Math.rint(x), Math.rint(Math.max(0, y)), Math.ceil(width), part.prefHeight(width));
  }
}
