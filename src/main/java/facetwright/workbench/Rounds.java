package facetwright.workbench;

import facetwright.workbench.Places.Place;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import javafx.animation.PauseTransition;
import javafx.util.Duration;

/** A walk through all places of the window, for the start-up cache to learn from. */
final class Rounds {
  private static final Duration STEP = Duration.millis(400);
  private static final int MOST_WAITS = 60;

  private final House house;
  private final Runnable end;
  private final Deque<Runnable> steps = new ArrayDeque<>();
  private int waits;

  private Rounds(House house, Runnable end) {
    this.house = house;
    this.end = end;
    steps.addAll(
        List.of(
            house.notices()::putAway,
            () -> house.desk().turn("wall", "58"),
            () -> house.room().lens().made().set(0.5),
            () -> house.room().card().area().appendText(" "),
            house.commands().named("keys")::run,
            house.pages()::close,
            () -> house.places().now().set(Place.SHELF),
            () -> {},
            () -> house.places().now().set(Place.PAPERS),
            () -> {},
            () -> house.places().now().set(Place.TABLE),
            () -> house.room().dark().set(true)));
  }

  /** Begins the walk; at its end, or when it takes too long, the end is called. */
  static void of(House house, Runnable end) {
    new Rounds(house, end).on();
  }

  private void on() {
    PauseTransition pause = new PauseTransition(STEP);
    pause.setOnFinished(_ -> step());
    pause.play();
  }

  private void step() {
    boolean waiting = house.desk().design().get() == null && ++waits < MOST_WAITS;
    if (!waiting && steps.isEmpty()) {
      end.run();
      return;
    }
    if (!waiting) {
      steps.poll().run();
    }
    on();
  }
}
