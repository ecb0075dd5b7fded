package facetwright.workbench.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was done to script and dials, step by step and in one order, so that it can be taken back
 * and done again.
 */
final class Story {
  private final Deque<Deed> before = new ArrayDeque<>();
  private final Deque<Deed> after = new ArrayDeque<>();

  /** What could be done again before the last step. */
  private List<Deed> dropped = List.of();

  private Open open = new Open.Closed();
  private boolean holding;

  /**
   * One step.
   *
   * @param from the dials before it
   * @param to the dials after it
   * @param change what it does to the script
   */
  record Deed(Map<String, String> from, Map<String, String> to, Change change) {
    private boolean isNone() {
      return change.isNone() && from.equals(to);
    }

    private Deed back() {
      return new Deed(to, from, change.back());
    }
  }

  /** How the last step may still go on. */
  private sealed interface Open {
    /** Not at all. */
    record Closed() implements Open {}

    /** A hand holds this dial. */
    record Turning(String dial) implements Open {}

    /**
     * Somebody writes.
     *
     * @param start the script before the step
     * @param last the last change of it
     */
    record Writing(String start, Change last) implements Open {}
  }

  /** A step that nothing goes on with. */
  void done(Map<String, String> from, Map<String, String> to, Change change) {
    Deed step = new Deed(from, to, change);
    open = new Open.Closed();
    if (!step.isNone()) {
      before.push(step);
      dropped = List.copyOf(after);
      after.clear();
    }
  }

  /** A dial is turned; in the hand that holds it, it goes on with the last turn. */
  void turned(String dial, Map<String, String> from, Map<String, String> to) {
    if (open.equals(new Open.Turning(dial))) {
      Deed step = before.pop();
      before.push(new Deed(step.from, to, step.change));
    } else {
      done(from, to, new Change(0, "", ""));
      open = holding ? new Open.Turning(dial) : new Open.Closed();
    }
  }

  /**
   * The script is written in; in the hand that holds it, or in one word, it goes on.
   *
   * @param change where it is written in: a letter typed before its like could be either of them
   */
  void wrote(String from, String to, Change change, Map<String, String> dials) {
    if (open instanceof Open.Writing(String start, Change last)
        && (holding || change.goesOn(last))) {
      before.pop();
      before.push(new Deed(dials, dials, Change.between(start, to)));
      open = new Open.Writing(start, change);
    } else {
      done(dials, dials, change);
      open = new Open.Writing(from, change);
    }
  }

  /** What follows is a step of its own. */
  void close() {
    open = new Open.Closed();
  }

  /** Says whether a hand holds what it changes: what it does to it is one step. */
  void hold(boolean on) {
    holding = on;
    close();
    settle();
  }

  /** Forgets the last step if it has come back to where it began, as if it had not been done. */
  private void settle() {
    Deed step = before.peek();
    if (step != null && step.isNone()) {
      before.pop();
      after.addAll(dropped);
    }
  }

  void clear() {
    close();
    before.clear();
    after.clear();
  }

  /** The last step, turned about, to be followed; it can be done again. */
  Optional<Deed> back() {
    close();
    settle();
    Deed step = before.poll();
    if (step == null) {
      return Optional.empty();
    }
    after.push(step);
    return Optional.of(step.back());
  }

  /** The step that was taken back, to be followed again. */
  Optional<Deed> again() {
    close();
    settle();
    Deed step = after.poll();
    if (step == null) {
      return Optional.empty();
    }
    before.push(step);
    return Optional.of(step);
  }
}
