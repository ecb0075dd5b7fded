package facetwright.workbench.lens;

import javafx.scene.input.KeyEvent;

/** What keys do on the lens: turn the form, fold it, bring it nearer. */
final class LensKeys {
  private static final double TURN = Math.toRadians(10);
  private static final double STEP = 0.05;

  private final LensView lens;

  LensKeys(LensView lens) {
    this.lens = lens;
  }

  void pressed(KeyEvent e) {
    if (e.isShortcutDown() || e.isAltDown()) {
      return;
    }
    switch (e.getCode()) {
      case LEFT -> lens.turn(TURN, 0);
      case RIGHT -> lens.turn(-TURN, 0);
      case UP -> lens.turn(0, -TURN);
      case DOWN -> lens.turn(0, TURN);
      case SPACE -> lens.play();
      case PAGE_UP -> fold(STEP);
      case PAGE_DOWN -> fold(-STEP);
      case PLUS, ADD, EQUALS -> lens.nearer(1.25);
      case MINUS, SUBTRACT -> lens.nearer(0.8);
      case HOME -> lens.usual();
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void fold(double by) {
    lens.made().set(Math.clamp(lens.made().get() + by, 0, 1));
  }
}
