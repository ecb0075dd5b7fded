package facetwright.workbench.lens;

import facetwright.workbench.key.Key;
import facetwright.workbench.key.Where;
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
    Key key = Key.of(Where.LENS, e).orElse(null);
    switch (key) {
      case LENS_TURN -> lens.turn(-TURN * Key.across(e), TURN * Key.down(e));
      case LENS_PLAY -> lens.play();
      case LENS_STEP -> fold(STEP * key.sense(e));
      case LENS_NEARER -> lens.nearer(1.25);
      case LENS_FARTHER -> lens.nearer(0.8);
      case LENS_USUAL -> lens.usual();
      case null, default -> {
        return;
      }
    }
    e.consume();
  }

  private void fold(double by) {
    lens.made().set(Math.clamp(lens.made().get() + by, 0, 1));
  }
}
