package facetwright.workbench.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was done to the dials, step by step, so that it can be taken back and done again. */
final class Turns {
  private final Deque<Step> before = new ArrayDeque<>();
  private final Deque<Step> after = new ArrayDeque<>();

  /** What could be done again before the last step. */
  private List<Step> dropped = List.of();

  private boolean holding;
  private String held;

  /**
   * One step.
   *
   * @param textFrom the script before it
   * @param textTo the script after it; the same where only dials were turned
   */
  record Step(Map<String, String> from, Map<String, String> to, String textFrom, String textTo) {
    /** Whether the script was changed with the dials. */
    boolean isWritten() {
      return !textFrom.equals(textTo);
    }

    private Step back() {
      return new Step(to, from, textTo, textFrom);
    }
  }

  void done(Step step) {
    held = null;
    before.push(step);
    dropped = List.copyOf(after);
    after.clear();
  }

  /** The last step goes on: it ends with other dials than it did. */
  void goOn(Map<String, String> to) {
    Step step = before.pop();
    before.push(new Step(step.from, to, step.textFrom, step.textTo));
  }

  /** Says whether a hand holds a dial: what it does to it is one step. */
  void hold(boolean on) {
    holding = on;
    held = null;
    settle();
  }

  /** The hand, if there is one, holds this dial since the last step. */
  void held(String dial) {
    held = holding ? dial : null;
  }

  /** Whether the last step is a turn of this dial that goes on. */
  boolean isHeld(String dial) {
    return dial.equals(held);
  }

  /** Forgets the last step if it has come back to where it began, as if it had not been done. */
  private void settle() {
    Step step = before.peek();
    if (step != null && !step.isWritten() && step.from.equals(step.to)) {
      before.pop();
      after.addAll(dropped);
    }
  }

  void clear() {
    held = null;
    before.clear();
    after.clear();
  }

  /** The last step, turned about, to be followed; it can be done again. */
  Optional<Step> back() {
    held = null;
    Step step = before.poll();
    if (step == null) {
      return Optional.empty();
    }
    after.push(step);
    return Optional.of(step.back());
  }

  /** The step that was taken back, to be followed again. */
  Optional<Step> again() {
    held = null;
    Step step = after.poll();
    if (step == null) {
      return Optional.empty();
    }
    before.push(step);
    return Optional.of(step);
  }

  /**
   * The step that a change of the script takes back or does again, where it is one that changed the
   * script and the dials together; it is to be followed.
   */
  Optional<Step> with(String from, String to, Map<String, String> dials) {
    Step last = before.peek();
    if (last != null && last.isWritten() && isChange(last.back(), from, to, dials)) {
      return back();
    }
    Step next = after.peek();
    return next != null && next.isWritten() && isChange(next, from, to, dials)
        ? again()
        : Optional.empty();
  }

  private static boolean isChange(Step step, String from, String to, Map<String, String> dials) {
    return step.textFrom.equals(from) && step.textTo.equals(to) && step.from.equals(dials);
  }
}
