package facetwright.workbench.lens;

import javafx.animation.AnimationTimer;
import javafx.beans.property.DoubleProperty;

/** Folds a form from flat to made in a few seconds, then rests. */
final class Player extends AnimationTimer {
  private static final double SECONDS = 4;

  /** No picture follows another sooner: more than sixty a second no eye sees in a fold. */
  private static final long BETWEEN_NANOS = 14_000_000;

  private final DoubleProperty made;
  private boolean playing;
  private long last;

  Player(DoubleProperty made) {
    this.made = made;
  }

  void toggle() {
    if (playing) {
      stop();
      return;
    }
    if (made.get() >= 1) {
      made.set(0);
    }
    last = 0;
    start();
  }

  @Override
  public void start() {
    playing = true;
    super.start();
  }

  @Override
  public void stop() {
    playing = false;
    super.stop();
  }

  @Override
  public void handle(long now) {
    if (last != 0 && now - last < BETWEEN_NANOS) {
      return;
    }
    double seconds = last == 0 ? 0 : (now - last) / 1e9;
    last = now;
    made.set(Math.min(1, made.get() + seconds / SECONDS));
    if (made.get() >= 1) {
      stop();
    }
  }
}
