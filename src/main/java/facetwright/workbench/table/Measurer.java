package facetwright.workbench.table;

import facetwright.geom.Vec2;
import facetwright.measure.Unit;
import facetwright.workbench.key.Key;
import java.util.function.Consumer;

/** Measures from place to place, with the mouse or from corner to corner by keys. */
final class Measurer {
  private static final String ENTER = Key.TABLE_GO.text();

  private final Consumer<String> tell;
  private Measuring now = Measuring.NONE;

  /** The corner that one stands at by keys; null for none. */
  private Vec2 corner;

  /**
   * @param tell says in words what is measured
   */
  Measurer(Consumer<String> tell) {
    this.tell = tell;
  }

  Measuring now() {
    return now;
  }

  Vec2 corner() {
    return corner;
  }

  /** The distance measured last, in mm; 0 where none was. */
  double measured() {
    return now.done() ? now.from().distance(now.to()) : 0;
  }

  /** Begins anew. */
  void forget() {
    now = Measuring.NONE;
    corner = null;
  }

  /** Follows the pointer to a place; says whether that changes anything. */
  boolean follow(Vec2 place) {
    Measuring next = now.following(place);
    boolean changed = !next.equals(now);
    now = next;
    return changed;
  }

  /** Stands at a corner. */
  void stand(Vec2 at, Unit unit) {
    corner = at;
    now = now.following(at);
    tell.accept(
        now.from() == null || now.done()
            ? "A corner. " + ENTER + " measures from here, arrows go to the next"
            : "To this corner: "
                + SpotText.both(now.from().distance(at), unit)
                + ". "
                + ENTER
                + " takes it");
  }

  /** Measures from a place, or to it. */
  void choose(Vec2 at, Unit unit) {
    now = now.choosing(at);
    tell.accept(
        now.done()
            ? "Measured: " + SpotText.both(measured(), unit)
            : "Measuring from here. Arrows go to the next corner, " + ENTER + " takes it");
  }
}
